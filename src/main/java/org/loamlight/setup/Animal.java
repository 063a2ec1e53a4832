package org.loamlight.setup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * An animal that lives or shall live in the enclosure.
 *
 * @param species   id of the species profile
 * @param length    total length (cm)
 * @param mass      body mass (g)
 * @param headWidth widest part of the head (mm)
 * @param carapace  straight length of the shell of a tortoise (cm)
 * @param snoutVentLength from the tip of the snout to the vent (cm), the length without the tail
 * @param hatched   day it hatched or was born; empty when this is not known
 * @param diet      what it is fed
 * @param papers    whether it has the papers the law of the place asks for
 * @param since     since when it lives in this enclosure; empty when it has not moved in or this is not told
 */
public record Animal(String name, String species, Stage stage, Sex sex, Measure length, Measure mass, Measure headWidth, Measure carapace,
        Measure snoutVentLength, Optional<LocalDate> hatched, Diet diet, Health health, Stated papers, Provenance provenance,
        Optional<LocalDate> since) {

    /** Whether it lived in the enclosure on that day. */
    public boolean livesHere(LocalDate on) {
        return since.isPresent() && !since.get().isAfter(on);
    }

    /** Whether it is subadult or adult. */
    public Stated grown() {
        return switch (stage) {
            case HATCHLING, JUVENILE -> Stated.NO;
            case SUBADULT, ADULT -> Stated.YES;
            case UNKNOWN -> Stated.UNKNOWN;
        };
    }

    public Subject subject() {
        return new Subject(SubjectKind.ANIMAL, name);
    }
}
