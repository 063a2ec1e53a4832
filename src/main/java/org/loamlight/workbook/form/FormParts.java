package org.loamlight.workbook.form;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.Question;
import org.loamlight.setup.Section;
import org.loamlight.workbook.cells.Cell;

/** What a form lists: each thing is a column, in the order of their numbers; columns nobody wrote in are none. */
final class FormParts {
    private static final int ONCE = 1;
    private static final String NAME = "[].name";
    private static final String NO = "no";

    private final FormPlan plan;
    private final Filled filled;
    private final Problems problems;

    FormParts(FormPlan plan, Filled filled, Problems problems) {
        this.plan = plan;
        this.filled = filled;
        this.problems = problems;
    }

    /** A list of the setup itself; empty when the form says nothing of it. */
    Optional<JsonValue> list(Question list) {
        NavigableSet<Integer> things = filled.things(list.path(), plan);
        Optional<FilledIn> none = filled.answer(list.path(), ONCE);
        if (things.isEmpty()) {
            return none.flatMap(answer -> thereIsNone(list, answer.cell()));
        }
        none.map(FilledIn::cell).filter(cell -> !cell.text().strip().equals(NO)).ifPresent(cell -> contradicted(cell, list.path()));
        return Optional.of(things(list.path(), things, list.path()));
    }

    private Optional<JsonValue> thereIsNone(Question list, Cell cell) {
        JsonPlace at = cell.place(list.path());
        return switch (cell.text().strip()) {
            case FormPlan.YES, FormPlan.NONE, "true" -> Optional.of(new JsonValue.JsonArray(at, List.of()));
            case Section.NOT_LOOKED -> Optional.of(new JsonValue.JsonText(at, Section.NOT_LOOKED));
            case NO, "false" -> Optional.empty();
            default -> {
                problems.add(at, "this cannot be answered here", "allowed are yes, no, not looked");
                yield Optional.empty();
            }
        };
    }

    private void contradicted(Cell cell, String path) {
        problems.add(cell.place(path), "this says that there is nothing to list, but something is listed", "clear one of the two");
    }

    private JsonValue things(String list, Set<Integer> things, String path) {
        List<JsonValue> parts = new ArrayList<>();
        things.forEach(thing -> parts.add(thing(list, thing, path + "[" + parts.size() + "]")));
        return new JsonValue.JsonArray(parts.get(0).at(), parts);
    }

    private JsonValue thing(String list, int thing, String path) {
        List<Given> given = new ArrayList<>();
        Optional<Cell> first = Optional.empty();
        for (Question question : plan.about(list)) {
            first = first.or(() -> filled.answer(question.path(), thing).map(FilledIn::cell));
            if (!plan.isOwner(question)) {
                member(question, thing, path).ifPresent(value -> given.add(new Given(question.members(), value)));
            }
        }
        return Given.object(given, first.orElseThrow().place(path));
    }

    private Optional<JsonValue> member(Question question, int thing, String path) {
        String inner = path + "." + String.join(".", question.members());
        if (question.kind() == Question.Kind.PARTS) {
            return nested(question, thing, inner);
        }
        return filled.answer(question.path(), thing).flatMap(answer -> AnswerText.value(question, answer, inner, problems));
    }

    /** The parts of one thing, which say by its name whose they are. */
    private Optional<JsonValue> nested(Question list, int thing, String path) {
        Set<Integer> own = filled.answer(list.list() + NAME, thing).map(name -> ownedBy(name.cell().text().strip(), list)).orElse(Set.of());
        Optional<FilledIn> said = filled.answer(list.path(), thing);
        if (own.isEmpty()) {
            return said.flatMap(answer -> AnswerText.value(list, answer, path, problems));
        }
        said.ifPresent(answer -> contradicted(answer.cell(), path));
        return Optional.of(things(list.path(), own, path));
    }

    private Set<Integer> ownedBy(String name, Question list) {
        String owner = plan.owner(list.path()).orElseThrow().path();
        return filled.things(list.path(), plan).stream()
                .filter(thing -> filled.answer(owner, thing).filter(answer -> answer.cell().text().strip().equals(name)).isPresent())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Says of each part that it belongs to nothing the form lists. */
    void complainOfStrays() {
        for (String list : plan.sheets().keySet()) {
            plan.owner(list).ifPresent(owner -> filled.things(list, plan).forEach(thing -> complainIfStray(owner, thing)));
        }
    }

    private void complainIfStray(Question owner, int thing) {
        String list = owner.list().substring(0, owner.list().lastIndexOf("[]"));
        Set<String> names = filled.things(list, plan).stream().flatMap(known -> filled.answer(list + NAME, known).stream())
                .map(answer -> answer.cell().text().strip()).collect(Collectors.toCollection(TreeSet::new));
        Optional<Cell> said = filled.answer(owner.path(), thing).map(FilledIn::cell);
        if (said.filter(cell -> names.contains(cell.text().strip())).isEmpty()) {
            Cell at = said.orElseGet(() -> plan.about(owner.list()).stream().flatMap(question -> filled.answer(question.path(), thing).stream())
                    .findFirst().orElseThrow().cell());
            String found = said.isEmpty() ? "it is not said which of the " + list + " this belongs to" : "none of the " + list + " has this name";
            problems.add(at.place(owner.list()), found, names.isEmpty() ? "list the " + list + " first" : "the names are " + shown(names));
        }
    }

    private static String shown(Set<String> names) {
        return names.stream().limit(10).map(name -> new JsonValue.JsonText(new JsonPlace(0, 0, ""), name).quoted()).collect(Collectors.joining(", "));
    }
}
