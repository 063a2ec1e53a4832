package org.loamlight.cli;

import java.util.concurrent.Callable;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.report.Explanation;
import org.loamlight.wording.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamlight explain}: the page of a criterion or a species. */
@Command(name = "explain", description = "Prints the page of a criterion or a species: what is asked, why, how to measure and correct, limits, sources.")
final class ExplainCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "CRITERION|SPECIES", description = "Id of a criterion (heat.guard), or a species.")
    private String what;

    @Mixin
    private final SpeciesOption species = new SpeciesOption();

    @Option(names = "--units", paramLabel = "UNITS", defaultValue = "metric",
            description = "Units in print: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private UnitChoice units;

    ExplainCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Complaint {
        Knowledge knowledge = KnowledgeReader.builtIn();
        Explanation explanation = new Explanation(knowledge, new Wording(units.units(), knowledge));
        surroundings.out().print(SpeciesOption.page(
                () -> species.name().map(name -> explanation.criterion(what, name)).orElseGet(() -> explanation.of(what))));
        return ExitCode.IN_ORDER;
    }
}
