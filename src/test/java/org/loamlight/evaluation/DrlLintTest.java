package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** DRL holds logic only: no numbers, no prose, no order, one statement for each consequence. */
class DrlLintTest {
    private static final Pattern FORBIDDEN = Pattern.compile(
            "\\b(salience|no-loop|lock-on-active|agenda-group|activation-group|global|function|query|declare|eval|modify|update|retract|delete|"
                    + "insert|from|dialect|System|date-effective|forall|accumulate)\\b");
    private static final Pattern IMPORT = Pattern.compile("(?m)^import (.+);$");
    private static final Pattern ALLOWED_IMPORT = Pattern.compile("org\\.loamlight\\.(finding|criterion|quantity|setup)\\.[A-Z]\\w+");
    /** Name, condition and consequence of a rule in the house layout. */
    static final Pattern RULE = Pattern.compile("(?s)^rule \"([^\"]+)\"\\R    when\\R(.+?)\\R    then\\R(.+?)\\Rend$", Pattern.MULTILINE);
    private static final Pattern CONSEQUENCE = Pattern.compile(
            "(?s)\\s*insertLogical\\( (new (Fault|Missing|Voided|Explains)\\(.+\\)|Held\\.of\\(.+\\)) \\);\\s*");
    private static final Pattern INSERTED_NEGATED = Pattern.compile("\\b(not|exists)\\s*\\(?\\s*(Fault|Missing|Held|Explains)\\b");
    private static final Pattern STRING = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern ID_OR_PATH = Pattern.compile("[a-z]+([.-][a-z]+)*( [a-z -]+)?|[a-z]+(\\[])?([.-][a-z-]+(\\[])?)*");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w.$-])\\d");

    static List<Path> rules() {
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            return files.filter(file -> file.toString().endsWith(".drl")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void there_are_rules() {
        assertTrue(rules().size() > 10, rules().toString());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void drl_keeps_to_logic(Path file) throws IOException {
        String text = Files.readString(file).replaceAll("(?m)//.*$", "");
        List<String> wrong = new ArrayList<>();
        String withoutStrings = STRING.matcher(text).replaceAll("\"\"");
        collect(FORBIDDEN, withoutStrings, "forbidden word ", wrong);
        collect(NUMBER, withoutStrings, "number ", wrong);
        collect(INSERTED_NEGATED, withoutStrings, "depends on the order of files: ", wrong);
        Matcher imports = IMPORT.matcher(text);
        while (imports.find()) {
            if (!ALLOWED_IMPORT.matcher(imports.group(1)).matches()) {
                wrong.add("import " + imports.group(1));
            }
        }
        Matcher strings = STRING.matcher(text);
        while (strings.find()) {
            if (!ID_OR_PATH.matcher(strings.group(1)).matches()) {
                wrong.add("text that is no id and no path: " + strings.group(1));
            }
        }
        assertEquals(List.of(), wrong);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void each_rule_states_one_thing_under_its_own_name(Path file) throws IOException {
        String text = Files.readString(file);
        Matcher rules = RULE.matcher(text);
        int count = 0;
        while (rules.find()) {
            count++;
            assertTrue(CONSEQUENCE.matcher(rules.group(3)).matches(), rules.group(1) + ": " + rules.group(3));
            Matcher stated = Pattern.compile("new (?:Fault|Missing)\\( \"([^\"]+)\"|new Voided\\( \\$\\w+, \"([^\"]+)\"").matcher(rules.group(3));
            while (stated.find()) {
                assertEquals(rules.group(1), stated.group(1) == null ? stated.group(2) : stated.group(1));
            }
        }
        assertEquals(text.split("(?m)^rule ", -1).length - 1, count, "rules not in the house layout");
        assertTrue(file.toString().contains("TEMPLATE") || text.startsWith("package org.loamlight.rules." + topic(file) + ";"), "package is not the folder");
    }

    private static String topic(Path file) {
        return file.endsWith("limits.drl") ? "limits" : file.getParent().getParent().getFileName().toString();
    }

    private static void collect(Pattern pattern, String text, String what, List<String> into) {
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            into.add(what + matcher.group());
        }
    }
}
