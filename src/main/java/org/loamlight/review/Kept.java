package org.loamlight.review;

/**
 * An animal of a setup that was reviewed.
 *
 * @param species id of its species
 * @param english what keepers call the species
 */
public record Kept(String name, String species, String english) {
}
