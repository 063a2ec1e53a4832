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
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final String FOSTER = "examples/foster-corn-snake.json";
    private static final String GOOD = "examples/calibration.json";

    @TempDir
    private Path folder;

    private record Run(int code, String out, String err) {
    }

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new Surroundings(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), CLOCK), arguments);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static void assertComplaint(Run run, String words) {
        assertEquals(ExitCode.USAGE, run.code, run.err);
        assertTrue(run.err.contains(words), run.err);
        assertFalse(run.err.contains("Exception") || run.err.contains("\tat "), run.err);
        assertEquals("", run.out);
    }

    @ParameterizedTest
    @CsvSource({"examples/foster-corn-snake.json, critical, 1", "examples/foster-corn-snake.json, none, 0", "examples/calibration.json, major, 0",
        "examples/arrival-kingsnake.json, major, 1"})
    void the_exit_code_follows_fail_on(String setup, String failOn, int expected) {
        assertEquals(expected, run("audit", setup, "--fail-on", failOn).code);
    }

    /** Only the subcommand that is called is made: by the name under which the help knows it. */
    @ParameterizedTest
    @ValueSource(strings = {"audit", "review", "check", "explain", "species", "criteria", "prepare"})
    void each_subcommand_is_known_by_its_name(String name) {
        Run run = run(name, "--no-such-option");
        assertEquals(ExitCode.USAGE, run.code, run.err);
        assertTrue(run.err.endsWith("Try: loamlight help " + name + "\n"), run.err);
        assertTrue(run("help", name).out.startsWith("Usage: loamlight " + name), name);
    }

    @Test
    void help_and_completion_know_every_subcommand() {
        for (String name : List.of("audit", "review", "check", "explain", "species", "criteria")) {
            assertTrue(run("help").out.contains("\n  " + name), name);
            assertTrue(run("generate-completion").out.contains("loamlight_" + name), name);
        }
    }

    @Test
    void an_audit_prints_the_report_and_leaves_the_workbook() throws IOException {
        Path workbook = folder.resolve("checklist.xlsx");
        Run run = run("audit", FOSTER, "-o", workbook.toString());
        assertEquals(ExitCode.FOUND, run.code, run.err);
        assertTrue(run.out.contains("Bracken") && run.out.contains("basking lamp"), run.out);
        assertTrue(run.out.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 80));
        assertEquals("PK", new String(Files.readAllBytes(workbook), 0, 2, StandardCharsets.US_ASCII));
    }

    @Test
    void an_audit_leaves_the_drawing_beside_its_other_outputs() throws IOException {
        Path drawing = folder.resolve("box.svg");
        Run run = run("audit", FOSTER, "--drawing", drawing.toString(), "-o", folder.resolve("checklist.xlsx").toString());
        assertEquals(ExitCode.FOUND, run.code, run.err);
        String svg = Files.readString(drawing, StandardCharsets.UTF_8);
        assertTrue(svg.startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg ") && svg.endsWith("</svg>\n"), svg);
    }

    @Test
    void a_drawing_needs_its_ending_and_a_file_of_its_own() {
        assertComplaint(run("audit", FOSTER, "--drawing", folder.resolve("box.png").toString()), "the drawing is an SVG picture; name it with .svg at the end");
        String same = folder.resolve("box.svg").toString();
        assertComplaint(run("audit", FOSTER, "--drawing", same, "--json", same), "two outputs would be one file; give them two names");
        assertComplaint(run("audit", FOSTER, "--drawing", folder.resolve("none").resolve("box.svg").toString()), "does not exist");
    }

    @Test
    void json_on_stdout_is_json_only_and_the_same_twice_in_any_locale() {
        Run first = run("audit", FOSTER, "--json", "-");
        assertTrue(first.out.startsWith("{") && first.out.endsWith("}\n"), first.out);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertEquals(first.out, run("audit", FOSTER, "--json", "-").out);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void json_goes_into_a_file_beside_the_report() throws IOException {
        Path json = folder.resolve("results.json");
        Run run = run("audit", GOOD, "--json", json.toString());
        assertTrue(run.out.contains("Marl"), run.out);
        assertEquals(run("audit", GOOD, "--json", "-").out, Files.readString(json));
    }

    @Test
    void the_day_of_the_audit_is_the_option_then_the_setup_then_today() throws IOException {
        Path undated = folder.resolve("undated.json");
        Files.writeString(undated, Files.readString(Path.of(GOOD)).replaceFirst("\"on\": \"2026-11-02\",", ""));
        assertTrue(run("audit", undated.toString(), "--json", "-").out.contains("\"on\": \"2026-11-25\""));
        assertTrue(run("audit", GOOD, "--json", "-").out.contains("\"on\": \"2026-11-02\""));
        assertTrue(run("audit", GOOD, "--json", "-", "--on", "2026-12-24").out.contains("\"on\": \"2026-12-24\""));
    }

    @Test
    void us_units_are_printed_where_asked_for() {
        assertTrue(run("audit", FOSTER, "--units", "us").out.contains("°F"));
        assertFalse(run("audit", FOSTER).out.contains("°F"));
    }

    @Test
    void check_judges_nothing() {
        Run run = run("check", FOSTER);
        assertEquals(ExitCode.IN_ORDER, run.code);
        assertTrue(run.out.contains("can be read"), run.out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"heat.guard", "space.length", "pantherophis-guttatus", "corn snake", "Lampropeltis californiae"})
    void explain_prints_a_page_of_80_columns(String what) {
        Run run = run("explain", what);
        assertEquals(ExitCode.IN_ORDER, run.code, run.err);
        assertTrue(run.out.lines().count() > 10, run.out);
        assertTrue(run.out.lines().allMatch(line -> line.length() <= 80), run.out);
    }

    @Test
    void explain_of_a_near_name_offers_the_right_one() {
        assertComplaint(run("explain", "heat.gard"), "heat.guard");
        assertComplaint(run("explain", "heat.guard", "--species", "pantherophis-gutata"), "pantherophis-guttatus");
    }

    @Test
    void lists_name_every_species_and_every_criterion() {
        assertTrue(run("species").out.contains("lampropeltis-californiae"));
        Run criteria = run("criteria", "--species", "corn snake");
        assertTrue(criteria.out.contains("space.length") && criteria.out.contains("security.gap"), criteria.out);
    }

    @Test
    void codes_are_listed_with_who_gave_them_and_how_far_they_bind() {
        Run run = run("codes");
        assertEquals(ExitCode.IN_ORDER, run.code, run.err);
        assertTrue(run.out.contains("\nat-2thvo  ") && run.out.contains("Issued ") && run.out.contains("Binding ") && run.out.contains("Read of it "), run.out);
        assertTrue(run.out.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 80), run.out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"code.at-2thvo", "code.at-2thvo.2-2-24", "code.at-2thvo.2-2-24-floor", "code.at-2thvo.5-7"})
    void explain_prints_a_code_a_clause_and_a_point(String what) {
        Run run = run("explain", what);
        assertEquals(ExitCode.IN_ORDER, run.code, run.err);
        assertTrue(run.out.contains("* " + what) || what.equals("code.at-2thvo"), run.out);
        assertTrue(run.out.contains("SOURCES") && run.out.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 80), run.out);
        assertTrue(run("explain", what, "--species", "corn snake").out.contains("code.at-2thvo"));
    }

    @Test
    void explain_of_what_no_code_holds_offers_what_is_near() {
        assertComplaint(run("explain", "code.at-2thv"), "Nearest known: code.at-2thvo");
        assertComplaint(run("explain", "code.at-2thvo.2-2-24-flor"), "code.at-2thvo.2-2-24-floor");
        assertComplaint(run("explain", "code.at-2thvo", "--species", "cron snake"), "pantherophis-guttatus");
        assertComplaint(run("explain", "code."), "There is no code");
    }

    @Test
    void house_rules_waivers_and_codes_that_cannot_be_used_are_told() {
        assertComplaint(run("audit", GOOD, "--codes", ",,"), "no code is named");
        assertComplaint(run("audit", GOOD, "--house", "examples/house/wending-vale-waivers.json"), "\"title\" is missing");
        assertComplaint(run("audit", GOOD, "--waivers", "examples/house/wending-vale.json"), "\"waivers\" is missing");
        assertComplaint(run("audit", GOOD, "--house", "nowhere.xlsx"), "there is no such file");
    }

    @Test
    void criteria_list_what_chosen_codes_ask() {
        assertTrue(run("criteria", "--codes", "at-2thvo").out.contains("code.at-2thvo.2-2-24-floor"));
        assertTrue(run("criteria", "--codes", "all", "--species", "corn snake").out.contains("code.at-2thvo.2-2-24-floor"));
        assertFalse(run("criteria", "--codes", "all", "--species", "lampropeltis-californiae").out.contains("code.at-2thvo.2-2-24-floor"));
        assertFalse(run("criteria").out.contains("code."));
    }

    @Test
    void codes_are_held_once_each_whatever_way_they_are_named() {
        String once = run("audit", FOSTER, "--codes", "at-2thvo").out;
        assertTrue(once.contains("WHAT CODES ASK"), once);
        assertEquals(once, run("audit", FOSTER, "--codes", "at-2thvo, at-2thvo").out);
        assertEquals(once, run("audit", FOSTER, "--codes", "at-2thvo", "--codes", "at-2thvo").out);
        assertEquals(run("audit", FOSTER, "--codes", "all").out, run("audit", FOSTER, "--codes", "at-2thvo,all").out);
        assertFalse(run("audit", FOSTER).out.contains("WHAT CODES ASK"));
    }

    @Test
    void a_code_that_is_not_known_is_complained_about_with_those_that_are() {
        assertComplaint(run("audit", FOSTER, "--codes", "at-2thv"), "The code \"at-2thv\" is not known; did you mean \"at-2thvo\"? Known are ");
        assertComplaint(run("audit", FOSTER, "--codes", "all-of-them,"), "\"all-of-them\"");
        assertComplaint(run("audit", FOSTER, "--codes", ""), "no code is named");
        assertComplaint(run("criteria", "--codes", "at-2thvo,nowhere"), "\"nowhere\"");
        assertComplaint(run("audit", FOSTER, "--codes"), "--codes");
    }

    @Test
    void version_names_program_and_knowledge() {
        String version = run("--version").out;
        assertTrue(version.matches("(?s)loamlight \\d+\\.\\d+\\.\\d+.*knowledge [0-9a-f]{64}.*"), version);
    }

    @Test
    void completion_is_a_shell_script() {
        assertTrue(run("generate-completion").out.contains("complete -F"));
    }

    @Test
    void wrong_usage_is_one_clear_message() {
        assertComplaint(run("audti", FOSTER), "Did you mean \"audit\"?");
        assertComplaint(run("audit"), "SETUP");
        assertComplaint(run("audit", FOSTER, "--units", "furlongs"), "metric");
        assertComplaint(run("audit", FOSTER, "--on", "2026-02-30"), "2026-02-30");
        assertComplaint(run("audit", FOSTER, "--fail-on", "never"), "critical");
    }

    @Test
    void inputs_that_cannot_be_read_are_complained_about() throws IOException {
        assertComplaint(run("audit", folder.resolve("none.json").toString()), "there is no such file");
        assertComplaint(run("audit", folder.toString()), "this is a folder");
        Path nested = folder.resolve("nested.json");
        Files.writeString(nested, "[".repeat(10_000_000));
        assertComplaint(run("audit", nested.toString()), "at most");
    }

    @Test
    void outputs_that_cannot_be_written_are_complained_about_before_the_work() {
        assertComplaint(run("audit", GOOD, "-o", folder.resolve("nowhere/x.xlsx").toString()), "does not exist");
        assertComplaint(run("audit", GOOD, "-o", folder.resolve("x.pdf").toString()), ".xlsx");
        assertComplaint(run("audit", GOOD, "--json", GOOD), "setup itself");
        assertComplaint(run("audit", GOOD, "-o", folder.resolve("x.xlsx").toString(), "--json", folder.resolve("x.xlsx").toString()), "two names");
    }

    @Test
    void a_species_called_by_its_common_name_is_told_its_id() throws IOException {
        Path common = folder.resolve("common.json");
        Files.writeString(common, "{\"format\": 1, \"animals\": [{\"name\": \"Marl\", \"species\": \"corn snake\"}]}");
        assertComplaint(run("audit", common.toString()), "pantherophis-guttatus");
        assertComplaint(run("check", common.toString()), "pantherophis-guttatus");
    }

    @Test
    void bad_input_leaves_no_file() throws IOException {
        Path bad = folder.resolve("bad.json");
        Files.writeString(bad, "{\"format\": 1, \"animals\": [{\"name\": \"Marl\", \"species\": \"dragon\"}], \"enclosur\": {}}");
        Run run = run("audit", bad.toString(), "-o", folder.resolve("x.xlsx").toString(), "--json", folder.resolve("x.json").toString());
        assertComplaint(run, "dragon");
        assertTrue(run.err.contains("did you mean \"enclosure\"?"), run.err);
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(bad), left.toList());
        }
    }

    @Test
    void a_form_is_made_converted_checked_and_audited_as_the_setup_it_came_from() throws IOException {
        Path form = folder.resolve("form.xlsx");
        Path back = folder.resolve("back.json");
        assertEquals(ExitCode.IN_ORDER, run("convert", FOSTER, "-o", form.toString()).code);
        assertEquals(run("check", FOSTER).out.replace(FOSTER, ""), run("check", form.toString()).out.replace(form.toString(), ""));
        assertEquals(run("audit", FOSTER).out, run("audit", form.toString()).out);
        assertEquals(ExitCode.IN_ORDER, run("convert", form.toString(), "-o", back.toString()).code);
        assertEquals(run("audit", FOSTER).out, run("audit", back.toString()).out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"pantherophis-guttatus", "corn snake", "Pantherophis guttatus"})
    void an_empty_form_waits_for_its_answers(String species) throws IOException {
        Path form = folder.resolve("form.xlsx");
        assertEquals(ExitCode.IN_ORDER, run("form", species, "-o", form.toString()).code);
        assertComplaint(run("audit", form.toString()), "Animals!E4: animals[0]: \"name\" is missing");
    }

    @Test
    void forms_that_cannot_be_made_or_read_are_complained_about_and_leave_nothing() throws IOException {
        String form = folder.resolve("form.xlsx").toString();
        assertComplaint(run("form", "corn snak", "-o", form), "pantherophis-guttatus");
        assertComplaint(run("form", "corn snake"), "--output");
        assertComplaint(run("form", "corn snake", "-o", folder.resolve("form.pdf").toString()), ".xlsx");
        assertComplaint(run("form", "corn snake", "-o", folder.resolve("nowhere/form.xlsx").toString()), "does not exist");
        assertComplaint(run("convert", FOSTER, "-o", FOSTER), "setup itself");
        assertComplaint(run("convert", FOSTER, "-o", folder.resolve("form.txt").toString()), ".json");
        Path bad = Files.writeString(folder.resolve("bad.xlsx"), "no workbook");
        assertComplaint(run("convert", bad.toString(), "-o", folder.resolve("x.json").toString()), "this is no Excel workbook");
        assertComplaint(run("audit", bad.toString(), "-o", form), "this is no Excel workbook");
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(bad), left.toList());
        }
    }
}
