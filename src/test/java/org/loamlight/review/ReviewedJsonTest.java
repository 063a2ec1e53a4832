package org.loamlight.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.criterion.Waivers;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.JsonFile;
import org.loamlight.wording.Units;

/** Lines of results: written, read and written again they are the same, and as docs/review.schema.json lays down. */
class ReviewedJsonTest {
    static final Basis BASIS = Basis.of(BuiltIn.KNOWLEDGE.version(), BuiltIn.KNOWLEDGE.sha256(), List.of("", ""), false);

    static Judging judging(Basis basis) {
        return new Judging(basis, (Set<String> species) -> BuiltIn.KNOWLEDGE, () -> BuiltIn.RULES, Waivers.NONE, Optional.empty(), LocalDate.parse("2026-11-25"), Units.METRIC,
                basis.isAnonymous(), (name, bytes, problems) -> JsonFile.read(bytes, problems));
    }

    static Reviewed reviewed(String file, byte[] bytes) {
        return new Judge(judging(BASIS), EarlierLines.none()).judge(3, Incoming.file(file, bytes)).reviewed();
    }

    private static void assertFits(String line) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(Files.readString(Path.of("docs", "review.schema.json")), InputFormat.JSON);
        List<Error> errors = List.copyOf(schema.validate(line, InputFormat.JSON));
        assertEquals(List.of(), errors);
    }

    @ParameterizedTest
    @ValueSource(strings = {"foster-corn-snake", "two-king-snakes", "calibration", "corn-snake-hatchling"})
    void a_line_is_read_back_as_it_was_written(String example) throws IOException {
        Reviewed reviewed = reviewed("a \"quoted\" file \u2028.json", Files.readAllBytes(Path.of("examples", example + ".json")));
        String line = ReviewedJson.line(reviewed);
        assertTrue(reviewed.judged().isPresent() && line.indexOf('\n') < 0, line);
        assertEquals(Optional.of(reviewed), ReviewedReader.read(line));
        assertEquals(line, ReviewedJson.line(ReviewedReader.read(line).orElseThrow()));
        assertFits(line);
    }

    @Test
    void what_is_wrong_with_a_file_is_read_back_as_well() throws IOException {
        Reviewed broken = reviewed("broken.json", "{\"format\": 1,".getBytes(StandardCharsets.UTF_8));
        assertTrue(broken.problems().get(0).startsWith("broken.json:1:14: "), broken.problems().toString());
        assertEquals(Optional.of(broken), ReviewedReader.read(ReviewedJson.line(broken)));
        assertFits(ReviewedJson.line(broken));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "{}", "null", "{\"format\":2}", "{\"format\":1,\"number\":\"x\"}", "{\"format\":1,\"knowledge\":[]}", "{\"format\":{}}",
        "{\"format\":1,\"number\":1,\"file\":\"x\",\"input\":{\"sha256\":\"\"},\"knowledge\":{\"version\":\"\",\"sha256\":\"\"},\"options\":\"\",\"on\":\"2026-02-30\"}"})
    void what_is_no_line_of_results_is_none(String text) {
        assertEquals(Optional.empty(), ReviewedReader.read(text));
    }

    @Test
    void the_head_of_a_line_has_no_points() throws IOException {
        Reviewed reviewed = reviewed("setup.json", Files.readAllBytes(Path.of("examples", "calibration.json")));
        Reviewed head = ReviewedReader.head(ReviewedJson.line(reviewed)).orElseThrow();
        assertEquals(List.of(), head.judged().orElseThrow().points());
        assertEquals(reviewed.judged().orElseThrow().animals(), head.judged().orElseThrow().animals());
    }

    /** A rule that fails is a defect of the program: told, never a pass, and the others are judged. */
    @Test
    void a_defect_is_a_row_that_says_so() throws IOException {
        Judging failing = new Judging(BASIS, species -> BuiltIn.KNOWLEDGE, () -> {
            throw new IllegalStateException("no rules");
        }, Waivers.NONE, Optional.empty(), LocalDate.parse("2026-11-25"), Units.METRIC, false, (name, bytes, problems) -> JsonFile.read(bytes, problems));
        Reviewed row = new Judge(failing, EarlierLines.none()).judge(1, Incoming.file("x.json", Files.readAllBytes(Path.of("examples", "calibration.json")))).reviewed();
        assertTrue(row.isDefect() && row.judged().isEmpty() && row.problems().get(0).contains("defect of the program"), row.problems().toString());
        assertEquals(Optional.of(row), ReviewedReader.read(ReviewedJson.line(row)));
    }
}
