package org.loamlight.setup;

/** An answer to a yes-or-no question; not told and "not looked" are both UNKNOWN, never no. */
public enum Stated {
    YES, NO, UNKNOWN
}
