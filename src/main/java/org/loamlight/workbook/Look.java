package org.loamlight.workbook;

import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The few cell styles of a workbook: dark ink, pale moss behind the headers, hairlines. It loses nothing in black and white. */
final class Look {
    /** Set everywhere or drawn in its own widths by the fonts that stand in for it. */
    private static final String FONT = "Arial";
    private static final short POINTS = 10;
    private static final short TITLE_POINTS = 14;
    private static final short KEY_POINTS = 7;
    private static final byte[] MOSS = {(byte) 0xFF, (byte) 0xE2, (byte) 0xE9, (byte) 0xDA};
    private static final byte[] DARK_FERN = {(byte) 0xFF, 0x2C, 0x45, 0x33};
    private static final String AS_TYPED = "@";
    private static final String ISO_DATE = "yyyy-mm-dd";

    private final XSSFWorkbook book;
    private final XSSFFont bold;
    private final Map<Column.Kind, XSSFCellStyle> body = new EnumMap<>(Column.Kind.class);
    private final Map<Column.Kind, XSSFCellStyle> quoted = new EnumMap<>(Column.Kind.class);
    private final XSSFCellStyle title;
    private final XSSFCellStyle framed;
    private final XSSFCellStyle header;
    // made when they are first asked for
    private XSSFCellStyle heading;
    private XSSFCellStyle boxed;

    Look(XSSFWorkbook book) {
        this.book = book;
        // Font 0 is the one column widths are counted in.
        XSSFFont plain = book.getFontAt(0);
        plain.setFontName(FONT);
        plain.setFontHeightInPoints(POINTS);
        // Else the theme of the reader's program puts its own font in place of the named one.
        plain.setScheme(FontScheme.NONE);
        this.bold = font(POINTS);
        this.title = title();
        this.framed = framed();
        this.header = header();
    }

    private XSSFFont font(short points) {
        XSSFFont font = book.createFont();
        font.setFontName(FONT);
        font.setFontHeightInPoints(points);
        font.setBold(true);
        font.setColor(new XSSFColor(DARK_FERN));
        return font;
    }

    private XSSFFont small() {
        XSSFFont small = book.createFont();
        small.setFontName(FONT);
        small.setFontHeightInPoints(KEY_POINTS);
        small.setColor(IndexedColors.GREY_50_PERCENT.getIndex());
        return small;
    }

    private XSSFCellStyle title() {
        XSSFCellStyle style = book.createCellStyle();
        style.setFont(font(TITLE_POINTS));
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        return style;
    }

    private XSSFCellStyle header() {
        XSSFCellStyle style = likeFramed();
        style.setFont(bold);
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        style.setFillForegroundColor(new XSSFColor(MOSS));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setBorderBottom(BorderStyle.MEDIUM);
        return style;
    }

    private XSSFCellStyle framed() {
        XSSFCellStyle style = book.createCellStyle();
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBorderLeft(BorderStyle.THIN);
        style.setBorderRight(BorderStyle.THIN);
        short grey = IndexedColors.GREY_50_PERCENT.getIndex();
        style.setTopBorderColor(grey);
        style.setBottomBorderColor(grey);
        style.setLeftBorderColor(grey);
        style.setRightBorderColor(grey);
        return style;
    }

    /** A heading within a sheet. */
    XSSFCellStyle ofHeading() {
        if (heading == null) {
            heading = book.createCellStyle();
            heading.setFont(bold);
        }
        return heading;
    }

    /** For what must not be overlooked: a thick frame and bold letters, which need no colour. */
    XSSFCellStyle ofBoxed() {
        if (boxed == null) {
            boxed = likeFramed();
            boxed.setFont(bold);
            boxed.setBorderTop(BorderStyle.THICK);
            boxed.setBorderBottom(BorderStyle.THICK);
            boxed.setBorderLeft(BorderStyle.THICK);
            boxed.setBorderRight(BorderStyle.THICK);
        }
        return boxed;
    }

    XSSFCellStyle ofTitle() {
        return title;
    }

    XSSFCellStyle ofHeader() {
        return header;
    }

    XSSFCellStyle of(Column.Kind kind) {
        return body.computeIfAbsent(kind, missing -> isPlain(missing) ? framed : made(missing));
    }

    /** For text that would begin a formula if it were typed: the cell keeps it as text even when somebody edits it. */
    XSSFCellStyle ofQuoted(Column.Kind kind) {
        return quoted.computeIfAbsent(kind, missing -> {
            XSSFCellStyle style = made(missing);
            style.setQuotePrefixed(true);
            return style;
        });
    }

    private XSSFCellStyle likeFramed() {
        XSSFCellStyle style = book.createCellStyle();
        style.cloneStyleFrom(framed);
        return style;
    }

    private static boolean isPlain(Column.Kind kind) {
        return kind != Column.Kind.STRONG && kind != Column.Kind.KEY && !kind.isToFillIn();
    }

    private XSSFCellStyle made(Column.Kind kind) {
        XSSFCellStyle style = likeFramed();
        switch (kind) {
            case STRONG -> style.setFont(bold);
            case TO_FILL_IN -> style.setDataFormat(book.createDataFormat().getFormat(AS_TYPED));
            case DATE_TO_FILL_IN -> style.setDataFormat(book.createDataFormat().getFormat(ISO_DATE));
            case KEY -> style.setFont(small());
            case NUMBER, TEXT, LEADING, STATE -> {
                // as framed
            }
        }
        return style;
    }
}
