package org.loamlight.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Binding;
import org.loamlight.criterion.BodyMeasure;
import org.loamlight.criterion.Active;
import org.loamlight.criterion.Company;
import org.loamlight.criterion.Condition;
import org.loamlight.criterion.Drinks;
import org.loamlight.criterion.Eats;
import org.loamlight.criterion.Form;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Lives;
import org.loamlight.criterion.Need;
import org.loamlight.criterion.Standing;
import org.loamlight.criterion.TimeOfYear;
import org.loamlight.criterion.UvUse;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.evaluation.SideBySide.Agreement;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.ranking.Change;
import org.loamlight.ranking.Conclusion;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Stated;
import org.loamlight.setup.SubjectKind;

/** Every constant and every key has its sentence, and every sentence is used. */
class SentencesTest {
    private static final Path SOURCES = Path.of("src", "main", "java", "org", "loamlight");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9.-]*)\"");
    /** Beginnings that a class puts before the keys it uses. */
    private static final List<String> PREFIXES = List.of("report.", "review.", "page.", "index.", "drawing.", "drawing.list.", "drawing.chart.");

    @Test
    void every_constant_has_its_sentence() {
        Set<String> lacking = new TreeSet<>(ofConstants());
        lacking.removeAll(Sentences.keys());
        assertEquals(Set.of(), lacking);
    }

    private static Set<String> ofConstants() {
        Set<String> keys = new TreeSet<>();
        add(keys, "topic.", "", Topic.values());
        add(keys, "past.", ".low", Topic.values());
        add(keys, "past.", ".high", Topic.values());
        add(keys, "zone.", "", Zone.values());
        add(keys, "at.", "", Zone.values());
        add(keys, "kind.", "", SubjectKind.values());
        add(keys, "kinds.", "", SubjectKind.values());
        add(keys, "in-sentence.", "", SubjectKind.values());
        add(keys, "grade.", "", Grade.values());
        add(keys, "result.", "", Result.values());
        add(keys, "code.result.", "", Result.values());
        add(keys, "binding.", "", Binding.values());
        Stream.of(Agreement.values()).filter(agreement -> agreement != Agreement.SAME).forEach(agreement -> add(keys, "code.agreement.", "", agreement));
        add(keys, "change.", "", Change.Kind.values());
        add(keys, "need.", "", Need.values());
        add(keys, "standing.", "", Standing.values());
        add(keys, "standing.", ".explained", Standing.values());
        add(keys, "method.", "", Method.values());
        for (String when : List.of(".before", ".lives-here", ".before.explained", ".lives-here.explained")) {
            add(keys, "conclusion.", when, Conclusion.values());
        }
        add(keys, "not-applicable.condition.", "", Condition.values());
        add(keys, "condition.", "", Condition.values());
        add(keys, "measure.", "", BodyMeasure.values());
        add(keys, "tool.", "", Tool.values());
        add(keys, "habit.lives.", "", Lives.values());
        add(keys, "habit.uv.", "", UvUse.values());
        Stream.of(TimeOfYear.values()).filter(time -> time != TimeOfYear.ANY).forEach(time -> add(keys, "scope.season.", "", time));
        add(keys, "habit.drinks.", "", Drinks.values());
        add(keys, "habit.company.", "", Company.values());
        add(keys, "habit.form.", "", Form.values());
        add(keys, "habit.active.", "", Active.values());
        add(keys, "habit.eats.", "", Eats.values());
        List.of("digs", "climbs", "eats-snakes", "basks", "soaks", "lays-eggs", "rests-in-winter", "dangerous", "restricted", "specialist").forEach(habit -> add(keys, "habit." + habit + ".", "", Stated.values()));
        Stream.of(SubjectKind.values()).filter(kind -> kind != SubjectKind.ENCLOSURE).forEach(kind -> keys.add("each." + kind.section()));
        return keys;
    }

    private static void add(Set<String> keys, String before, String after, Enum<?>... constants) {
        Stream.of(constants).forEach(constant -> keys.add(before + constant.name().toLowerCase(Locale.ROOT).replace('_', '-') + after));
    }

    @Test
    void every_sentence_is_used() {
        Set<String> unused = Sentences.keys();
        unused.removeAll(ofConstants());
        Set<String> literals = literals(SOURCES);
        unused.removeIf(key -> key.startsWith("path.") || isSpelt(key, literals));
        assertEquals(Set.of(), unused);
    }

    private static boolean isSpelt(String key, Set<String> literals) {
        if (literals.contains(key) || key.startsWith("step.") && literals.contains(key.substring("step.".length()))) {
            return true;
        }
        boolean judged = key.startsWith("judged.") && literals.contains(key.replaceAll("judged\\.|\\.explained", ""));
        boolean decision = key.equals("judged.simple") || key.equals("judged.guarded") || key.startsWith("judged.shown");
        return judged || decision || PREFIXES.stream().anyMatch(prefix -> key.startsWith(prefix) && literals.contains(key.substring(prefix.length())));
    }

    private static Set<String> literals(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).flatMap(file -> LITERAL.matcher(text(file)).results())
                    .map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void every_step_of_the_derivation_has_its_sentence() throws IOException {
        Pattern step = Pattern.compile("Step\\.of\\(\\s*\"([^\"]+)\"");
        Set<String> lacking = new TreeSet<>();
        try (Stream<Path> files = Files.walk(SOURCES.resolve("derivation"))) {
            List<String> keys = files.filter(file -> file.toString().endsWith(".java")).flatMap(file -> step.matcher(text(file)).results())
                    .map((MatchResult match) -> match.group(1)).toList();
            assertTrue(keys.size() >= 5, "the pattern finds the steps: " + keys);
            keys.stream().filter(key -> !Sentences.has("step." + key)).forEach(lacking::add);
        }
        assertEquals(Set.of(), lacking);
    }

    @Test
    void every_step_of_a_full_setup_can_be_told() throws ProblemsFound {
        Wording wording = new Wording(Units.US, BuiltIn.KNOWLEDGE);
        Audit audit = BuiltIn.audit(FULL);
        Set<String> told = audit.quantities().stream().map(Quantity::trail).flatMap(List::stream).map(step -> step.key())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of("counted", "merged", "from-lamp-reading", "inverse-square", "finite-line", "distance-measured", "distance-computed",
                "through-screen", "uv-blocked", "for-index-at-least", "for-index-at-most", "other-lamp-left-out"), told);
        audit.quantities().forEach(quantity -> wording.steps(quantity).forEach(step -> assertFalse(step.matches(".*\\{\\d}.*"), step)));
        Audit dark = BuiltIn.audit("""
                {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"}], "lamps": []}""");
        assertEquals(List.of("there is no UV lamp"), dark.quantities().stream().flatMap(quantity -> wording.steps(quantity).stream()).toList());
    }

    private static final String FULL = """
            {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"}],
             "enclosure": {"inside": {"length": "120 cm"}, "warm-end": "left"},
             "substrate": {"depth": "5 cm"},
             "furnishings": [{"name": "cave", "kind": "hide", "from": "0 cm", "to": "30 cm", "rest-height": "12 cm"}],
             "lamps": [
               {"name": "bulb", "kind": "UV bulb", "between": [{"what": "mesh"}], "nearest-rest": "30 cm",
                "readings": [{"index": "3.1", "distance": "20 cm", "through-what-lies-between": "no"}]},
               {"name": "tube", "kind": "UV tube", "lit-length": "55 cm", "between": [], "place": {"above": "50 cm"},
                "readings": [{"index": "3.1", "distance": "20 cm"}]},
               {"name": "behind glass", "kind": "UV compact", "between": [{"what": "glass"}]}]}
            """;

    @Test
    void every_question_a_criterion_asks_has_its_words() {
        Set<String> paths = new TreeSet<>();
        BuiltIn.KNOWLEDGE.criteria().values().forEach(criterion -> {
            paths.addAll(criterion.needs());
            paths.addAll(criterion.reads());
        });
        assertFalse(paths.isEmpty());
        paths.forEach(path -> assertNotEquals(path, Questions.inWords(path.replaceFirst("\\[]", "[x]")), path));
    }

    @Test
    void sentences_hold_no_stray_slots_or_spaces() {
        Sentences.keys().forEach(key -> {
            String sentence = Sentences.of(key, "0", "1", "2", "3");
            assertEquals(sentence.strip(), sentence, key);
            assertFalse(sentence.contains("{") || sentence.contains("\uFFFD"), key + ": " + sentence);
        });
    }
}
