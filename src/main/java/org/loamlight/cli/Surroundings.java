package org.loamlight.cli;

import java.io.PrintStream;
import java.time.Clock;

/**
 * What the program touches outside itself, so that tests can stand in for it.
 *
 * @param out where results go, UTF-8
 * @param err where complaints go, UTF-8
 */
record Surroundings(PrintStream out, PrintStream err, Clock clock) {
}
