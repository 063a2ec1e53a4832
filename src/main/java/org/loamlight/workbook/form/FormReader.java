package org.loamlight.workbook.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Question;
import org.loamlight.setup.Section;
import org.loamlight.setup.SetupReader;
import org.loamlight.workbook.cells.CellReader;
import org.loamlight.workbook.cells.ReadingLimits;
import org.loamlight.workbook.cells.Sheet;

/** Reads a form that was filled in as a setup whose values stand in cells. */
public final class FormReader {
    /** Two hundred things of a kind make a sheet of about seven thousand cells, a hundred of each kind about six megabytes. */
    private static final ReadingLimits LIMITS = new ReadingLimits(30, 100, 50_000);
    private static final JsonPlace NOWHERE = new JsonPlace(0, 0, "");
    private static final String ANIMALS = "animals";
    private static final String FORMAT = "format";
    private static final int ONCE = 1;

    private final FormPlan plan;
    private final Filled filled;
    private final Problems problems;
    private final FormParts parts;

    private FormReader(FormPlan plan, Filled filled, Problems problems) {
        this.plan = plan;
        this.filled = filled;
        this.problems = problems;
        this.parts = new FormParts(plan, filled, problems);
    }

    /**
     * Reads a form.
     *
     * @param workbook the whole file
     * @param problems takes up what is wrong with single cells; a cell that cannot be used is left out
     * @return the setup as its file would say it, each value at its cell
     * @throws ProblemsFound with everything found so far, when the file is no workbook or no form
     */
    public static JsonValue read(byte[] workbook, Problems problems) throws ProblemsFound {
        FormPlan plan = FormPlan.builtIn();
        Filled filled = new Filled();
        for (Sheet sheet : CellReader.read(workbook, LIMITS, problems)) {
            FormSheet.read(sheet, plan, filled, problems);
        }
        if (filled.isNoForm()) {
            problems.add(NOWHERE, "this workbook is no form: no sheet of it has a column headed " + FormPlan.KEY + " with the keys of a form",
                    "make a form with loamlight form SPECIES -o FILE.xlsx, and fill that in; a checklist is read by loamlight recheck");
            throw problems.found();
        }
        return new FormReader(plan, filled, problems).setup();
    }

    private JsonValue setup() {
        List<Given> given = new ArrayList<>();
        for (Question question : plan.about("")) {
            member(question).ifPresent(value -> given.add(new Given(question.members(), value)));
        }
        parts.complainOfStrays();
        return withWhatIsThere(Given.object(given, NOWHERE));
    }

    private Optional<JsonValue> member(Question question) {
        if (question.kind() == Question.Kind.PARTS) {
            Optional<JsonValue> list = parts.list(question);
            return list.isPresent() || !question.path().equals(ANIMALS) ? list : Optional.of(noAnimal());
        }
        return question.kind() == Question.Kind.VERSION ? Optional.of(version(question)) : answer(question);
    }

    private Optional<JsonValue> answer(Question question) {
        return filled.answer(question.path(), ONCE).flatMap(answer -> AnswerText.value(question, answer, question.path(), problems));
    }

    /** An empty list where the first name belongs, so that the complaint about it points there. */
    private JsonValue noAnimal() {
        return new JsonValue.JsonArray(filled.key(ANIMALS + "[].name").map(cell -> cell.place(ANIMALS)).orElse(NOWHERE), List.of());
    }

    /** A form that lost its version is read as one of today, so that this is said once. */
    private JsonValue version(Question question) {
        Optional<JsonValue> version = answer(question);
        if (version.isEmpty()) {
            problems.add(filled.key(FORMAT).map(cell -> cell.place(FORMAT)).orElse(NOWHERE), "the version of the form is missing",
                    "answer " + SetupReader.FORMAT + " in the row with the key " + FORMAT + ", or take a new form");
        }
        return version.orElse(new JsonValue.JsonNumber(NOWHERE, String.valueOf(SetupReader.FORMAT)));
    }

    /** What the form says is there is there, even if nothing more is known of it. */
    private JsonValue withWhatIsThere(JsonValue.JsonObject setup) {
        Map<String, JsonValue> members = new LinkedHashMap<>(setup.members());
        for (String part : plan.thereIs()) {
            answer(plan.question(part).orElseThrow()).ifPresent(said -> thereIs(part, said, members));
        }
        return new JsonValue.JsonObject(setup.at(), members);
    }

    private void thereIs(String part, JsonValue said, Map<String, JsonValue> members) {
        String word = AnswerText.written(said);
        if (word.equals(FormPlan.YES) || word.equals("true")) {
            members.putIfAbsent(part, new JsonValue.JsonObject(said.at(), Map.of()));
        } else if (!word.equals(Section.NOT_LOOKED)) {
            problems.add(said.at(), "found " + said.quoted(), "allowed are yes, not looked; of what is not there nothing is answered");
        } else if (members.putIfAbsent(part, said) != null) {
            problems.add(said.at(), "nobody looked, but more is said about it", "clear one of the two");
        }
    }
}
