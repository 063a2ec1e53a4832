package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.finding.Finding;
import org.loamlight.setup.Setup;

/** One audit by a process that has done nothing else. */
public final class FirstAudit {
    private static final Path SETUP = Path.of("examples", "foster-corn-snake.json");

    private FirstAudit() {
    }

    /** @param arguments where the rules come from; {@link #inShort} is printed */
    public static void main(String[] arguments) {
        System.out.println(inShort(with(RulesFrom.valueOf(arguments[0]))));
    }

    /** Number of findings and a number that another result of any of them would change. */
    static String inShort(List<Finding> found) {
        return found.size() + " findings, " + found.stream().map(one -> one.pair().key() + " " + one.result()).toList().hashCode();
    }

    static List<Finding> with(RulesFrom rules) {
        Knowledge knowledge = KnowledgeReader.builtIn();
        Auditor auditor = rules.auditor(knowledge);
        Setup setup = MixedSetups.read(bytes(), knowledge);
        return auditor.audit(setup, MixedSetups.day(setup)).findings();
    }

    private static byte[] bytes() {
        try {
            return Files.readAllBytes(SETUP);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
