package org.loamlight.criterion;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;

/** A made-up species with the limits a test gives it, and setups in which it lives. Single quotes stand for double ones. */
final class MadeUp {
    static final String SPECIES = "serpens-ficta";
    static final String CRITERION = "space.length";

    /** Names of the animals of a setup, in their order. */
    static final List<String> NAMES = List.of("Bracken", "Sedge", "Tansy", "Quill", "Marl");

    private MadeUp() {
    }

    /** A limit of the made-up criterion: whatever members are given, and a citation. */
    static String limit(String topic, String members) {
        return "{'criterion': '" + CRITERION + "', 'topic': '" + topic + "', " + members
                + ", 'source': 'judgement', 'standing': 'judgement'}";
    }

    static String document(String species) {
        return document(criterion(""), "", species);
    }

    /** A whole knowledge file; each part is the inside of its list. */
    static String document(String criteria, String every, String species) {
        return quoted("""
                {'version': '0.1.0', 'criteria': [%s],
                 'every-reptile': [%s],
                 'species': [%s],
                 'sources': [{'id': 'judgement', 'title': 'Our own judgement, no source', 'read': 'nothing to read'}],
                 'cautions': [{'id': 'burn', 'text': 'Let it cool.', 'general': 'no'}],
                 'limit-rules': ['limits held']}
                """.formatted(criteria, every, species));
    }

    /** A criterion with everything it must have; further members begin with a comma. */
    static String criterion(String further) {
        return """
                {'id': '%s', 'title': 'It is long enough', 'need': 'behaviour', 'grade': 'major', 'subject': 'animal',
                 'topics': ['inside-length'], 'since': '0.1.0', 'page': {'requirement': 'Long enough.'}%s}""".formatted(CRITERION, further);
    }

    static String species(String... limits) {
        return """
                {'id': '%s', 'english': 'made-up snake', 'latin': 'Serpens ficta', 'habits': {%s}, 'limits': [%s]}"""
                .formatted(SPECIES, habits(), String.join(", ", limits));
    }

    static String habits() {
        return "'lives': " + habit("ground") + ", 'digs': " + habit("yes") + ", 'climbs': " + habit("no") + ", 'uv': " + habit("profits")
                + ", 'drinks': " + habit("from dish") + ", 'form': " + habit("snake") + ", 'active': " + habit("by day") + ", 'basks': " + habit("no")
                + ", 'soaks': " + habit("no") + ", 'eats': " + habit("whole prey") + ", 'lays-eggs': " + habit("yes") + ", 'rests-in-winter': " + habit("no")
                + ", 'dangerous': " + habit("no") + ", 'restricted': " + habit("no") + ", 'specialist': " + habit("no") + ", 'adult-length': " + habit("120 cm")
                + ", 'company': " + habit("alone") + ", 'eats-snakes': " + habit("yes");
    }

    private static String habit(String is) {
        return "{'is': '" + is + "', 'source': 'judgement', 'standing': 'judgement'}";
    }

    static Knowledge knowing(String... limits) {
        return read(document(species(limits)));
    }

    /** Reads what must be readable. */
    static Knowledge read(String document) {
        try {
            return KnowledgeReader.read(document.getBytes(StandardCharsets.UTF_8));
        } catch (ProblemsFound e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** A setup of animals of the made-up species; each text holds what is known beside name and species. */
    static Setup setup(String... animals) {
        return setupWith("", animals);
    }

    /** @param further members of the setup, each followed by a comma */
    static Setup setupWith(String further, String... animals) {
        List<String> named = new ArrayList<>();
        for (String animal : animals) {
            named.add("{'name': '" + NAMES.get(named.size()) + "', 'species': '" + SPECIES + "'"
                    + (animal.isEmpty() ? "" : ", " + animal) + "}");
        }
        String text = "{'format': 1, " + further + "'animals': [" + String.join(", ", named) + "]}";
        try {
            return SetupReader.read("setup.json", quoted(text).getBytes(StandardCharsets.UTF_8), Set.of(SPECIES));
        } catch (ProblemsFound e) {
            throw new IllegalArgumentException(e);
        }
    }

    static String quoted(String text) {
        return text.replace('\'', '"');
    }
}
