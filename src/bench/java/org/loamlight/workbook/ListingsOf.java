package org.loamlight.workbook;

import java.nio.file.Files;
import java.nio.file.Path;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** Saves the texts of one audit's workbook for {@link WorkbookOnly}. */
public final class ListingsOf {

    private ListingsOf() {
    }

    /** @param arguments setup, file of texts to write */
    public static void main(String[] arguments) throws Exception {
        Knowledge knowledge = KnowledgeReader.builtIn();
        Setup setup = SetupReader.read(arguments[0], Files.readAllBytes(Path.of(arguments[0])), knowledge.profiles().keySet());
        Audit audit = new Auditor(knowledge, RuleBase.load(knowledge)).audit(setup, setup.on().orElseThrow());
        JsonValue document = JsonFile.read(Files.readAllBytes(Path.of(arguments[0])), new Problems(arguments[0]));
        WorkbookOnly.save(Checklist.listings(audit, Ranking.of(audit.findings()), new Wording(Units.METRIC, knowledge), Carried.first(document)), audit.on(),
                Path.of(arguments[1]));
    }
}
