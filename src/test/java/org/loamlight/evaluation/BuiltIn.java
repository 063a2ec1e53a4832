package org.loamlight.evaluation;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;

/** The knowledge and rules this build made, loaded once for all tests. */
public final class BuiltIn {
    public static final Knowledge KNOWLEDGE = KnowledgeReader.builtIn();
    public static final RuleBase RULES = RuleBase.load(KNOWLEDGE);
    public static final Auditor AUDITOR = new Auditor(KNOWLEDGE, RULES);
    public static final LocalDate ON = LocalDate.parse("2026-11-02");

    private BuiltIn() {
    }

    public static Setup setup(String json) throws ProblemsFound {
        return SetupReader.read("setup.json", json.getBytes(StandardCharsets.UTF_8), KNOWLEDGE.profiles().keySet());
    }

    public static Audit audit(String json) throws ProblemsFound {
        return AUDITOR.audit(setup(json), ON);
    }
}
