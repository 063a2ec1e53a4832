package org.loamlight.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loamlight.quantity.Zone;

/** Reads where a part stands: "warm end, back", or {"along": "30 cm", "across": "20 cm", "above": "35 cm"}. */
final class SpotReader {
    private static final Map<String, Zone> ZONES = Map.of("warm end", Zone.WARM_END, "cool end", Zone.COOL_END,
            "middle", Zone.MIDDLE_THIRD, "left", Zone.LEFT_THIRD, "right", Zone.RIGHT_THIRD, "basking place", Zone.BASKING_PLACE);
    /** Said beside a zone; no criterion needs them yet, so they are taken and kept out of the arithmetic. */
    private static final List<String> BESIDE = List.of("front", "back", "centre", "center", "floor", "high", "low", "top");

    private SpotReader() {
    }

    static Spot place(Section part) {
        Optional<JsonValue> value = part.member("place");
        if (value.isPresent() && value.get() instanceof JsonValue.JsonObject) {
            return part.section("place", SpotReader::coordinates);
        }
        String words = part.text("place");
        return words.isEmpty() ? Spot.UNKNOWN : words(part, words);
    }

    private static Spot coordinates(Section place) {
        return new Spot(zone(place, place.text("zone")), place.measure("along", Answer.POSITION),
                place.measure("across", Answer.POSITION), place.measure("above", Answer.POSITION));
    }

    private static Spot words(Section part, String words) {
        return new Spot(zone(part, words), Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN);
    }

    private static Zone zone(Section part, String words) {
        List<Zone> zones = new ArrayList<>();
        for (String word : words.isEmpty() ? new String[0] : words.split(",")) {
            String plain = word.strip().replace('-', ' ');
            if (ZONES.containsKey(plain)) {
                zones.add(ZONES.get(plain));
            } else if (!BESIDE.contains(plain)) {
                part.problem("place", "found \"" + plain + "\"", hint(plain) + "say one of " + known()
                        + ", or give {\"along\", \"across\", \"above\"} with units, or \"not looked\"");
            }
        }
        if (zones.size() > 1) {
            part.problem("place", "found \"" + words + "\"", "say one zone only, such as \"warm end, back\"");
        }
        return zones.isEmpty() ? Zone.ENCLOSURE : zones.get(0);
    }

    private static String hint(String found) {
        return Words.nearest(found, ZONES.keySet()).map(word -> "did you mean \"" + word + "\"? ").orElse("");
    }

    private static String known() {
        return String.join(", ", Arrays.asList("warm end", "cool end", "middle", "left", "right", "basking place"))
                + " (with front, back, centre, floor, high, low, top)";
    }
}
