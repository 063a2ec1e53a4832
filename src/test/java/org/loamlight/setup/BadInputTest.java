package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.GoldenFile;

/**
 * Files that cannot be used, each with the messages a keeper gets for it beside it: bad-input/*.json and *.expected.txt. What is too large to be kept
 * in a file is made here.
 */
class BadInputTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "bad-input");

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static List<Problem> problems(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        return assertThrows(ProblemsFound.class, () -> SetupReader.read(file.getFileName().toString(), bytes, Given.SPECIES)).problems();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void the_messages_are_those_beside_the_file(Path file) throws IOException {
        List<String> lines = problems(file).stream().map(Problem::text).toList();
        Path expected = FOLDER.resolve(file.getFileName().toString().replace(".json", ".expected.txt"));
        GoldenFile.assertMatches(expected, String.join("\n", lines) + "\n");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void each_problem_says_what_where_and_what_is_allowed(Path file) throws IOException {
        for (Problem problem : problems(file)) {
            assertFalse(problem.found().isBlank() || problem.allowed().isBlank(), problem.text());
            assertEquals(problem.line() > 0, problem.column() > 0, problem.text());
            assertTrue(problem.text().codePoints().noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE), problem.text());
            assertTrue(problem.text().length() < 1000, problem.text());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void problems_come_in_the_order_of_their_place(Path file) throws IOException {
        List<Problem> told = problems(file).stream().filter(problem -> problem.line() > 0).toList();
        assertEquals(told.stream().sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column)).toList(), told);
    }

    @Test
    void no_file_is_without_messages_and_no_messages_without_a_file() throws IOException {
        assertTrue(files().size() > 40, "files: " + files().size());
        try (Stream<Path> all = Files.list(FOLDER)) {
            assertEquals(2L * files().size(), all.count());
        }
    }

    // ---- what is too large to be kept

    @Test
    void ten_megabytes_of_nested_arrays() {
        assertEquals(List.of("setup.json: the file is too large to be a setup; at most 5000000 bytes are read; name another file."), texts("[".repeat(10_000_000)));
        assertEquals(List.of("setup.json:1:41: this is not JSON: objects and lists lie too deep in each other; a setup has no more than five levels; "
                + "the reading stopped here."), texts("[".repeat(4_000_000)));
    }

    @Test
    void a_number_of_a_hundred_thousand_digits() {
        String digits = "9".repeat(100_000);
        String shown = "9".repeat(60) + "...";
        assertEquals(List.of("setup.json:1:94: title: found the number " + shown + "; a text of printable characters in quotes is allowed."),
                texts(Given.text("'title': " + digits)));
        List<String> measures = texts(Given.text("'room': {'coldest': '" + digits + " °C'}, 'lamps': [{'name': 'tube', 'readings': [{'index': " + digits + "}]}]"));
        assertEquals(2, measures.size());
        assertTrue(measures.get(0).contains("room.coldest: \"" + shown + "\" is no measured value"), measures.get(0));
        assertTrue(measures.get(1).contains("lamps[0].readings[0].index: \"" + shown + "\" is no measured value"), measures.get(1));
    }

    @Test
    void very_long_names_and_keys() {
        List<Problem> problems = Given.problemsOf(Given.text("'" + "k".repeat(150_000) + "': 1, 'lamps': [{'name': '" + "n".repeat(150_000) + "'}]"));
        assertEquals(2, problems.size());
        problems.forEach(problem -> assertTrue(problem.text().length() < 500, problem.text()));
        assertTrue(problems.get(1).text().contains("of 150000 characters; at most 250 characters are allowed here"), problems.get(1).text());
    }

    @Test
    void a_name_of_as_many_characters_as_allowed_is_one() throws ProblemsFound {
        String longest = "\uD83E\uDD8E".repeat(250);
        assertEquals(longest, Given.setup("'lamps': [{'name': '" + longest + "'}]").lamps().get(0).name());
    }

    @Test
    void a_hundred_thousand_unknown_keys_are_counted_and_not_printed() {
        StringBuilder keys = new StringBuilder();
        for (int i = 0; i < 100_000; i++) {
            keys.append("'key-").append(i).append("': 1, ");
        }
        List<Problem> problems = Given.problemsOf(Given.text(keys + "'last': 1"));
        assertEquals(51, problems.size());
        assertEquals("setup.json: 99951 further problems; put these right first.", problems.get(50).text());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 50})
    void one_further_problem_is_one(int beyond) {
        String mass = "{'name': 'p%d', 'mass': 1}";
        String pieces = String.join(",", Stream.iterate(0, i -> i + 1).limit(50L + beyond).map(i -> mass.replace("%d", i.toString())).toList());
        Problem last = Given.problems("'furnishings': [" + pieces + "]").get(50);
        assertEquals(beyond + (beyond == 1 ? " further problem" : " further problems"), last.found());
    }

    private static List<String> texts(String document) {
        return Given.problemsOf(document.getBytes(StandardCharsets.UTF_8)).stream().map(Problem::text).toList();
    }
}
