package org.loamlight.setup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A described enclosure with its animals.
 *
 * @param on        date of the audit as the file says; empty when it says none
 * @param substrate empty when the setup does not tell of substrate
 * @param water     empty when the setup does not tell of water
 * @param told      which questions are answered
 */
public record Setup(String title, Optional<LocalDate> on, Purpose purpose, List<Animal> animals, Enclosure enclosure, Room room,
        List<Heater> heaters, List<Lamp> lamps, Optional<Substrate> substrate, List<Furnishing> furnishings, Optional<Water> water,
        List<Reading> readings, Care care, Electrical electrical,
        Hygiene hygiene, Household household, Monitoring monitoring, Season season, Quarantine quarantine, Told told) {

    /** Ids of the species that are kept. */
    public Set<String> species() {
        return animals.stream().map(Animal::species).collect(Collectors.toUnmodifiableSet());
    }

    /** Everything of one kind a criterion can be applied to, in the order of the file. */
    public List<Subject> subjects(SubjectKind kind) {
        return switch (kind) {
            case ANIMAL -> animals.stream().map(Animal::subject).toList();
            case ENCLOSURE -> List.of(Subject.ENCLOSURE);
            case HEATER -> heaters.stream().map(Heater::subject).toList();
            case LAMP -> lamps.stream().map(Lamp::subject).toList();
            case OPENING -> enclosure.openings().stream().map(Opening::subject).toList();
            case FURNISHING -> furnishings.stream().map(Furnishing::subject).toList();
            case READING -> readings.stream().map(Reading::subject).toList();
        };
    }
}
