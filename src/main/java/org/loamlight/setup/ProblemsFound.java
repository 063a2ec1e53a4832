package org.loamlight.setup;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with every problem found in it; never empty. */
public final class ProblemsFound extends Exception {
    private final transient List<Problem> problems;

    public ProblemsFound(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** The problems in the order of their place in the file. */
    public List<Problem> problems() {
        return problems;
    }
}
