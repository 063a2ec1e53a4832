package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Places of values and keys, counted in characters by hand, and what ends the reading of a file. */
class JsonFileTest {

    private static JsonValue read(String text) throws ProblemsFound {
        return JsonFile.read(text.getBytes(StandardCharsets.UTF_8), new Problems("x.json"));
    }

    private static Problem broken(String text) {
        List<Problem> problems = assertThrows(ProblemsFound.class, () -> read(text), text).problems();
        assertEquals(1, problems.size());
        return problems.get(0);
    }

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    // ---- places

    @ParameterizedTest
    @MethodSource("examples")
    void every_value_and_every_key_stands_where_its_place_says(Path file) throws IOException, ProblemsFound {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        for (String variant : List.of(text, text.replace("\n", "\r\n"), text.replace("\n", "\r"), text.replace("\"name\": \"", "\"name\": \"\uD83E\uDD8E 飼 é "))) {
            assertTrue(checked(read(variant), variant.split("\r\n|\r|\n", -1)) > 60);
        }
    }

    /** Checks the first character at each place; counts the places. */
    private static int checked(JsonValue value, String[] lines) {
        assertEquals(first(value), at(value.at(), lines), value.at() + " " + value);
        int checked = 1;
        if (value instanceof JsonValue.JsonObject object) {
            object.members().keySet().forEach(key -> assertEquals('"', at(object.keyAt(key), lines), object.keyAt(key).toString()));
            checked += object.members().values().stream().mapToInt(member -> 1 + checked(member, lines)).sum();
        }
        return value instanceof JsonValue.JsonArray array ? checked + array.elements().stream().mapToInt(one -> checked(one, lines)).sum() : checked;
    }

    private static char at(JsonPlace place, String[] lines) {
        String line = lines[place.line() - 1];
        return line.charAt(line.offsetByCodePoints(0, place.column() - 1));
    }

