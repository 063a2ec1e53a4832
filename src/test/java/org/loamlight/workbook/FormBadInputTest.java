package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problem;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;
import org.loamlight.workbook.form.FormReader;

/** Forms as they come back from people, and files that are none: read rightly, or told by sheet and cell what is wrong. */
class FormBadInputTest {
    private static final int MUTATIONS = Integer.getInteger("mutations", 1_500);
    private static final FormPlan PLAN = FormPlan.builtIn();
    private static final byte[] FORM = form();
    private static final Workbook BOOK = open();
    private static final String WORKBOOK_XML = "xl/workbook.xml";

    private static byte[] form() {
        try {
            Problems problems = new Problems("");
            JsonValue setup = JsonFile.read(Files.readAllBytes(Path.of("examples/us-kingsnake.json")), problems);
            return FormWriter.write(FormAnswers.of(setup, PLAN, problems), "Quill", BuiltIn.KNOWLEDGE.speciesNames(), PLAN);
        } catch (IOException | ProblemsFound e) {
            throw new AssertionError(e);
        }
    }

    private static Workbook open() {
        try {
            return new XSSFWorkbook(new ByteArrayInputStream(FORM));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Setup read(byte[] form) throws ProblemsFound {
        Problems problems = new Problems("form.xlsx");
        return SetupReader.read(FormReader.read(form, problems), problems, BuiltIn.KNOWLEDGE.speciesNames());
    }

    private static Setup usable(byte[] form) {
        try {
            return read(form);
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static List<String> complaints(byte[] form) {
        try {
            read(form);
            return List.of();
        } catch (ProblemsFound e) {
            return e.problems().stream().map(Problem::text).toList();
        }
    }

    private static void assertComplaint(String start, byte[] form) {
        List<String> told = complaints(form);
        assertTrue(told.size() == 1 && told.get(0).startsWith(start), start + "\n" + told);
    }

    // ---- changing a form as a spreadsheet program does

    private static byte[] edited(Consumer<Workbook> edit) {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(FORM)); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            edit.accept(book);
            book.write(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] answered(String key, String heading, Consumer<Cell> answer) {
        return edited(book -> answer.accept(cell(book, key, heading)));
    }

    private static Cell cell(Workbook book, String key, String heading) {
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (new DataFormatter().formatCellValue(cell).equals(key)) {
                        return row.getCell(column(sheet, heading), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
                    }
                }
            }
        }
        throw new AssertionError("No row has the key " + key);
    }

    /** The words with each {key/heading} replaced by the cell it stands for, and {} by that of the given key. */
    private static String located(String words, String key, String heading) {
        return Pattern.compile("\\{(?:([^/}]+)/(\\w+))?}").matcher(words).replaceAll(found -> Matcher.quoteReplacement(
                found.group(1) == null ? place(key, heading) : place(found.group(1), found.group(2))));
    }

    private static String place(String key, String heading) {
        Cell cell = cell(BOOK, key, heading);
        String sheet = cell.getSheet().getSheetName();
        return (sheet.contains(" ") ? "'" + sheet + "'" : sheet) + "!" + cell.getAddress();
    }

    private static int column(Sheet sheet, String heading) {
        for (Cell cell : sheet.getRow(1)) {
            if (cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("No column of " + sheet.getSheetName() + " is headed " + heading);
    }

    private static void format(Cell cell, String format) {
        CellStyle style = cell.getSheet().getWorkbook().createCellStyle();
        style.setDataFormat(cell.getSheet().getWorkbook().createDataFormat().getFormat(format));
        cell.setCellStyle(style);
    }

    // ---- changing the parts of a package

    private static Map<String, byte[]> unpacked(byte[] zip) {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), in.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    private static byte[] packed(Map<String, byte[]> parts) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream(); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
            zip.finish();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] changed(String part, UnaryOperator<String> change) {
        Map<String, byte[]> parts = unpacked(FORM);
        parts.put(part, change.apply(new String(parts.get(part), StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
        return packed(parts);
    }

    private static byte[] withPart(String name, byte[] content) {
        Map<String, byte[]> parts = unpacked(FORM);
        parts.put(name, content);
        return packed(parts);
    }

    // ---- answers

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "room.coldest | 31,5 | form.xlsx:{}: room.coldest: \"31,5 °F\" is no measured value; write a decimal point, not a comma",
        "room.coldest | 5 furlongs | form.xlsx:{}: room.coldest: ",
        "on | 2.11.2026 | form.xlsx:{}: on: found \"2.11.2026\"; a day of the calendar is written year-month-day",
        "room.sun | perhaps | form.xlsx:{}: room.sun: found \"perhaps\"; allowed are yes, no, not looked",
        "water.offered | dish; bucket | form.xlsx:{}: water.offered: found \"bucket\"; allowed are dish, drip, mist",
        "water.place | worm end | form.xlsx:{}: water.place: found \"worm end\"; did you mean \"warm end\"?",
        "water.place | along 3 in, along 4 in | form.xlsx:{}: water.place: \"along\" is said twice; say each once",
        "water.place | along 3, above 1 in | form.xlsx:{}: water.place.along: \"3\" has no unit; add one of mm, cm, m, in, ft",
        "substrate | perhaps | form.xlsx:{}: substrate: found \"perhaps\"; allowed are yes, not looked",
        "substrate | not looked | form.xlsx:{}: substrate: nobody looked, but more is said about it; clear one of the two",
        "format | 2 | form.xlsx:{}: format: this is format 2; this version reads format 1",
        "format | '' | form.xlsx:{format/Key}: format: the version of the form is missing; answer 1 in the row with the key format"})
    void an_answer_that_cannot_be_used_is_told_at_its_cell(String key, String answer, String told) {
        assertComplaint(located(told, key, "Answer"), answered(key, "Answer", cell -> cell.setCellValue(answer)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "heaters | 1 | yes | form.xlsx:{}: heaters: this says that there is nothing to list, but something is listed",
        "lamps[].between | 1 | some | form.xlsx:{}: lamps[0].between: this cannot be answered here; write \"none\"",
        "lamps[].between[].what | 3 | mesh | form.xlsx:{}: lamps[].between: it is not said which of the lamps this belongs to; the names are \"compact UV\"",
        "lamps[].between[] | 3 | tube | form.xlsx:{}: lamps[].between: none of the lamps has this name; the names are \"compact UV\"",
        "lamps[].between[] | 2 | compact UV | form.xlsx:{lamps[].between/1}: lamps[0].between: this says that there is nothing to list, but something is listed",
        "heaters[].name | 2 | warm panel | form.xlsx:{}: heaters[1].name: the name \"warm panel\" is given twice, first in {heaters[].name/1}",
        "furnishings[].kind | 6 | cave | form.xlsx:{}: furnishings[3].kind: found \"cave\"",
        "animals[].species | 1 | dragon | form.xlsx:{}: animals[0].species: the species \"dragon\" is not known"})
    void an_answer_about_one_of_several_things_is_told_at_its_cell(String key, String thing, String answer, String told) {
        List<String> complaints = complaints(answered(key, thing, cell -> cell.setCellValue(answer)));
        String located = located(told, key, thing);
        assertTrue(complaints.stream().anyMatch(one -> one.startsWith(located)), located + "\n" + complaints);
    }

    @Test
    void numbers_days_and_truths_of_a_spreadsheet_are_read_as_what_they_show() {
        Setup plain = usable(FORM);
        assertEquals(plain.room().coldest(), usable(answered("room.coldest", "Answer", cell -> cell.setCellValue(62))).room().coldest());
        assertEquals("31.5 °F", usable(answered("room.coldest", "Answer", cell -> cell.setCellValue(31.5))).told().answer("room.coldest").orElseThrow());
        assertEquals("0.1 °F", usable(answered("room.coldest", "Answer", cell -> cell.setCellValue(0.1))).told().answer("room.coldest").orElseThrow());
        assertEquals("yes", usable(answered("room.sun", "Answer", cell -> cell.setCellValue("yes"))).told().answer("room.sun").orElseThrow());
        assertEquals("true", usable(answered("room.sun", "Answer", cell -> cell.setCellValue(true))).told().answer("room.sun").orElseThrow());
        assertEquals("2026-10-30", usable(answered("on", "Answer", cell -> {
            cell.setCellValue(LocalDate.of(2026, 10, 30));
            format(cell, "d mmm yyyy");
        })).on().orElseThrow().toString());
        assertEquals("80 %", usable(answered("animals[].diet.plants", "1", cell -> {
            cell.setCellValue(0.8);
            format(cell, "0%");
        })).told().answer("animals[Quill].diet.plants").orElseThrow());
        assertEquals("12", usable(answered("animals[].name", "1", cell -> cell.setCellValue(12))).animals().get(0).name());
    }

    @Test
    void a_day_the_spreadsheet_made_of_another_answer_is_told() {
        assertComplaint(located("form.xlsx:{substrate.kind/Answer}: substrate.kind: the spreadsheet made the day 2026-05-03 of this answer; set the cell to text", "", ""),
                answered("substrate.kind", "Answer", cell -> {
                    cell.setCellValue(LocalDate.of(2026, 5, 3));
                    format(cell, "d-mmm");
                }));
    }

    @Test
    void days_counted_from_1904_are_the_same_days() {
        byte[] form = answered("on", "Answer", cell -> {
            cell.setCellValue(44_864);
            format(cell, "yyyy-mm-dd");
        });
        Map<String, byte[]> parts = unpacked(form);
        String book = new String(parts.get(WORKBOOK_XML), StandardCharsets.UTF_8);
        assertTrue(book.contains("date1904=\"false\"") || book.contains("<workbookPr"), book);
        parts.put(WORKBOOK_XML, book.replace("date1904=\"false\"", "").replace("<workbookPr", "<workbookPr date1904=\"1\"").getBytes(StandardCharsets.UTF_8));
        assertEquals("2026-10-31", usable(packed(parts)).on().orElseThrow().toString());
    }

    @Test
    void a_formula_counts_with_the_value_it_was_worked_out_to() {
        assertEquals(usable(FORM).enclosure().length(), usable(answered("enclosure.inside.length", "Answer", cell -> {
            cell.setCellFormula("2+2");
            cell.setCellValue(4);
        })).enclosure().length());
        assertComplaint(located("form.xlsx:{enclosure.inside.length/Answer}: enclosure.inside.length: the cell holds a formula that was never worked out", "", ""),
                answered("enclosure.inside.length", "Answer", cell -> {
                    cell.setBlank();
                    cell.setCellFormula("A1");
                }));
        assertComplaint(located("form.xlsx:{enclosure.inside.length/Answer}: enclosure.inside.length: the cell holds the error #DIV/0!; write the answer in place of the formula", "", ""),
                answered("enclosure.inside.length", "Answer", cell -> cell.setCellErrorValue(FormulaError.DIV0.getCode())));
    }

    // ---- rows and columns

    @Test
    void rows_columns_and_sheets_may_be_moved_hidden_and_noted_beside() {
        byte[] moved = edited(book -> {
            Sheet first = book.getSheet("First");
            first.shiftRows(2, first.getLastRowNum(), 3);
            first.getRow(8).setZeroHeight(true);
            book.setSheetHidden(book.getSheetIndex("Heaters"), true);
            book.setSheetOrder("Readings", 0);
            book.createSheet("My notes").createRow(0).createCell(0).setCellValue("Key to the shed hangs by the door");
        });
        assertEquals(usable(FORM), usable(moved));
    }

    @Test
    void a_column_for_one_more_thing_needs_its_number() {
        Consumer<Workbook> added = book -> {
            Sheet animals = book.getSheet("Heaters");
            int key = column(animals, "Key");
            animals.shiftColumns(key, key, 1);
            cell(book, "heaters[].name", "Key").getRow().createCell(key).setCellValue("mat");
        };
        assertComplaint("form.xlsx:Heaters!I4: heaters[].name: the column of this answer has no heading the form knows; head it with the number",
                edited(added));
        byte[] numbered = edited(added.andThen(book -> book.getSheet("Heaters").getRow(1).createCell(8).setCellValue(5)));
        assertEquals(List.of("warm panel", "mat"), usable(numbered).heaters().stream().map(heater -> heater.name()).toList());
        assertComplaint("form.xlsx:Heaters!I2: two columns are headed 4; give each column a number of its own",
                edited(book -> {
                    Sheet heaters = book.getSheet("Heaters");
                    heaters.getRow(1).getCell(column(heaters, "Key")).setCellValue("4");
                    heaters.getRow(1).createCell(9).setCellValue("Key");
                    heaters.forEach(row -> Optional.ofNullable(row.getCell(8)).filter(cell -> row.getRowNum() > 1).ifPresent(cell -> {
                        row.createCell(9).setCellValue(cell.getStringCellValue());
                        cell.setBlank();
                    }));
                }));
    }

    @Test
    void keys_that_are_wrong_missing_or_given_twice_are_told() {
        assertComplaint(located("form.xlsx:{room.coldest/Key}: the form asks nothing of the key \"room.coldst\"; did you mean \"room.coldest\"?", "", ""),
                answered("room.coldest", "Key", cell -> cell.setCellValue("room.coldst")));
        assertComplaint(located("form.xlsx:{room.coldest/Answer}: this row has no key; answer in the rows of the form", "", ""),
                answered("room.coldest", "Key", Cell::setBlank));
        assertComplaint(located("form.xlsx:{room.hottest/Key}: room.coldest: this question is asked twice, first in {room.coldest/Key}; keep one of the two rows", "", ""),
                answered("room.hottest", "Key", cell -> cell.setCellValue("room.coldest")));
        assertEquals(List.of("form.xlsx:First!C13: the cells C13:C14 are merged; split them, and answer in each cell on its own."),
                complaints(edited(book -> book.getSheet("First").addMergedRegion(new CellRangeAddress(12, 13, 2, 2)))));
    }

    @Test
    void a_form_nobody_filled_in_asks_for_the_name_of_the_animal() throws IOException {
        byte[] blank = FormWriter.write(FormAnswers.blank("pantherophis-guttatus", PLAN), "corn snake", BuiltIn.KNOWLEDGE.speciesNames(), PLAN);
        assertComplaint(located("form.xlsx:{animals[].species/1}: animals[0]: \"name\" is missing", "", ""), blank);
    }

    // ---- files

    @Test
    void files_that_are_no_form_say_what_they_are() throws IOException {
        assertComplaint("form.xlsx: this workbook is no form: no sheet of it has a column headed Key", Sample.workbook(Sample.audit()));
        assertComplaint("form.xlsx: this is no Excel workbook", new byte[0]);
        assertComplaint("form.xlsx: this is no Excel workbook", "{\"format\": 1}".getBytes(StandardCharsets.UTF_8));
        assertComplaint("form.xlsx: this is a packed file, but no Excel workbook", packed(Map.of("mimetype", new byte[] {1})));
        assertComplaint("form.xlsx: the workbook is broken: it cannot be unpacked", Arrays.copyOf(FORM, FORM.length / 2));
        assertComplaint("form.xlsx: this is an Office document, but no Excel workbook",
                changed(WORKBOOK_XML, xml -> xml.replaceAll("(</?)workbook(\\b)", "$1document$2")));
        assertComplaint("form.xlsx: the file is too large to be a form", Arrays.copyOf(FORM, JsonFile.MOST_BYTES + 1));
        try (POIFSFileSystem compound = new POIFSFileSystem(); ByteArrayOutputStream out = new ByteArrayOutputStream(); InputStream content = new ByteArrayInputStream(FORM)) {
            compound.createDocument(content, "EncryptedPackage");
            compound.writeFilesystem(out);
            assertComplaint("form.xlsx: the workbook is locked with a password, or of the older kind .xls", out.toByteArray());
        }
    }

    @Test
    void a_workbook_with_macros_is_read_and_they_are_not() {
        Map<String, byte[]> parts = unpacked(changed("[Content_Types].xml", xml -> xml.replace("spreadsheetml.sheet.main", "sheet.macroEnabled.main")));
        parts.put("xl/vbaProject.bin", new byte[] {1, 2, 3});
        assertEquals(usable(FORM), usable(packed(parts)));
    }

    @Test
    void what_swells_or_has_too_many_parts_is_not_unpacked_to_its_end() {
        assertComplaint("form.xlsx: the workbook unpacks to more than 30 megabytes", withPart("xl/media/bomb.bin", new byte[200_000_000]));
        Map<String, byte[]> many = unpacked(FORM);
        for (int i = 0; i < 1_000; i++) {
            many.put("xl/worksheets/extra" + i + ".xml", new byte[0]);
        }
        assertComplaint("form.xlsx: the workbook has more than 300 parts", packed(many));
        String sheets = IntStream.range(0, 1_000).mapToObj(i -> "<sheet name=\"s" + i + "\" sheetId=\"" + (i + 100) + "\" r:id=\"x" + i + "\"/>")
                .collect(Collectors.joining());
        assertComplaint("form.xlsx: the workbook has more than 100 sheets", changed(WORKBOOK_XML, xml -> xml.replace("</sheets>", sheets + "</sheets>")));
    }

    static List<String> heavySheets() {
        return List.of("<c t=\"str\"><v>x</v></c>".repeat(900_000), "<mergeCell ref=\"A1:B2\"/>".repeat(900_000), "<c r=\"A1\" t=\"s\"><v>1</v></c>".repeat(700_000));
    }

    @ParameterizedTest
    @MethodSource("heavySheets")
    void more_cells_than_a_form_has_end_the_reading(String cells) {
        assertComplaint("form.xlsx: the sheet My notes has more cells than a form can have", notes("<sheetData><row r=\"1\">" + cells + "</row></sheetData>"));
    }

    @Test
    void a_million_empty_rows_and_six_million_empty_texts_are_passed_over() {
        assertEquals(usable(FORM), usable(notes("<sheetData>" + "<row r=\"9\"/>".repeat(1_048_576) + "</sheetData>")));
        assertEquals(usable(FORM), usable(changed("xl/sharedStrings.xml", xml -> xml.replace("</sst>", "<si/>".repeat(5_500_000) + "</sst>"))));
    }

    /** The form with one more sheet. */
    private static byte[] notes(String content) {
        byte[] form = edited(book -> book.createSheet("My notes").createRow(0).createCell(0).setCellValue("!"));
        Map<String, byte[]> parts = unpacked(form);
        String last = parts.keySet().stream().filter(name -> name.matches("xl/worksheets/sheet\\d+.xml")).max(Comparator.comparingInt(FormBadInputTest::number)).orElseThrow();
        parts.put(last, ("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">" + content + "</worksheet>").getBytes(StandardCharsets.UTF_8));
        return packed(parts);
    }

    private static int number(String part) {
        return Integer.parseInt(part.replaceAll("\\D", ""));
    }

    @Test
    void entities_of_its_own_and_files_it_names_are_not_read() {
        String secret = Path.of("README.md").toUri().toString();
        byte[] named = changed("xl/sharedStrings.xml", xml -> xml.replaceFirst("(?s)(<\\?xml.*?\\?>)?\\s*<sst", "<!DOCTYPE sst [<!ENTITY x SYSTEM \"" + secret + "\">]><sst")
                .replaceFirst("<si>.*?</si>", "<si><t>&x;</t></si>"));
        assertFalse(complaints(named).toString().contains("Loamlight checks"), complaints(named).toString());
        byte[] laughs = changed("xl/sharedStrings.xml", xml -> xml.replaceFirst("(?s)(<\\?xml.*?\\?>)?\\s*<sst",
                "<!DOCTYPE sst [<!ENTITY a \"" + "ha".repeat(1_000) + "\"><!ENTITY b \"" + "&a;".repeat(1_000) + "\"><!ENTITY c \"" + "&b;".repeat(1_000) + "\">]><sst")
                .replaceFirst("<si>.*?</si>", "<si><t>&c;</t></si>"));
        assertTrue(complaints(laughs).size() <= 1, complaints(laughs).toString());
    }

    // ---- anything at all

    @Test
    void whatever_is_done_to_a_form_it_is_read_or_complained_about_and_nothing_is_printed() {
        PrintStream err = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            damageForms();
        } finally {
            System.setErr(err);
        }
        assertEquals("", printed.toString(StandardCharsets.UTF_8));
    }

    private static void damageForms() {
        List<String> texts = List.of("", "=1+1", "31,5", "none", "yes", "not looked", "x".repeat(40_000), "\u202E", "along", "1", "-1", "1e999 cm", "2026-02-30", "4 ft 2 in", "#REF!", ";;;");
        int told = 0;
        Map<String, byte[]> parts = unpacked(FORM);
        List<String> names = new ArrayList<>(parts.keySet());
        for (int seed = 0; seed < MUTATIONS; seed++) {
            byte[] damaged = damaged(new Random(seed), parts, names, texts);
            try {
                List<String> complaints = complaints(damaged);
                told += complaints.isEmpty() ? 0 : 1;
                complaints.forEach(text -> assertTrue(text.length() < 2_000 && text.codePoints().noneMatch(Character::isISOControl), text));
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("seed " + seed, e);
            }
        }
        assertTrue(told > MUTATIONS / 4 && told < MUTATIONS, "complained about: " + told);
    }

    /** One time in three the packed bytes are damaged, else a part: in its bytes, its numbers or its texts. */
    private static byte[] damaged(Random random, Map<String, byte[]> parts, List<String> names, List<String> texts) {
        if (random.nextInt(3) == 0) {
            return flipped(random, FORM);
        }
        Map<String, byte[]> damaged = new TreeMap<>(parts);
        String name = names.get(random.nextInt(names.size()));
        String xml = new String(parts.get(name), StandardCharsets.UTF_8);
        String text = texts.get(random.nextInt(texts.size())).replace("<", "");
        int at = random.nextInt(xml.length());
        damaged.put(name, switch (random.nextInt(4)) {
            case 0 -> flipped(random, parts.get(name));
            case 1 -> (xml.substring(0, at) + xml.substring(at).replaceFirst(">[^<]+<", ">" + text + "<")).getBytes(StandardCharsets.UTF_8);
            case 2 -> (xml.substring(0, at) + xml.substring(at).replaceFirst("\"[^\"]*\"", "\"" + random.nextInt(300) + "\"")).getBytes(StandardCharsets.UTF_8);
            default -> (xml.substring(0, at) + xml.substring(Math.min(xml.length(), at + random.nextInt(200)))).getBytes(StandardCharsets.UTF_8);
        });
        return packed(damaged);
    }

    private static byte[] flipped(Random random, byte[] bytes) {
        byte[] flipped = bytes.clone();
        for (int i = random.nextInt(4); i >= 0; i--) {
            flipped[random.nextInt(flipped.length)] = (byte) random.nextInt(256);
        }
        return flipped;
    }
}
