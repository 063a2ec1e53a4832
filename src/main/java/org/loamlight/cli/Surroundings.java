package org.loamlight.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.time.Clock;

/**
 * What the program touches outside itself, so that tests can stand in for it.
 *
 * @param in  standard input, bytes as they come
 * @param out where results go, UTF-8
 * @param err where complaints go, UTF-8
 */
record Surroundings(InputStream in, PrintStream out, PrintStream err, Clock clock) {

    /** With nothing on standard input. */
    Surroundings(PrintStream out, PrintStream err, Clock clock) {
        this(InputStream.nullInputStream(), out, err, clock);
    }
}
