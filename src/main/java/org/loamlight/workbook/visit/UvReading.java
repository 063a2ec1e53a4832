package org.loamlight.workbook.visit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampReading;
import org.loamlight.setup.Question;
import org.loamlight.wording.Wording;

/** The UV index under a lamp with its distance, answered in one cell: "4.6 at 30 cm". */
final class UvReading {
    static final Question QUESTION = new Question("lamps[].readings", "UV index under it with a UV meter, and at which distance.",
            "Hold the meter under the middle of the lamp, facing it. Write both, such as 4.6 at 30 cm.", Question.Kind.TEXT, List.of(), List.of());
    private static final String NEW = "[new]";
    private static final Pattern ANSWER = Pattern.compile("(.*\\S)\\s+at\\s+(\\S.*)");

    private UvReading() {
    }

    /** @param list path of the readings of one lamp */
    static String key(String list) {
        return list + NEW;
    }

    /** The list a key adds to; empty for any other key. */
    static Optional<String> list(String key) {
        return key.endsWith(".readings" + NEW) ? Optional.of(key.substring(0, key.length() - NEW.length())) : Optional.empty();
    }

    /** The readings there are: "4.6 at 30 cm, 2026-10-01"; empty for none. */
    static String last(Lamp lamp, Wording wording) {
        return lamp.readings().stream().filter(reading -> reading.index().isKnown() && reading.distance().isKnown())
                .map(reading -> inWords(reading, wording)).collect(Collectors.joining("\n"));
    }

    private static String inWords(LampReading reading, Wording wording) {
        return wording.amount(reading.index().amount()) + " at " + wording.amount(reading.distance().amount()) + reading.on().map(on -> ", " + on).orElse("");
    }

    /** The element of the list of readings; empty for an answer that is not written so. */
    static Optional<JsonValue.JsonObject> element(String answer, JsonPlace at, String on) {
        Matcher parts = ANSWER.matcher(answer);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("index", new JsonValue.JsonText(at, parts.group(1)));
        members.put("distance", new JsonValue.JsonText(at, parts.group(2)));
        members.put("instrument", new JsonValue.JsonText(at, "UV meter"));
        members.put("on", new JsonValue.JsonText(at, on));
        return Optional.of(new JsonValue.JsonObject(at, members));
    }
}
