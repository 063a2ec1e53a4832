package org.loamlight.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loamlight.criterion.Waiver;
import org.loamlight.criterion.Waivers;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Question;
import org.loamlight.setup.QuestionCatalogue;
import org.loamlight.setup.Section;

/**
 * Takes every text of people's own out of a setup before it is judged, so that no sentence about it can tell whose it is: names of
 * animals and parts become "animal 1", the title "setup 17", every other free text what it answers. All that questions of the kind
 * text are answered with, whatever questions there will be.
 */
final class Names {
    private static final String NAME = "name";
    private static final String TITLE = "title";
    /** Answered with an id of the knowledge. */
    private static final String SPECIES = "animals[].species";
    /** Paths of the questions that are answered in free text. */
    private static final Set<String> TEXTS = QuestionCatalogue.builtIn().stream().filter(question -> question.kind() == Question.Kind.TEXT).map(Question::path)
            .filter(path -> !path.equals(SPECIES)).collect(Collectors.toUnmodifiableSet());

    private final String setup;
    /** For each path the texts that stood there by what stands there now. */
    private final Map<String, Map<String, String>> hidden = new LinkedHashMap<>();

    private Names(String setup) {
        this.setup = setup;
    }

    /**
     * A setup without names, and the key to them.
     *
     * @param key what stood there by what stands there now: "animal 1" by "Tansy", in the order of the setup
     */
    record Hidden(JsonValue document, Map<String, String> key) {
        /** The real key of a subject: "animal:Tansy" for "animal:animal 1". */
        String subject(String anonymous) {
            int colon = anonymous.indexOf(':');
            return colon < 0 ? anonymous : anonymous.substring(0, colon + 1) + key.getOrDefault(anonymous.substring(colon + 1), anonymous.substring(colon + 1));
        }

        /** The same leave for the setup as it is called now; what is for other names matches nothing here. */
        Waivers of(Waivers waivers) {
            Map<String, String> now = new HashMap<>();
            key.forEach((anonymous, real) -> now.putIfAbsent(real, anonymous));
            List<Waiver> renamed = new ArrayList<>();
            for (Waiver waiver : waivers.all()) {
                renamed.add(new Waiver(waiver.criterion(), renamed(waiver.setup(), now), renamed(waiver.animal(), now), renamed(waiver.subject(), now),
                        "", "", waiver.until()));
            }
            return new Waivers(waivers.sha256(), renamed);
        }

        /** A name that is nobody's here becomes one that no setup can hold. */
        private static Optional<String> renamed(Optional<String> name, Map<String, String> now) {
            return name.map(real -> now.getOrDefault(real, "\0"));
        }
    }

    /**
     * Hides the texts of a setup that was read without problems.
     *
     * @param setup what it is called instead: "setup 17"
     */
    static Hidden hide(JsonValue document, String setup) {
        Names names = new Names(setup);
        JsonValue without = names.value(document, "");
        Map<String, String> key = new LinkedHashMap<>();
        names.hidden.values().forEach(texts -> texts.forEach((real, anonymous) -> key.putIfAbsent(anonymous, real)));
        return new Hidden(without, key);
    }

    private JsonValue value(JsonValue value, String path) {
        if (value instanceof JsonValue.JsonObject object) {
            Map<String, JsonValue> members = new LinkedHashMap<>();
            object.members().forEach((key, member) -> members.put(key, value(member, path.isEmpty() ? key : path + "." + key)));
            return new JsonValue.JsonObject(object.at(), members, object.keys());
        }
        if (value instanceof JsonValue.JsonArray list) {
            return new JsonValue.JsonArray(list.at(), list.elements().stream().map(element -> value(element, path + "[]")).toList());
        }
        return value instanceof JsonValue.JsonText text && TEXTS.contains(path) ? hidden(text, path) : value;
    }

    private JsonValue hidden(JsonValue.JsonText text, String path) {
        String real = text.text().strip();
        return real.equals(Section.NOT_LOOKED) ? text : new JsonValue.JsonText(text.at(), hidden(real, path));
    }


    /** The same text of the same list is called the same. */
    private String hidden(String real, String path) {
        if (path.equals(TITLE)) {
            hidden.computeIfAbsent(path, first -> new LinkedHashMap<>()).put(real, setup);
            return setup;
        }
        boolean isName = path.endsWith("[]." + NAME);
        Map<String, String> here = hidden.computeIfAbsent(path, first -> new LinkedHashMap<>());
        return here.computeIfAbsent(real, first -> isName ? kind(path) + " " + (here.size() + 1) : path.replaceAll("[^a-z]+", " ").strip());
    }

    /** "animal" for "animals[].name". */
    private static String kind(String path) {
        String list = path.substring(0, path.length() - NAME.length() - "[].".length());
        return list.substring(list.lastIndexOf('.') + 1).replaceFirst("s$", "");
    }
}
