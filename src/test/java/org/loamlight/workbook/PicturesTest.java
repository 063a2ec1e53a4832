package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.drawing.Chart;
import org.loamlight.drawing.Charts;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Drawn;
import org.loamlight.drawing.Numbers;
import org.loamlight.evaluation.Audit;
import org.loamlight.ranking.Ranking;
import org.openxmlformats.schemas.drawingml.x2006.main.CTNonVisualDrawingProps;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTOneCellAnchor;

/** The sheets of pictures and charts. */
class PicturesTest {
    private static final double EMU = 36_000;

    private static byte[] workbook(Audit audit) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Checklist.write(audit, Ranking.of(audit.findings()), Drawn.METRIC, Sample.CARRIED, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static XSSFWorkbook open(byte[] bytes) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    static List<String> examples() {
        return Drawn.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_picture_is_a_group_in_its_true_size_with_its_description(String example) throws IOException {
        Audit audit = Drawn.example(example);
        Drawing drawing = Drawing.of(audit, Drawn.METRIC, Numbers.ofWorkbook(Ranking.of(audit.findings())));
        try (XSSFWorkbook book = open(workbook(audit))) {
            List<CTOneCellAnchor> anchors = book.getSheet("Drawing").getDrawingPatriarch().getCTDrawing().getOneCellAnchorList();
            assertEquals(drawing.pictures().size(), anchors.size());
            for (int i = 0; i < anchors.size(); i++) {
                CTNonVisualDrawingProps props = anchors.get(i).getGrpSp().getNvGrpSpPr().getCNvPr();
                assertEquals(drawing.pictures().get(i).description(), props.getDescr());
                assertFalse(props.getDescr().isBlank());
                assertEquals(Math.round(drawing.pictures().get(i).width() * EMU), anchors.get(i).getExt().getCx());
                assertEquals(Math.round(drawing.pictures().get(i).height() * EMU), anchors.get(i).getExt().getCy());
                int drawn = anchors.get(i).getGrpSp().getSpList().size() + anchors.get(i).getGrpSp().getCxnSpList().size();
                assertEquals(drawing.pictures().get(i).shapes().size(), drawn);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void pictures_lie_on_empty_rows_and_the_list_below_holds_every_part(String example) throws IOException {
        Audit audit = Drawn.example(example);
        Drawing drawing = Drawing.of(audit, Drawn.METRIC, Numbers.ofWorkbook(Ranking.of(audit.findings())));
        try (XSSFWorkbook book = open(workbook(audit))) {
            XSSFSheet sheet = book.getSheet("Drawing");
            List<CTOneCellAnchor> anchors = sheet.getDrawingPatriarch().getCTDrawing().getOneCellAnchorList();
            for (CTOneCellAnchor anchor : anchors) {
                double left = anchor.getExt().getCy() / EMU * 72 / 25.4;
                for (int row = anchor.getFrom().getRow(); left > 0; row++) {
                    assertEquals(0, sheet.getRow(row).getPhysicalNumberOfCells(), "row " + row + " lies beneath a picture");
                    left -= sheet.getRow(row).getHeightInPoints();
                }
            }
            XSSFTable marks = sheet.getTables().get(0);
            assertEquals(drawing.rows().size(), marks.getEndRowIndex() - marks.getStartRowIndex());
            IntStream.range(0, drawing.rows().size()).forEach(i -> assertEquals(drawing.rows().get(i).part().key(),
                    sheet.getRow(marks.getStartRowIndex() + 1 + i).getCell(0).getStringCellValue()));
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_chart_has_its_description_and_the_numbers_it_is_drawn_of(String example) throws IOException {
        Audit audit = Drawn.example(example);
        List<Chart> charts = Charts.of(audit, Drawn.METRIC);
        try (XSSFWorkbook book = open(workbook(audit))) {
            XSSFDrawing drawing = book.getSheet("Charts").createDrawingPatriarch();
            List<XSSFChart> drawn = drawing.getCharts();
            assertEquals(charts.size(), drawn.size());
            for (int i = 0; i < drawn.size(); i++) {
                assertEquals(charts.get(i).description(),
                        drawing.getCTDrawing().getTwoCellAnchorList().get(i).getGraphicFrame().getNvGraphicFramePr().getCNvPr().getDescr());
                assertEquals(charts.get(i).title(), drawn.get(i).getTitleText().toString());
            }
        }
    }

    @Test
    void a_setup_that_tells_nothing_says_so_on_both_sheets() throws IOException {
        try (XSSFWorkbook book = open(workbook(Drawn.audit("{\"format\": 1, \"animals\": [{\"name\": \"Bracken\", \"species\": \"pantherophis-guttatus\"}]}")))) {
            assertTrue(text(book.getSheet("Drawing")).contains("Nothing is drawn to scale"), text(book.getSheet("Drawing")));
            assertTrue(text(book.getSheet("Drawing")).contains("No part is told"));
            assertTrue(text(book.getSheet("Charts")).contains("No chart:"));
        }
    }

    private static String text(XSSFSheet sheet) {
        StringBuilder text = new StringBuilder();
        sheet.forEach(row -> row.forEach(cell -> text.append(cell).append('\n')));
        return text.toString();
    }

    @Test
    void names_that_would_break_the_file_or_begin_a_formula_stay_text() throws IOException {
        String name = "=<b>&'\\\"\u202E" + "W".repeat(240);
        Audit audit = Drawn.audit("""
                {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"}],
                 "enclosure": {"title": "%1$s", "inside": {"length": "100 cm", "depth": "50 cm", "height": "40 cm"}},
                 "furnishings": [{"name": "%1$s", "kind": "hide", "from": "10 cm", "to": "30 cm", "from-front": "10 cm", "to-front": "30 cm"}]}
                """.formatted(name));
        try (XSSFWorkbook book = open(workbook(audit))) {
            XSSFSheet sheet = book.getSheet("Drawing");
            int first = sheet.getTables().get(0).getStartRowIndex() + 1;
            String shown = sheet.getRow(first).getCell(1).getStringCellValue();
            assertTrue(shown.startsWith("=<b>&'\"\uFFFDWWW"), shown);
            assertTrue(sheet.getRow(first).getCell(1).getCellStyle().getQuotePrefixed());
            book.sheetIterator().forEachRemaining(one -> one.forEach(row -> row.forEach(cell ->
                    assertFalse(cell.getCellType() == org.apache.poi.ss.usermodel.CellType.FORMULA))));
        }
    }

    @Test
    void the_same_audit_gives_the_same_bytes_in_any_locale() {
        Audit audit = Drawn.example("home-bearded-dragon");
        byte[] first = workbook(audit);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertArrayEquals(first, workbook(audit));
        } finally {
            Locale.setDefault(before);
        }
    }
}
