package org.loamlight.workbook;

/**
 * A column of a table.
 *
 * @param header unique within its table
 * @param width  in digits of the font
 */
record Column(String header, int width, Kind kind) {

    /** What stands in the cells of a column. */
    enum Kind {
        /** A whole number. */
        NUMBER,
        TEXT,
        /** Text in bold. */
        STRONG,
        /** Text, in bold in the first row only. */
        LEADING,
        /** Empty, to be written in. */
        TO_FILL_IN,
        /** Empty, for a date. */
        DATE_TO_FILL_IN,
        /** One of the states of {@link State}. */
        STATE,
        /** What the program knows a row by, or reads again: small and grey, nobody need read it, and not a letter is changed. */
        KEY;

        boolean isToFillIn() {
            return this == TO_FILL_IN || this == DATE_TO_FILL_IN;
        }
    }

    static Column number() {
        return new Column("No.", 5, Kind.NUMBER);
    }

    static Column text(String header, int width) {
        return new Column(header, width, Kind.TEXT);
    }

    static Column strong(String header, int width) {
        return new Column(header, width, Kind.STRONG);
    }

    static Column toFillIn(String header, int width) {
        return new Column(header, width, Kind.TO_FILL_IN);
    }
}
