package org.loamlight.workbook.cells;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one sheet. Rows and cells that do not say where they stand follow the one before (ECMA-376-1, 18.3.1). */
final class SheetReader {
    private static final Pattern PLACE = Pattern.compile("([A-Z]{1,3})(\\d{1,7})");
    private static final Pattern RANGE = Pattern.compile(PLACE + ":[A-Z]{1,3}\\d{1,7}");
    private static final Pattern NAME_OF_ERROR = Pattern.compile("#[A-Z0-9/?!_]{1,20}");
    private static final int LETTERS = 26;

    private final Sheet sheet;
    private final XmlPart xml;
    private final List<String> shared;
    private final NumberStyles styles;
    private final int most;
    private int left;
    private int row;
    private int column;

    private SheetReader(Sheet sheet, XmlPart xml, List<String> shared, NumberStyles styles, int most) {
        this.sheet = sheet;
        this.most = most;
        this.left = most;
        this.xml = xml;
        this.shared = shared;
        this.styles = styles;
    }

    /**
     * Fills a sheet.
     *
     * @param most how many cells it may have, empty ones counted
     */
    static void read(Sheet sheet, XmlPart xml, List<String> shared, NumberStyles styles, int most) throws NoWorkbook {
        new SheetReader(sheet, xml, shared, styles, most).read();
    }

    private void read() throws NoWorkbook {
        while (xml.next()) {
            if (xml.begins("row")) {
                row = xml.number("r", row + 1);
                column = 0;
            } else if (xml.begins("c")) {
                cell();
                left--;
            } else if (xml.begins("mergeCell")) {
                left--;
                merge(xml.attribute("ref").orElse(""));
            }
            if (left < 0) {
                throw new NoWorkbook("the sheet " + Parts.shown(sheet.name()) + " has more than " + most + " cells, empty ones counted",
                        "delete the rows and columns below and beside the table, or " + NoWorkbook.COPY);
            }
        }
    }

    private void merge(String range) {
        Matcher corner = RANGE.matcher(range);
        if (corner.matches()) {
            sheet.merge(Integer.parseInt(corner.group(2)), column(corner.group(1)), range);
        }
    }

    private void cell() throws NoWorkbook {
        place(xml.attribute("r").orElse(""));
        String type = xml.attribute("t").orElse("n");
        int style = xml.number("s", 0);
        boolean isFormula = false;
        String value = "";
        while (xml.next() && !xml.ends("c")) {
            if (xml.begins("f")) {
                isFormula = true;
            } else if (xml.begins("v")) {
                value = xml.text();
            } else if (xml.begins("is")) {
                value = RichText.within("is", xml);
            }
        }
        if (!value.isEmpty()) {
            take(type, value, style);
        } else if (isFormula && !type.equals("str")) {
            add(Cell.Content.NO_VALUE, "");
        }
    }

    private void place(String at) throws NoWorkbook {
        Matcher place = PLACE.matcher(at);
        if (at.isEmpty()) {
            column++;
        } else if (place.matches() && Integer.parseInt(place.group(2)) == row) {
            column = column(place.group(1));
        } else {
            throw xml.broken();
        }
    }

    private static int column(String letters) {
        return letters.chars().reduce(0, (column, letter) -> column * LETTERS + letter - 'A' + 1);
    }

    private void take(String type, String value, int style) throws NoWorkbook {
        switch (type) {
            case "s" -> text(shared(value));
            case "str" -> text(RichText.plain(value));
            case "inlineStr" -> text(value);
            case "b" -> add(Cell.Content.TRUE_OR_FALSE, value.equals("1") ? "true" : "false");
            case "e" -> add(Cell.Content.ERROR, NAME_OF_ERROR.matcher(value).matches() ? value : "#VALUE!");
            case "d" -> add(Cell.Content.DAY, value.length() > 10 ? value.substring(0, 10) : value);
            default -> sheet.add(styles.cell(sheet, row, column, value, style));
        }
    }

    private String shared(String index) throws NoWorkbook {
        try {
            return shared.get(Integer.parseInt(index));
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            throw xml.broken();
        }
    }

    private void text(String text) {
        if (!text.isBlank()) {
            add(Cell.Content.TEXT, text);
        }
    }

    private void add(Cell.Content content, String text) {
        sheet.add(new Cell(sheet.name(), row, column, content, text));
    }
}
