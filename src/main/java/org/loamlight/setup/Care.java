package org.loamlight.setup;

/**
 * What is done how often.
 *
 * @param waterChange days between water changes
 * @param lightHours  hours of light in a day (h)
 */
public record Care(Measure waterChange, Measure lightHours) {
}
