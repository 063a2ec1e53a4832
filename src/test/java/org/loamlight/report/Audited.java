package org.loamlight.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.loamlight.criterion.Criterion;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** Audits to report on. */
final class Audited {
    static final Wording METRIC = new Wording(Units.METRIC, BuiltIn.KNOWLEDGE);
    static final Wording US = new Wording(Units.US, BuiltIn.KNOWLEDGE);
    static final String SHA = "0123456789abcdef".repeat(4);

    private Audited() {
    }

    static Audit of(String json) {
        try {
            return BuiltIn.audit(json);
        } catch (ProblemsFound e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** A lamp that burns, an enclosure that is too short, and much that nobody told. */
    static Audit bare() {
        return named("Bracken", "basking lamp");
    }

    /** The same with names of their own: of the animal, and of everything else. */
    static Audit named(String animal, String part) {
        return of("""
                {"format": 1, "title": "%2$s", "animals": [
                   {"name": "%1$s", "species": "pantherophis-guttatus", "stage": "adult", "length": "118 cm", "since": "2026-09-19"}],
                 "enclosure": {"title": "%2$s", "inside": {"length": "100 cm"}, "openings": [
                   {"name": "%2$s", "kind": "door", "gap": "14 mm"}, {"name": "%2$s too", "kind": "vent"}]},
                 "heaters": [{"name": "%2$s", "kind": "basking lamp", "reachable": "yes", "guard": "no"},
                   {"name": "%2$s too", "kind": "basking lamp", "reachable": "yes"}, {"name": "%2$s again", "kind": "heat mat"}],
                 "furnishings": [{"name": "%2$s", "kind": "stone", "mass": "two hands", "stands-on": "substrate"},
                   {"name": "%2$s too", "kind": "hide", "place": "warm end"}],
                 "lamps": [{"name": "%2$s", "kind": "UV tube", "lit-length": "55 cm", "between": [], "nearest-rest": "20 cm",
                   "readings": [{"index": "9.1", "distance": "15 cm"}]}],
                 "readings": [{"name": "%2$s", "of": "air temperature", "place": "cool end", "time": "day", "value": "33 °C"}]}
                """.formatted(animal, part));
    }

    /** Every example file of the project. */
    static List<Audit> examples() {
        try (Stream<Path> files = Files.list(Path.of("examples"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().map(Audited::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Audit read(Path file) {
        try {
            return of(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Audit audit) {
        return TextReport.of(audit, Ranking.of(audit.findings()), METRIC);
    }

    static String json(Audit audit) {
        return JsonReport.of(audit, Ranking.of(audit.findings()), METRIC, SHA);
    }

    /** The audit with none but these findings. */
    static Audit only(Audit audit, List<Finding> findings) {
        return new Audit(audit.setup(), audit.on(), audit.knowledge(), audit.quantities(), findings);
    }

    /** The same findings, the one of {@code cause} made to explain the one of {@code effect}. */
    static Audit explained(Audit audit, Pair cause, Pair effect) {
        List<Finding> findings = new ArrayList<>();
        audit.findings().forEach(finding -> findings.add(finding.pair().equals(cause) ? finding.linked(List.of(effect), List.of())
                : finding.pair().equals(effect) ? finding.linked(List.of(), List.of(cause)) : finding));
        return only(audit, findings);
    }

    static Finding finding(Audit audit, String criterion, String subjectKey) {
        return audit.findings().stream().filter(one -> one.criterion().id().equals(criterion) && one.subject().key().equals(subjectKey))
                .findFirst().orElseThrow();
    }

    static Criterion criterion(String id) {
        return BuiltIn.KNOWLEDGE.criterion(id);
    }
}
