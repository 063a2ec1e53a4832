package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A sheet with one table of as many rows as there are: they go to the disk as they come, so that the whole never has to be in memory.
 * First its head is put into the workbook, then rows are added to the workbook that streams.
 */
final class LongSheet {
    /** A sheet of Excel has 1,048,576 rows. */
    static final int MOST_ROWS = 1_000_000;
    private static final String SHORTENED = " ... (shortened)";

    private final Listing heading;
    private final int mostRows;
    private final SheetFrame frame;
    private final XSSFSheet head;
    private SXSSFSheet sheet;
    private int rows;
    private int leftOut;

    /** @param heading without rows */
    LongSheet(Listing heading, XSSFWorkbook book, Look look) {
        this(heading, MOST_ROWS, book, look);
    }

    LongSheet(Listing heading, int mostRows, XSSFWorkbook book, Look look) {
        this.heading = heading;
        this.mostRows = mostRows;
        this.frame = new SheetFrame(heading.columns(), heading.columns().stream().mapToInt(Column::width).toArray(), look);
        this.head = book.createSheet(heading.sheet());
        for (int i = 0; i < heading.columns().size(); i++) {
            head.setColumnWidth(i, heading.columns().get(i).width() * SheetWriter.UNITS_PER_DIGIT);
        }
        frame.titleAndHeader(heading.title(), head);
        SheetFrame.screen(head, heading.isWide());
        SheetFrame.paper(head, heading.isWide());
    }

    String name() {
        return heading.sheet();
    }

    /** From here on rows go to the workbook that streams. */
    void streamTo(SXSSFWorkbook book) {
        sheet = book.getSheet(heading.sheet());
    }

    /** Adds a row; texts too high for a row are shortened and say so. Rows no sheet can hold are counted. */
    void add(List<String> texts) {
        if (rows == mostRows) {
            leftOut++;
        } else {
            put(texts);
        }
    }

    /** Adds a row whose first cell leads to another sheet. */
    void add(List<String> texts, String leadsTo) {
        add(texts);
        if (leftOut == 0) {
            Hyperlink link = sheet.getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
            link.setAddress("'" + leadsTo.replace("'", "''") + "'!A1");
            sheet.getRow(SheetFrame.FIRST_ROW + rows - 1).getCell(0).setHyperlink(link);
        }
    }

    private void put(List<String> texts) {
        List<String> fitted = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            fitted.add(fitted(texts.get(i), heading.columns().get(i).width()));
        }
        Row row = sheet.createRow(SheetFrame.FIRST_ROW + rows);
        frame.row(fitted, row);
        rows++;
    }

    private static String fitted(String text, int width) {
        if (TextFit.lines(text, width) <= SheetFrame.MOST_LINES) {
            return text;
        }
        int length = text.length();
        while (length > 1 && TextFit.lines(CellText.shortened(text, length) + SHORTENED, width) > SheetFrame.MOST_LINES) {
            length -= Math.max(1, length / 20);
        }
        return CellText.shortened(text, length) + SHORTENED;
    }

    /** Ends the table; where there is no row, one says so. */
    void finish(String nothing) {
        if (rows == 0) {
            put(saying(nothing));
        }
        if (leftOut > 0) {
            put(saying(leftOut + " further rows are more than a sheet holds: see the results (--jsonl)."));
        }
        SheetWriter.table(head, heading.table(), new CellRangeAddress(SheetFrame.HEADER_ROW, SheetFrame.FIRST_ROW + rows - 1, 0, heading.columns().size() - 1));
    }

    private List<String> saying(String sentence) {
        return new Listing(heading.sheet(), heading.table(), heading.title(), heading.columns(), List.of()).orSaying(sentence).rows().get(0);
    }
}
