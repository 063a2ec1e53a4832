package org.loamlight.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a quantity is about. Each topic has exactly one unit in which quantities and limits of it are compared. */
public enum Topic {
    INSIDE_LENGTH(Unit.CENTIMETRE, Unit.INCH),
    INSIDE_DEPTH(Unit.CENTIMETRE, Unit.INCH),
    INSIDE_HEIGHT(Unit.CENTIMETRE, Unit.INCH),
    TOTAL_LENGTH(Unit.CENTIMETRE, Unit.INCH),
    BODY_MASS(Unit.GRAM, Unit.OUNCE),
    SUBSTRATE_DEPTH(Unit.CENTIMETRE, Unit.INCH),
    /** Number of cover pieces that reach into a third of the axis. */
    COVER_PIECES(Unit.PIECE, Unit.PIECE),
    /** Number of hides in a third of the axis. */
    HIDES(Unit.PIECE, Unit.PIECE),
    /** Number of heat sources over or under a third of the axis. */
    HEAT_SOURCES(Unit.PIECE, Unit.PIECE),
    /** Longest stretch of the axis without any cover. */
    LONGEST_OPEN_STRETCH(Unit.CENTIMETRE, Unit.INCH),
    FURNISHING_MASS(Unit.KILOGRAM, Unit.POUND),
    WATER_CHANGE_INTERVAL(Unit.DAY, Unit.DAY),
    AIR_TEMPERATURE_BY_DAY(Unit.CELSIUS, Unit.FAHRENHEIT),
    AIR_TEMPERATURE_BY_NIGHT(Unit.CELSIUS, Unit.FAHRENHEIT),
    SURFACE_TEMPERATURE_BY_DAY(Unit.CELSIUS, Unit.FAHRENHEIT),
    SURFACE_TEMPERATURE_BY_NIGHT(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Temperature at a place where the animal can rest by day, of the air or of the surface. */
    RESTING_TEMPERATURE_BY_DAY(Unit.CELSIUS, Unit.FAHRENHEIT),
    RELATIVE_HUMIDITY(Unit.PERCENT, Unit.PERCENT),
    /** UV index (CIE 17-26-073), weighted erythemal irradiance over 25 mW/m². */
    UV_INDEX(Unit.UV_INDEX, Unit.UV_INDEX),
    /** Lamp to the closest place where the animal can rest. */
    LAMP_DISTANCE(Unit.CENTIMETRE, Unit.INCH),
    OPENING_GAP(Unit.MILLIMETRE, Unit.INCH);

    private final Unit unit;
    private final Unit unitInUs;

    Topic(Unit unit, Unit unitInUs) {
        this.unit = unit;
        this.unitInUs = unitInUs;
    }

    /** The unit of every value and limit of this topic. */
    public Unit unit() {
        return unit;
    }

    /** The unit in print where US units are asked for. */
    public Unit unitInUs() {
        return unitInUs;
    }

    /** The name in data and results, for example {@code inside-length}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Finds a topic by its {@link #id()}; empty when there is none. */
    public static Optional<Topic> named(String id) {
        return Arrays.stream(values()).filter(topic -> topic.id().equals(id)).findFirst();
    }
}
