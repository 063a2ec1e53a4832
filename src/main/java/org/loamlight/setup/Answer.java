package org.loamlight.setup;

import org.loamlight.quantity.Unit;

/**
 * The kinds of measured answers: the unit they are kept in, what is possible, and the ±a they are good for when the
 * keeper states none. The widths are judgement unless said otherwise; the coarse side was taken.
 */
public enum Answer {
    /** Inside or outside sizes by tape: ±5 mm. */
    SIZE(Unit.CENTIMETRE, 1, 1_000, 0.5, 0),
    /** Positions and heights inside, by tape: ±2 cm. */
    POSITION(Unit.CENTIMETRE, 0, 1_000, 2, 0),
    /** Lamp distances by tape: ±1 cm. */
    DISTANCE(Unit.CENTIMETRE, 0.1, 1_000, 1, 0),
    /** Gaps by rod gauge or ruler: ±1 mm. */
    GAP(Unit.MILLIMETRE, 0, 1_000, 1, 0),
    /** Widest part of the head of a living animal, by calliper or ruler: ±1 mm. */
    HEAD_WIDTH(Unit.MILLIMETRE, 0.5, 500, 1, 0),
    /** Length of a living animal: ±5 %, ±5 mm at least. */
    BODY_LENGTH(Unit.CENTIMETRE, 0.5, 1_200, 0.5, 0.05),
    /** Mass on a kitchen scale: ±1 %, ±1 g at least. */
    BODY_MASS(Unit.GRAM, 0.1, 500_000, 1, 0.01),
    /** Mass of a thing: ±5 %, ±10 g at least. */
    THING_MASS(Unit.KILOGRAM, 0, 1_000, 0.01, 0.05),
    TEMPERATURE(Unit.CELSIUS, -60, 400, 0, 0),
    HUMIDITY(Unit.PERCENT, 0, 100, 0, 0),
    UV_INDEX(Unit.UV_INDEX, 0, 500, 0, 0),
    /** How often something is done: ±10 %. */
    INTERVAL(Unit.DAY, 0.01, 3_700, 0, 0.10),
    /** Rated power as printed: ±5 %. */
    POWER(Unit.WATT, 0.1, 100_000, 0, 0.05),
    /** Thickness of a pane by ruler: ±1 mm. */
    THICKNESS(Unit.MILLIMETRE, 0.1, 500, 1, 0),
    /** A warm patch, felt with the hand: ±3 cm. */
    PATCH(Unit.CENTIMETRE, 0, 1_000, 3, 0),
    /** Capacity of a dish or basin: ±10 %. */
    CAPACITY(Unit.LITRE, 0.001, 100_000, 0, 0.10),
    /** Mass of one meal on a kitchen scale: ±5 %, ±1 g at least. */
    MEAL_MASS(Unit.GRAM, 0.05, 100_000, 1, 0.05),
    /** What a thermostat is set to: ±1 °C (judgement). */
    SETTING(Unit.CELSIUS, 0, 100, 1, 0),
    /** Hours of a day: ±15 min. */
    HOURS(Unit.HOUR, 0, 24, 0.25, 0),
    /** Latitude from a map: ±0.5°. */
    LATITUDE(Unit.DEGREE, -90, 90, 0.5, 0),
    /** Mains voltage: ±10 % (tolerance of supply, from memory). */
    VOLTAGE(Unit.VOLT, 10, 500, 0, 0.10),
    /** Rating as printed; exact. */
    RATING(Unit.AMPERE, 0.1, 100, 0, 0.001),
    /** How long an agent stays on: ±20 %. */
    CONTACT_TIME(Unit.MINUTE, 0, 10_000, 0, 0.20),
    /** Price of a kilowatt hour as on the bill: ±1 %. */
    TARIFF(Unit.PER_KILOWATT_HOUR, 0, 100_000, 0.0001, 0.01),
    /** A share of light or of the floor: ±5 points. */
    SHARE(Unit.PERCENT, 0, 100, 5, 0);

    private final Unit unit;
    private final double least;
    private final double most;
    private final double halfWidth;
    private final double relative;

    Answer(Unit unit, double least, double most, double halfWidth, double relative) {
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.halfWidth = halfWidth;
        this.relative = relative;
    }

    public Unit unit() {
        return unit;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    /** The ±a of an answer without one, in {@link #unit()}. Readings of instruments fall back to the coarsest instrument. */
    double halfWidthAt(double value, Instrument instrument) {
        if (instrument.reads(unit) && instrument != Instrument.UNKNOWN) {
            return instrument.halfWidthAt(value);
        }
        double own = Math.max(halfWidth, relative * Math.abs(value));
        return own > 0 ? own : Instrument.coarsestHalfWidth(value, unit);
    }
}
