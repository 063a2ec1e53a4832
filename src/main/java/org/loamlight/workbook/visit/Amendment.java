package org.loamlight.workbook.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loamlight.setup.Amended;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.Question;
import org.loamlight.setup.QuestionCatalogue;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Told;
import org.loamlight.workbook.cells.Cell;
import org.loamlight.workbook.form.AnswerText;
import org.loamlight.workbook.form.FilledIn;

/** Puts what was written down at a visit into the setup the checklist was made from. */
public final class Amendment {
    private static final String UNSIGNED = "not told";
    private static final String READINGS = "readings";
    private static final String READING_VALUE = "readings[].value";

    private final Visit visit;
    private final Setup before;
    private final LocalDate on;
    private final Problems problems;
    private final AskedPaths asked;
    private final List<HistoryEntry> history = new ArrayList<>();
    private JsonValue.JsonObject setup;

    private Amendment(Visit visit, JsonValue.JsonObject setup, Setup before, LocalDate on, Problems problems) {
        this.visit = visit;
        this.setup = setup;
        this.before = before;
        this.on = on;
        this.problems = problems;
        this.asked = AskedPaths.of(before);
    }

    /**
     * The setup after a visit.
     *
     * @param setup   as the file said it, with the cells of new answers as their places
     * @param history what was written down at earlier visits and at this one, the earliest first
     */
    public record Result(JsonValue.JsonObject setup, List<HistoryEntry> history) {
    }

    /**
     * Puts the answers in.
     *
     * @param setup    what the checklist was made from
     * @param before   the same, read
     * @param on       day of the visit
     * @param problems takes up what cannot be used; such an answer is left out
     */
    public static Result of(Visit visit, JsonValue.JsonObject setup, Setup before, LocalDate on, Problems problems) {
        Amendment amendment = new Amendment(visit, setup, before, on, problems);
        visit.answers().forEach(amendment::answer);
        visit.states().forEach(amendment::state);
        amendment.put("on", new JsonValue.JsonText(new JsonPlace(0, 0, "on"), on.toString()));
        List<HistoryEntry> all = new ArrayList<>(visit.history());
        all.addAll(amendment.history);
        all.sort(HistoryEntry.IN_TIME);
        return new Result(amendment.setup, List.copyOf(all));
    }

    private void answer(VisitAnswer answer) {
        Optional<NewReading> reading = NewReading.of(answer.key());
        Optional<String> uvList = UvReading.list(answer.key());
        Optional<Question> question = asked.question(answer.key());
        if (answer.now().isEmpty()) {
            remember(answer, "");
        } else if (reading.isPresent()) {
            add(answer, reading.get());
        } else if (uvList.isPresent()) {
            uv(answer, answer.now().get(), uvList.get());
        } else if (question.isPresent()) {
            value(answer, question.get()).ifPresent(value -> change(answer, value));
        } else {
            problems.add(answer.at().place(""), "nothing is asked under the key \"" + shown(answer.key()) + "\"",
                    "leave the keys as they are; what is new goes into the setup or its form");
        }
    }

    private static String shown(String key) {
        String plain = key.replaceAll("[^\\w.$\\[\\]:; -]", "?");
        return plain.length() <= 60 ? plain : plain.substring(0, 60) + "...";
    }

    private Optional<JsonValue> value(VisitAnswer answer, Question question) {
        return AnswerText.value(question, new FilledIn(answer.now().orElseThrow(), answer.unit()), answer.key(), problems);
    }

    private void change(VisitAnswer answer, JsonValue value) {
        remember(answer, before.told().answer(answer.key()).orElse(""));
        put(answer.key(), value);
        before.readings().stream().filter(reading -> Told.resolved(READING_VALUE, reading.subject()).equals(answer.key())).findFirst()
                .ifPresent(reading -> put(Told.resolved("readings[].on", reading.subject()), new JsonValue.JsonText(value.at(), on.toString())));
    }

    private void put(String path, JsonValue value) {
        Amended.with(setup, path, value).ifPresentOrElse(changed -> setup = changed, () -> problems.add(value, "there is no such part in the setup",
                "describe the part in the setup or its form first"));
    }

    private void add(VisitAnswer answer, NewReading reading) {
        List<String> taken = before.readings().stream().map(Reading::name).toList();
        QuestionCatalogue.question(READING_VALUE).flatMap(question -> value(answer, question)).ifPresent(value -> {
            remember(answer, "");
            addTo(READINGS, reading.element(value, on.toString(), taken), value);
        });
    }

    private void uv(VisitAnswer answer, Cell now, String list) {
        Optional<JsonValue.JsonObject> element = UvReading.element(now.text().strip(), now.place(list), on.toString());
        if (element.isEmpty()) {
            problems.add(now.place(list), "found \"" + shown(now.text().strip()) + "\"", "write the index and its distance, such as 4.6 at 30 cm");
        } else {
            remember(answer, "");
            addTo(list, element.get(), element.get());
        }
    }

    private void addTo(String list, JsonValue.JsonObject element, JsonValue at) {
        Amended.withElement(setup, list, element).ifPresentOrElse(changed -> setup = changed, () -> problems.add(at, "there is no such part in the setup",
                "describe the part in the setup or its form first"));
    }

    private void remember(VisitAnswer answer, String last) {
        String now = answer.now().map(cell -> cell.text().strip() + (answer.unit().isEmpty() || !endsWithDigit(cell.text().strip()) ? "" : " " + answer.unit())).orElse("");
        history.add(new HistoryEntry(on.toString(), who(), answer.what(), answer.where(), last, now, answer.knownBy(), answer.photo(), answer.reply(), answer.key()));
    }

    private static boolean endsWithDigit(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
    }

    private void state(PointState state) {
        history.add(new HistoryEntry(on.toString(), who(), state.what(), state.where(), "", state.state(), "", "", "", state.pair()));
    }

    private String who() {
        return visit.by().isEmpty() ? UNSIGNED : visit.by();
    }
}
