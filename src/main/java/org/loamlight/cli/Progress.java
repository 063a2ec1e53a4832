package org.loamlight.cli;

import java.io.Console;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.time.Clock;

/** How far a long run has come: one line that is written over, on a terminal only. */
final class Progress {
    private static final long MILLIS_BETWEEN = 200;
    private static final String WIPED = "\r" + " ".repeat(60) + "\r";

    private final PrintStream terminal;
    private final Clock clock;
    private long shownAt;
    private int done;

    private Progress(PrintStream terminal, Clock clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    /** Shown only where complaints go to a terminal. */
    static Progress of(Surroundings surroundings) {
        return new Progress(isTerminal() ? surroundings.err() : null, surroundings.clock());
    }

    /** Newer versions of Java have a console also where there is no terminal, and can tell. */
    private static boolean isTerminal() {
        Console console = System.console();
        try {
            return console != null && (Runtime.version().feature() < 22 || (boolean) Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException | IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }

    void step() {
        done++;
        if (terminal != null && clock.millis() - shownAt > MILLIS_BETWEEN) {
            shownAt = clock.millis();
            terminal.print("\r" + done + (done == 1 ? " setup judged" : " setups judged"));
            terminal.flush();
        }
    }

    void end() {
        if (terminal != null) {
            terminal.print(WIPED);
            terminal.flush();
        }
    }
}
