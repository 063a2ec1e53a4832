package org.loamlight.criterion;

import org.loamlight.quantity.Unit;

/** What a limit can be a factor of, with the unit it is kept in and the question it is the answer to. */
public enum BodyMeasure {
    TOTAL_LENGTH(Unit.CENTIMETRE, "animals[].length"), BODY_MASS(Unit.GRAM, "animals[].mass"),
    HEAD_WIDTH(Unit.MILLIMETRE, "animals[].head-width"), LAMP_MINIMUM_DISTANCE(Unit.CENTIMETRE, "lamps[].minimum-distance"),
    STAND_RATING(Unit.KILOGRAM, "enclosure.build.stand-carries"), OUTLET_RATING(Unit.AMPERE, "electrical.outlet");

    private final Unit unit;
    private final String question;

    BodyMeasure(Unit unit, String question) {
        this.unit = unit;
        this.question = question;
    }

    public Unit unit() {
        return unit;
    }

    /** Path of the setup member that answers it. */
    public String question() {
        return question;
    }
}
