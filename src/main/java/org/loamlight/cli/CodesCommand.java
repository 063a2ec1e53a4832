package org.loamlight.cli;

import java.util.concurrent.Callable;
import org.loamlight.criterion.CodeReader;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.report.CodePages;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import picocli.CommandLine.Command;

/** {@code loamlight codes}: which laws and association codes can be held beside what the species needs. */
@Command(name = "codes", description = "Lists the laws and association codes that audit --codes can hold beside what the species needs.")
final class CodesCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    CodesCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        Knowledge knowledge = KnowledgeReader.builtIn();
        surroundings.out().print(new CodePages(knowledge, new Wording(Units.METRIC, knowledge)).list(CodeReader.builtIn(CodeReader.ids())));
        return ExitCode.IN_ORDER;
    }
}
