package org.loamlight.cli;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.Callable;
import org.loamlight.criterion.CodeReader;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.report.CodePages;
import org.loamlight.report.Explanation;
import org.loamlight.wording.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamlight explain}: the page of a criterion, a species, or a code. */
@Command(name = "explain",
        description = "Prints the page of a criterion, a species or a code: what is asked, why, how to measure and correct, limits, sources.")
final class ExplainCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "CRITERION|SPECIES|CODE",
            description = "Id of a criterion (heat.guard), a species, or \"code.\" and the id of a code, with the clause behind it for that alone.")
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
        Wording wording = new Wording(units.units(), knowledge);
        surroundings.out().print(SpeciesOption.page(() -> CodePages.isMeant(what) ? code(knowledge, wording) : page(new Explanation(knowledge, wording))));
        return ExitCode.IN_ORDER;
    }

    private String page(Explanation explanation) {
        return species.name().map(name -> explanation.criterion(what, name)).orElseGet(() -> explanation.of(what));
    }

    private String code(Knowledge knowledge, Wording wording) {
        CodePages pages = new CodePages(knowledge, wording);
        String id = CodePages.code(what);
        if (!CodeReader.ids().contains(id)) {
            throw new NoSuchElementException(pages.unknown(what, CodeReader.ids()));
        }
        return pages.of(what, CodeReader.builtIn(List.of(id)).get(0), species.name().map(new Explanation(knowledge, wording)::speciesId));
    }
}
