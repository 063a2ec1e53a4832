package org.loamlight.setup;

/**
 * Rest in winter.
 *
 * @param checked whether a veterinarian checked the animal before
 * @param emptied whether its gut was empty before it was cooled
 * @param weighed whether it is weighed all through
 * @param rests   temperature it rests at (°C)
 * @param lasts   how long the rest lasts (d), from cooling down to warming up
 */
public record Season(WinterRest rest, Stated checked, Stated emptied, Stated weighed, Measure rests, Measure lasts) {
}
