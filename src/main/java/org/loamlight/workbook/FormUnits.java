package org.loamlight.workbook;

import java.util.Collection;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Question;
import org.loamlight.workbook.form.FormAnswers.Answer;

/**
 * Which unit stands in the column of units of a row, and which numbers stand in their cells without it. An answer that ends with a digit takes the unit of
 * its row when the form is read; so where one ends with a digit by itself, as a UV index does, the row has no unit.
 */
record FormUnits(String unit) {
    private static final Pattern PLAIN = Pattern.compile("(-?\\d+(?:\\.\\d+)?) (\\D.*)");

    /** @param answers all answers of the row */
    static FormUnits of(Question question, Collection<Answer> answers) {
        if (question.units().isEmpty() || answers.stream().anyMatch(answer -> Character.isDigit(answer.text().charAt(answer.text().length() - 1)))) {
            return new FormUnits("");
        }
        String only = question.units().size() == 1 && !question.units().contains(Unit.UV_INDEX.symbol()) ? question.units().get(0) : "";
        return new FormUnits(answers.stream().map(answer -> PLAIN.matcher(answer.text())).filter(Matcher::matches).map(found -> found.group(2))
                .filter(question.units()::contains).findFirst().orElse(only));
    }

    /** The answer without the unit of the row, if it is a plain number in it. */
    Answer without(Answer answer) {
        Matcher plain = PLAIN.matcher(answer.text());
        return !unit.isEmpty() && plain.matches() && plain.group(2).equals(unit) ? new Answer(plain.group(1), false) : answer;
    }
}
