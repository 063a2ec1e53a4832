package org.loamlight.workbook;

import java.util.List;
import org.loamlight.workbook.form.FormAnswers.Answer;

/**
 * One sheet of a form in words.
 *
 * @param answers        the cells that are answered already
 * @param isListOfThings whether each thing has a column of its own
 */
record FormTable(Listing listing, List<DropDown> dropDowns, List<Answered> answers, boolean isListOfThings) {

    /**
     * A cell that is answered.
     *
     * @param row    from 0
     * @param column from 0
     */
    record Answered(int row, int column, Answer answer) {
    }
}
