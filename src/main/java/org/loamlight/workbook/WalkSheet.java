package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.setup.Question;
import org.loamlight.workbook.form.FormAnswers.Answer;
import org.loamlight.workbook.visit.Headings;
import org.loamlight.workbook.visit.Walk;
import org.loamlight.workbook.visit.WalkRow;

/** The sheet to be filled in at the enclosure, one row for each question, in the order in which one walks and works there. */
final class WalkSheet {
    static final String SHEET = "Walk";
    /** More numbers beside a point are not looked up. Judgement. */
    private static final int MOST_NUMBERS = 6;
    // columns, from 0
    private static final int NOW = 6;
    private static final int UNIT = 7;
    private static final int KNOWN_BY = 8;

    private final Contents contents;
    private final List<WalkRow> asked;
    private final Map<String, String> said;
    private final Map<Pair, List<Integer>> numbers = new HashMap<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final List<DropDown> dropDowns = new ArrayList<>();

    WalkSheet(Contents contents) {
        this.contents = contents;
        Walk walk = Walk.of(contents.audit(), contents.ranking(), contents.wording());
        this.asked = walk.rows();
        this.said = new LinkedHashMap<>(walk.said());
        for (int i = 0; i < asked.size(); i++) {
            for (Finding finding : asked.get(i).findings()) {
                numbers.computeIfAbsent(finding.pair(), missing -> new ArrayList<>()).add(i + 1);
            }
        }
        for (int i = 0; i < asked.size(); i++) {
            row(asked.get(i), i + 1);
        }
        if (!asked.isEmpty()) {
            dropDowns.add(DropDown.down(SheetWriter.FIRST_ROW, SheetWriter.FIRST_ROW + rows.size() - 1, KNOWN_BY, Headings.WAYS));
        }
    }

    /** What is asked, in the order of the rows. */
    List<WalkRow> asked() {
        return asked;
    }

    /** Where a finding can be answered: "3, 4, 17"; empty where the walk does not ask for it. */
    String numbers(Finding finding) {
        List<Integer> found = numbers.getOrDefault(finding.pair(), List.of());
        String first = found.stream().limit(MOST_NUMBERS).map(String::valueOf).collect(Collectors.joining(", "));
        return found.size() <= MOST_NUMBERS ? first : first + " ...";
    }

    private void row(WalkRow row, int number) {
        String say = said.remove(row.stop());
        if (say != null) {
            rows.add(List.of("", row.stop(), say, "", "", "", "", "", "", "", "", ""));
        }
        String unit = row.unit().isEmpty() ? unit(row) : row.unit();
        int at = SheetWriter.FIRST_ROW + rows.size();
        dropDowns(row.question(), at);
        rows.add(List.of(String.valueOf(number), row.stop(), what(row), row.where(), row.last().isEmpty() ? "not known" : row.last(),
                String.join("\n", row.asked()), "", unit, "", "", "", row.key()));
    }

    /** How to find out is said only of what is not known: whoever answered it once knows how. */
    private static String what(WalkRow row) {
        String what = Contents.capitalized(row.what());
        return row.last().isEmpty() && !row.question().how().isEmpty() ? what + "\n" + FormWords.how(row.question()) : what;
    }

    private static String unit(WalkRow row) {
        return FormUnits.of(row.question(), row.last().isEmpty() ? List.of() : List.of(new Answer(row.last(), false))).unit();
    }

    private void dropDowns(Question question, int at) {
        List<String> choices = FormWords.choices(question);
        if (!choices.isEmpty()) {
            dropDowns.add(DropDown.of(at, NOW, NOW, choices));
        }
        if (question.units().size() > 1) {
            dropDowns.add(DropDown.of(at, UNIT, UNIT, question.units()));
        }
    }

    Listing listing() {
        List<Column> columns = List.of(Column.number(), Column.strong(Headings.STOP, 10), Column.text(Headings.WHAT, 34), Column.text(Headings.WHERE, 15),
                Column.text("Found last", 14), Column.text("What is asked", 24), Column.toFillIn(Headings.NOW, 15), Column.toFillIn(Headings.UNIT, 7),
                Column.toFillIn(Headings.KNOWN_BY, 10), Column.toFillIn(Headings.PHOTO, 8), Column.toFillIn(Headings.REPLY, 20),
                new Column(Headings.KEY, 9, Column.Kind.KEY));
        return new Listing(SHEET, "Walk", contents.titled("Walk"), columns, rows).orSaying("Nothing is asked at a visit.");
    }

    List<DropDown> dropDowns() {
        return List.copyOf(dropDowns);
    }
}
