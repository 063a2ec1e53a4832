package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Setups for tests, written with single quotes and without the header every setup has. */
final class Given {
    static final Map<String, List<String>> SPECIES = Map.of("pantherophis-guttatus", List.of("corn snake", "Pantherophis guttatus", "red rat snake"),
            "lampropeltis-californiae", List.of("California kingsnake", "Lampropeltis californiae"));
    static final String ANIMALS = "'animals': [{'name': 'Bracken', 'species': 'pantherophis-guttatus'}]";

    private Given() {
    }

    /** A whole setup with these members beside its header; none may follow. */
    static String text(String members) {
        return "{'format': 1, ".replace('\'', '"') + (ANIMALS + (members.isEmpty() ? "" : ", " + members)).replace('\'', '"') + "}";
    }

    static Setup setup(String members) throws ProblemsFound {
        return read(text(members));
    }

    static Setup read(String json) throws ProblemsFound {
        return SetupReader.read("setup.json", json.getBytes(StandardCharsets.UTF_8), SPECIES);
    }

    /** The problems of a setup that cannot be used. */
    static List<Problem> problems(String members) {
        return problemsOf(text(members));
    }

    static List<Problem> problemsOf(String json) {
        return problemsOf(json.getBytes(StandardCharsets.UTF_8));
    }

    static List<Problem> problemsOf(byte[] bytes) {
        return assertThrows(ProblemsFound.class, () -> SetupReader.read("setup.json", bytes, SPECIES)).problems();
    }
}
