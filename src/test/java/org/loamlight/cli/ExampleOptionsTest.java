package org.loamlight.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.GoldenFile;
import org.loamlight.evaluation.BuiltIn;

/** The report of each example that needs options, as the command line makes it; read before it is accepted. */
class ExampleOptionsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "examples/house/wending-vale.report.txt | 0 | audit examples/club-corn-snake.json --house examples/house/wending-vale.json"
                + " --waivers examples/house/wending-vale-waivers.json",
        "examples/codes/corn-snake-moves.report.txt | 1 | audit examples/codes/corn-snake-moves.json --codes at-2thvo,de-1997",
        "examples/club.review.txt | 1 | review examples/club", "examples/round.review.txt | 1 | review examples/round"})
    void report_is_the_one_beside_the_example(String golden, int code, String arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int ended = Main.run(new Surroundings(print(out), print(err), CLOCK), arguments.strip().split(" "));
        String report = out.toString(StandardCharsets.UTF_8);
        assertEquals("", err.toString(StandardCharsets.UTF_8));
        List<String> wide = report.lines().filter(line -> line.codePointCount(0, line.length()) > 80).toList();
        assertEquals(List.of(), wide);
        String hash = BuiltIn.KNOWLEDGE.sha256().substring(0, 12);
        assertTrue(report.contains(hash));
        GoldenFile.assertMatches(Path.of(golden), report.replace(hash, "(hash of the knowledge)"));
        assertEquals(code, ended);
    }

    private static PrintStream print(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
