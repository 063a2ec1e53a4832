package org.loamlight.criterion;

import org.loamlight.quantity.Unit;

/** What a limit can be a factor of, with the unit it is kept in and the question it is the answer to. */
public enum BodyMeasure {
    TOTAL_LENGTH(Unit.CENTIMETRE, "animals[].length"), BODY_MASS(Unit.GRAM, "animals[].mass"),
    HEAD_WIDTH(Unit.MILLIMETRE, "animals[].head-width"), LAMP_MINIMUM_DISTANCE(Unit.CENTIMETRE, "lamps[].minimum-distance"),
    STAND_RATING(Unit.KILOGRAM, "enclosure.build.stand-carries"), OUTLET_RATING(Unit.AMPERE, "electrical.outlet"),
    CARAPACE_LENGTH(Unit.CENTIMETRE, "animals[].carapace"), SNOUT_VENT_LENGTH(Unit.CENTIMETRE, "animals[].snout-vent-length"), LAMP_LIFE(Unit.DAY, "lamps[].life"),
    MARKED_CLEARANCE(Unit.CENTIMETRE, "heaters[].marked-clearance");

    private final Unit unit;
    private final String question;

    BodyMeasure(Unit unit, String question) {
        this.unit = unit;
        this.question = question;
    }

    /** Whether it is a measure of the animal, and not of the thing the criterion is applied to. */
    public boolean isOfAnimal() {
        return question.startsWith("animals");
    }

    public Unit unit() {
        return unit;
    }

    /** Path of the setup member that answers it. */
    public String question() {
        return question;
    }
}
