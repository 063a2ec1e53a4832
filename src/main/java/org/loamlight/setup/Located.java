package org.loamlight.setup;

/** Something whose place can be told. A place is worked out when it is asked for: of most values nobody ever asks. */
public interface Located {
    JsonPlace place();

    /** For a member of an object the place of its key; the place itself where that is not known, and for everything else. */
    default JsonPlace keyPlace() {
        return place();
    }
}
