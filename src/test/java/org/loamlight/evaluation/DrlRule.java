package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One rule of a file in the house layout.
 *
 * @param imports the import lines of its file
 * @param when    its condition, comments taken out
 * @param then    its consequence
 */
record DrlRule(String name, String imports, String when, String then) {
    private static final Pattern IMPORT = Pattern.compile("(?m)^import .+;$");

    static List<DrlRule> in(Path file) {
        String text = read(file).replaceAll("(?m)//.*$", "");
        String imports = String.join("\n", IMPORT.matcher(text).results().map(found -> found.group()).toList());
        return DrlLintTest.RULE.matcher(text).results().map(rule -> new DrlRule(rule.group(1), imports, rule.group(2), rule.group(3))).toList();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The id of the criterion it belongs to; "limits" for the shared one. */
    String criterion() {
        return name.split(" ", 2)[0];
    }
}
