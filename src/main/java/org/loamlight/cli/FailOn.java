package org.loamlight.cli;

import java.util.List;
import java.util.stream.Stream;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Finding;

/** From which grade on an open finding makes the program end with 1. */
enum FailOn {
    critical(Grade.CRITICAL), major(Grade.MAJOR), minor(Grade.MINOR), none(null);

    private final Grade grade;

    FailOn(Grade grade) {
        this.grade = grade;
    }

    int exitCode(List<Finding> open) {
        return exitCode(open.stream().map(Finding::grade));
    }

    /** @param open grades of what is open */
    int exitCode(Stream<Grade> open) {
        boolean found = grade != null && open.anyMatch(one -> one.atLeast(grade));
        return found ? ExitCode.FOUND : ExitCode.IN_ORDER;
    }
}
