package org.loamlight.setup;

/**
 * The room the enclosure stands in.
 *
 * @param coldest lowest room temperature of the year (°C)
 * @param hottest highest room temperature of the year (°C)
 * @param litAtNight whether light of the room or the street falls into the enclosure at night
 */
public record Room(Measure coldest, Measure hottest, Stated litAtNight) {
}
