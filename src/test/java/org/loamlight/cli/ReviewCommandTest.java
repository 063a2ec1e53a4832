package org.loamlight.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loamlight.workbook.GeneratedSetup;
import org.loamlight.workbook.WorkbookText;

/** A review as the command line makes it. */
class ReviewCommandTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> EXAMPLES = List.of("foster-corn-snake", "club-corn-snake", "two-king-snakes", "home-bearded-dragon");

    @TempDir
    private Path folder;

    private record Run(int code, String out, String err) {
    }

    private static Run run(String... arguments) {
        return run(CLOCK, arguments);
    }

    private static Run run(Clock clock, String... arguments) {
        return run(clock, new byte[0], arguments);
    }

    private static Run piped(byte[] in, String... arguments) {
        return run(CLOCK, in, arguments);
    }

    private static Run run(Clock clock, byte[] in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new Surroundings(new ByteArrayInputStream(in), new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                clock), arguments);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static void assertComplaint(Run run, String words) {
        assertEquals(ExitCode.USAGE, run.code, run.err);
        assertTrue(run.err.contains(words), run.err);
        assertFalse(run.err.contains("Exception") || run.err.contains("\tat "), run.err);
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    /** The examples in a folder of their own. */
    private Path club() throws IOException {
        Path club = Files.createDirectories(folder.resolve("club"));
        for (String name : EXAMPLES) {
            Files.copy(example(name), club.resolve(name + ".json"));
        }
        return club;
    }

    private static Path example(String name) {
        return Path.of("examples", name + ".json");
    }

    private static String oneLine(String name) throws IOException {
        return JSON.readTree(Files.readString(example(name))).toString();
    }

    private Path generated(int count) throws IOException {
        List<String> lines = new ArrayList<>();
        for (int seed = 0; seed < count; seed++) {
            lines.add(new GeneratedSetup(seed).json());
        }
        return Files.write(folder.resolve("generated.jsonl"), lines);
    }

    /** How often each result came with each grade, by need. */
    private static Map<String, Integer> counted(JsonNode results) {
        Map<String, Integer> counts = new TreeMap<>();
        results.get("findings").forEach(finding -> counts.merge(finding.get("result").asText() + " " + finding.get("grade").asText() + " " + finding.get("need").asText(), 1, Integer::sum));
        return counts;
    }

    @Test
    void counts_add_up_to_those_of_the_single_audits() throws IOException {
        Run review = run("review", club().toString(), "--jsonl", at("all.jsonl"), "-o", at("all.xlsx"));
        assertEquals(ExitCode.FOUND, review.code, review.err);
        Map<String, Integer> single = new TreeMap<>();
        Map<String, Integer> together = new TreeMap<>();
        for (String name : EXAMPLES) {
            counted(JSON.readTree(run("audit", example(name).toString(), "--json", "-").out)).forEach((what, count) -> single.merge(what, count, Integer::sum));
        }
        for (String line : Files.readAllLines(folder.resolve("all.jsonl"))) {
            counted(JSON.readTree(line)).forEach((what, count) -> together.merge(what, count, Integer::sum));
        }
        assertTrue(single.size() > 10, single.toString());
        assertEquals(single, together);
        assertEquals(sum(single, "nonconformity critical"), inBook("Setups", 5));
        assertEquals(sum(single, "nonconformity major"), inBook("Setups", 6));
        assertEquals(sum(single, "conformity critical") + sum(single, "conformity major") + sum(single, "conformity minor") + sum(single, "conformity improvement"), inBook("Setups", 10));
        assertEquals(2 * sum(single, "nonconformity critical"), inBook("Needs and grades", 1), "each need and their sum");
        assertEquals(sum(single, "nonconformity"), rowsSaying("Findings", 6, "not right"));
    }

    private static int sum(Map<String, Integer> counts, String beginning) {
        return counts.entrySet().stream().filter(count -> (count.getKey() + " ").startsWith(beginning + " ")).mapToInt(Map.Entry::getValue).sum();
    }

    private int inBook(String sheet, int column) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(folder.resolve("all.xlsx")))) {
            XSSFSheet found = book.getSheet(sheet);
            int sum = 0;
            for (int row = 2; row <= found.getLastRowNum(); row++) {
                sum += (int) found.getRow(row).getCell(column).getNumericCellValue();
            }
            return sum;
        }
    }

    private int rowsSaying(String sheet, int column, String words) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(folder.resolve("all.xlsx")))) {
            XSSFSheet found = book.getSheet(sheet);
            int rows = 0;
            for (int row = 2; row <= found.getLastRowNum(); row++) {
                rows += found.getRow(row).getCell(column).getStringCellValue().equals(words) ? 1 : 0;
            }
            return rows;
        }
    }

    @Test
    void setups_stand_worst_first_with_a_sheet_each_and_tables_of_their_own() throws IOException {
        run("review", club().toString(), "-o", at("all.xlsx"));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(folder.resolve("all.xlsx")))) {
            XSSFSheet setups = book.getSheet("Setups");
            assertEquals("Change now", setups.getRow(2).getCell(4).getStringCellValue());
            assertEquals("Good", setups.getRow(1 + EXAMPLES.size()).getCell(4).getStringCellValue());
            assertEquals("'001 Bracken'!A1", setups.getRow(2).getCell(0).getHyperlink().getAddress());
            assertEquals("A2:O" + (2 + EXAMPLES.size()), setups.getTables().get(0).getCTTable().getRef());
            assertTrue(book.getSheet("001 Bracken").getRow(2).getCell(1).getStringCellValue().length() > 3);
            assertEquals(8 - 1 + EXAMPLES.size(), book.getNumberOfSheets());
        }
    }

    @Test
    void results_are_the_same_whatever_the_number_of_workers_and_in_any_locale() throws IOException {
        String setups = generated(40).toString();
        Run one = run("review", setups, "--workers", "1", "--jsonl", at("one.jsonl"), "-o", at("one.xlsx"));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            Run many = run("review", setups, "--workers", "7", "--jsonl", at("many.jsonl"), "-o", at("many.xlsx"));
            assertEquals(one, many);
        } finally {
            Locale.setDefault(before);
        }
        assertEquals(40, Files.readAllLines(folder.resolve("one.jsonl")).size());
        assertArrayEquals(Files.readAllBytes(folder.resolve("one.jsonl")), Files.readAllBytes(folder.resolve("many.jsonl")));
        assertArrayEquals(Files.readAllBytes(folder.resolve("one.xlsx")), Files.readAllBytes(folder.resolve("many.xlsx")));
    }

    @Test
    void the_order_is_that_of_the_setups() throws IOException {
        Run run = run("review", generated(12).toString(), "--jsonl", "-", "--workers", "3");
        List<Integer> numbers = new ArrayList<>();
        for (String line : run.out.split("\n")) {
            numbers.add(JSON.readTree(line).get("line").asInt());
        }
        assertEquals(Stream.iterate(1, number -> number + 1).limit(12).toList(), numbers);
    }

    /** A mark in a line that was written shows whether the setup was judged again: what is judged again has none. */
    @Test
    void standard_input_gives_what_a_file_of_the_same_lines_gives() throws IOException {
        Path lines = generated(12);
        String file = run("review", lines.toString(), "--jsonl", "-", "--workers", "3").out;
        Run piped = piped(Files.readAllBytes(lines), "review", "-", "--jsonl", "-", "--workers", "3");
        assertEquals(file.replace(JSON.writeValueAsString(lines.toString()), "\"standard input\""), piped.out);
        assertTrue(piped.out.lines().skip(6).findFirst().orElseThrow().contains("\"file\":\"standard input\",\"line\":7,"), piped.out);
        assertEquals(16, piped(Files.readAllBytes(lines), "review", club().toString(), "-", "--jsonl", "-").out.lines().count());
    }

    @Test
    void standard_input_is_taken_up_again_where_a_killed_run_ended() throws IOException {
        byte[] lines = Files.readAllBytes(generated(12));
        piped(lines, "review", "-", "--jsonl", at("whole.jsonl"));
        String whole = Files.readString(folder.resolve("whole.jsonl"));
        int fifth = whole.indexOf("\"number\":5");
        Files.writeString(folder.resolve("again.jsonl.part"), whole.substring(0, fifth + 40).replace("\"title\":\"", "\"title\":\"taken over "));
        piped(lines, "review", "-", "--jsonl", at("again.jsonl"), "--resume");
        String again = Files.readString(folder.resolve("again.jsonl"));
        assertEquals(whole, again.replace("\"title\":\"taken over ", "\"title\":\""));
        assertEquals(4, again.lines().filter(line -> line.contains("taken over ")).count());
    }

    @Test
    void whatever_comes_in_on_standard_input_is_told_with_its_line_and_the_rest_is_judged() throws IOException {
        ByteArrayOutputStream in = new ByteArrayOutputStream();
        in.writeBytes((oneLine("club-corn-snake") + "\n\n").getBytes(StandardCharsets.UTF_8));
        in.writeBytes(new byte[] {'{', '"', 'a', (byte) 0xC3, '(', '"', '\n'});
        in.writeBytes(("{\"title\": \"" + "x".repeat(6_000_000) + "\"}\n").getBytes(StandardCharsets.UTF_8));
        in.writeBytes(new byte[] {1, 2, 0, (byte) 0xFF, '\n'});
        in.writeBytes((oneLine("two-king-snakes") + "\n").getBytes(StandardCharsets.UTF_8));
        in.writeBytes(oneLine("foster-corn-snake").substring(0, 900).getBytes(StandardCharsets.UTF_8));
        Run run = piped(in.toByteArray(), "review", "-", "--jsonl", "-");
        assertEquals(ExitCode.USAGE, run.code, run.err);
        List<String> told = new ArrayList<>();
        for (String line : run.out.lines().toList()) {
            JsonNode result = JSON.readTree(line);
            told.add(result.get("line") + " " + (result.has("problems") ? result.get("problems").get(0).asText() : "judged"));
        }
        assertEquals(List.of("1 judged", "3 standard input:3:4: the byte 0xC3 is no UTF-8 text here; name a JSON file, saved as UTF-8 text.",
                "4 standard input:4:1: the file is too large to be a setup; at most 5000000 bytes are read; name another file.",
                "5 standard input:5:4: the byte 0xFF is no UTF-8 text here; name a JSON file, saved as UTF-8 text.", "6 judged",
                "7 standard input:7:901: this is not JSON: the text ends too early; close the { of line 1 with }; the reading stopped here."), told);
    }

    @Test
    void standard_input_without_a_setup_or_named_twice_is_complained_about() throws IOException {
        assertComplaint(run("review", "-"), "standard input: no description came in; send JSON Lines, one setup in each line.");
        assertComplaint(piped("\n \r\n".getBytes(StandardCharsets.UTF_8), "review", "-", "--anonymous"), "standard input: no description came in");
        assertComplaint(run("review", "-", club().toString(), "-"), "standard input can be read once only");
        assertEquals(ExitCode.USAGE, piped("{}\n".getBytes(StandardCharsets.UTF_16), "review", "-").code);
        assertTrue(piped("{}\n".getBytes(StandardCharsets.UTF_16), "review", "-").out.contains("standard input: the file is UTF-16"));
        assertTrue(run("help", "review").out.replaceAll("\\s+", " ").contains("\"-\" reads JSON Lines from standard input"));
    }

    @Test
    void what_a_killed_run_did_is_taken_over_and_the_rest_is_done() throws IOException {
        String setups = generated(10).toString();
        run("review", setups, "--jsonl", at("whole.jsonl"));
        List<String> whole = Files.readAllLines(folder.resolve("whole.jsonl"));
        List<String> marked = whole.subList(0, 4).stream().map(line -> line.replaceFirst("\"inWords\":\"", "\"inWords\":\"MARK ")).toList();
        String cut = whole.get(4).substring(0, whole.get(4).length() / 2);
        Files.writeString(folder.resolve("again.jsonl.part"), String.join("\n", marked) + "\n" + cut);
        run("review", setups, "--jsonl", at("again.jsonl"), "--resume");
        List<String> again = Files.readAllLines(folder.resolve("again.jsonl"));
        assertEquals(marked, again.subList(0, 4), "taken over");
        assertEquals(whole.subList(4, whole.size()), again.subList(4, again.size()), "judged");
        assertFalse(Files.exists(folder.resolve("again.jsonl.part")) || Files.exists(folder.resolve("again.jsonl.earlier")));
    }

    @Test
    void a_run_that_took_up_another_and_was_killed_as_well_loses_neither() throws IOException {
        String setups = generated(6).toString();
        run("review", setups, "--jsonl", at("whole.jsonl"));
        List<String> whole = Files.readAllLines(folder.resolve("whole.jsonl"));
        Files.writeString(folder.resolve("again.jsonl.earlier"), whole.get(5).replaceFirst("\"inWords\":\"", "\"inWords\":\"MARK ") + "\n" + whole.get(0).substring(0, 50));
        Files.writeString(folder.resolve("again.jsonl.part"), whole.get(1).replaceFirst("\"inWords\":\"", "\"inWords\":\"MARK ") + "\n");
        run("review", setups, "--jsonl", at("again.jsonl"), "--resume");
        List<String> again = Files.readAllLines(folder.resolve("again.jsonl"));
        assertEquals(List.of(false, true, false, false, false, true), again.stream().map(line -> line.contains("MARK ")).toList());
        assertEquals(whole, again.stream().map(line -> line.replace("MARK ", "")).toList());
    }

    @Test
    void results_of_other_options_content_or_days_are_not_taken_over() throws IOException {
        Path setup = folder.resolve("undated.json");
        Files.writeString(setup, Files.readString(example("calibration")).replaceFirst("\"on\": \"2026-11-02\",", ""));
        run("review", setup.toString(), "--jsonl", at("all.jsonl"));
        Path results = folder.resolve("all.jsonl");
        Files.writeString(results, Files.readString(results).replaceFirst("\"inWords\":\"", "\"inWords\":\"MARK "));
        byte[] marked = Files.readAllBytes(results);
        List<String[]> others = List.of(new String[] {"--units", "us"}, new String[] {"--on", "2026-12-01"}, new String[] {"--codes", "at-2thvo"}, new String[] {"--anonymous"},
                new String[] {"--house", "examples/house/wending-vale.json"});
        for (String[] other : others) {
            Files.write(results, marked);
            run(Stream.concat(Stream.of("review", setup.toString(), "--jsonl", results.toString(), "--resume"), Stream.of(other)).toArray(String[]::new));
            assertFalse(Files.readString(results).contains("MARK "), String.join(" ", other));
        }
        Files.write(results, marked);
        run(Clock.offset(CLOCK, Duration.ofDays(1)), "review", setup.toString(), "--jsonl", results.toString(), "--resume");
        assertFalse(Files.readString(results).contains("MARK "), "another day");
        Files.write(results, marked);
        run("review", setup.toString(), "--jsonl", results.toString(), "--resume");
        assertTrue(Files.readString(results).contains("MARK "), "the very same");
    }

    @Test
    void an_anonymous_review_carries_no_name_anywhere_and_judges_alike() throws IOException {
        List<String> names = List.of("Zephyrine", "Quandary", "Xanthippa", "Wolpertinger", "Mumblecrust", "Borogove", "Jabberwock", "Thimblerigg");
        String named = oneLine("foster-corn-snake").replaceFirst("Bracken", "Zephyrine").replaceFirst("\"title\":\"[^\"]*\"", "\"title\":\"Quandary and Xanthippa at home\"")
                .replace("\"name\":\"basking lamp\"", "\"name\":\"Wolpertinger\"").replace("\"name\":\"heat mat\"", "\"name\":\"Mumblecrust\"").replace("stone pile", "Borogove").replaceFirst("(\"enclosure\":\\{)\"title\":\"[^\"]*\"", "$1\"title\":\"Jabberwock\"");
        Path club = Files.createDirectories(folder.resolve("Thimblerigg"));
        Files.writeString(club.resolve("Zephyrine.json"), named);
        Files.writeString(club.resolve("Quandary.json"), named.substring(0, named.length() - 30) + "\"Quandary\"");
        Run open = run("review", club.toString(), "--jsonl", at("open.jsonl"), "-o", at("open.xlsx"));
        String shown = content(folder.resolve("open.jsonl"));
        names.stream().filter(name -> !name.equals("Jabberwock")).forEach(name -> assertTrue(shown.contains(name), name + " in " + shown));
        Run hidden = run("review", club.toString(), "--anonymous", "--key", at("key.jsonl"), "--jsonl", at("hidden.jsonl"), "-o", at("hidden.xlsx"), "--against", at("open.jsonl"));
        assertEquals(open.code, hidden.code);
        String all = hidden.out + hidden.err + content(folder.resolve("hidden.jsonl")) + unpacked(folder.resolve("hidden.xlsx"));
        names.forEach(name -> assertFalse(all.contains(name), name));
        names.forEach(name -> assertTrue(content(folder.resolve("key.jsonl")).contains(name), name));
        assertEquals(counted(JSON.readTree(Files.readAllLines(folder.resolve("open.jsonl")).get(1))), counted(JSON.readTree(Files.readAllLines(folder.resolve("hidden.jsonl")).get(1))));
        assertTrue(hidden.out.contains("Setups: 0 joined, 0 gone") && hidden.out.contains("Points: still open"), hidden.out);
        assertFalse(hidden.out.contains("new: "), hidden.out);
    }

    private static String content(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Every part of the workbook: sheets and their names, comments, properties. */
    private static String unpacked(Path workbook) throws IOException {
        StringBuilder parts = new StringBuilder();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(workbook)))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.append(entry.getName()).append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        assertTrue(parts.length() > 10_000);
        return parts.toString();
    }

    @Test
    void leave_holds_for_a_setup_without_names_as_for_the_one_with_them() throws IOException {
        String[] review = {"review", "examples/club-corn-snake.json", "--waivers", "examples/house/wending-vale-waivers.json", "--house", "examples/house/wending-vale.json", "--jsonl", "-"};
        String open = run(review).out;
        String hidden = run(Stream.concat(Stream.of(review), Stream.of("--anonymous")).toArray(String[]::new)).out;
        assertTrue(open.contains("\"waivedUntil\":"), open);
        assertEquals(open.split("\"waivedUntil\":", -1).length, hidden.split("\"waivedUntil\":", -1).length);
    }

    @Test
    void what_changed_since_an_earlier_review_is_told() throws IOException {
        Path club = club();
        run("review", club.toString(), "--jsonl", at("last.jsonl"));
        Files.delete(club.resolve("two-king-snakes.json"));
        Files.copy(example("calibration"), club.resolve("calibration.json"));
        String foster = Files.readString(club.resolve("foster-corn-snake.json"));
        assertTrue(foster.contains("\"water-change\": \"every 3 d\""));
        Files.writeString(club.resolve("moved.json"), foster.replace("\"water-change\": \"every 3 d\"", "\"water-change\": \"daily\""));
        Files.delete(club.resolve("foster-corn-snake.json"));
        String good = Files.readString(club.resolve("club-corn-snake.json"));
        Files.writeString(club.resolve("club-corn-snake.json"), good.replace("\"guard\": \"yes\"", "\"guard\": \"no\""));
        Run run = run("review", club.toString(), "--against", at("last.jsonl"), "-o", at("all.xlsx"));
        assertTrue(run.out.contains("Setups: 1 joined, 1 gone"), run.out);
        assertTrue(run.out.contains("put right: 1"), run.out);
        String book = WorkbookText.dump(Files.readAllBytes(folder.resolve("all.xlsx")));
        assertTrue(book.contains("== Since the earlier review =="), book);
        List.of("put right", "still open", "gone", "joined", "new").forEach(word -> assertTrue(book.lines().anyMatch(line -> line.matches("D\\d+ " + word)), word));
    }

    /** Without names every setup without a title is called alike; that says nothing. */
    @Test
    void setups_whose_names_are_taken_out_are_no_namesakes() throws IOException {
        String untitled = oneLine("calibration").replaceFirst("\"title\" *: *\"[^\"]*\" *,", "");
        Files.writeString(folder.resolve("untitled.jsonl"), untitled + "\n" + untitled + "\n");
        assertTrue(run("review", at("untitled.jsonl")).out.contains("Of the same name: "));
        String hidden = run("review", at("untitled.jsonl"), "--anonymous").out;
        assertTrue(hidden.contains("review of 2 setups") && !hidden.contains("Of the same name"), hidden);
    }

    @Test
    void broken_files_are_rows_and_the_rest_is_done() throws IOException {
        Path club = club();
        String one = oneLine("calibration");
        Files.writeString(club.resolve("lines.jsonl"), one + "\n" + one.substring(0, 300) + "\n\n" + one);
        Files.write(club.resolve("latin.jsonl"), (one + "\n").getBytes(StandardCharsets.UTF_8));
        Files.write(club.resolve("latin.jsonl"), (one.replace("Marl", "Zo\u00eb") + "\n").getBytes(StandardCharsets.ISO_8859_1), StandardOpenOption.APPEND);
        Files.write(club.resolve("wide.jsonl"), (one + "\n").getBytes(StandardCharsets.UTF_16));
        Files.writeString(club.resolve("none.xlsx"), "no workbook");
        Files.writeString(club.resolve("readme.txt"), "passed over");
        Run run = run("review", club.toString(), "--jsonl", at("all.jsonl"), "-o", at("all.xlsx"));
        assertEquals(ExitCode.USAGE, run.code, run.err);
        assertEquals("", run.err);
        List<String> lines = Files.readAllLines(folder.resolve("all.jsonl"));
        assertEquals(11, lines.size());
        assertEquals(List.of("lines.jsonl:2:301", "latin.jsonl:2:", "wide.jsonl: the file is UTF-16", "none.xlsx: this is no Excel workbook").stream().sorted().toList(),
                Stream.of("lines.jsonl:2:301", "latin.jsonl:2:", "wide.jsonl: the file is UTF-16", "none.xlsx: this is no Excel workbook")
                        .filter(words -> lines.stream().anyMatch(line -> line.contains("\"problems\":[\"") && line.contains(words))).sorted().toList());
        assertTrue(run.out.contains("1 file of another kind passed over") && run.out.contains("could not be read: 4"), run.out);
        assertTrue(run.out.contains("Of the same name: "), run.out);
        assertTrue(WorkbookText.dump(Files.readAllBytes(folder.resolve("all.xlsx"))).contains("Could not be read"));
    }

    @Test
    void a_description_of_two_gigabytes_is_not_read_whole() throws IOException {
        Path club = club();
        try (var huge = new RandomAccessFile(club.resolve("huge.json").toFile(), "rw")) {
            huge.setLength(2L << 30);
        }
        Run run = run("review", club.toString());
        assertTrue(run.out.replaceAll("\\s+", " ").contains("the file is too large to be a setup"), run.out);
        assertTrue(run.out.contains("change now: 3"), run.out);
    }

    @Test
    void inputs_and_outputs_that_cannot_be_used_are_complained_about_before_the_work() throws IOException {
        assertComplaint(run("review"), "PATH");
        assertComplaint(run("review", at("none")), "there is no such file or folder");
        assertComplaint(run("review", Files.createDirectories(folder.resolve("empty")).toString(), "-o", at("x.xlsx")), "no description lies there");
        String club = club().toString();
        assertComplaint(run("review", club, "-o", at("x.pdf")), ".xlsx");
        assertComplaint(run("review", club, "-o", at("x.xlsx"), "--key", at("k"), "--jsonl", at("y.jsonl")), "--key: without --anonymous");
        assertComplaint(run("review", club, "--resume"), "--resume");
        assertComplaint(run("review", club, "--resume", "--jsonl", "-"), "--resume");
        assertComplaint(run("review", club, "--workers", "0"), "--workers: 0");
        assertComplaint(run("review", club, "--jsonl", at("x.jsonl"), "--anonymous", "--key", at("x.jsonl")), "two names");
        assertComplaint(run("review", club + "/two-king-snakes.json", "--jsonl", club + "/two-king-snakes.json"), "this is an input");
        assertComplaint(run("review", club, "--against", club + "/two-king-snakes.json"), "no result file of a review");
        assertComplaint(run("review", club, "--against", at("none.jsonl")), "cannot be read");
        run("review", club, "--anonymous", "--jsonl", at("hidden.jsonl"));
        assertComplaint(run("review", club, "--against", at("hidden.jsonl")), "names were taken out");
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of("club", "empty", "hidden.jsonl"), left.map(path -> path.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void its_own_outputs_are_no_inputs_of_the_next_run() throws IOException {
        Path club = club();
        Files.copy(Path.of("examples", "house", "wending-vale.json"), club.resolve("house.json"));
        String[] review = {"review", club.toString(), "--house", club.resolve("house.json").toString(), "-o", club.resolve("review.xlsx").toString(), "--jsonl", club.resolve("review.jsonl").toString()};
        Run first = run(review);
        assertEquals(ExitCode.FOUND, first.code, first.out);
        assertEquals(first, run(review));
        assertEquals(EXAMPLES.size(), Files.readAllLines(club.resolve("review.jsonl")).size());
    }

    @Test
    void no_text_becomes_a_formula_and_every_line_of_the_summary_fits() throws IOException {
        Run run = run("review", generated(25).toString(), "-o", at("all.xlsx"));
        assertTrue(run.out.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 80), run.out);
        String book = WorkbookText.dump(Files.readAllBytes(folder.resolve("all.xlsx")));
        assertTrue(book.lines().anyMatch(line -> line.matches("[BC]\\d+ =.*")), "a name that looks like a formula");
        assertFalse(book.contains("(FORMULA)"), book);
        assertNotEquals(-1, book.indexOf("== Follow-up =="));
    }
}
