package org.loamlight.setup;

/**
 * Other reptiles in the house, and how new ones are kept apart.
 *
 * @param others   whether other reptiles live in the house
 * @param sameRoom whether they share the room
 * @param kept     days the new animal was or will be kept apart
 */
public record Quarantine(Stated others, Stated sameRoom, Measure kept) {
}
