package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertIterableEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loamlight.drawing.Chart;
import org.loamlight.drawing.Charts;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Drawn;
import org.loamlight.drawing.Numbers;
import org.loamlight.drawing.Picture;
import org.loamlight.evaluation.Audit;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonPrinter;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.workbook.cells.Cell;
import org.loamlight.workbook.cells.CellReader;
import org.loamlight.workbook.cells.NoWorkbook;
import org.loamlight.workbook.cells.ReadingLimits;
import org.loamlight.workbook.cells.Sheet;
import org.loamlight.workbook.visit.Amendment;
import org.loamlight.workbook.visit.Visit;
import org.loamlight.workbook.visit.VisitReader;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The workbooks in a spreadsheet program that is none of our libraries: LibreOffice opens and saves them. Skipped where there is none, unless
 * {@code -Ddesktop=required}.
 */
class DesktopTest {
    private static final long SECONDS = 300;
    private static final String OPEN_DOCUMENT = "fods";
    private static final String EXCEL = "xlsx";
    private static final String FILLED = "filled.xlsx";
    private static final Audit AUDIT = Drawn.example("home-bearded-dragon");
    /** Names that a spreadsheet program would take for a formula, a number, a day, a truth, a part of a whole or an escape. */
    private static final List<String> AWKWARD = List.of("=1+1", "-3", "@sum", "3-5", "31,5", "007", "1e5", "TRUE", "1/2", "2026-11-02", "100 %", "_x0041_",
            "\u98fc\u80b2 \ud83e\udd8e", "a; b, c");

    @TempDir
    static Path folder;

    @BeforeAll
    static void open_and_save() throws IOException, InterruptedException {
        String missing = "LibreOffice (soffice) was not found: what it makes of the workbooks is not tested.";
        Optional<Path> office = office();
        if (office.isEmpty()) {
            assertNotEquals("required", System.getProperty("desktop"), missing);
            System.out.println(missing);
            Assumptions.abort(missing);
        }
        List<String> files = List.of("form.xlsx", "awkward.xlsx", "checklist.xlsx", FILLED);
        Files.write(folder.resolve(files.get(0)), EditedForm.FORM);
        Files.write(folder.resolve(files.get(1)), FormRoundTripTest.form(FormRoundTripTest.document(awkward())));
        Files.write(folder.resolve(files.get(2)), Sample.workbook(AUDIT));
        Files.write(folder.resolve(files.get(3)), filled());
        convert(office.get(), EXCEL, files);
        convert(office.get(), OPEN_DOCUMENT, files.subList(2, 3));
    }

