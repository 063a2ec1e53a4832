package org.loamlight.wording;

import java.util.List;
import org.loamlight.quantity.Topic;

/** What one finds something out with. */
enum Tool {
    TAPE, SCALE, ROD_GAUGE, THERMOMETER, INFRARED_THERMOMETER, HYGROMETER, UV_METER, LABEL, RECORDS, EYES;

    /** What a value of the topic is read with. */
    static Tool of(Topic topic) {
        return switch (topic) {
            case INSIDE_LENGTH, INSIDE_DEPTH, INSIDE_HEIGHT, TOTAL_LENGTH, SUBSTRATE_DEPTH, LONGEST_OPEN_STRETCH, LAMP_DISTANCE -> TAPE;
            case BODY_MASS, FURNISHING_MASS -> SCALE;
            case COVER_PIECES, HIDES, HEAT_SOURCES -> EYES;
            case WATER_CHANGE_INTERVAL -> RECORDS;
            case AIR_TEMPERATURE_BY_DAY, AIR_TEMPERATURE_BY_NIGHT, RESTING_TEMPERATURE_BY_DAY -> THERMOMETER;
            case SURFACE_TEMPERATURE_BY_DAY, SURFACE_TEMPERATURE_BY_NIGHT -> INFRARED_THERMOMETER;
            case RELATIVE_HUMIDITY -> HYGROMETER;
            case UV_INDEX -> UV_METER;
            case OPENING_GAP -> ROD_GAUGE;
        };
    }

    private static final List<String> BY_TAPE = List.of("length", "depth", "height", "along", "across", "above", "from", "to", "bottom", "top",
            "extent", "rest-height", "nearest-rest", "lit-length", "distance");

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
            case "mass" -> SCALE;
            case "gap", "head-width" -> ROD_GAUGE;
            case "coldest", "hottest" -> THERMOMETER;
            case "index", "passes" -> UV_METER;
            case "power", "minimum-distance" -> LABEL;
            case "water-change" -> RECORDS;
            default -> EYES;
        };
    }
}
