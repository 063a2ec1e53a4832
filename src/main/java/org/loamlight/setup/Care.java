package org.loamlight.setup;

/**
 * What is done how often.
 *
 * @param waterChange days between water changes
 */
public record Care(Measure waterChange) {
}
