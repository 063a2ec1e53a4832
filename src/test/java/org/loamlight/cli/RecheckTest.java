package org.loamlight.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loamlight.workbook.FilledChecklist;

/** From the first checklist over a visit to the next one. */
class RecheckTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final String FOSTER = "examples/foster-corn-snake.json";
    private static final String GAP = "enclosure.openings[gap under the lid].gap";

    @TempDir
    private Path folder;
    private String first;
    private String filled;
    private String next;

    private record Run(int code, String out, String err) {
    }

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new Surroundings(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), CLOCK), arguments);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @BeforeEach
    void make_a_checklist() {
        first = folder.resolve("first.xlsx").toString();
        filled = folder.resolve("filled.xlsx").toString();
        next = folder.resolve("next.xlsx").toString();
        assertEquals(1, run("audit", FOSTER, "-o", first).code);
    }

    private FilledChecklist open(String file) throws IOException {
        return FilledChecklist.of(Files.readAllBytes(Path.of(file)));
    }

    private void save(FilledChecklist checklist) throws IOException {
        Files.write(Path.of(filled), checklist.bytes());
    }

    @Test
    void a_gap_that_was_closed_is_put_right_and_the_rest_is_still_open() throws IOException {
        save(open(first).visited("2026-11-20", "A. Visitor").answer(GAP, "4 mm"));
        Run run = run("recheck", filled, "-o", next);
        assertEquals(1, run.code, run.err);
        assertTrue(run.out.startsWith("WHAT CHANGED SINCE 2026-11-02\n"), run.out);
        assertTrue(run.out.contains("- put right: No opening lets the animal through, gap under the lid (opening)"), run.out);
        assertTrue(run.out.contains(" still open"), run.out);
        assertFalse(run.out.contains("others than before"), run.out);
        FilledChecklist checklist = open(next);
        assertTrue(checklist.column("Changes", "Change").contains("put right"));
        assertEquals(List.of("14 mm"), checklist.column("History", "Before"));
        assertEquals(List.of("A. Visitor"), checklist.column("History", "Who"));
    }

    @Test
    void the_history_grows_from_visit_to_visit() throws IOException {
        save(open(first).visited("2026-11-20", "A. Visitor").answer(GAP, "4 mm"));
        run("recheck", filled, "-o", next);
        save(open(next).visited("2026-11-24", "B. Visitor").answer("room.sun", "no"));
        String last = folder.resolve("last.xlsx").toString();
        Run run = run("recheck", filled, "-o", last);
        assertTrue(run.out.startsWith("WHAT CHANGED SINCE 2026-11-20\n"), run.out);
        assertEquals(List.of("2026-11-20", "2026-11-24"), open(last).column("History", "Date"));
        assertEquals(List.of("A. Visitor", "B. Visitor"), open(last).column("History", "Who"));
    }

    @Test
    void what_got_worse_and_what_is_new_stands_first() throws IOException {
        save(open(first).visited("2026-11-20", "A. Visitor").answer("room.sun", "yes").answer("water.offered", "none"));
        Run run = run("recheck", filled, "-o", next);
        assertTrue(run.out.contains("- new: There is water in a form this animal drinks"), run.out);
        assertTrue(run.out.contains("- found out: not right: No sun shines through a window"), run.out);
        assertEquals("new", open(next).column("Changes", "Change").get(0));
    }

    @Test
    void a_point_marked_as_done_that_nothing_shows_is_said() throws IOException {
        save(open(first).visited("2026-11-20", "A. Visitor").write("To do", "heat.guard heater:basking lamp", "State", "done"));
        Run run = run("recheck", filled, "-o", next);
        assertTrue(run.out.contains("- marked, not shown: A hot heater within reach has a guard"), run.out);
        assertTrue(open(next).column("Changes", "Change").contains("marked, not shown"));
        assertTrue(open(next).column("History", "Now").contains("done"));
    }

    @Test
    void other_knowledge_is_told_apart_from_changes_of_the_enclosure() throws IOException {
        FilledChecklist made = open(first);
        String right = made.column("Record", "Key").get(made.column("Record", "Text").indexOf("conformity, minor"));
        save(made.visited("2026-11-20", "A. Visitor").write("Record", "knowledge SHA-256", "Text", "0".repeat(64)).write("Record", right, "Text", "nonconformity, major"));
        Run run = run("recheck", filled, "-o", next);
        assertTrue(run.out.contains("others than before"), run.out);
        assertTrue(run.out.indexOf("- put right:") > run.out.indexOf("others than before"), run.out);
        assertTrue(open(next).column("Changes", "Why it stands here").stream().anyMatch(why -> why.startsWith("by the knowledge alone")));
    }

    @Test
    void the_setup_with_the_new_answers_is_saved_and_audits_alike() throws IOException {
        save(open(first).visited("2026-11-20", "A. Visitor").answer(GAP, "4 mm"));
        String saved = folder.resolve("after.json").toString();
        Run recheck = run("recheck", filled, "--save", saved, "--json", "-");
        Run audit = run("audit", saved, "--json", "-");
        assertEquals(audit.out, recheck.out);
    }

    @Test
    void without_a_day_it_is_today_and_without_a_name_not_told() throws IOException {
        save(open(first).answer(GAP, "4 mm"));
        run("recheck", filled, "-o", next);
        assertEquals(List.of("2026-11-25"), open(next).column("History", "Date"));
        assertEquals(List.of("not told"), open(next).column("History", "Who"));
    }

    @Test
    void a_setup_named_stands_in_for_a_lost_record() throws IOException {
        save(open(first).visited("2026-11-20", "A. Visitor").answer(GAP, "4 mm").delete("Record", "setup 1"));
        Run lost = run("recheck", filled, "-o", next);
        assertEquals(ExitCode.USAGE, lost.code);
        assertTrue(lost.err.contains("--setup FILE"), lost.err);
        assertFalse(Files.exists(Path.of(next)));
        Run named = run("recheck", filled, "--setup", FOSTER, "-o", next);
        assertTrue(named.out.contains("- put right: No opening lets the animal through"), named.out);
    }

    @Test
    void what_cannot_be_used_leaves_nothing_behind() throws IOException {
        save(open(first).visited("2026-10-01", "A. Visitor").answer(GAP, "about a finger"));
        Run run = run("recheck", filled, "-o", next);
        assertEquals(ExitCode.USAGE, run.code);
        assertTrue(run.err.contains("before the audit of 2026-11-02"), run.err);
        assertTrue(run.err.contains("filled.xlsx:Walk!G"), run.err);
        assertFalse(Files.exists(Path.of(next)));
        assertEquals("", run.out);
    }

    @Test
    void a_setup_a_form_or_somebody_elses_workbook_is_no_checklist() throws IOException {
        String form = folder.resolve("form.xlsx").toString();
        run("form", "corn snake", "-o", form);
        for (String other : List.of(FOSTER, form)) {
            Run run = run("recheck", other);
            assertEquals(ExitCode.USAGE, run.code, other);
            assertFalse(run.err.contains("Exception"), run.err);
        }
        assertTrue(run("recheck", form).err.contains("this workbook is no checklist"), run("recheck", form).err);
    }

    @Test
    void outputs_do_not_overwrite_what_is_read() throws IOException {
        save(open(first));
        assertTrue(run("recheck", filled, "-o", filled).err.contains("this is the checklist itself"));
        assertTrue(run("recheck", filled, "--setup", FOSTER, "--save", FOSTER).err.contains("this is the setup itself"));
    }

    @Test
    void the_rules_of_a_house_have_to_be_named_again() throws IOException {
        String house = "examples/house/wending-vale.json";
        run("audit", FOSTER, "--house", house, "-o", first);
        save(open(first).visited("2026-11-20", "A. Visitor"));
        Run without = run("recheck", filled);
        assertEquals(ExitCode.USAGE, without.code);
        assertTrue(without.err.contains("--house FILE"), without.err);
        assertEquals(1, run("recheck", filled, "--house", house).code);
    }
}
