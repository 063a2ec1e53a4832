package org.loamlight;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.ranking.Ranking;
import org.loamlight.report.TextReport;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.Carried;
import org.loamlight.workbook.Checklist;
import org.loamlight.workbook.WorkbookText;

/** The report of each example stands beside it and is read before it is accepted. */
class ExampleReportsTest {
    private static final Path EXAMPLES = Path.of("examples");
    /** Stands for the hash, which every change of rules/ changes. */
    private static final String HASH = "(hash of the knowledge)";

    static List<Path> examples() {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void there_are_at_least_five_examples_and_no_report_without_one() throws IOException {
        assertTrue(examples().size() >= 5, examples().toString());
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            files.filter(file -> file.toString().endsWith(".report.txt"))
                    .forEach(file -> assertTrue(Files.exists(EXAMPLES.resolve(file.getFileName().toString().replace(".report.txt", ".json"))), file.toString()));
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void report_is_the_one_beside_the_example(Path example) throws IOException, ProblemsFound {
        Audit audit = audit(example);
        Units units = example.getFileName().toString().startsWith("us-") ? Units.US : Units.METRIC;
        String report = TextReport.of(audit, Ranking.of(audit.findings()), new Wording(units, audit.knowledge()));
        String hash = audit.knowledge().sha256().substring(0, 12);
        assertTrue(report.contains(hash), "the report names the knowledge it was made with");
        GoldenFile.assertMatches(EXAMPLES.resolve(example.getFileName().toString().replace(".json", ".report.txt")), report.replace(hash, HASH));
    }

    private static Audit audit(Path example) throws IOException, ProblemsFound {
        Setup setup = BuiltIn.setup(Files.readString(example));
        return BuiltIn.AUDITOR.audit(setup, setup.on().orElseThrow());
    }

    /** The sheets that are taken along; the others are tested by their parts and would make the text too long to read. */
    @Test
    void workbook_of_the_us_example_is_the_one_kept_as_text() throws IOException, ProblemsFound {
        Path example = EXAMPLES.resolve("us-kingsnake.json");
        Audit audit = audit(example);
        JsonValue document = JsonFile.read(Files.readAllBytes(example), new Problems(example.toString()));
        ByteArrayOutputStream workbook = new ByteArrayOutputStream();
        Checklist.write(audit, Ranking.of(audit.findings()), new Wording(Units.US, audit.knowledge()), Carried.first(document), workbook);
        String text = WorkbookText.dump(workbook.toByteArray()).replace(audit.knowledge().sha256(), HASH);
        GoldenFile.assertMatches(Path.of("src", "test", "resources", "golden", "us-kingsnake.workbook.txt"),
                text.substring(0, text.indexOf("== What is right ==")));
    }
}
