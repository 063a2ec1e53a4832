package org.loamlight.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.loamlight.criterion.Code;
import org.loamlight.evaluation.SideBySide;
import org.loamlight.evaluation.SideBySide.ByCode;
import org.loamlight.evaluation.SideBySide.InWords;
import org.loamlight.evaluation.SideBySide.Row;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.wording.CodeWording;
import org.loamlight.wording.Wording;

/** The part of the text report on what codes ask; it stands there only when codes were chosen. */
final class CodesSection {
    private static final int INDENT = 2;
    /** Names of codes longer than this do not widen their column. */
    private static final int WIDEST_NAME = 22;

    private final SideBySide table;
    private final Wording wording;
    private final CodeWording words;
    private final Map<Pair, Integer> numbers;
    private final Lines lines;
    private final int nameWidth;

    /** @param numbers of the findings that stand in the lists of the report */
    CodesSection(SideBySide table, Wording wording, Map<Pair, Integer> numbers, Lines lines) {
        this.table = table;
        this.wording = wording;
        this.words = new CodeWording(wording);
        this.numbers = numbers;
        this.lines = lines;
        this.nameWidth = table.codes().stream().map(Code::name).mapToInt(Columns::width).map(width -> Math.min(width, WIDEST_NAME)).max().orElse(0) + INDENT;
    }

    void write() {
        lines.heading(say("codes")).paragraph(0, words.whatDecides());
        table.codes().forEach(this::code);
        if (table.rows().isEmpty() && table.clauses().isEmpty()) {
            lines.gap().paragraph(0, say("codes.nothing"));
        }
        figures();
        elsewhere();
        policies();
        clauses();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("report." + key, arguments);
    }

    private void code(Code code) {
        lines.gap().hanging("* ", say("codes.name", code.name(), code.title()));
        lines.labelled(INDENT, say("codes.issued"), words.issued(code));
        lines.labelled(INDENT, say("codes.binding"), words.binding(code.binding()));
        lines.labelled(INDENT, say("codes.read"), code.read());
    }

    private void figures() {
        List<Row> asked = table.rows().stream().filter(Row::isAsked).toList();
        if (!asked.isEmpty()) {
            lines.gap().paragraph(0, say("codes.figures"));
        }
        asked.forEach(this::row);
    }

    private void row(Row row) {
        lines.gap().paragraph(0, words.thing(row));
        words.own(row).forEach(own -> named(say("codes.species"), own));
        row.asked().stream().filter(ByCode::isAsked).forEach(this::asked);
        lines.paragraph(INDENT, words.agreement(row));
    }

    /** A name that is too long for its column takes a line of its own. */
    private void named(String name, String text) {
        boolean fits = Columns.width(name) < nameWidth;
        if (!fits) {
            lines.paragraph(INDENT, name);
        }
        lines.hanging(" ".repeat(INDENT) + Lines.padded(fits ? name : "", nameWidth), text);
    }

    private String at(ByCode by) {
        return say("codes.at", by.code().name(), by.point().clause());
    }

    private void asked(ByCode by) {
        named(by.code().name(), say("codes.line", words.requiredAndFound(by), resultWithNumber(by)));
        named("", words.passage(by.citation()));
    }

    /** What is not met stands out; where the finding has a number, it is told, unless it is of another thing the point asks. */
    private String resultWithNumber(ByCode by) {
        String result = words.result(by.asked().result());
        String shown = by.asked().result() == Result.NONCONFORMITY ? result.toUpperCase(Locale.ROOT) : result;
        String why = words.why(by);
        String told = why.isEmpty() ? shown : say("codes.why", shown, why);
        Integer number = numbers.get(by.asked().finding().pair());
        return number == null || by.asked().result() == Result.CONFORMITY ? told : say("codes.see", told, number);
    }

    /** What the chosen codes ask of others only: a line each, so that nobody looks for it in vain. */
    private void elsewhere() {
        List<Row> rows = table.rows().stream().filter(row -> row.asked().stream().anyMatch(by -> !by.isAsked())).toList();
        if (!rows.isEmpty()) {
            lines.gap().paragraph(0, say("codes.elsewhere"));
        }
        rows.forEach(row -> row.asked().stream().filter(by -> !by.isAsked()).forEach(by -> lines.hanging("- ",
                say("codes.elsewhere.line", words.thing(row), at(by), words.why(by)))));
    }

    private void policies() {
        List<Row> read = table.rows().stream().filter(row -> row.asked().stream().anyMatch(by -> !by.otherwise().isEmpty())).toList();
        if (!read.isEmpty()) {
            lines.gap().paragraph(0, say("codes.policies"));
        }
        read.forEach(row -> row.asked().forEach(by -> by.otherwise().forEach(otherwise -> lines.hanging("- ",
                say("codes.policies.line", words.thing(row), at(by), words.required(by), words.otherwise(by, otherwise))))));
    }

    private void clauses() {
        if (!table.clauses().isEmpty()) {
            lines.gap().paragraph(0, say("codes.words"));
        }
        table.clauses().forEach(this::clause);
    }

    private void clause(InWords clause) {
        lines.hanging("- ", say("codes.words.line", clause.code().name(), words.passage(clause.citation()), clause.clause().says(), words.outcome(clause)));
    }
}
