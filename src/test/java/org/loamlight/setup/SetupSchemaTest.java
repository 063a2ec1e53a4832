package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.SchemaMembers.Member;

/** docs/setup.schema.json against the reader, both ways: keys, words, units, what must be there, "not looked", examples. */
class SetupSchemaTest {
    private static final String NOT_LOOKED = "not looked";
    private static final Set<String> ANY_TEXT = Set.of("$schema", "title", "enclosure.title", "substrate.material", "animals[].name", "animals[].species");

    static List<Member> members() {
        return SchemaMembers.members();
    }

    static Stream<Member> choices() {
        return members().stream().filter(member -> !SchemaMembers.words(member).isEmpty());
    }

    private static Optional<Problem> problem(ObjectNode document) {
        try {
            Given.read(document.toString());
            return Optional.empty();
        } catch (ProblemsFound e) {
            return Optional.of(e.problems().get(0));
        }
    }

    private static Optional<Problem> problem(Member member, JsonNode value) {
        return problem(SchemaMembers.document(member.path(), member.key(), value));
    }

    private static List<String> complaints(Member member, JsonNode value) {
        return SchemaMembers.complaints(SchemaMembers.document(member.path(), member.key(), value).toString());
    }

    private static JsonNode text(String text) {
        return TextNode.valueOf(text);
    }

    // ---- the schema itself

    @Test
    void it_is_a_schema_of_2020_12() {
        List<?> errors = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema")).validate(SchemaMembers.TREE.toString(), InputFormat.JSON);
        assertEquals(List.of(), errors);
        assertTrue(members().size() > 80, "members: " + members().size());
    }

    @Test
    void every_member_says_what_it_is_and_how_to_find_out() {
        List<String> silent = members().stream().filter(member -> !Set.of("$schema", "format").contains(member.key()))
                .filter(member -> !member.schema().path("description").asText().matches("[A-Z].{9,}[.?;:] .{9,}[.?]|[A-Z].{9,}[.?] [A-Z].{9,}\\."))
                .map(Member::toString).toList();
        assertEquals(List.of(), silent);
        SchemaMembers.TREE.get("$defs").properties().forEach(one -> assertTrue(one.getValue().has("description") || one.getValue().has("properties"), one.getKey()));
    }

    @ParameterizedTest
    @MethodSource("members")
    void every_member_has_examples_which_schema_and_reader_take(Member member) {
        JsonNode examples = member.schema().path("examples");
        assertTrue(examples.size() > 0, member.toString());
        for (JsonNode example : examples) {
            assertEquals(Optional.empty(), problem(member, example), member + " " + example);
            assertEquals(List.of(), complaints(member, example), member + " " + example);
        }
    }

    // ---- keys

