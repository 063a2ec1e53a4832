package org.loamlight.cli;

import java.util.List;
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
        boolean found = grade != null && open.stream().anyMatch(finding -> finding.grade().atLeast(grade));
        return found ? ExitCode.FOUND : ExitCode.IN_ORDER;
    }
}
