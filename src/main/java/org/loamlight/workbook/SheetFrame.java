package org.loamlight.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What every sheet with one table has: its title, its header, rows high enough for their texts, and how it looks on screen and paper. */
final class SheetFrame {
    private static final int TITLE_ROW = 0;
    static final int HEADER_ROW = 1;
    /** The row below the header, from 0. */
    static final int FIRST_ROW = 2;
    private static final double POINTS_PER_LINE = 12.75;
    private static final double POINTS_AROUND_TEXT = 4.5;
    /** Room to write by hand, also where a wide sheet is printed smaller. */
    private static final double POINTS_TO_WRITE_IN = 30;
    private static final float POINTS_OF_TITLE = 27;
    /** A row of Excel is at most 409.5 points high. */
    static final int MOST_LINES = 31;
    /** The button of the filter covers the end of a header. */
    private static final int DIGITS_OF_BUTTON = 3;
    /** Margins every printer for A4 and US Letter can keep (inches). */
    private static final double SIDE_MARGIN = 0.4;
    private static final double TOP_MARGIN = 0.5;
    private static final double BOTTOM_MARGIN = 0.7;
    private static final double FOOTER_MARGIN = 0.35;
    /** Against the size of other text. */
    private static final double SIZE_OF_KEYS = 0.7;

    private final List<Column> columns;
    private final int[] widths;
    private final Look look;

    /** @param widths of the columns as they are on the sheet, in digits */
    SheetFrame(List<Column> columns, int[] widths, Look look) {
        this.columns = columns;
        this.widths = widths.clone();
        this.look = look;
    }

    void titleAndHeader(String titled, XSSFSheet sheet) {
        XSSFRow titleRow = sheet.createRow(TITLE_ROW);
        titleRow.setHeightInPoints(POINTS_OF_TITLE);
        XSSFCell title = titleRow.createCell(0);
        title.setCellValue(CellText.of(titled));
        title.setCellStyle(look.ofTitle());
        XSSFRow header = sheet.createRow(HEADER_ROW);
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            String text = columns.get(i).header();
            XSSFCell cell = header.createCell(i);
            cell.setCellValue(text);
            cell.setCellStyle(look.ofHeader());
            lines = Math.max(lines, TextFit.lines(text, widths[i] - DIGITS_OF_BUTTON));
        }
        header.setHeightInPoints((float) height(lines));
    }

    /** Fills a row with one text for each column. */
    void row(List<String> texts, Row row) {
        double height = height(1);
        for (int i = 0; i < widths.length; i++) {
            Column column = columns.get(i);
            cell(texts.get(i), shown(column.kind(), row), row.createCell(i));
            double room = column.kind().isToFillIn() ? POINTS_TO_WRITE_IN : 0;
            height = Math.max(height, Math.max(room, height(column.kind(), texts.get(i), widths[i])));
        }
        row.setHeightInPoints((float) height);
    }

    private static Column.Kind shown(Column.Kind kind, Row row) {
        return kind == Column.Kind.LEADING && row.getRowNum() == FIRST_ROW ? Column.Kind.STRONG : kind;
    }

    /** Keys are printed smaller: more of them goes into a line, and more lines into a row. */
    private static double height(Column.Kind kind, String text, int width) {
        return kind == Column.Kind.KEY ? height(TextFit.lines(text, (int) (width / SIZE_OF_KEYS))) * SIZE_OF_KEYS : height(TextFit.lines(text, width));
    }

    private static double height(int lines) {
        return Math.min(lines, MOST_LINES) * POINTS_PER_LINE + POINTS_AROUND_TEXT;
    }

    private void cell(String text, Column.Kind kind, Cell cell) {
        cell.setCellStyle(CellText.looksLikeFormula(text) ? look.ofQuoted(kind) : look.of(kind));
        if (kind == Column.Kind.NUMBER && !text.isEmpty()) {
            cell.setCellValue(Integer.parseInt(text));
        } else if (!text.isEmpty()) {
            cell.setCellValue(kind == Column.Kind.KEY ? CellText.exact(text) : CellText.of(text));
        }
    }

    /** A thick frame around all cells of a row. */
    void box(Row row) {
        row.forEach(cell -> cell.setCellStyle(look.ofBoxed()));
    }

    /** Keeps the title in sight on the screen and on every printed page, for a sheet that is no single table. */
    static void keepTitle(XSSFSheet sheet) {
        sheet.createFreezePane(0, HEADER_ROW);
        sheet.setRepeatingRows(new CellRangeAddress(TITLE_ROW, TITLE_ROW, -1, -1));
    }

    static void screen(XSSFSheet sheet, boolean isWide) {
        sheet.createFreezePane(isWide ? 2 : 0, FIRST_ROW);
        sheet.setDisplayGridlines(false);
    }

    static void paper(XSSFSheet sheet, boolean isWide) {
        XSSFPrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setLandscape(isWide);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.setFitToPage(true);
        sheet.setMargin(PageMargin.LEFT, SIDE_MARGIN);
        sheet.setMargin(PageMargin.RIGHT, SIDE_MARGIN);
        sheet.setMargin(PageMargin.TOP, TOP_MARGIN);
        sheet.setMargin(PageMargin.BOTTOM, BOTTOM_MARGIN);
        sheet.setMargin(PageMargin.FOOTER, FOOTER_MARGIN);
        sheet.setRepeatingRows(new CellRangeAddress(TITLE_ROW, HEADER_ROW, -1, -1));
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("Page &P of &N");
    }
}
