package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
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

    /** What a file of test data says; a fault in it fails the test that reads it. */
    public static JsonValue json(Path file) {
        try {
            Problems problems = new Problems(file.toString());
            JsonValue value = JsonFile.read(Files.readAllBytes(file), problems);
            problems.throwIfAny();
            return value;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }
}
