package org.loamlight.wording;

import java.util.List;
import org.loamlight.quantity.Topic;

/** What one finds something out with. */
enum Tool {
    TAPE, SCALE, ROD_GAUGE, THERMOMETER, INFRARED_THERMOMETER, HYGROMETER, UV_METER, LABEL, RECORDS, EYES;

    /** What a value of the topic is read with. */
    static Tool of(Topic topic) {
        return switch (topic) {
            case INSIDE_LENGTH, INSIDE_DEPTH, INSIDE_HEIGHT, TOTAL_LENGTH, SUBSTRATE_DEPTH, LONGEST_OPEN_STRETCH, LAMP_DISTANCE,
                    HEATER_DISTANCE, BASKING_PATCH, SHADE_DISTANCE, LAMP_HEIGHT_LEAST, LAMP_HEIGHT_MOST, COVER_SHARE,
                    REFUGE_DISTANCE, HIDE_ROOM, SUBSTRATE_VOLUME, SUBSTRATE_TO_BUY,
                    FLOOR_AREA, INSIDE_VOLUME, INSIDE_PERIMETER, SHORTER_SIDE, PREY_WIDTH, WATER_DEPTH, CLEARANCE -> TAPE;
            case BODY_MASS, FURNISHING_MASS, SUBSTRATE_MASS, TOTAL_LOAD, MEAL_SHARE, ENERGY_INTAKE -> SCALE;
            case COVER_PIECES, HIDES, HEAT_SOURCES, ANIMALS_TOGETHER, ADULT_MALES_TOGETHER -> EYES;
            case WATER_CHANGE_INTERVAL, FEEDING_INTERVAL, LIGHT_HOURS, NATURAL_DAY_LENGTH,
                    PLANT_SHARE, CALCIUM_INTERVAL, VITAMIN_D_INTERVAL, SPOT_CLEAN_INTERVAL, SUBSTRATE_CHANGE_INTERVAL, LAMP_AGE, CHECK_INTERVAL, RUN_IN, READING_AGE, TIME_KEPT_APART,
                    WINTER_REST_LENGTH -> RECORDS;
            case AIR_TEMPERATURE_BY_DAY, AIR_TEMPERATURE_BY_NIGHT, RESTING_TEMPERATURE_BY_DAY, COLDEST_ROOM, HOTTEST_ROOM,
                    COLD_ROOM_AIR_BY_DAY, COLD_ROOM_AIR_BY_NIGHT, HOT_ROOM_AIR_BY_DAY, RUNAWAY_AIR, RUNAWAY_HOURS, OUTAGE_HOURS,
                    AIR_CHANGES, DISAGREEMENT, WINTER_TEMPERATURE, NIGHT_DROP -> THERMOMETER;
            case SURFACE_TEMPERATURE_BY_DAY, SURFACE_TEMPERATURE_BY_NIGHT, RUNAWAY_SURFACE, HEATER_SURFACE -> INFRARED_THERMOMETER;
            case RELATIVE_HUMIDITY, PANE_HUMIDITY_BY_NIGHT, DEW_POINT, IMPLIED_HUMIDITY, WATER_PER_DAY -> HYGROMETER;
            case UV_INDEX, UV_LIT_SHARE, UV_SHADES -> UV_METER;
            case OPENING_GAP, HIDE_ENTRANCE -> ROD_GAUGE;
            case NEEDED_POWER, CONNECTED_POWER, OUTLET_CURRENT, ENERGY_PER_DAY, ENERGY_PER_MONTH, COST_PER_DAY, COST_PER_MONTH,
                    WATER_VOLUME -> LABEL;
        };
    }

    private static final List<String> BY_TAPE = List.of("length", "depth", "height", "along", "across", "above", "from", "to", "bottom", "top",
            "extent", "rest-height", "nearest-rest", "lit-length", "distance", "warms", "warms-across", "from-front", "to-front", "inside-length",
            "inside-width", "carapace", "snout-vent-length", "clearance");

    /** What the question of a path is answered with. */
    static Tool of(String path) {
        String member = path.substring(path.lastIndexOf('.') + 1);
        if (path.startsWith("animals") && (member.equals("from") || member.equals("since") || member.equals("stage") || member.equals("sex"))) {
            return RECORDS;
        }
        if (BY_TAPE.contains(member)) {
            return TAPE;
        }
        return switch (member) {
            case "mass", "meal" -> SCALE;
            case "gap", "head-width", "entrance", "thickness", "thickest" -> ROD_GAUGE;
            case "coldest", "hottest", "when-read", "rests-at" -> THERMOMETER;
            case "surface" -> INFRARED_THERMOMETER;
            case "index", "passes" -> UV_METER;
            case "power", "minimum-distance", "stand-carries", "voltage", "outlet", "volume", "holder-rating", "marked-clearance", "life", "disinfectant" -> LABEL;
            case "water-change", "every", "hours", "light-hours", "tariff", "latitude", "also", "plants", "calcium", "vitamin-d3", "last-meal", "last-shed",
                    "papers", "fitted-on", "spot-clean", "substrate-change", "check", "run-in", "kept-apart", "winter-rest", "checked", "emptied", "hatched", "lasts" -> RECORDS;
            default -> EYES;
        };
    }
}