    private static char first(JsonValue value) {
        if (value instanceof JsonValue.JsonObject) {
            return '{';
        }
        if (value instanceof JsonValue.JsonArray) {
            return '[';
        }
        if (value instanceof JsonValue.JsonNumber number) {
            return number.literal().charAt(0);
        }
        return value instanceof JsonValue.JsonWord word ? word.word().charAt(0) : '"';
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"{\"a\": -1} | 7", "{\"°F ü\": -1} | 10", "{\"\uD83E\uDD8E\": -1} | 7", "{\"\\ud83e\\udd8e\": -1} | 18",
        "{\t\"飼育\":\t-1} | 9"})
    void a_column_counts_characters_and_not_bytes(String text, int column) throws ProblemsFound {
        JsonValue.JsonObject object = (JsonValue.JsonObject) read(text);
        JsonValue value = object.members().values().iterator().next();
        assertEquals(new JsonPlace(1, column, value.at().path()), value.at());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "b", "\\\"", "b\\\\", "\\\\\\\"", ": \\\"b\\\": ", "\\u0022", "飼育\\n"})
    void a_key_stands_where_its_quotation_mark_opens(String key) throws ProblemsFound {
        for (String colon : List.of(":", " :\t ")) {
            JsonValue.JsonObject object = (JsonValue.JsonObject) read("{\"a\": \"\",\"" + key + "\"" + colon + "\"\"}");
            assertEquals(List.of(2, 10), object.members().keySet().stream().map(name -> object.keyAt(name).column()).toList());
        }
    }

    @Test
    void a_path_names_keys_and_positions_and_holds_nothing_that_cannot_be_printed() throws ProblemsFound {
        JsonValue.JsonObject object = (JsonValue.JsonObject) read("{\"a\": [1, {\"b\\u001b\": 2}]}");
        JsonValue.JsonArray list = (JsonValue.JsonArray) object.members().get("a");
        assertEquals("a[1]", list.elements().get(1).at().path());
        assertEquals("a[1].b?", ((JsonValue.JsonObject) list.elements().get(1)).members().get("b\u001b").at().path());
    }

    @Test
    void a_key_given_twice_is_told_with_the_line_of_the_first_and_reading_goes_on() throws ProblemsFound {
        Problems problems = new Problems("x.json");
        JsonFile.read("{\"a\": 1,\n \"b\": 2,\n \"a\": 3,\n \"a\": 4}".getBytes(StandardCharsets.UTF_8), problems);
        assertEquals(List.of("x.json:3:2: a: the key is given twice, first in line 1; keep one of the two.",
                "x.json:4:2: a: the key is given twice, first in line 1; keep one of the two."),
                assertThrows(ProblemsFound.class, problems::throwIfAny).problems().stream().map(Problem::text).toList());
    }

    @Test
    void a_number_keeps_its_digits() throws ProblemsFound {
        assertEquals(List.of("1.50", "-0", "1e999", "1E-7"), ((JsonValue.JsonArray) read("[1.50, -0, 1e999, 1E-7]")).elements().stream()
                .map(one -> ((JsonValue.JsonNumber) one).literal()).toList());
    }

    // ---- what ends the reading

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{\"a\": 1,} | 9 | a comma stands before } | remove that comma",
        "[1, 2, ] | 8 | a comma stands before ] | remove that comma",
        "{\"a\": 1 \"b\": 2} | 9 | there is no comma before this | put a comma between two members, and a value with a unit in quotes, such as \"12 cm\"",
        "{\"a\": 12 cm} | 10 | there is no comma before this | put a comma between two members, and a value with a unit in quotes, such as \"12 cm\"",
        "{'a': 1} | 2 | found the quotation mark ' | use straight double quotes, \"...\"",
        "{“a”: 1} | 2 | found the quotation mark “ | use straight double quotes, \"...\"",
        "{\"a\": „x“} | 7 | found the quotation mark „ | use straight double quotes, \"...\"",
        "{a: 1} | 2 | a key is expected here | write each key in double quotes, such as \"name\"",
        "{\"a\" 1} | 6 | there is no colon after the key | write \"key\": value",
        "{\"a\": yes} | 7 | found yes | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "{\"a\": NaN} | 7 | found NaN | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "{\"a\": -Infinity} | 7 | found -Infinity | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "{\"a\": 007} | 7 | found 007 | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "{\"a\": +5} | 7 | found +5 | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "{\"a\": .5} | 7 | found .5 | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "{\"a\": 5.} | 7 | found 5. | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "{\"a\": [1, 2} | 12 | found } | close the [ of line 1 with ]",
        "{\"a\": {\"b\": 1] | 14 | found ] | close the { of line 1 with }",
        "{\"a\": [1 | 9 | the text ends too early | close the [ of line 1 with ]",
        "{\"a\": \"x} | 10 | the text ends too early | close the { of line 1 with }",
        "] | 1 | found ] | remove it, or open it with { or [ before",
        "// setup | 1 | this is a comment | JSON has none; remove it",
        "{\"a\": \"\\q\"} | 9 | this character must not follow a backslash | write a backslash itself as \\\\",
        "{\"a\": \"\\u12\"} | 12 | four hexadecimal digits must follow \\u | write the character itself",
        "<html> | 1 | found < | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\"",
        "hello | 1 | found hello | write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\""})
    void a_slip_of_syntax_is_told_in_words_at_its_place(String text, int column, String found, String allowed) {
        assertEquals(new Problem("x.json", 1, column, "", "this is not JSON: " + found, allowed + "; the reading stopped here"), broken(text));
    }

    @Test
    void a_line_break_in_a_text_and_a_control_character_are_slips_too() {
        assertEquals("x.json:1:9: this is not JSON: a line break or control character stands inside a text; "
                + "close the quotes on the line they were opened on; the reading stopped here.", broken("{\"a\": \"x\ny\"}").text());
        assertTrue(broken("\u0001\u0002").found().contains("there is a control character"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{} x", "{}}", "{} {}", "{},", "{}  \"x\"", "{} 1", "{}\n]"})
    void text_behind_the_document_is_told_where_it_begins(String text) {
        Problem problem = broken(text);
        String rest = text.substring(2).strip();
        assertEquals("there is text after the end of the document", problem.found());
        String line = text.split("\n")[problem.line() - 1];
        assertEquals(rest, line.substring(problem.column() - 1), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\n", "\uFEFF"})
    void a_file_with_nothing_in_it_is_empty(String text) {
        assertEquals("x.json:1:1: the file is empty; a setup is one JSON object, { ... }.", broken(text).text());
    }

    @Test
    void bytes_that_are_no_utf_8_are_told_at_their_place() {
        byte[] bytes = "{\"a\": \"ü\",\n \"b\": \"ü\"}".getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 4] = (byte) 0xFC;
        Problem problem = assertThrows(ProblemsFound.class, () -> JsonFile.read(bytes, new Problems("x.json"))).problems().get(0);
        assertEquals("x.json:2:8: the byte 0xFC is no UTF-8 text here; name a JSON file, saved as UTF-8 text.", problem.text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32LE", "UTF-32BE"})
    void other_encodings_of_unicode_are_named(String charset) {
        byte[] bytes = "{\"format\": 1}".getBytes(Charset.forName(charset));
        Problem problem = assertThrows(ProblemsFound.class, () -> JsonFile.read(bytes, new Problems("x.json"))).problems().get(0);
        assertEquals("the file is UTF-16, UTF-32 or no text at all", problem.found());
    }

    @Test
    void depth_and_size_keep_hostile_files_from_being_read() {
        assertEquals("x.json:1:41: this is not JSON: objects and lists lie too deep in each other; a setup has no more than five levels; "
                + "the reading stopped here.", broken("[".repeat(1000)).text());
        assertEquals(new Problem("x.json", 0, 0, "", "the file is too large to be a setup", "at most 5000000 bytes are read; name another file"),
                broken("[".repeat(10_000_000)));
    }

    @Test
    void long_numbers_texts_and_keys_are_values_like_others_and_quoted_short() throws ProblemsFound {
        JsonValue.JsonObject object = (JsonValue.JsonObject) read("{\"" + "k".repeat(100_000) + "\": " + "9".repeat(100_000) + ", \"t\": \"" + "x".repeat(100_000) + "\"}");
        JsonValue number = object.members().values().iterator().next();
        assertEquals("the number " + "9".repeat(60) + "...", number.quoted());
        assertEquals(new JsonPlace(1, 100_006, "k".repeat(60) + "..."), number.at());
        assertEquals('"' + "x".repeat(60) + "...\"", object.members().get("t").quoted());
    }
}
