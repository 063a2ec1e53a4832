package org.loamlight.review;

/** What became of a point, or of a whole setup, since an earlier review; in the order in which it is told. */
public enum Change {
    /** Graver than it was, or not right where it was only not known. */
    WORSE("got worse"),
    /** Open now, and was not. */
    NEW("new"),
    /** Open then and now. */
    STILL_OPEN("still open"),
    /** Open then, right now. */
    PUT_RIGHT("put right"),
    /** Open then; the point, its part or the whole setup is there no more. */
    GONE("gone"),
    /** The whole setup was not there. */
    JOINED("joined");

    private final String words;

    Change(String words) {
        this.words = words;
    }

    /** The same, told less finely: one number for each is enough where there are hundreds. */
    static Change of(org.loamlight.ranking.Change.Kind kind) {
        return switch (kind) {
            case WORSE, FOUND_WRONG -> WORSE;
            case NEW -> NEW;
            case STILL_OPEN, LESS_GRAVE -> STILL_OPEN;
            case PUT_RIGHT, FOUND_RIGHT -> PUT_RIGHT;
            case GONE -> GONE;
        };
    }

    /** As it is printed. */
    public String inWords() {
        return words;
    }
}
