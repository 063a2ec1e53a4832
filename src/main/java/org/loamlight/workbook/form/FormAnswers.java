package org.loamlight.workbook.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.Question;
import org.loamlight.setup.SetupReader;

/** The answers of a setup as they go into a form: by key, and by the number of the thing they are about. */
public final class FormAnswers {
    /** A cell of Excel holds no longer text. */
    private static final int LONGEST = 32_767;
    private static final JsonPlace NOWHERE = new JsonPlace(0, 0, "");
    private static final int ONCE = 1;

    private final FormPlan plan;
    private final Problems problems;
    private final Map<String, SortedMap<Integer, Answer>> answers = new HashMap<>();

    private FormAnswers(FormPlan plan, Problems problems) {
        this.plan = plan;
        this.problems = problems;
    }

    /**
     * One answer.
     *
     * @param isWord whether it is true or false, which a cell holds otherwise than text
     */
    public record Answer(String text, boolean isWord) {
    }

    /** The answers of a form nobody filled in yet, for one animal of a species. */
    public static FormAnswers blank(String species, FormPlan plan) {
        FormAnswers blank = new FormAnswers(plan, new Problems(""));
        blank.put("format", ONCE, new JsonValue.JsonNumber(NOWHERE, String.valueOf(SetupReader.FORMAT)));
        blank.put("animals[].species", ONCE, new JsonValue.JsonText(NOWHERE, species));
        return blank;
    }

    /**
     * The answers of a setup.
     *
     * @param setup    one that can be used
     * @param problems takes up what does not fit into a form
     */
    public static FormAnswers of(JsonValue setup, FormPlan plan, Problems problems) {
        FormAnswers made = new FormAnswers(plan, problems);
        JsonValue.JsonObject document = (JsonValue.JsonObject) setup;
        plan.thereIs().forEach(part -> Optional.ofNullable(document.members().get(part)).ifPresent(value -> made.put(part, ONCE,
                value instanceof JsonValue.JsonObject ? new JsonValue.JsonText(value.at(), FormPlan.YES) : value)));
        made.putAll("", document, ONCE);
        return made;
    }

    /** The answer about a thing; what is asked once is asked about thing 1. */
    public Optional<Answer> answer(String key, int thing) {
        return Optional.ofNullable(answers.getOrDefault(key, new TreeMap<>()).get(thing));
    }

    /** The number of the last thing a list has; 0 for none. */
    public int last(String list) {
        return plan.about(list).stream().map(question -> answers.getOrDefault(question.path(), new TreeMap<>())).filter(about -> !about.isEmpty())
                .mapToInt(SortedMap::lastKey).max().orElse(0);
    }

    private void putAll(String list, JsonValue.JsonObject from, int thing) {
        for (Question question : plan.about(list)) {
            if (!plan.isOwner(question)) {
                find(question, from).ifPresent(value -> put(question, value, from, thing));
            }
        }
    }

    /** The value the members lead to; the "not looked" of a part that holds it, but for those asked about as a whole. */
    private Optional<JsonValue> find(Question question, JsonValue.JsonObject from) {
        JsonValue at = from;
        List<String> walked = new ArrayList<>();
        for (String member : question.members()) {
            if (!(at instanceof JsonValue.JsonObject object)) {
                return plan.thereIs().contains(String.join(".", walked)) ? Optional.empty() : Optional.of(at);
            }
            at = object.members().get(member);
            walked.add(member);
            if (at == null) {
                return Optional.empty();
            }
        }
        return Optional.of(at);
    }

    private void put(Question question, JsonValue value, JsonValue.JsonObject from, int thing) {
        if (question.kind() != Question.Kind.PARTS || value instanceof JsonValue.JsonText) {
            put(question.path(), thing, value);
        } else if (((JsonValue.JsonArray) value).elements().isEmpty()) {
            put(question.path(), thing, new JsonValue.JsonText(value.at(), question.list().isEmpty() ? FormPlan.YES : FormPlan.NONE));
        } else {
            parts(question.path(), (JsonValue.JsonArray) value, from.members().get("name"));
        }
    }

    /** @param name of the thing the parts belong to; null for parts of the setup itself */
    private void parts(String list, JsonValue.JsonArray parts, JsonValue name) {
        for (JsonValue part : parts.elements()) {
            int thing = last(list) + 1;
            plan.owner(list).ifPresent(owner -> put(owner.path(), thing, name));
            putAll(list, (JsonValue.JsonObject) part, thing);
        }
    }

    private void put(String key, int thing, JsonValue value) {
        String text = AnswerText.written(value);
        if (text.length() > LONGEST) {
            problems.add(value, "a text of " + text.length() + " characters fits into no cell", "shorten it to " + LONGEST + " characters");
        } else if (!text.isEmpty()) {
            answers.computeIfAbsent(key, missing -> new TreeMap<>()).put(thing, new Answer(text, value instanceof JsonValue.JsonWord));
        }
    }
}
