package org.loamlight.setup;

import java.util.Set;

/**
 * How the enclosure is watched.
 *
 * @param gauges    what is at hand to read with; empty when nothing is or nobody told
 * @param gaugesTold whether somebody told what is at hand
 * @param check     days between looks at the animal and its readings
 * @param runIn     days the enclosure ran and was read before the animal came, or comes
 * @param emissivity whether the infrared thermometer is set to, or suits, the surface it reads
 * @param changed   whether lamp, heater or place was changed since the readings
 */
public record Monitoring(Set<Gauge> gauges, Stated gaugesTold, Measure check, Measure runIn, Stated emissivity, Stated changed) {
    public Monitoring {
        gauges = Set.copyOf(gauges);
    }

    /** Whether this is at hand. */
    public boolean has(Gauge gauge) {
        return gauges.contains(gauge);
    }
}
