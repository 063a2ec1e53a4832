package org.loamlight.workbook;

import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Puts one {@link Listing} on a sheet of its own: title, one header row, one table, ready for the screen and for paper. */
final class SheetWriter {
    /** The row below the header, from 0. */
    static final int FIRST_ROW = SheetFrame.FIRST_ROW;
    static final int UNITS_PER_DIGIT = 256;
    /** A column of Excel is at most 255 digits wide. */
    private static final int WIDEST = 240;
    private static final String TABLE_STYLE = "TableStyleLight1";

    private final Listing listing;
    private final XSSFSheet sheet;
    private final int[] widths;

    private SheetWriter(Listing listing, XSSFWorkbook book) {
        this.listing = listing;
        this.sheet = book.createSheet(listing.sheet());
        this.widths = listing.columns().stream().mapToInt(Column::width).toArray();
    }

    /** Adds the sheet to the workbook. */
    static XSSFSheet write(Listing listing, XSSFWorkbook book, Look look) {
        SheetWriter writer = new SheetWriter(listing, book);
        writer.columns();
        SheetFrame frame = new SheetFrame(listing.columns(), writer.widths, look);
        frame.titleAndHeader(listing.title(), writer.sheet);
        for (int i = 0; i < listing.rows().size(); i++) {
            XSSFRow row = writer.sheet.createRow(FIRST_ROW + i);
            frame.row(listing.rows().get(i), row);
            if (i < listing.boxed()) {
                frame.box(row);
            }
        }
        table(writer.sheet, listing.table(), new CellRangeAddress(SheetFrame.HEADER_ROW, writer.lastRow(), 0, writer.widths.length - 1));
        writer.choices();
        SheetFrame.screen(writer.sheet, listing.isWide());
        SheetFrame.paper(writer.sheet, listing.isWide());
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
        while (widths[column] < WIDEST && TextFit.lines(text, widths[column]) > SheetFrame.MOST_LINES) {
            widths[column] = Math.min(WIDEST, widths[column] + widths[column] / 4);
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
}