    private static Optional<Path> office() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(Pattern.quote(File.pathSeparator)))
                .flatMap(path -> Stream.of(Path.of(path, "soffice"), Path.of(path, "soffice.exe"))).filter(Files::isExecutable).findFirst();
    }

    private static void convert(Path office, String format, List<String> files) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(office.toString(), "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless", "--convert-to",
                format, "--outdir", folder.resolve(format).toString()));
        files.forEach(file -> command.add(folder.resolve(file).toString()));
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
        boolean isDone = process.waitFor(SECONDS, TimeUnit.SECONDS);
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        assertTrue(isDone, "LibreOffice was not done after " + SECONDS + " s: " + Files.readString(said));
        files.forEach(file -> assertTrue(Files.exists(saved(file, format)), () -> file + " was not saved again: " + text(said)));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Path saved(String file, String format) {
        return folder.resolve(format).resolve(file.replaceFirst("\\w+$", format));
    }

    private static byte[] saved(String file) throws IOException {
        return Files.readAllBytes(saved(file, EXCEL));
    }

    private static String awkward() {
        String readings = AWKWARD.stream().map(name -> "{\"name\": \"" + name + "\", \"of\": \"humidity\", \"value\": \"55 %\", \"on\": \"2026-11-02\"}").collect(Collectors.joining(", "));
        return "{\"format\": 1, \"title\": \"=1+1\", \"animals\": [{\"name\": \"TRUE\", \"species\": \"pantherophis-guttatus\", \"length\": \"1e2 cm\"}], "
                + "\"room\": {\"sun\": true, \"cooling\": false, \"latitude\": \"-34 °\"}, \"readings\": [" + readings + "]}";
    }

    private static byte[] filled() {
        return FilledChecklist.of(FilledChecklist.made(FilledChecklist.document(Path.of("examples", "foster-corn-snake.json")))).visited("2026-11-20", "A. Visitor")
                .number("enclosure.openings[gap under the lid].gap", 4).answer("room.sun", "no").bytes();
    }

    @Test
    void a_checklist_that_was_filled_in_is_read_alike_after_saving() throws IOException, ProblemsFound {
        assertEquals(visit(filled()), visit(saved(FILLED)));
    }

    private static List<String> visit(byte[] checklist) throws ProblemsFound {
        Visit visit = VisitReader.read(checklist, new Problems("checklist.xlsx"));
        JsonValue.JsonObject setup = (JsonValue.JsonObject) JsonFile.read(visit.recorded().orElseThrow().setup().getBytes(StandardCharsets.UTF_8), new Problems("record"));
        Amendment.Result after = Amendment.of(visit, setup, FilledChecklist.setup(setup), LocalDate.of(2026, 11, 20), new Problems("checklist.xlsx"));
        return List.of(visit.recorded().orElseThrow().toString(), visit.by(), after.history().toString(), JsonPrinter.print(after.setup()));
    }

    @Test
    void forms_come_back_as_they_were() throws IOException {
        assertEquals(EditedForm.usable(EditedForm.FORM), EditedForm.usable(saved("form.xlsx")));
        assertEquals(FormRoundTripTest.setup(FormRoundTripTest.document(awkward())), EditedForm.usable(saved("awkward.xlsx")));
    }

    @Test
    void every_sheet_keeps_its_cells() throws IOException, NoWorkbook {
        for (String file : List.of("form.xlsx", "awkward.xlsx", "checklist.xlsx")) {
            List<Sheet> before = sheets(Files.readAllBytes(folder.resolve(file)));
            List<Sheet> after = sheets(saved(file));
            assertEquals(before.stream().map(Sheet::name).toList(), after.stream().map(Sheet::name).toList());
            IntStream.range(0, before.size()).forEach(i -> assertIterableEquals(cells(before.get(i)), cells(after.get(i)), file));
        }
    }

    private static List<Sheet> sheets(byte[] workbook) throws NoWorkbook {
        return CellReader.read(workbook, new ReadingLimits(30, 30, 50_000));
    }

    private static List<Cell> cells(Sheet sheet) {
        return sheet.rows().stream().flatMap(List::stream).toList();
    }

    @Test
    void tables_drop_downs_and_print_titles_are_kept() throws IOException {
        for (String file : List.of("form.xlsx", "checklist.xlsx")) {
            try (XSSFWorkbook before = open(Files.readAllBytes(folder.resolve(file))); XSSFWorkbook after = open(saved(file))) {
                for (int i = 0; i < before.getNumberOfSheets(); i++) {
                    assertEquals(structure(before.getSheetAt(i)), structure(after.getSheetAt(i)));
                }
            }
        }
    }

    private static XSSFWorkbook open(byte[] workbook) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(workbook));
    }

    /** Sorted, for LibreOffice writes drop-downs in an order of its own. */
    private static List<String> structure(XSSFSheet sheet) {
        Stream<String> tables = sheet.getTables().stream().map(table -> table.getName() + " " + table.getCTTable().getRef());
        Stream<String> choices = sheet.getDataValidations().stream().map(DesktopTest::choice);
        return Stream.of(Stream.of(sheet.getSheetName(), String.valueOf(sheet.getRepeatingRows())), tables.sorted(), choices.sorted()).flatMap(part -> part).toList();
    }

    private static String choice(DataValidation choice) {
        String[] words = choice.getValidationConstraint().getExplicitListValues();
        return choice.getRegions().getCellRangeAddress(0).formatAsString() + " " + choice.getShowErrorBox() + " "
                + (words == null ? choice.getValidationConstraint().getFormula1() : List.of(words));
    }

    @Test
    void pictures_and_charts_are_kept() throws IOException {
        try (XSSFWorkbook book = open(saved("checklist.xlsx"))) {
            assertEquals(pictures().size(), book.getSheet("Drawing").getDrawingPatriarch().getCTDrawing().sizeOfTwoCellAnchorArray());
            assertEquals(charts().stream().map(Chart::title).toList(), book.getSheet("Charts").getDrawingPatriarch().getCharts().stream()
                    .map(chart -> chart.getTitleText().toString()).toList());
        }
    }

    /**
     * LibreOffice 7.4 knows the descriptions of charts, of groups of shapes only their names. It writes neither description into a workbook of the Excel
     * kind, so its own format is asked.
     */
    @Test
    void charts_keep_their_descriptions_and_pictures_their_names() throws IOException, ParserConfigurationException, SAXException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(saved("checklist.xlsx", OPEN_DOCUMENT).toFile());
        NodeList described = document.getElementsByTagNameNS("urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0", "desc");
        Set<String> descriptions = IntStream.range(0, described.getLength()).mapToObj(i -> described.item(i).getTextContent()).collect(Collectors.toSet());
        assertTrue(descriptions.containsAll(charts().stream().map(Chart::description).toList()), descriptions.toString());
        String drawing = "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0";
        NodeList groups = document.getElementsByTagNameNS(drawing, "g");
        assertEquals(pictures().stream().map(Picture::title).toList(),
                IntStream.range(0, groups.getLength()).mapToObj(i -> ((Element) groups.item(i)).getAttributeNS(drawing, "name"))
                        .filter(name -> !name.isEmpty()).toList());
    }

    private static List<Chart> charts() {
        List<Chart> charts = Charts.of(AUDIT, Drawn.METRIC);
        assertTrue(charts.size() > 1, charts.toString());
        return charts;
    }

    private static List<Picture> pictures() {
        List<Picture> pictures = Drawing.of(AUDIT, Drawn.METRIC, Numbers.ofWorkbook(Ranking.of(AUDIT.findings()))).pictures();
        assertTrue(pictures.size() > 1, pictures.toString());
        return pictures;
    }
}
