package org.loamlight.cli;

/** How the program ends. */
final class ExitCode {
    /** Nothing at or above the grade asked for. */
    static final int IN_ORDER = 0;
    /** A nonconformity, no evidence or undecided at or above the grade asked for. */
    static final int FOUND = 1;
    /** Wrong usage or input, or an output that cannot be written. */
    static final int USAGE = 2;
    /** The program itself failed. */
    static final int FAILED = 3;

    private ExitCode() {
    }
}
