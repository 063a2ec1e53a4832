package org.loamlight.setup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A value read in the enclosure.
 *
 * @param value  in °C, % or UV index, as {@code of} says
 * @param inBeam whether the sensor was in the light of a lamp
 */
public record Reading(String name, ReadingOf of, Spot place, DayTime time, Measure value, Instrument instrument, Stated inBeam,
        Optional<LocalDate> on) {

    public Subject subject() {
        return new Subject(SubjectKind.READING, name);
    }
}
