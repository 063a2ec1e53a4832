package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.ranking.Outcome;
import org.loamlight.setup.Amended;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problem;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Question;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.workbook.visit.Amendment;
import org.loamlight.workbook.visit.HistoryEntry;
import org.loamlight.workbook.visit.Recorded;
import org.loamlight.workbook.visit.Visit;
import org.loamlight.workbook.visit.VisitReader;
import org.loamlight.workbook.visit.WalkRow;

/** A checklist goes out, is filled in, and comes back: what was written is in the setup then, and nothing else. */
class VisitTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);
    private static final Path FOSTER = Path.of("examples", "foster-corn-snake.json");

    /** What came back. */
    private record Back(Visit visit, Setup setup, List<HistoryEntry> history) {
    }

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    /** Little and much told, places in words and in distances, one animal and two. */
    static Stream<Path> some() {
        return Stream.of("foster-corn-snake", "home-bearded-dragon", "two-king-snakes", "us-kingsnake").map(name -> Path.of("examples", name + ".json"));
    }

    private static Back back(FilledChecklist checklist, JsonValue document) throws ProblemsFound {
        Problems problems = new Problems("checklist.xlsx");
        Visit visit = VisitReader.read(checklist.bytes(), problems);
        Amendment.Result amended = Amendment.of(visit, (JsonValue.JsonObject) document, FilledChecklist.setup(document), DAY, problems);
        return new Back(visit, SetupReader.read(amended.setup(), problems, BuiltIn.KNOWLEDGE.speciesNames()), amended.history());
    }

    private static List<String> complaints(FilledChecklist checklist, JsonValue document) {
        try {
            back(checklist, document);
            return List.of();
        } catch (ProblemsFound e) {
            return e.problems().stream().map(Problem::text).toList();
        }
    }

    private static Map<String, String> answersBut(Setup setup, String... without) {
        Map<String, String> answers = new TreeMap<>(setup.told().answers());
        List.of(without).forEach(answers::remove);
        return answers;
    }

    @ParameterizedTest
    @MethodSource("some")
    void a_checklist_carries_its_setup_and_what_was_found(Path example) throws ProblemsFound {
        JsonValue document = FilledChecklist.document(example);
        Audit audit = FilledChecklist.audit(document);
        Recorded recorded = VisitReader.read(FilledChecklist.made(document), new Problems("checklist.xlsx")).recorded().orElseThrow();
        assertEquals(FilledChecklist.setup(document), BuiltIn.setup(recorded.setup()));
        assertEquals(Outcome.of(audit.findings()), recorded.findings());
        assertEquals(audit.on().toString(), recorded.on());
        assertTrue(recorded.isOf(audit.knowledge()));
    }

    @ParameterizedTest
    @MethodSource("some")
    void an_empty_checklist_changes_nothing_but_the_day(Path example) throws ProblemsFound {
        JsonValue document = FilledChecklist.document(example);
        Back back = back(FilledChecklist.of(FilledChecklist.made(document)), document);
        assertEquals(answersBut(FilledChecklist.setup(document), "on"), answersBut(back.setup, "on"));
        assertEquals(List.of(), back.history);
        assertEquals(0, back.visit.deletedRows());
    }

    /** Every row that has an answer is answered the same again: only the days of the readings are new. */
    @ParameterizedTest
    @MethodSource("some")
    void the_same_answers_again_change_only_when_readings_were_taken(Path example) throws ProblemsFound {
        JsonValue document = FilledChecklist.document(example);
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document));
        Setup before = FilledChecklist.setup(document);
        List<String> days = new ArrayList<>(List.of("on"));
        int again = 0;
        for (WalkRow row : FilledChecklist.asked(document)) {
            if (before.told().answer(row.key()).isPresent()) {
                checklist.answer(row.key(), row.last());
                again++;
                if (row.key().startsWith("readings[")) {
                    days.add(row.key().replaceAll("value$", "on"));
                }
            }
        }
        Back back = back(checklist, document);
        assertTrue(again > 5, again + " answers");
        assertEquals(again, back.history.size());
        assertEquals(answersBut(before, days.toArray(String[]::new)), answersBut(back.setup, days.toArray(String[]::new)));
        days.stream().skip(1).forEach(day -> assertEquals(DAY.toString(), back.setup.told().answer(day).orElse(""), day));
    }

    /** Any word a row lets one choose, in any order of the rows: exactly that answer is another one then. */
    @ParameterizedTest
    @MethodSource("some")
    void other_answers_arrive_whatever_the_order_of_the_rows(Path example) throws ProblemsFound {
        JsonValue document = FilledChecklist.document(example);
        Random random = new Random(example.getFileName().toString().hashCode());
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document));
        Map<String, String> expected = answersBut(FilledChecklist.setup(document), "on");
        for (WalkRow row : FilledChecklist.asked(document)) {
            if (row.question().kind() == Question.Kind.ONE_OF && random.nextInt(3) == 0 && !row.key().startsWith("animals[")) {
                String word = row.question().choices().get(random.nextInt(row.question().choices().size()));
                checklist.answer(row.key(), word).hide(row.key());
                expected.put(row.key(), word);
                sections(row.key()).forEach(section -> expected.putIfAbsent(section, "{}"));
            }
        }
        Setup after = back(checklist.shuffled("Walk", 7).shuffled("Record", 11).shuffled("Visit", 13), document).setup;
        Map<String, String> found = answersBut(after, "on");
        expected.forEach((path, answer) -> {
            if (!answer.equals("{}")) {
                assertEquals(answer, found.get(path), path);
            }
        });
        assertEquals(expected.keySet(), found.keySet());
    }

    /** "care" for "care.water-change": a part that is told for the first time. */
    private static List<String> sections(String path) {
        List<String> sections = new ArrayList<>();
        for (int dot = path.indexOf('.'); dot > 0 && path.indexOf('[') < 0; dot = path.indexOf('.', dot + 1)) {
            sections.add(path.substring(0, dot));
        }
        return sections;
    }

    @ParameterizedTest
    @MethodSource("examples")
    void keys_are_unique_and_each_row_says_what_is_asked(Path example) {
        HashSet<String> keys = new HashSet<>();
        for (WalkRow row : FilledChecklist.asked(FilledChecklist.document(example))) {
            assertTrue(keys.add(row.key()), row.key());
            assertFalse(row.what().isBlank(), row.key());
        }
        assertTrue(keys.size() > 40 && keys.size() < 130, keys.size() + " rows");
    }

    /** Whatever a setup says, its checklist carries it and brings it back. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void a_generated_setup_comes_back_as_it_was(long seed) throws ProblemsFound {
        JsonValue generated = JsonFile.read(new GeneratedSetup(seed).json().getBytes(StandardCharsets.UTF_8), new Problems("generated"));
        JsonValue document = Amended.with((JsonValue.JsonObject) generated, "on", new JsonValue.JsonText(generated.at(), "2026-11-02")).orElseThrow();
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document));
        assertEquals(FilledChecklist.setup(document), BuiltIn.setup(VisitReader.read(checklist.bytes(), new Problems("checklist.xlsx")).recorded().orElseThrow().setup()));
        assertEquals(answersBut(FilledChecklist.setup(document), "on"), answersBut(back(checklist, document).setup, "on"));
    }

    @Test
    void a_number_takes_the_unit_of_its_row() throws ProblemsFound {
        JsonValue document = FilledChecklist.document(FOSTER);
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document)).number("enclosure.openings[gap under the lid].gap", 4)
                .answer("enclosure.inside.length", "4 ft 2 in");
        Setup after = back(checklist, document).setup;
        assertEquals("4 mm", after.told().answer("enclosure.openings[gap under the lid].gap").orElse(""));
        assertEquals("4 ft 2 in", after.told().answer("enclosure.inside.length").orElse(""));
    }

    @Test
    void a_reading_nobody_took_before_is_added_with_its_place_and_day() throws ProblemsFound {
        JsonValue document = FilledChecklist.document(FOSTER);
        String key = FilledChecklist.asked(document).stream().map(WalkRow::key).filter(one -> one.startsWith("new reading: air temperature; night")).findFirst().orElseThrow();
        Setup after = back(FilledChecklist.of(FilledChecklist.made(document)).answer(key, "21.5 °C"), document).setup;
        String name = after.readings().get(after.readings().size() - 1).name();
        assertTrue(name.startsWith("air temperature by night"), name);
        assertEquals("21.5 °C", after.told().answer("readings[" + name + "].value").orElse(""));
        assertEquals(DAY.toString(), after.told().answer("readings[" + name + "].on").orElse(""));
    }

    @Test
    void an_index_under_a_lamp_is_added_with_its_distance() throws ProblemsFound {
        JsonValue document = FilledChecklist.document(FOSTER);
        String key = FilledChecklist.asked(document).stream().map(WalkRow::key).filter(one -> one.endsWith(".readings[new]")).findFirst().orElseThrow();
        int before = FilledChecklist.setup(document).lamps().get(0).readings().size();
        Setup after = back(FilledChecklist.of(FilledChecklist.made(document)).answer(key, "3.1 at 30 cm"), document).setup;
        assertEquals(before + 1, after.lamps().get(0).readings().size());
        assertEquals(3.1, after.lamps().get(0).readings().get(before).index().amount().value(), 1e-9);
        assertEquals(30, after.lamps().get(0).readings().get(before).distance().amount().value(), 1e-9);
        List<String> said = complaints(FilledChecklist.of(FilledChecklist.made(document)).answer(key, "3.1"), document);
        assertEquals(1, said.size());
        assertTrue(said.get(0).contains("such as 4.6 at 30 cm"), said.toString());
    }

    @Test
    void who_what_and_how_it_is_known_stand_in_the_history() throws ProblemsFound {
        JsonValue document = FilledChecklist.document(FOSTER);
        String key = "enclosure.openings[gap under the lid].gap";
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document)).visited("2026-11-20", "A. Visitor").answer(key, "4 mm")
                .write("Walk", key, "Known by", "measured").write("Walk", key, "Photo No.", "12").write("Walk", key, "What the keeper says", "new strip");
        Back back = back(checklist, document);
        assertEquals(List.of(new HistoryEntry("2026-11-20", "A. Visitor", "The widest gap or mesh opening left when it is shut", "gap under the lid (opening)", "14 mm",
                "4 mm", "measured", "12", "new strip", key)), back.history);
    }

    @Test
    void deleted_rows_are_counted_and_change_nothing() throws ProblemsFound {
        JsonValue document = FilledChecklist.document(FOSTER);
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document)).delete("Walk", "room.sun").delete("Walk", "room.hottest");
        Back back = back(checklist, document);
        assertEquals(2, back.visit.deletedRows());
        assertEquals("34 °C", back.setup.told().answer("room.hottest").orElse(""));
    }

    @Test
    void what_cannot_be_used_is_told_by_sheet_and_cell_all_at_once() {
        JsonValue document = FilledChecklist.document(FOSTER);
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document)).answer("room.hottest", "31,5 °C").answer("room.sun", "perhaps")
                .answer("enclosure.inside.depth", "-3 cm").write("Walk", "room.smoke-alarm", "Key", "room.smoke-bell");
        checklist.answer("room.smoke-bell", "yes");
        List<String> said = complaints(checklist, document);
        assertEquals(4, said.size(), said.toString());
        said.forEach(line -> assertTrue(line.matches("checklist\\.xlsx:Walk!\\w+\\d+: .*"), line));
    }

    @Test
    void a_row_that_was_copied_may_be_filled_in_once() {
        JsonValue document = FilledChecklist.document(FOSTER);
        FilledChecklist once = FilledChecklist.of(FilledChecklist.made(document)).write("Walk", "room.sun", "Key", "room.hottest");
        assertEquals(List.of(), complaints(once, document));
        once.cell("Walk", "room.hottest", "Now").setCellValue("30 °C");
        assertEquals(List.of(), complaints(once, document));
    }

    @Test
    void a_record_somebody_wrote_in_is_not_believed() throws ProblemsFound {
        JsonValue document = FilledChecklist.document(FOSTER);
        FilledChecklist checklist = FilledChecklist.of(FilledChecklist.made(document)).write("Record", "setup 1", "Text", "{}");
        assertTrue(VisitReader.read(checklist.bytes(), new Problems("checklist.xlsx")).recorded().isEmpty());
        FilledChecklist undated = FilledChecklist.of(FilledChecklist.made(document)).write("Record", "audited on", "Text", "last week");
        assertTrue(VisitReader.read(undated.bytes(), new Problems("checklist.xlsx")).recorded().isEmpty());
        FilledChecklist shorter = FilledChecklist.of(FilledChecklist.made(document)).delete("Record", "setup 1");
        assertTrue(VisitReader.read(shorter.bytes(), new Problems("checklist.xlsx")).recorded().isEmpty());
    }
}
