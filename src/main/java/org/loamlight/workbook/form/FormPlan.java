package org.loamlight.workbook.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.setup.BuiltInFile;
import org.loamlight.setup.Question;
import org.loamlight.setup.QuestionCatalogue;
import org.loamlight.setup.Section;
import org.loamlight.setup.Words;

/**
 * What the form asks and where: the questions of the setup format, arranged as rules/form.json says. Besides those the form asks whether some things are
 * there at all (key "substrate"), and which part another belongs to (key {@code lamps[].between[]}).
 */
public final class FormPlan {
    /** Headings by which the columns of a form are known. Columns for several things are headed by their numbers. */
    public static final String PART = "Part";
    public static final String QUESTION = "Question";
    public static final String ANSWER = "Answer";
    public static final String UNIT = "Unit";
    public static final String HOW = "How to find out";
    public static final String ONLY_IF = "Only if";
    public static final String KEY = "Key";

    /** Answers the setup format does not know by these words. */
    public static final String YES = "yes";
    public static final String NONE = "none";
    public static final String BETWEEN_WORDS = "; ";

    /** The questions that say what the file is: they stand last. */
    public static final List<String> ABOUT_THE_FILE = List.of("format", "$schema");

    private static final String OF_EACH = "[]";

    private final List<Question> questions;
    private final List<String> first;
    private final Map<String, String> onlyIf;
    private final Map<String, String> thereIs;
    private final Map<String, String> sheets;
    private final Map<String, Question> byKey = new HashMap<>();

    private FormPlan(Section plan) {
        questions = QuestionCatalogue.builtIn();
        first = plan.texts("first");
        onlyIf = plan.textsByKey("only-if");
        thereIs = plan.textsByKey("there-is");
        sheets = plan.textsByKey("sheets");
        plan.reportUnasked();
        questions.forEach(question -> byKey.put(question.path(), question));
        Stream.of(first, onlyIf.keySet(), sheets.keySet()).flatMap(Collection::stream).filter(path -> !byKey.containsKey(path))
                .forEach(path -> plan.problem("first", "no question has the path " + path, Words.hint(path, byKey.keySet())));
        thereIs.forEach((path, label) -> byKey.put(path, new Question(path, label + ".", "", Question.Kind.ONE_OF, List.of(YES), List.of())));
        sheets.keySet().stream().filter(list -> list.contains(OF_EACH)).map(list -> list + OF_EACH)
                .forEach(key -> byKey.put(key, new Question(key, "Which one it belongs to.", "Write its name as it stands on its own sheet.",
                        Question.Kind.TEXT, List.of(), List.of())));
    }

    /** The plan in the program. */
    public static FormPlan builtIn() {
        return BuiltInFile.read("form.json", "rules/form.json", FormPlan::new);
    }

    /** Every question of the setup format, in its order. */
    public List<Question> questions() {
        return questions;
    }

    /** The question of a key; empty when the form asks none. */
    public Optional<Question> question(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** Whether the question is which part another belongs to. */
    boolean isOwner(Question question) {
        return question.path().endsWith(OF_EACH);
    }

    /** The question which part one of a list belongs to; empty for what belongs to the setup itself. */
    public Optional<Question> owner(String list) {
        return question(list + OF_EACH);
    }

    /** Every key of the form. */
    public Set<String> keys() {
        return Set.copyOf(byKey.keySet());
    }

    /** Parts of a setup about which the form asks whether they are there, by their path. */
    public Set<String> thereIs() {
        return thereIs.keySet();
    }

    /** Sheet names of what repeats, by the path of the list, in the order of the sheets. */
    public Map<String, String> sheets() {
        return new LinkedHashMap<>(sheets);
    }

    /** When a question need only be answered, in words; empty for always. */
    public String onlyIf(Question question) {
        return onlyIf.getOrDefault(question.path(), "");
    }

    /** The questions asked once that decide most, each group after the question whether there is such a thing. */
    public List<Question> first() {
        Set<Question> asked = new LinkedHashSet<>();
        for (String path : first) {
            thereIs.keySet().stream().filter(part -> path.startsWith(part + ".")).map(byKey::get).forEach(asked::add);
            asked.add(byKey.get(path));
        }
        return List.copyOf(asked);
    }

    /** The other questions asked once. */
    public List<Question> more() {
        List<Question> more = new ArrayList<>(questions.stream().filter(question -> question.list().isEmpty() && question.kind() != Question.Kind.PARTS)
                .filter(question -> !first.contains(question.path()) && !ABOUT_THE_FILE.contains(question.path())).toList());
        ABOUT_THE_FILE.forEach(path -> more.add(byKey.get(path)));
        return more;
    }

    /** The questions about each thing of a list, which thing it belongs to before all others. */
    public List<Question> about(String list) {
        List<Question> about = new ArrayList<>();
        owner(list).ifPresent(about::add);
        questions.stream().filter(question -> question.list().equals(list)).forEach(about::add);
        return about;
    }
}
