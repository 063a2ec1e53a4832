package org.loamlight.workbook;

import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Puts one {@link Listing} on a sheet of its own: title, one header row, one table, ready for the screen and for paper. */
final class SheetWriter {
    private static final int TITLE_ROW = 0;
    private static final int HEADER_ROW = 1;
    /** The row below the header, from 0. */
    static final int FIRST_ROW = 2;
    private static final int UNITS_PER_DIGIT = 256;
    private static final double POINTS_PER_LINE = 12.75;
    private static final double POINTS_AROUND_TEXT = 4.5;
    /** Room to write by hand, also where a wide sheet is printed smaller. */
    private static final double POINTS_TO_WRITE_IN = 30;
    private static final float POINTS_OF_TITLE = 27;
    /** A row of Excel is at most 409.5 points high. */
    private static final int MOST_LINES = 31;
    /** A column of Excel is at most 255 digits wide. */
    private static final int WIDEST = 240;
    /** The button of the filter covers the end of a header. */
    private static final int DIGITS_OF_BUTTON = 3;
    /** Margins every printer for A4 and US Letter can keep (inches). */
    private static final double SIDE_MARGIN = 0.4;
    private static final double TOP_MARGIN = 0.5;
    private static final double BOTTOM_MARGIN = 0.7;
    private static final double FOOTER_MARGIN = 0.35;
    /** Against the size of other text. */
    private static final double SIZE_OF_KEYS = 0.7;
    private static final String TABLE_STYLE = "TableStyleLight1";

    private final Listing listing;
    private final Look look;
    private final XSSFSheet sheet;
    private final int[] widths;

    private SheetWriter(Listing listing, XSSFWorkbook book, Look look) {
        this.listing = listing;
        this.look = look;
        this.sheet = book.createSheet(listing.sheet());
        this.widths = listing.columns().stream().mapToInt(Column::width).toArray();
    }

    /** Adds the sheet to the workbook. */
    static XSSFSheet write(Listing listing, XSSFWorkbook book, Look look) {
        SheetWriter writer = new SheetWriter(listing, book, look);
        writer.columns();
        writer.titleAndHeader();
        for (int i = 0; i < listing.rows().size(); i++) {
            writer.row(listing.rows().get(i), writer.sheet.createRow(FIRST_ROW + i));
        }
        table(writer.sheet, listing.table(), new CellRangeAddress(HEADER_ROW, writer.lastRow(), 0, writer.widths.length - 1));
        writer.choices();
        writer.screen();
        writer.paper();
        return writer.sheet;
    }

    private void columns() {
        for (int i = 0; i < widths.length; i++) {
            for (List<String> row : listing.rows()) {
                widenFor(row.get(i), i);
            }
            sheet.setColumnWidth(i, widths[i] * UNITS_PER_DIGIT);
        }
    }

    /** A row can only be so high; where a text needs more, the column gives way. */
    private void widenFor(String text, int column) {
        while (widths[column] < WIDEST && TextFit.lines(text, widths[column]) > MOST_LINES) {
            widths[column] = Math.min(WIDEST, widths[column] + widths[column] / 4);
        }
    }

    private void titleAndHeader() {
        XSSFRow titleRow = sheet.createRow(TITLE_ROW);
        titleRow.setHeightInPoints(POINTS_OF_TITLE);
        XSSFCell title = titleRow.createCell(0);
        title.setCellValue(CellText.of(listing.title()));
        title.setCellStyle(look.ofTitle());
        XSSFRow header = sheet.createRow(HEADER_ROW);
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            String text = listing.columns().get(i).header();
            XSSFCell cell = header.createCell(i);
            cell.setCellValue(text);
            cell.setCellStyle(look.ofHeader());
            lines = Math.max(lines, TextFit.lines(text, widths[i] - DIGITS_OF_BUTTON));
        }
        header.setHeightInPoints((float) height(lines));
    }

    private void row(List<String> texts, XSSFRow row) {
        double height = height(1);
        for (int i = 0; i < widths.length; i++) {
            Column column = listing.columns().get(i);
            XSSFCell cell = row.createCell(i);
            cell(texts.get(i), shown(column.kind(), row), cell);
            if (row.getRowNum() < FIRST_ROW + listing.boxed()) {
                cell.setCellStyle(look.ofBoxed());
            }
            double room = column.kind().isToFillIn() ? POINTS_TO_WRITE_IN : 0;
            height = Math.max(height, Math.max(room, height(column.kind(), texts.get(i), widths[i])));
        }
        row.setHeightInPoints((float) height);
    }

    private static Column.Kind shown(Column.Kind kind, XSSFRow row) {
        return kind == Column.Kind.LEADING && row.getRowNum() == FIRST_ROW ? Column.Kind.STRONG : kind;
    }

    /** Keys are printed smaller: more of them goes into a line, and more lines into a row. */
    private static double height(Column.Kind kind, String text, int width) {
        return kind == Column.Kind.KEY ? height(TextFit.lines(text, (int) (width / SIZE_OF_KEYS))) * SIZE_OF_KEYS : height(TextFit.lines(text, width));
    }

    private static double height(int lines) {
        return Math.min(lines, MOST_LINES) * POINTS_PER_LINE + POINTS_AROUND_TEXT;
    }

    private void cell(String text, Column.Kind kind, XSSFCell cell) {
        cell.setCellStyle(CellText.looksLikeFormula(text) ? look.ofQuoted(kind) : look.of(kind));
        if (kind == Column.Kind.NUMBER && !text.isEmpty()) {
            cell.setCellValue(Integer.parseInt(text));
        } else if (!text.isEmpty()) {
            cell.setCellValue(kind == Column.Kind.KEY ? CellText.exact(text) : CellText.of(text));
        }
    }

    private int lastRow() {
        return FIRST_ROW + listing.rows().size() - 1;
    }

    /** Marks cells as a table with its filter; the first row is its header. */
    static void table(XSSFSheet sheet, String name, CellRangeAddress cells) {
        AreaReference area = new AreaReference(new CellReference(cells.getFirstRow(), cells.getFirstColumn()),
                new CellReference(cells.getLastRow(), cells.getLastColumn()), SpreadsheetVersion.EXCEL2007);
        XSSFTable table = sheet.createTable(area);
        table.setName(name);
        table.setDisplayName(name);
        // POI has no call of its own for the filter of a table.
        table.getCTTable().addNewAutoFilter().setRef(area.formatAsString());
        table.setStyleName(TABLE_STYLE);
    }

    private void choices() {
        int column = listing.columns().stream().map(Column::kind).toList().indexOf(Column.Kind.STATE);
        if (column < 0 || listing.rows().get(0).get(column).isEmpty()) {
            return;
        }
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
        DataValidation choice = helper.createValidation(helper.createExplicitListConstraint(State.allInWords()),
                new CellRangeAddressList(FIRST_ROW, lastRow(), column, column));
        choice.setShowErrorBox(true);
        choice.createErrorBox("State", "Choose one of: " + String.join(", ", State.allInWords()) + ".");
        sheet.addValidationData(choice);
    }

    /** Keeps the title in sight on the screen and on every printed page, for a sheet that is no single table. */
    static void keepTitle(XSSFSheet sheet) {
        sheet.createFreezePane(0, HEADER_ROW);
        sheet.setRepeatingRows(new CellRangeAddress(TITLE_ROW, TITLE_ROW, -1, -1));
    }

    private void screen() {
        sheet.createFreezePane(listing.isWide() ? 2 : 0, FIRST_ROW);
        sheet.setDisplayGridlines(false);
    }

    private void paper() {
        XSSFPrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setLandscape(listing.isWide());
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
