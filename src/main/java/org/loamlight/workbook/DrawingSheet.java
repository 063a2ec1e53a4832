package org.loamlight.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlOptions;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Part;
import org.loamlight.drawing.Picture;
import org.loamlight.wording.TextLines;
import org.loamlight.wording.Wording;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTDrawing;

/** The sheet with the enclosure drawn to scale: the pictures over empty rows, what is to be known of them, and the list of every mark. */
final class DrawingSheet {
    static final String NAME = "Drawing";
    /** So wide that the sheet fits on upright A4 without being made smaller: the scale stays true on paper. In digits. */
    private static final int[] WIDTHS = {7, 26, 40, 11, 11};
    private static final double WIDTH_MILLIMETRES = 172;
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    private static final double FONT_MILLIMETRES = 3.53;
    private static final double POINTS_PER_ROW = 15;
    private static final int UNITS_PER_DIGIT = 256;
    private static final double POINTS_PER_LINE = 12.75;
    private static final double POINTS_AROUND_TEXT = 4.5;
    private static final double SIDE_MARGIN = 0.4;
    private static final double EDGE_MARGIN = 0.5;

    private final Look look;
    private final Wording wording;
    private final XSSFSheet sheet;
    private int next;

    private DrawingSheet(XSSFWorkbook book, Look look, Wording wording) {
        this.look = look;
        this.wording = wording;
        this.sheet = book.createSheet(NAME);
    }

    static void write(String title, Drawing drawing, Wording wording, XSSFWorkbook book, Look look) {
        DrawingSheet writer = new DrawingSheet(book, look, wording);
        for (int i = 0; i < WIDTHS.length; i++) {
            writer.sheet.setColumnWidth(i, WIDTHS[i] * UNITS_PER_DIGIT);
        }
        writer.line(title, look.ofTitle());
        writer.pictures(drawing.pictures());
        drawing.notes().forEach(writer::note);
        writer.next++;
        writer.sheet.setRowBreak(writer.next - 1);
        writer.list(drawing.rows());
        writer.paper();
    }

    private void line(String text, XSSFCellStyle style) {
        XSSFCell cell = sheet.createRow(next++).createCell(0);
        cell.setCellValue(CellText.of(text));
        cell.setCellStyle(style);
    }

    private void pictures(List<Picture> pictures) {
        if (pictures.isEmpty()) {
            return;
        }
        DrawingShapes shapes = new DrawingShapes();
        for (Picture picture : pictures) {
            line(picture.title(), look.ofHeading());
            shapes.add(picture, next);
            int rows = (int) Math.ceil(picture.height() * POINTS_PER_MILLIMETRE / POINTS_PER_ROW);
            for (int i = 0; i < rows; i++) {
                sheet.createRow(next++).setHeightInPoints((float) POINTS_PER_ROW);
            }
        }
        put(shapes, sheet);
    }

    static void put(DrawingShapes shapes, XSSFSheet sheet) {
        sheet.createDrawingPatriarch().getCTDrawing().set(parsed(shapes.part()));
    }

    private static CTDrawing parsed(String part) {
        try {
            return CTDrawing.Factory.parse(part, new XmlOptions().setLoadReplaceDocumentElement(null));
        } catch (XmlException e) {
            throw new IllegalStateException("The drawing is no XML: " + e.getMessage(), e);
        }
    }

    private void note(String note) {
        for (String line : TextLines.wrapped(note, FONT_MILLIMETRES, WIDTH_MILLIMETRES, Integer.MAX_VALUE)) {
            sheet.createRow(next++).createCell(0).setCellValue(CellText.of(line));
        }
    }

    private void list(List<Drawing.Row> rows) {
        int header = next;
        row(List.of(say("key"), say("what"), say("where"), say("to-do"), say("to-find-out")), look.ofHeader());
        rows.forEach(one -> row(List.of(one.part().key(), one.what(), one.where(), Part.listed(one.part().toDo()), Part.listed(one.part().toFindOut())),
                look.of(Column.Kind.TEXT)));
        if (rows.isEmpty()) {
            row(List.of("", say("none"), "", "", ""), look.of(Column.Kind.TEXT));
        }
        SheetWriter.table(sheet, "Marks", new CellRangeAddress(header, next - 1, 0, WIDTHS.length - 1));
    }

    private String say(String key) {
        return wording.sentence("drawing.list." + key);
    }

    private void row(List<String> texts, XSSFCellStyle style) {
        XSSFRow row = sheet.createRow(next++);
        int lines = 1;
        for (int i = 0; i < texts.size(); i++) {
            XSSFCell cell = row.createCell(i);
            cell.setCellStyle(CellText.looksLikeFormula(texts.get(i)) ? look.ofQuoted(Column.Kind.TEXT) : style);
            if (!texts.get(i).isEmpty()) {
                cell.setCellValue(CellText.of(texts.get(i)));
            }
            lines = Math.max(lines, TextFit.lines(texts.get(i), WIDTHS[i]));
        }
        row.setHeightInPoints((float) (lines * POINTS_PER_LINE + POINTS_AROUND_TEXT));
    }

    private void paper() {
        sheet.setDisplayGridlines(false);
        XSSFPrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.setFitToPage(true);
        SheetFrame.keepTitle(sheet);
        sheet.setMargin(PageMargin.LEFT, SIDE_MARGIN);
        sheet.setMargin(PageMargin.RIGHT, SIDE_MARGIN);
        sheet.setMargin(PageMargin.TOP, EDGE_MARGIN);
        sheet.setMargin(PageMargin.BOTTOM, EDGE_MARGIN);
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("Page &P of &N");
    }
}
