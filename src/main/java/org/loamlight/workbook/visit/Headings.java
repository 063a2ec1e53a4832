package org.loamlight.workbook.visit;

import java.util.List;

/** By which words the columns and rows of a checklist are known when it comes back, wherever they stand then. */
public final class Headings {
    /** The column of what the program knows a row by; with it a row may stand anywhere. */
    public static final String KEY = "Key";

    // the walk
    public static final String STOP = "Stop";
    public static final String NOW = "Now";
    public static final String UNIT = "Unit";
    public static final String KNOWN_BY = "Known by";
    public static final String PHOTO = "Photo No.";
    public static final String REPLY = "What the keeper says";
    /** How an answer of a visit is known. */
    public static final List<String> WAYS = List.of("seen", "measured", "told");

    // what to do
    public static final String STATE = "State";

    // the visit
    public static final String WRITTEN = "Fill in";
    public static final String VISITED_ON = "visit on";
    public static final String VISITED_BY = "visit by";
    public static final String KEEPER = "visit keeper";

    // the history
    public static final String DATE = "Date";
    public static final String WHO = "Who";
    public static final String WHAT = "What";
    public static final String WHERE = "Where";
    public static final String BEFORE = "Before";

    // the record
    public static final String KIND = "Kind";
    public static final String TEXT = "Text";

    private Headings() {
    }
}
