package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Code;
import org.loamlight.evaluation.SideBySide;
import org.loamlight.evaluation.SideBySide.ByCode;
import org.loamlight.evaluation.SideBySide.InWords;
import org.loamlight.evaluation.SideBySide.Row;
import org.loamlight.finding.Result;
import org.loamlight.wording.CodeWording;

/** The sheet of what codes ask beside what the species needs; it is there only when codes were chosen. */
final class CodesAsked {
    private final Contents contents;
    private final CodeWording words;
    private final SideBySide table;

    CodesAsked(Contents contents) {
        this.contents = contents;
        this.words = new CodeWording(contents.wording());
        this.table = SideBySide.of(contents.audit());
        contents.sources().cite(Stream.concat(points().map(ByCode::citation), table.clauses().stream().map(InWords::citation)).toList());
    }

    private Stream<ByCode> points() {
        return table.rows().stream().flatMap(row -> row.asked().stream());
    }

    Listing listing() {
        List<Column> columns = List.of(Column.number(), Column.text("What", 24), Column.text("What the species needs", 24), Column.text("Code", 13),
                Column.text("What the code requires", 24), Column.text("What was found", 18), Column.strong("Result", 11),
                Column.text("Clause, source and standing", 18), Column.text("How it was read, and other remarks", 30));
        List<List<String>> rows = new ArrayList<>();
        table.rows().forEach(row -> row.asked().forEach(by -> rows.add(point(row, by, rows.size() + 1))));
        table.clauses().forEach(clause -> rows.add(clause(clause, rows.size() + 1)));
        return new Listing("Codes", "Codes", contents.titled("What codes ask"), columns, rows).orSaying("The chosen codes ask nothing of these animals.");
    }

    private List<String> point(Row row, ByCode by, int number) {
        return List.of(String.valueOf(number), words.thing(row), String.join("\n", words.own(row)), by.code().name(), words.required(by), words.found(by),
                words.result(by.asked().result()), contents.sources().reference(by.citation()), remarks(row, by));
    }

    private String remarks(Row row, ByCode by) {
        String number = by.asked().result() == Result.NONCONFORMITY ? contents.onToDo(by.asked().finding()) : "";
        return Stream.of(Stream.of(words.why(by), number, by.isAsked() ? words.agreement(row) : ""),
                by.otherwise().stream().map(otherwise -> words.otherwise(by, otherwise))).flatMap(part -> part).filter(text -> !text.isEmpty())
                .map(Contents::capitalized).collect(Collectors.joining("\n"));
    }

    private List<String> clause(InWords clause, int number) {
        return List.of(String.valueOf(number), clause.clause().says(), "", clause.code().name(), "in words", "", words.outcome(clause),
                contents.sources().reference(clause.citation()), String.join("\n", clause.clause().judgedBy()));
    }

    /** A line for each chosen code and what to keep in mind, for the summary. */
    static List<List<String>> summary(List<Code> codes, CodeWording words) {
        List<List<String>> rows = new ArrayList<>();
        codes.forEach(code -> rows.add(List.of("Code: " + code.name(), String.join("\n", code.title(), "Issued: " + words.issued(code),
                "Binding: " + words.binding(code.binding()), "Read of it: " + code.read()))));
        if (!rows.isEmpty()) {
            rows.add(List.of("What codes are worth", words.whatDecides() + " See the sheet Codes."));
        }
        return rows;
    }
}
