package org.loamlight.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** Drawings of setups, numbered as the report. */
public final class Drawn {
    public static final Wording METRIC = new Wording(Units.METRIC, BuiltIn.KNOWLEDGE);
    public static final Wording US = new Wording(Units.US, BuiltIn.KNOWLEDGE);

    private Drawn() {
    }

    public static Audit audit(String json) {
        try {
            return BuiltIn.audit(json);
        } catch (ProblemsFound e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** A corn snake in an enclosure told by further members of the setup. */
    public static Drawing of(String members) {
        return of(audit("""
                {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus", "stage": "adult"}]%s}
                """.formatted(members.isEmpty() ? "" : ", " + members)), METRIC);
    }

    public static Drawing of(Audit audit, Wording wording) {
        return Drawing.of(audit, wording, Numbers.ofReport(Ranking.of(audit.findings())));
    }

    public static Audit example(String name) {
        try {
            return audit(Files.readString(Path.of("examples", name + ".json"), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<String> examples() {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".json")).map(name -> name.replace(".json", "")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
