package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Question.Kind;

/** The questions against the schema as another reader of JSON sees it, and against what the reader of setups takes. */
class QuestionCatalogueTest {
    private static final List<Question> ALL = QuestionCatalogue.builtIn();
    private static final Map<String, Question> BY_PATH = ALL.stream().collect(Collectors.toMap(Question::path, Function.identity()));

    static List<Question> all() {
        return ALL;
    }

    static List<Question> measured() {
        return ALL.stream().filter(question -> question.kind() == Kind.MEASURE).toList();
    }

    @Test
    void every_member_of_the_schema_is_a_question_leads_to_one_or_is_part_of_a_place() {
        TreeSet<String> members = SchemaMembers.members().stream().map(member -> member.toString().replaceFirst("^\\.", "")).collect(Collectors.toCollection(TreeSet::new));
        for (String member : members) {
            boolean leads = ALL.stream().anyMatch(question -> question.path().startsWith(member + "."));
            boolean isOfPlace = member.matches(".*\\bplace\\.(zone|along|across|above)");
            assertEquals(1, List.of(BY_PATH.containsKey(member), leads, isOfPlace).stream().filter(found -> found).count(), member);
        }
        assertTrue(ALL.size() > 180, "questions: " + ALL.size());
        assertEquals(ALL.stream().map(Question::path).collect(Collectors.toCollection(TreeSet::new)).size(), ALL.size());
        BY_PATH.keySet().forEach(path -> assertTrue(members.contains(path), path));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void every_question_is_one_sentence_and_nothing_is_lost_of_its_words(Question question) {
        assertTrue(question.label().endsWith(".") && !question.label().contains(". "), question.label());
        String words = question.how().isEmpty() ? question.label() : question.label() + " " + question.how();
        assertTrue(SchemaMembers.TREE.toString().contains(words.replace("\"", "\\\"")), words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"title|TEXT||", "animals|PARTS||", "animals[].name|TEXT||", "animals[].species|TEXT||", "on|DAY||", "format|VERSION||",
        "animals[].mass|MEASURE||g kg oz lb", "animals[].diet.every|MEASURE||min h d wk", "enclosure.inside.length|MEASURE||mm cm m in ft",
        "enclosure.warm-end|ONE_OF|left right|", "room.sun|ONE_OF|yes no|", "room.coldest|MEASURE||°C °F", "room.latitude|MEASURE||°",
        "electrical.tariff|MEASURE||per kWh", "water.offered|SEVERAL|dish drip mist|", "water.place|PLACE||", "lamps[].between|PARTS||",
        "lamps[].kind|ONE_OF|UV tube;UV compact;UV bulb;daylight tube;daylight bulb;LED;other|", "lamps[].between[].passes|MEASURE||%",
        "lamps[].readings[].index|MEASURE||UVI", "readings[].value|MEASURE||°C °F % UVI", "furnishings[].mass|MEASURE|one finger;one hand;two hands|g kg oz lb"})
    void kinds_words_and_units_are_read(String path, Kind kind, String choices, String units) {
        Question question = BY_PATH.get(path);
        assertEquals(kind, question.kind());
        assertEquals(split(choices), question.choices());
        assertEquals(units == null ? List.of() : Arrays.asList(units.replace("per kWh", "per_kWh").split(" ")).stream().map(unit -> unit.replace('_', ' ')).toList(),
                question.units());
    }

    private static List<String> split(String words) {
        return words == null ? List.of() : List.of(words.split(words.contains(";") ? ";" : " "));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("measured")
    void units_of_one_question_are_of_one_kind_but_for_readings(Question question) {
        long kinds = question.units().stream().map(Unit::spelt).map(Optional::orElseThrow).map(Unit::dimension).distinct().count();
        assertEquals(question.path().equals("readings[].value") ? 3 : 1, kinds, question.units().toString());
    }

    @Test
    void a_question_knows_its_list_and_the_members_that_lead_to_its_answer() {
        assertEquals("", BY_PATH.get("enclosure.inside.length").list());
        assertEquals(List.of("enclosure", "inside", "length"), BY_PATH.get("enclosure.inside.length").members());
        assertEquals("lamps", BY_PATH.get("lamps[].between").list());
        assertEquals("lamps[].between", BY_PATH.get("lamps[].between[].what").list());
        assertEquals(List.of("what"), BY_PATH.get("lamps[].between[].what").members());
        assertEquals(List.of("diet", "prey"), BY_PATH.get("animals[].diet.prey").members());
        assertFalse(ALL.stream().anyMatch(question -> question.members().contains("")));
    }
}
