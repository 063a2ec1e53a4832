package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonPrinter;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;
import org.loamlight.workbook.form.FormReader;

/** A setup that went into a form and came back is the same setup, answer by answer; so is one that went on into a file. */
class FormRoundTripTest {
    private static final int GENERATED = Integer.getInteger("forms", 60);
    private static final FormPlan PLAN = FormPlan.builtIn();

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    static JsonValue document(String json) {
        try {
            return JsonFile.read(json.getBytes(StandardCharsets.UTF_8), new Problems("setup.json"));
        } catch (ProblemsFound e) {
            throw new AssertionError(json, e);
        }
    }

    static Setup setup(JsonValue document) {
        try {
            return SetupReader.read(document, new Problems("setup"), BuiltIn.KNOWLEDGE.speciesNames());
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage() + "\n" + JsonPrinter.print(document), e);
        }
    }

    static byte[] form(JsonValue document) {
        try {
            Problems problems = new Problems("setup.json");
            FormAnswers answers = FormAnswers.of(document, PLAN, problems);
            problems.throwIfAny();
            return FormWriter.write(answers, "Bracken", BuiltIn.KNOWLEDGE.speciesNames(), PLAN);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ProblemsFound e) {
            throw new AssertionError(e);
        }
    }

    private static JsonValue read(byte[] form) {
        try {
            Problems problems = new Problems("form.xlsx");
            JsonValue read = FormReader.read(form, problems);
            problems.throwIfAny();
            return read;
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static void assertComesBack(String json) {
        JsonValue given = document(json);
        Setup before = setup(given);
        JsonValue back = read(form(given));
        assertEquals(before, setup(back), json);
        assertEquals(before, setup(document(JsonPrinter.print(back))), json);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_comes_back_as_it_was(Path example) throws IOException {
        assertComesBack(Files.readString(example));
    }

    @Test
    void there_are_examples_of_every_kind() throws IOException {
        assertTrue(examples().size() >= 18, "examples: " + examples().size());
    }

    @Test
    void generated_setups_with_every_question_answered_in_many_ways_come_back_as_they_were() {
        for (int seed = 0; seed < GENERATED; seed++) {
            assertComesBack(new GeneratedSetup(seed).json());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"'title': '=1+1'", "'title': '@SUM(A1)'", "'title': '+41'", "'title': '-3'", "'title': '1'", "'title': '2026-11-02'", "'title': 'none'",
        "'title': '_x0041_ \u98fc\u80b2 \ud83e\udd8e'", "'title': 'a; b, c'", "'title': '\\'quoted'", "'$schema': '../docs/setup.schema.json'", "'room': 'not looked'",
        "'room': {}", "'substrate': {}", "'substrate': 'not looked'", "'substrate': {'kind': 'not looked'}", "'water': {}", "'water': {'offered': []}",
        "'water': {'offered': 'dish'}", "'water': {'offered': ['dish']}", "'water': {'place': {'zone': 'cool end'}}", "'water': {'place': {'zone': 'cool end, back', 'along': '3 in'}}",
        "'water': {'place': {'above': '3 in', 'across': '10 to 12 cm'}}", "'water': {'place': 'warm end,back'}", "'water': {'place': {}}", "'water': {'place': 'not looked'}",
        "'heaters': []", "'heaters': 'not looked'", "'enclosure': {'openings': []}", "'lamps': [{'name': 'tube', 'between': [], 'readings': 'not looked'}]",
        "'lamps': [{'name': 'a', 'between': [{}, {'what': 'mesh'}]}, {'name': 'b', 'between': [{'passes': '60 %'}]}]", "'lamps': [{'name': '7', 'between': [{}]}]",
        "'lamps': [{'name': 'a', 'readings': [{'index': 2.40}, {'index': '3.1 ± 10 %'}, {'index': '3.1 UVI ± 0.3'}]}]", "'room': {'sun': true, 'cooling': false}",
        "'readings': [{'name': 'a', 'of': 'UV index', 'value': '3.1'}, {'name': 'b', 'of': 'humidity', 'value': '55 %'}, {'name': 'c', 'of': 'air temperature', 'value': '24 °C'}]",
        "'room': {'fumes': ['smoke', 'sprays'], 'disturbances': []}", "'room': {'latitude': '-34 °'}", "'care': {'water-change': 'every other day'}",
        "'furnishings': [{'name': 'a', 'mass': 'one hand'}, {'name': 'b', 'mass': '2.50 kg'}, {'name': 'c', 'mass': '1 lb 4 oz'}, {'name': 'd', 'mass': '300 g'}]",
        "'room': {'coldest': '15  °C', 'hottest': '86\\u00a0°F'}", "'room': {'coldest': '\\t15 °C\\n'}", "'enclosure': {'inside': {'length': '120\\ncm'}}"})
    void awkward_answers_come_back_as_they_were(String members) {
        assertComesBack(("{'format': 1, 'animals': [{'name': 'Bracken', 'species': 'pantherophis-guttatus'}], ".replace('\'', '"')
                + members.replace("\\'", "\u0001").replace('\'', '"').replace('\u0001', '\'') + "}"));
    }

    @Test
    void two_hundred_things_of_a_kind_come_back_in_their_order() {
        StringBuilder readings = new StringBuilder();
        for (int i = 0; i < 200; i++) {
            readings.append(i == 0 ? "" : ",").append("{\"name\": \"reading ").append(i).append("\", \"of\": \"humidity\", \"value\": \"").append(i % 100).append(" %\"}");
        }
        assertComesBack("{\"format\": 1, \"animals\": [{\"name\": \"B\", \"species\": \"pantherophis-guttatus\"}], \"readings\": [" + readings + "]}");
    }

    @Test
    void the_same_setup_gives_the_same_bytes_in_any_locale_and_time_zone() throws IOException {
        JsonValue given = document(Files.readString(Path.of("examples/foster-corn-snake.json")));
        byte[] first = form(given);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            assertArrayEquals(first, form(given));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
