package org.loamlight.setup;

/** Something whose place can be told. A place is worked out when it is asked for: of most values nobody ever asks. */
public interface Located {
    JsonPlace place();
}
