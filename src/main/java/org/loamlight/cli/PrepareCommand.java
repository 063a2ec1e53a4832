package org.loamlight.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.Callable;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.ranking.Ranking;
import org.loamlight.report.JsonReport;
import org.loamlight.report.TextReport;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.Checklist;
import picocli.CommandLine.Command;

/** {@code loamlight prepare}: goes once through everything, so that the launcher can archive the classes this loads. */
@Command(name = "prepare", hidden = true, description = "Audits the example in the program and keeps nothing of it.")
final class PrepareCommand implements Callable<Integer> {
    private static final String EXAMPLE = "/org/loamlight/foster-corn-snake.json";

    private final Surroundings surroundings;

    PrepareCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException, ProblemsFound {
        Knowledge knowledge = KnowledgeReader.builtIn();
        Setup setup = SetupReader.read(EXAMPLE, example(), knowledge.profiles().keySet());
        Audit audit = new Auditor(knowledge, RuleBase.load(knowledge)).audit(setup, setup.on().orElseThrow());
        Ranking ranking = Ranking.of(audit.findings());
        Wording wording = new Wording(Units.METRIC, knowledge);
        Checklist.write(audit, ranking, wording, OutputStream.nullOutputStream());
        int size = TextReport.of(audit, ranking, wording).length() + JsonReport.of(audit, ranking, wording, "").length();
        surroundings.out().println("Prepared with the example in the program (" + size + " characters).");
        return ExitCode.IN_ORDER;
    }

    private static byte[] example() throws IOException {
        try (InputStream file = PrepareCommand.class.getResourceAsStream(EXAMPLE)) {
            return file.readAllBytes();
        }
    }
}
