package org.loamlight.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

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
    OPENING_GAP(Unit.MILLIMETRE, Unit.INCH),
    /** Lowest room temperature of the year. */
    COLDEST_ROOM(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Highest room temperature of the year. */
    HOTTEST_ROOM(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Mean air of the enclosure in the coldest room, everything that heats by day full on. */
    COLD_ROOM_AIR_BY_DAY(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Mean air of the enclosure in the coldest room, everything that may heat by night full on. */
    COLD_ROOM_AIR_BY_NIGHT(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Mean air of the enclosure in the hottest room, its thermostats working. */
    HOT_ROOM_AIR_BY_DAY(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Mean air of the enclosure in the hottest room when control fails full on. */
    RUNAWAY_AIR(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Surface of the basking place or heater when control fails full on in the hottest room. */
    RUNAWAY_SURFACE(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** From control failing until the air reaches what the animal must not be exposed to. */
    RUNAWAY_HOURS(Unit.HOUR, Unit.HOUR),
    /** From the power going out in the coldest room until the air falls to the night minimum. */
    OUTAGE_HOURS(Unit.HOUR, Unit.HOUR),
    /** Power that holds the day air in the coldest room. */
    NEEDED_POWER(Unit.WATT, Unit.WATT),
    /** How often the air of the enclosure is exchanged. */
    AIR_CHANGES(Unit.PER_HOUR, Unit.PER_HOUR),
    /** Hottest surface of a heater, or of its cover, that the animal can touch. */
    HEATER_SURFACE(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Heater to the nearest place where the animal can lie or stand. */
    HEATER_DISTANCE(Unit.CENTIMETRE, Unit.INCH),
    /** Warmed patch over the area of the resting animal. */
    BASKING_PATCH(Unit.PERCENT, Unit.PERCENT),
    /** Share of the axis that gets more than a trace of ultraviolet. */
    UV_LIT_SHARE(Unit.PERCENT, Unit.PERCENT),
    /** Stretches of the axis in the shade of ultraviolet, under cover or where little falls. */
    UV_SHADES(Unit.PIECE, Unit.PIECE),
    /** Farthest a lit place is from shade. */
    SHADE_DISTANCE(Unit.CENTIMETRE, Unit.INCH),
    /** Lowest height of a lamp above the closest resting place that keeps its index within the zone. */
    LAMP_HEIGHT_LEAST(Unit.CENTIMETRE, Unit.INCH),
    /** Greatest height of a lamp above the closest resting place that keeps its index within the zone. */
    LAMP_HEIGHT_MOST(Unit.CENTIMETRE, Unit.INCH),
    /** Hours of light in a day, as set. */
    LIGHT_HOURS(Unit.HOUR, Unit.HOUR),
    /** Sunrise to sunset at the latitude on the day of the audit. */
    NATURAL_DAY_LENGTH(Unit.HOUR, Unit.HOUR),
    /** Relative humidity the air has right at the coldest inside surface by night; above 100 % water condenses. */
    PANE_HUMIDITY_BY_NIGHT(Unit.PERCENT, Unit.PERCENT),
    DEW_POINT(Unit.CELSIUS, Unit.FAHRENHEIT),
    /** Relative humidity the same air has elsewhere in the enclosure, at the temperature read there. */
    IMPLIED_HUMIDITY(Unit.PERCENT, Unit.PERCENT),
    /** Water that must evaporate in a day to hold the humidity read. */
    WATER_PER_DAY(Unit.LITRE, Unit.US_GALLON),
    SUBSTRATE_VOLUME(Unit.LITRE, Unit.US_GALLON),
    /** Loose volume to buy for the depth there is. */
    SUBSTRATE_TO_BUY(Unit.LITRE, Unit.US_GALLON),
    /** Mass of the substrate as moist as it is. */
    SUBSTRATE_MASS(Unit.KILOGRAM, Unit.POUND),
    /** Mass of substrate, furnishings, water and enclosure together. */
    TOTAL_LOAD(Unit.KILOGRAM, Unit.POUND),
    /** Share of the floor that is covered. */
    COVER_SHARE(Unit.PERCENT, Unit.PERCENT),
    /** Farthest a place on the floor is from cover. */
    REFUGE_DISTANCE(Unit.CENTIMETRE, Unit.INCH),
    /** Floor of a hide over the area of the coiled animal. */
    HIDE_ROOM(Unit.PERCENT, Unit.PERCENT),
    /** Narrowest way into a hide. */
    HIDE_ENTRANCE(Unit.MILLIMETRE, Unit.INCH),
    /** Mass of one meal over body mass. */
    MEAL_SHARE(Unit.PERCENT, Unit.PERCENT),
    FEEDING_INTERVAL(Unit.DAY, Unit.DAY),
    /** Energy of the feeding plan over maintenance. */
    ENERGY_INTAKE(Unit.PERCENT, Unit.PERCENT),
    /** Everything electrical together, full on. */
    CONNECTED_POWER(Unit.WATT, Unit.WATT),
    OUTLET_CURRENT(Unit.AMPERE, Unit.AMPERE),
    ENERGY_PER_DAY(Unit.KILOWATT_HOUR, Unit.KILOWATT_HOUR),
    /** In thirty days. */
    ENERGY_PER_MONTH(Unit.KILOWATT_HOUR, Unit.KILOWATT_HOUR),
    COST_PER_DAY(Unit.MONEY, Unit.MONEY),
    /** In thirty days. */
    COST_PER_MONTH(Unit.MONEY, Unit.MONEY),
    FLOOR_AREA(Unit.SQUARE_METRE, Unit.SQUARE_FOOT),
    PREY_WIDTH(Unit.MILLIMETRE, Unit.INCH),
    PLANT_SHARE(Unit.PERCENT, Unit.PERCENT),
    CALCIUM_INTERVAL(Unit.DAY, Unit.DAY),
    VITAMIN_D_INTERVAL(Unit.DAY, Unit.DAY),
    SPOT_CLEAN_INTERVAL(Unit.DAY, Unit.DAY),
    SUBSTRATE_CHANGE_INTERVAL(Unit.DAY, Unit.DAY),
    WATER_DEPTH(Unit.CENTIMETRE, Unit.INCH),
    WATER_VOLUME(Unit.LITRE, Unit.US_GALLON),
    LAMP_AGE(Unit.DAY, Unit.DAY),
    CLEARANCE(Unit.CENTIMETRE, Unit.INCH),
    CHECK_INTERVAL(Unit.DAY, Unit.DAY),
    RUN_IN(Unit.DAY, Unit.DAY),
    READING_AGE(Unit.DAY, Unit.DAY),
    /** How far two readings that should agree lie apart, of what their uncertainties allow together; above 100 % one of them is wrong. */
    DISAGREEMENT(Unit.PERCENT, Unit.PERCENT),
    /** Temperature the animal rests at in winter. */
    WINTER_TEMPERATURE(Unit.CELSIUS, Unit.FAHRENHEIT),
    TIME_KEPT_APART(Unit.DAY, Unit.DAY),
    /** Length times depth times height. */
    INSIDE_VOLUME(Unit.LITRE, Unit.US_GALLON),
    /** Once around the floor. */
    INSIDE_PERIMETER(Unit.CENTIMETRE, Unit.INCH),
    /** Length or depth, whichever is less. */
    SHORTER_SIDE(Unit.CENTIMETRE, Unit.INCH),
    /** Number of animals in one enclosure. */
    ANIMALS_TOGETHER(Unit.PIECE, Unit.PIECE),
    /** Number of adult males in one enclosure. */
    ADULT_MALES_TOGETHER(Unit.PIECE, Unit.PIECE),
    /** How much colder the air is by night than by day at the same place. */
    NIGHT_DROP(Unit.KELVIN_STEP, Unit.KELVIN_STEP),
    WINTER_REST_LENGTH(Unit.DAY, Unit.DAY);

    private static final Map<String, Topic> BY_ID = Arrays.stream(values()).collect(Collectors.toMap(Topic::id, topic -> topic));

    private final Unit unit;
    private final Unit unitInUs;
    private final String id;

    Topic(Unit unit, Unit unitInUs) {
        this.unit = unit;
        this.unitInUs = unitInUs;
        this.id = name().toLowerCase(Locale.ROOT).replace('_', '-');
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
        return id;
    }

    /** Finds a topic by its {@link #id()}; empty when there is none. */
    public static Optional<Topic> named(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }
}
