package org.loamlight.cli;

import org.loamlight.wording.Units;

/** Values of {@code --units}, spelt as on the command line. */
enum UnitChoice {
    metric(Units.METRIC), us(Units.US);

    private final Units units;

    UnitChoice(Units units) {
        this.units = units;
    }

    Units units() {
        return units;
    }
}
