package org.loamlight.workbook;

import org.loamlight.setup.Words;

/** What has become of a point on the checklist. */
enum State {
    OPEN, DONE, NOT_POSSIBLE, DOES_NOT_APPLY;

    /** As it stands in the cell. */
    String inWords() {
        return Words.of(this);
    }

    static String[] allInWords() {
        return Words.all(State.class).toArray(String[]::new);
    }
}
