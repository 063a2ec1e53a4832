package org.loamlight.cli;

import java.util.concurrent.Callable;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.report.Explanation;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code loamlight criteria}: what an audit looks at. */
@Command(name = "criteria", description = "Lists everything an audit looks at, or what it looks at for one species; with --codes what they ask as well.")
final class CriteriaCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Mixin
    private final SpeciesOption species = new SpeciesOption();

    @Mixin
    private final CodesOption codes = new CodesOption();

    CriteriaCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Complaint {
        Knowledge plain = KnowledgeReader.builtIn();
        Knowledge knowledge = plain.withCodes(codes.chosen(), plain.profiles().keySet());
        Explanation explanation = new Explanation(knowledge, new Wording(Units.METRIC, knowledge));
        surroundings.out().print(SpeciesOption.page(
                () -> species.name().map(explanation::criteriaList).orElseGet(explanation::criteriaList)));
        return ExitCode.IN_ORDER;
    }
}
