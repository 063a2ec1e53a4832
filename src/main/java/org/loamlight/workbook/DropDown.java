package org.loamlight.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * A list to choose from in a block of cells.
 *
 * @param row     the first, from 0, as the others
 * @param lastRow the last
 * @param words what can be chosen; empty where they stand in cells
 * @param cells the cells the words stand in, as a formula names them; empty where they are given
 */
record DropDown(int row, int lastRow, int firstColumn, int lastColumn, List<String> words, String cells) {
    private static final int WORDS_SHOWN = 200;

    /** In some cells of one row. */
    static DropDown of(int row, int firstColumn, int lastColumn, List<String> words) {
        return new DropDown(row, row, firstColumn, lastColumn, words, "");
    }

    /** In all cells of one column from one row to another. */
    static DropDown down(int row, int lastRow, int column, List<String> words) {
        return new DropDown(row, lastRow, column, column, words, "");
    }

    void putOn(XSSFSheet sheet) {
        XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
        DataValidationConstraint choice = cells.isEmpty() ? helper.createExplicitListConstraint(words.toArray(String[]::new))
                : helper.createFormulaListConstraint(cells);
        DataValidation validation = helper.createValidation(choice, new CellRangeAddressList(row, lastRow, firstColumn, lastColumn));
        validation.setShowErrorBox(true);
        String told = words.isEmpty() ? "Choose from the list." : "Choose one of: " + String.join(", ", words) + ".";
        validation.createErrorBox("Answer", CellText.shortened(told, WORDS_SHOWN));
        sheet.addValidationData(validation);
    }
}
