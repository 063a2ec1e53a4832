package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A file of rules that can be compiled.
 *
 * @param name no two files of one compilation share it; ends in {@code .drl}
 */
record DrlSource(String name, String text) {
    private static final Path RULES = Path.of("rules");
    private static final Path TEMPLATE = RULES.resolve("TEMPLATE");

    /** Every file the build compiles. */
    static List<DrlSource> all() {
        return files().stream().map(file -> new DrlSource(file.toString(), text(file))).toList();
    }

    /** Each rule that is chosen as a file of its own, with what its file imports. */
    static List<DrlSource> only(Predicate<DrlRule> chosen) {
        return files().stream().flatMap(file -> DrlRule.in(file).stream()).filter(chosen)
                .map(rule -> new DrlSource(rule.name().replace(' ', '_') + ".drl", alone(rule))).toList();
    }

    private static String alone(DrlRule rule) {
        return "package org.loamlight.chosen;\n" + rule.imports() + "\nrule \"" + rule.name() + "\"\nwhen\n" + rule.when() + "\nthen\n" + rule.then() + "\nend\n";
    }

    private static List<Path> files() {
        try (Stream<Path> files = Files.walk(RULES)) {
            return files.filter(file -> file.toString().endsWith(".drl") && !file.startsWith(TEMPLATE)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
