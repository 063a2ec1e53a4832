package org.loamlight.setup;

import java.util.Set;

/**
 * The room the enclosure stands in.
 *
 * @param coldest lowest room temperature of the year (°C)
 * @param hottest highest room temperature of the year (°C)
 * @param whenRead   room temperature while the readings in the enclosure were taken (°C)
 * @param cooling    whether the room or the enclosure can be cooled in a heat wave
 * @param latitude   north positive (°)
 * @param sun        whether direct sun through a window reaches the enclosure
 * @param smokeAlarm whether a smoke alarm hangs in the room
 * @param fumes      what can hang in its air; empty when nothing does or nobody told
 * @param disturbances what keeps the animal in fear; empty when nothing does or nobody told
 * @param litAtNight whether light of the room or the street falls into the enclosure at night
 */
public record Room(Measure coldest, Measure hottest, Measure whenRead, Stated cooling, Measure latitude, Stated sun, Stated smokeAlarm,
        Set<Fume> fumes, Set<Disturbance> disturbances, Stated litAtNight) {
    public Room {
        fumes = Set.copyOf(fumes);
        disturbances = Set.copyOf(disturbances);
    }
}
