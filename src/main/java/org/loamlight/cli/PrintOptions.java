package org.loamlight.cli;

import org.loamlight.wording.Units;
import picocli.CommandLine.Option;

/** In which units results are printed, and from which grade on they make the exit code 1. */
final class PrintOptions {
    @Option(names = "--units", paramLabel = "UNITS", defaultValue = "metric",
            description = "Units in print: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private UnitChoice units;

    @Option(names = "--fail-on", paramLabel = "GRADE", defaultValue = "major",
            description = "Grade from which the exit code is 1: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private FailOn failOn;

    Units units() {
        return units.units();
    }

    FailOn failOn() {
        return failOn;
    }
}
