package org.loamlight.setup;

/**
 * The room the enclosure stands in.
 *
 * @param coldest lowest room temperature of the year (°C)
 * @param hottest highest room temperature of the year (°C)
 * @param whenRead   room temperature while the readings in the enclosure were taken (°C)
 * @param cooling    whether the room or the enclosure can be cooled in a heat wave
 * @param latitude   north positive (°)
 * @param litAtNight whether light of the room or the street falls into the enclosure at night
 */
public record Room(Measure coldest, Measure hottest, Measure whenRead, Stated cooling, Measure latitude, Stated litAtNight) {
}
