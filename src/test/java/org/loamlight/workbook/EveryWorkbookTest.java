package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.criterion.CodeReader;
import org.loamlight.criterion.HouseRulesReader;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Waivers;
import org.loamlight.drawing.Drawn;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.evaluation.MadeUpCodes;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Question;
import org.loamlight.setup.Setup;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;
import org.loamlight.workbook.visit.Headings;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * What holds of every sheet of every workbook the program makes. What is asked of tables, titles, headers and pictures follows the checklist of the UK
 * Government Analysis Function, "Making spreadsheets accessible" (marked-up tables, one header row, no merged cells, no blank rows, title in A1,
 * alternative text).
 */
class EveryWorkbookTest {
    private static final int LONGEST_SHEET_NAME = 31;
    private static final int LONGEST_LIST = 255;
    private static final Set<String> OBJECTS = Set.of("sp", "grpSp", "graphicFrame", "cxnSp", "pic");

    private record Made(String name, Supplier<byte[]> bytes) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Made> workbooks() {
        Stream<Made> checklists = Drawn.examples().stream().map(example -> new Made("checklist of " + example, () -> Sample.workbook(Drawn.example(example))));
        Stream<Made> others = Stream.of(
                new Made("checklist with every kind of finding", () -> Sample.workbook(Sample.audit())),
                new Made("checklist without any finding", () -> Sample.workbook(Sample.empty())),
                new Made("checklist of a setup that tells nothing", () -> Sample.workbook(Drawn.audit("""
                        {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"}]}"""))),
                new Made("checklist with made-up codes", () -> Sample.workbook(MadeUpCodes.audit(MadeUpCodes.BOX, MadeUpCodes.LAW, MadeUpCodes.CLUB))),
                new Made("checklist with every code, house rules and waivers", () -> Sample.workbook(withAll())),
                new Made("form of an example", () -> EditedForm.FORM),
                new Made("form with every question answered", () -> FormRoundTripTest.form(FormRoundTripTest.document(new GeneratedSetup(1).json()))),
                new Made("blank form", () -> blank("testudo-hermanni")));
        return Stream.concat(checklists, others);
    }

    private static Audit withAll() {
        try {
            Setup setup = BuiltIn.setup(Files.readString(Path.of("examples/club-corn-snake.json")));
            Path house = Path.of("examples/house");
            Knowledge knowledge = BuiltIn.KNOWLEDGE.withHouse(HouseRulesReader.read("house", Files.readAllBytes(house.resolve("wending-vale.json")), BuiltIn.KNOWLEDGE))
                    .withCodes(CodeReader.builtIn(CodeReader.ids()), setup.species());
            Waivers waivers = Waivers.read("waivers", Files.readAllBytes(house.resolve("wending-vale-waivers.json")), knowledge);
            return new Auditor(knowledge, BuiltIn.RULES).audit(setup, BuiltIn.ON).with(waivers);
        } catch (IOException | ProblemsFound e) {
            throw new AssertionError(e);
        }
    }

