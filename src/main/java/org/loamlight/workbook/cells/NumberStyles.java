package org.loamlight.workbook.cells;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;

/** How the numbers of a workbook are shown, which tells days and percentages from plain numbers. */
final class NumberStyles {
    /** Day 0 of the usual count, from the first of March 1900 on: the count takes 1900 for a leap year. */
    private static final LocalDate FROM_1900 = LocalDate.of(1899, 12, 30);
    private static final LocalDate FROM_1904 = LocalDate.of(1904, 1, 1);
    /** The last day a spreadsheet can count to, in the year 9999. */
    private static final double LAST_DAY = 2_958_465;

    private final List<Integer> formats = new ArrayList<>();
    private final Map<Integer, String> codes = new HashMap<>();
    private final LocalDate dayZero;

    private NumberStyles(boolean from1904) {
        this.dayZero = from1904 ? FROM_1904 : FROM_1900;
    }

    /** The styles; none when the workbook has no such part. */
    static NumberStyles of(String name, Parts parts, boolean from1904) throws NoWorkbook {
        NumberStyles styles = new NumberStyles(from1904);
        if (parts.has(name)) {
            styles.read(XmlPart.of(name, parts));
        }
        return styles;
    }

    private void read(XmlPart xml) throws NoWorkbook {
        boolean isOfCells = false;
        while (xml.next()) {
            if (xml.begins("numFmt")) {
                codes.put(xml.number("numFmtId", 0), xml.attribute("formatCode").orElse(""));
            } else if (xml.begins("cellXfs")) {
                isOfCells = true;
            } else if (xml.ends("cellXfs")) {
                isOfCells = false;
            } else if (isOfCells && xml.begins("xf")) {
                formats.add(xml.number("numFmtId", 0));
            }
        }
    }

    /** The cell with a number in this style, the number as the file writes it. */
    Cell cell(Sheet sheet, int row, int column, String literal, int style) {
        double number = number(literal);
        if (Double.isNaN(number) || Double.isInfinite(number)) {
            return new Cell(sheet.name(), row, column, Cell.Content.ERROR, "#NUM!");
        }
        int format = style >= 0 && style < formats.size() ? formats.get(style) : 0;
        String code = codes.getOrDefault(format, BuiltinFormats.getBuiltinFormat(format));
        if (code != null && number >= 1 && number <= LAST_DAY && DateUtil.isADateFormat(format, code)) {
            return new Cell(sheet.name(), row, column, Cell.Content.DAY, dayZero.plusDays((long) number).toString());
        }
        BigDecimal exact = new BigDecimal(Double.toString(number));
        if (code != null && code.indexOf('%') >= 0) {
            return new Cell(sheet.name(), row, column, Cell.Content.PERCENTAGE, plain(exact.movePointRight(2)) + " %");
        }
        return new Cell(sheet.name(), row, column, Cell.Content.NUMBER, plain(exact));
    }

    private static double number(String literal) {
        try {
            return Double.parseDouble(literal);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
