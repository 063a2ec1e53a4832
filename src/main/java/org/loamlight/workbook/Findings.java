package org.loamlight.workbook;

import java.util.List;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.visit.Headings;

/** The sheets that list findings: what to do, what to find out, what is right. */
final class Findings {
    private static final Column DATE = new Column("Date", 11, Column.Kind.DATE_TO_FILL_IN);
    private static final Column INITIALS = Column.toFillIn("Initials", 8);
    private static final Column WRITE_IN = Column.text("Write in Walk No.", 10);
    private static final Column KEY = new Column(Headings.KEY, 12, Column.Kind.KEY);

    private final Contents contents;
    private final Wording wording;
    private final WalkSheet walk;

    /** @param walk where the answers are written that settle a finding */
    Findings(Contents contents, WalkSheet walk) {
        this.contents = contents;
        this.walk = walk;
        this.wording = contents.wording();
    }

    Listing toDo() {
        List<Column> columns = List.of(Column.number(), Column.text("What", 17), Column.text("Where", 12),
                Column.text("What was found", 22), Column.text("Required", 12), Column.text("How far off", 10),
                Column.text("How to correct", 33), Column.text("By when", 11), Column.strong("Grade", 10),
                Column.text("Source and standing", 18), new Column(Headings.STATE, 10, Column.Kind.STATE),
                WRITE_IN, DATE, INITIALS, KEY);
        return new Listing("To do", "ToDo", contents.titled("To do"), columns,
                Contents.numbered(contents.ranking().toDo(), this::toDo)).orSaying("Nothing to put right was found.");
    }

    private List<String> toDo(Finding finding) {
        return List.of(contents.what(finding), contents.where(finding), Contents.capitalized(wording.found(finding)), wording.required(finding),
                wording.difference(finding), wording.correction(finding), wording.dueBy(finding, contents.audit()),
                wording.grade(finding.grade()), contents.sources(finding), State.OPEN.inWords(), walk.numbers(finding), "", "", finding.pair().key());
    }

    Listing toFindOut() {
        List<Column> columns = List.of(Column.number(), Column.text("What", 30), Column.text("Where", 15),
                Column.text("With which instrument", 16), Column.text("How", 38), Column.text("Why it matters", 36),
                Column.strong("Grade", 10), WRITE_IN, DATE, INITIALS);
        return new Listing("To find out", "ToFindOut", contents.titled("To find out"), columns,
                Contents.numbered(contents.toAsk(), this::toFindOut)).orSaying("Nothing is left to find out.");
    }

    private List<String> toFindOut(Finding finding) {
        return List.of(question(finding), contents.where(finding), wording.instrument(finding), wording.howToMeasure(finding),
                wording.why(finding), wording.grade(finding.grade()), inWalk(finding), "", "");
    }

    /** What is answered nowhere on the walk, such as a lamp that is not described yet, belongs into the setup. */
    private String inWalk(Finding finding) {
        String numbers = walk.numbers(finding);
        return numbers.isEmpty() ? "in the setup or its form" : numbers;
    }

    /** What is not known, and for which point; for a value too close to its limit the value as well. */
    private String question(Finding finding) {
        String asked = finding.result() == Result.UNDECIDED
                ? "Read again, more exactly: " + wording.whatToFindOut(finding) + ". Now: " + wording.found(finding)
                : Contents.capitalized(wording.whatToFindOut(finding));
        return asked + "\nFor: " + finding.criterion().title() + contents.becauseOfToDo(finding);
    }

    Listing right() {
        List<Column> columns = List.of(Column.number(), Column.text("What", 32), Column.text("Where", 18), Column.strong("Result", 10),
                Column.text("What was found, or why it does not apply", 46), Column.text("Required", 22),
                Column.text("Source and standing", 22));
        return new Listing("What is right", "Right", contents.titled("Right, or does not apply"), columns,
                Contents.numbered(contents.right(), this::right)).orSaying("Nothing was found right yet.");
    }

    private List<String> right(Finding finding) {
        boolean applies = finding.result() != Result.NOT_APPLICABLE;
        return List.of(finding.criterion().title(), contents.where(finding), wording.result(finding.result()),
                Contents.capitalized(applies ? wording.found(finding) : wording.reason(finding)), applies ? wording.required(finding) : "",
                applies ? contents.sources(finding) : "");
    }
}
