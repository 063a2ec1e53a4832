package org.loamlight.cli;

import java.util.concurrent.Callable;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.report.Explanation;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import picocli.CommandLine.Command;

/** {@code loamlight species}: which species can be audited. */
@Command(name = "species", description = "Lists the species that can be audited.")
final class SpeciesCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    SpeciesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Knowledge knowledge = KnowledgeReader.builtIn();
        surroundings.out().print(new Explanation(knowledge, new Wording(Units.METRIC, knowledge)).speciesList());
        return ExitCode.IN_ORDER;
    }
}