    @ParameterizedTest
    @MethodSource("paths")
    void each_object_has_the_keys_the_reader_knows_and_no_other(List<String> path) {
        ObjectNode document = SchemaMembers.document(path, "zzzzzzzzzzzzzzzz", text("x"));
        String known = problem(document).orElseThrow().allowed().replaceFirst(".*known here are ", "");
        JsonNode schema = SchemaMembers.objects().get(path);
        Set<String> keys = schema.get("properties").properties().stream().map(Map.Entry::getKey).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(List.of(known.split(", "))), keys);
        assertFalse(schema.get("additionalProperties").booleanValue());
        assertFalse(SchemaMembers.complaints(document.toString()).isEmpty());
    }

    static Stream<List<String>> paths() {
        return SchemaMembers.objects().keySet().stream();
    }

    @Test
    void every_object_of_a_setup_is_among_them() {
        Set<String> paths = paths().map(path -> String.join(".", path)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Set.of("", "animals.[]", "enclosure", "enclosure.inside", "enclosure.openings.[]", "room", "heaters.[]", "heaters.[].place",
                "lamps.[]", "lamps.[].place", "lamps.[].between.[]", "lamps.[].readings.[]", "substrate", "furnishings.[]", "furnishings.[].place", "water",
                "readings.[]", "readings.[].place", "care", "animals.[].diet", "electrical", "enclosure.build", "enclosure.build.walls",
                "enclosure.build.front-pane", "enclosure.build.top", "enclosure.build.base", "hygiene", "household", "monitoring", "season",
                "quarantine", "water.place")), paths);
    }

    // ---- words

    @ParameterizedTest
    @MethodSource("members")
    void a_member_answered_in_words_has_the_words_the_reader_knows(Member member) {
        String allowed = problem(member, text("?")).map(Problem::allowed).orElse("");
        Matcher words = Pattern.compile("allowed are ([^;\"]+)").matcher(allowed);
        boolean isInWords = words.find();
        assertEquals(!SchemaMembers.words(member).isEmpty(), isInWords, member + ": " + allowed);
        if (isInWords) {
            Set<String> known = Arrays.stream(words.group(1).replaceFirst(", a mass such as ", "").split(", ")).collect(Collectors.toCollection(TreeSet::new));
            Set<String> inSchema = SchemaMembers.words(member).stream().map(SetupSchemaTest::plain).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(!member.required(), inSchema.remove(NOT_LOOKED), member.toString());
            known.remove(NOT_LOOKED);
            assertEquals(known, inSchema);
        }
    }

    private static String plain(String word) {
        return word.replace("UV", "uv").replace("LED", "led").replace("PVC", "pvc").replace("OSB", "osb");
    }

    @ParameterizedTest
    @ValueSource(classes = {Purpose.class, Stage.class, Sex.class, Provenance.class, Front.class, Side.class, OpeningKind.class, HeaterKind.class, Mount.class,
        Control.class, Stated.class, LampKind.class, ScreenKind.class, Instrument.class, Moisture.class, FurnishingKind.class, Support.class, Lift.class,
        WaterForm.class, ReadingOf.class, DayTime.class})
    void every_list_of_words_is_that_of_its_enum(Class<? extends Enum<?>> type) {
        Set<String> wanted = new LinkedHashSet<>(Words.all(type));
        assertTrue(choices().map(member -> SchemaMembers.words(member).stream().filter(word -> !word.equals(NOT_LOOKED)).map(SetupSchemaTest::plain)
                .collect(Collectors.toCollection(LinkedHashSet::new))).anyMatch(wanted::equals), wanted.toString());
    }

    @ParameterizedTest
    @MethodSource("choices")
    void every_word_of_the_schema_is_taken_by_the_reader(Member member) {
        for (String word : SchemaMembers.words(member)) {
            assertEquals(Optional.empty(), problem(member, text(word)), member + " " + word);
            assertEquals(List.of(), complaints(member, text(word)), member + " " + word);
        }
        boolean isYesOrNo = SchemaMembers.words(member).contains("yes");
        for (BooleanNode answer : List.of(BooleanNode.TRUE, BooleanNode.FALSE)) {
            assertEquals(isYesOrNo, problem(member, answer).isEmpty(), member.toString());
            assertEquals(isYesOrNo, complaints(member, answer).isEmpty(), member.toString());
        }
    }

    // ---- "not looked" and what must be there

    @ParameterizedTest
    @MethodSource("members")
    void not_looked_is_an_answer_to_everything_that_need_not_be_answered(Member member) {
        assertEquals(member.required(), problem(member, text(NOT_LOOKED)).isPresent(), member.toString());
        assertEquals(member.required(), !complaints(member, text(NOT_LOOKED)).isEmpty(), member.toString());
    }

    @ParameterizedTest
    @MethodSource("members")
    void what_must_be_there_is_the_same_for_both(Member member) {
        ObjectNode document = SchemaMembers.document(member.path(), member.key(), member.schema().get("examples").get(0));
        SchemaMembers.object(document, member.path()).remove(member.key());
        assertEquals(member.required(), problem(document).isPresent(), member.toString());
        assertEquals(member.required(), !SchemaMembers.complaints(document.toString()).isEmpty(), member.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "7", "[]", "[[]]", "[\"x\"]", "{\"x\": 1}", "true"})
    void what_the_schema_takes_of_wrong_types_the_reader_takes_too(String value) throws IOException {
        List<String> disagreeing = new ArrayList<>();
        for (Member member : members()) {
            JsonNode wrong = SchemaMembers.JSON.readTree(value);
            if (complaints(member, wrong).isEmpty() != problem(member, wrong).isEmpty()) {
                disagreeing.add(member + " " + problem(member, wrong));
            }
        }
        assertEquals(List.of(), disagreeing);
    }

    // ---- measures

    static Stream<Member> measures() {
        return members().stream().filter(member -> !ANY_TEXT.contains(member.toString().replaceFirst("^\\.", "")))
                .filter(member -> problem(member, text("1 furlong")).filter(found -> found.allowed().contains("use one of")).isPresent());
    }

    @Test
    void every_kind_of_measure_is_asked_for() {
        assertTrue(measures().count() > 35, "measures: " + measures().map(Member::toString).toList());
    }

    @ParameterizedTest
    @MethodSource("measures")
    void every_unit_the_reader_takes_is_taken_by_the_schema(Member member) {
        String symbols = problem(member, text("1 furlong")).orElseThrow().allowed().replaceFirst(".*use one of ", "");
        for (String symbol : symbols.split(", ")) {
            Unit named = Unit.spelt(symbol).orElseThrow();
            for (String spelling : named.spellings()) {
                assertEquals(List.of(), complaints(member, text("12 " + spelling)), member + " " + spelling);
                boolean isPossible = problem(member, text("12 " + spelling)).map(found -> found.found().endsWith("cannot be")).orElse(true);
                assertTrue(isPossible, member + " " + spelling);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("measures")
    void what_is_no_measure_is_refused_by_both(Member member) {
        for (String wrong : List.of("", "much", "1 furlong", "1,5 cm", "1,5", "cm", "12 ft2", "± 3 cm", "12 cm or so")) {
            assertTrue(problem(member, text(wrong)).isPresent(), member + " " + wrong);
            assertFalse(complaints(member, text(wrong)).isEmpty(), member + " " + wrong);
        }
        boolean isIndex = member.toString().contains("index");
        assertEquals(isIndex, problem(member, text("12")).isEmpty(), member.toString());
        assertEquals(isIndex, complaints(member, text("12")).isEmpty(), member.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"warm end", "cool end, front", "middle", "left", "right, back", "basking place", "hot side", "cold-end", "floor", "front, warm end",
        "basking spot,low"})
    void places_in_words_are_the_same_for_both(String words) {
        members().stream().filter(member -> Set.of("place", "zone").contains(member.key())).forEach(member -> {
            assertEquals(Optional.empty(), problem(member, text(words)), member + " " + words);
            assertEquals(List.of(), complaints(member, text(words)), member + " " + words);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "attic", "warm end, attic", "warm end,", "30 cm"})
    void places_that_are_none_are_none_for_both(String words) {
        members().stream().filter(member -> Set.of("place", "zone").contains(member.key())).forEach(member -> {
            assertTrue(problem(member, text(words)).isPresent(), member + " " + words);
            assertFalse(complaints(member, text(words)).isEmpty(), member + " " + words);
        });
    }

    // ---- the examples of the project

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_keeps_to_the_schema_and_can_be_read(Path file) throws IOException, ProblemsFound {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        assertEquals(List.of(), SchemaMembers.complaints(text));
        assertFalse(BuiltIn.setup(text).animals().isEmpty());
    }

    @Test
    void every_example_setup_of_a_criterion_that_can_be_read_keeps_to_the_schema() throws IOException {
        List<String> wrong = new ArrayList<>();
        int read = 0;
        for (ObjectNode setup : criterionExamples()) {
            if (problem(setup).isEmpty()) {
                read++;
                SchemaMembers.complaints(setup.toString()).forEach(complaint -> wrong.add(complaint + " in " + setup));
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(read > 100, "setups that can be read: " + read);
    }

    private static List<ObjectNode> criterionExamples() throws IOException {
        List<ObjectNode> setups = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("rules", "criteria"))) {
            for (Path file : files.filter(found -> found.endsWith("examples.json")).sorted().toList()) {
                for (JsonNode one : SchemaMembers.JSON.readTree(Files.readString(file, StandardCharsets.UTF_8))) {
                    ObjectNode setup = ((ObjectNode) one.get("setup")).put("format", 1);
                    setups.add(setup.has("on") ? setup : setup.put("on", "2026-11-02"));
                }
            }
        }
        return setups;
    }
}
