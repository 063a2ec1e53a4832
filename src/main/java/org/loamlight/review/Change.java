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

    /** As it is printed. */
    public String inWords() {
        return words;
    }
}
