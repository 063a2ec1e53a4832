package org.loamlight.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loamlight.quantity.Zone;

/** Reads where a part stands: "warm end, back", or {"along": "30 cm", "across": "20 cm", "above": "35 cm"}. */
final class SpotReader {
    private static final List<String> PLAIN = List.of("warm end", "cool end", "middle", "left", "right", "basking place");
    private static final Map<String, Zone> ZONES = Map.of("warm end", Zone.WARM_END, "cool end", Zone.COOL_END,
            "middle", Zone.MIDDLE_THIRD, "left", Zone.LEFT_THIRD, "right", Zone.RIGHT_THIRD, "basking place", Zone.BASKING_PLACE);
    /** What keepers say for the same. "hot end" must be known here: by its letters it is nearest to "cool end". */
    private static final Map<String, Zone> ALSO = Map.of("warm side", Zone.WARM_END, "hot end", Zone.WARM_END, "hot side", Zone.WARM_END,
            "cool side", Zone.COOL_END, "cold end", Zone.COOL_END, "cold side", Zone.COOL_END, "basking spot", Zone.BASKING_PLACE,
            "left end", Zone.LEFT_THIRD, "right end", Zone.RIGHT_THIRD);
    /** Said beside a zone; no criterion needs them yet, so they are taken and kept out of the arithmetic. */
    private static final List<String> BESIDE = List.of("front", "back", "centre", "center", "floor", "high", "low", "top");

    private static final String ALLOWED = "say one of " + String.join(", ", PLAIN) + " (with front, back, centre, floor, high, low, top), "
            + "or give {\"along\", \"across\", \"above\"} with units, or \"not looked\"";

    private SpotReader() {
    }

    static Spot place(Section part) {
        Optional<JsonValue> value = part.member("place");
        if (value.isPresent() && value.get() instanceof JsonValue.JsonObject) {
            return part.section("place", SpotReader::coordinates);
        }
        return new Spot(zone(part, "place"), Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN);
    }

    private static Spot coordinates(Section place) {
        return new Spot(zone(place, "zone"), place.measure("along", Answer.POSITION),
                place.measure("across", Answer.POSITION), place.measure("above", Answer.POSITION));
    }

    /** The zone a member says in words; the whole enclosure when it says none. */
    private static Zone zone(Section part, String key) {
        String words = part.text(key, ALLOWED);
        List<Zone> zones = new ArrayList<>();
        for (String word : words.isEmpty() ? new String[0] : words.split(",", -1)) {
            String plain = word.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
            Optional<Zone> zone = zone(plain);
            zone.ifPresent(zones::add);
            if (zone.isEmpty() && !BESIDE.contains(plain)) {
                part.problem(key, "found " + Quoted.of(plain), Words.hint(plain, PLAIN) + ALLOWED);
            }
        }
        if (zones.stream().distinct().count() > 1) {
            part.problem(key, "found " + Quoted.of(words), "say one zone only, such as \"warm end, back\"");
        }
        return zones.isEmpty() ? Zone.ENCLOSURE : zones.get(0);
    }

    private static Optional<Zone> zone(String word) {
        return Optional.ofNullable(ZONES.getOrDefault(word, ALSO.get(word)));
    }
}