    private static byte[] blank(String species) {
        try {
            return FormWriter.write(FormAnswers.blank(species, EditedForm.PLAN), species, BuiltIn.KNOWLEDGE.speciesNames(), EditedForm.PLAN);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("workbooks")
    void every_workbook_can_be_read_printed_heard_and_filled_in(Made made) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(made.bytes.get()))) {
            List<XSSFSheet> sheets = IntStream.range(0, book.getNumberOfSheets()).mapToObj(book::getSheetAt).toList();
            assertAll(Stream.concat(Stream.of(() -> namesAreUniqueAndFit(book, sheets)), sheets.stream().map(sheet -> () -> assertAll(sheet.getSheetName(),
                    () -> titleStandsAlone(sheet), () -> headersStayInSightAndArePrinted(sheet), () -> cellsHoldValuesOnly(sheet),
                    () -> tablesHaveOneHeaderRowAndNoBlankOne(sheet), () -> wordsAreChosenFromListsInForce(sheet), () -> listsAreUsable(sheet),
                    () -> picturesAndChartsAreDescribed(sheet)))));
        }
    }

    private static void namesAreUniqueAndFit(XSSFWorkbook book, List<XSSFSheet> sheets) {
        Set<String> names = new HashSet<>();
        Set<String> tables = new HashSet<>();
        for (XSSFSheet sheet : sheets) {
            String name = sheet.getSheetName();
            assertTrue(name.length() <= LONGEST_SHEET_NAME && name.matches("[^\\[\\]:*?/\\\\']+") && names.add(name.toLowerCase(Locale.ROOT)), name);
            assertFalse(book.isSheetHidden(book.getSheetIndex(sheet)) || book.isSheetVeryHidden(book.getSheetIndex(sheet)), name);
            for (XSSFTable table : sheet.getTables()) {
                assertTrue(table.getName().matches("(?![A-Za-z]{1,3}\\d+$)[A-Za-z_]\\w+") && tables.add(table.getName().toLowerCase(Locale.ROOT)), table.getName());
                assertEquals(table.getName(), table.getDisplayName());
            }
        }
    }

    private static void titleStandsAlone(XSSFSheet sheet) {
        assertEquals(1, sheet.getRow(0).getPhysicalNumberOfCells());
        assertFalse(sheet.getRow(0).getCell(0).getStringCellValue().isBlank());
    }

    private static void headersStayInSightAndArePrinted(XSSFSheet sheet) {
        assertNotNull(sheet.getRepeatingRows(), "rows printed on every page");
        assertEquals(0, sheet.getRepeatingRows().getFirstRow());
        int headers = startsWithTable(sheet) ? SheetWriter.FIRST_ROW : 1;
        assertEquals(headers, sheet.getRepeatingRows().getLastRow() + 1);
        assertNotNull(sheet.getPaneInformation(), "frozen pane");
        assertTrue(sheet.getPaneInformation().isFreezePane());
        assertEquals(headers, sheet.getPaneInformation().getHorizontalSplitTopRow());
    }

    private static boolean startsWithTable(XSSFSheet sheet) {
        return sheet.getTables().stream().anyMatch(table -> table.getStartRowIndex() < SheetWriter.FIRST_ROW);
    }

    private static void cellsHoldValuesOnly(XSSFSheet sheet) {
        assertEquals(0, sheet.getNumMergedRegions(), "merged cells");
        for (Row row : sheet) {
            for (Cell cell : row) {
                String at = cell.getAddress().toString();
                assertTrue(cell.getCellType() != CellType.FORMULA && cell.getCellType() != CellType.ERROR, at);
                assertTrue(cell.getCellType() == CellType.STRING || cell.getCellType() == CellType.BLANK || !cell.getCellStyle().getDataFormatString().equals("@"),
                        at + " is set to text and holds none: spreadsheet programs make something else of it");
            }
        }
    }

    /** The numbers of a chart stand in cells of their own below it; on every other sheet there is one table. */
    private static void tablesHaveOneHeaderRowAndNoBlankOne(XSSFSheet sheet) {
        boolean hasCharts = sheet.getSheetName().equals(ChartSheet.NAME);
        assertEquals(hasCharts ? 0 : 1, sheet.getTables().size());
        for (XSSFTable table : sheet.getTables()) {
            assertEquals(1, table.getHeaderRowCount());
            assertEquals(0, table.getStartColIndex());
            assertEquals(sheet.getLastRowNum(), table.getEndRowIndex());
            assertHeaders(table, sheet.getRow(table.getStartRowIndex()));
            for (int i = table.getStartRowIndex(); i <= table.getEndRowIndex(); i++) {
                List<String> texts = new ArrayList<>();
                sheet.getRow(i).forEach(cell -> texts.add(cell.toString()));
                assertFalse(String.join("", texts).isBlank(), "row " + (i + 1));
            }
            assertEquals(table.getCTTable().getRef(), table.getCTTable().getAutoFilter().getRef());
        }
        assertFalse(sheet.getCTWorksheet().isSetAutoFilter(), "a second filter beside that of the table");
    }

    private static void assertHeaders(XSSFTable table, XSSFRow row) {
        Set<String> headers = new HashSet<>();
        for (int i = 0; i < table.getColumnCount(); i++) {
            String header = row.getCell(i).getStringCellValue();
            assertEquals(table.getColumns().get(i).getName(), header);
            assertTrue(!header.isBlank() && headers.add(header.toLowerCase(Locale.ROOT)), header);
        }
        assertEquals(table.getColumnCount(), row.getLastCellNum());
    }

    private static void wordsAreChosenFromListsInForce(XSSFSheet sheet) {
        List<CellRangeAddress> lists = sheet.getDataValidations().stream().flatMap(list -> Stream.of(list.getRegions().getCellRangeAddresses())).toList();
        answeredByWords(sheet).forEach(cell -> assertTrue(lists.stream().anyMatch(range -> range.isInRange(cell)), cell.getAddress() + " has no list"));
    }

    /** On a checklist what has become of a point and what the walk asks, in a form whatever its plan offers words or units for. */
    private static List<Cell> answeredByWords(XSSFSheet sheet) {
        List<Cell> cells = new ArrayList<>();
        for (XSSFTable table : sheet.getTables()) {
            boolean isForm = table.findColumnIndex(FormPlan.HOW) >= 0 && table.findColumnIndex(FormPlan.KEY) >= 0;
            int key = isForm || table.findColumnIndex(Headings.NOW) >= 0 && table.findColumnIndex(Headings.STOP) >= 0 ? table.findColumnIndex(FormPlan.KEY) : -1;
            for (int i = table.getStartRowIndex() + 1; i <= table.getEndRowIndex(); i++) {
                XSSFRow row = sheet.getRow(i);
                Optional<Question> question = key < 0 ? Optional.empty() : question(row.getCell(key).getStringCellValue());
                assertTrue(!isForm || question.isPresent(), "row " + (i + 1));
                row.forEach(cell -> {
                    String header = table.getColumns().get(cell.getColumnIndex()).getName();
                    boolean isState = header.equals("State") && cell.getCellType() != CellType.BLANK;
                    if (question.map(asked -> isOfWords(asked, header, table.findColumnIndex("2") >= 0)).orElse(isState)) {
                        cells.add(cell);
                    }
                });
            }
        }
        return cells;
    }

    /** The key of a form is the question itself, that of a walk names the part where the question has empty brackets; what is new there is written freely. */
    private static Optional<Question> question(String key) {
        return key.endsWith("[new]") ? Optional.empty() : EditedForm.PLAN.question(key).or(() -> EditedForm.PLAN.question(key.replaceAll("\\[[^]]*]", "[]")));
    }

    /** @param isListOfThings whether each thing has a column headed by its number; that there are none is answered in the first of them */
    private static boolean isOfWords(Question question, String header, boolean isListOfThings) {
        if (header.equals(Headings.KNOWN_BY)) {
            return true;
        }
        if (header.equals(FormPlan.UNIT)) {
            return question.units().size() > 1;
        }
        boolean isAnswer = isListOfThings && question.list().isEmpty() ? header.equals("1") : header.equals(FormPlan.ANSWER) || header.equals(Headings.NOW) || header.matches("\\d+");
        boolean isName = question.path().equals("animals[].species") || EditedForm.PLAN.owner(question.list()).filter(question::equals).isPresent();
        return isAnswer && (isName || !FormWords.choices(question).isEmpty());
    }

    private static void listsAreUsable(XSSFSheet sheet) {
        for (DataValidation list : sheet.getDataValidations()) {
            DataValidationConstraint choices = list.getValidationConstraint();
            assertEquals(DataValidationConstraint.ValidationType.LIST, choices.getValidationType());
            assertTrue(list.getShowErrorBox() && list.getErrorStyle() == DataValidation.ErrorStyle.STOP, "in force");
            if (choices.getExplicitListValues() == null) {
                AreaReference cells = new AreaReference(choices.getFormula1(), SpreadsheetVersion.EXCEL2007);
                XSSFSheet named = sheet.getWorkbook().getSheet(cells.getFirstCell().getSheetName());
                assertTrue(cells.getLastCell().getRow() <= named.getLastRowNum(), choices.getFormula1());
            } else {
                assertTrue(choices.getExplicitListValues().length > 1 && String.join(",", choices.getExplicitListValues()).length() <= LONGEST_LIST);
            }
        }
    }

    private static void picturesAndChartsAreDescribed(XSSFSheet sheet) throws IOException, ParserConfigurationException, SAXException {
        if (sheet.getDrawingPatriarch() == null) {
            return;
        }
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document part = factory.newDocumentBuilder().parse(sheet.getDrawingPatriarch().getPackagePart().getInputStream());
        NodeList anchors = part.getDocumentElement().getChildNodes();
        assertTrue(anchors.getLength() > 0, "a drawing without anything in it");
        for (int i = 0; i < anchors.getLength(); i++) {
            NodeList parts = anchors.item(i).getChildNodes();
            List<Element> objects = IntStream.range(0, parts.getLength()).mapToObj(parts::item).filter(EveryWorkbookTest::isObject).map(Element.class::cast).toList();
            assertEquals(1, objects.size());
            Element properties = (Element) objects.get(0).getElementsByTagNameNS("*", "cNvPr").item(0);
            assertFalse(properties.getAttribute("descr").isBlank() || properties.getAttribute("name").isBlank(), "object " + (i + 1));
        }
    }

    private static boolean isObject(Node node) {
        return node instanceof Element && OBJECTS.contains(node.getLocalName());
    }
}
