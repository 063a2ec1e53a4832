package org.loamlight.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;

/** The form a keeper fills in, on paper or on a screen: a workbook with every question of a setup, which is read again by its keys. */
public final class FormWriter {
    private static final String SUBJECT = "Form for the description of a reptile enclosure";
    private static final int LONGEST_TITLE = 50;
    /** Sheets with many things are not pressed on one page: five things go beside the questions, the next five on the next. */
    private static final int WIDEST_ON_ONE_PAGE = 200;
    private static final short PERCENT_OF_SIZE = 80;

    private FormWriter() {
    }

    /**
     * Writes the form. The same answers give the same bytes on every machine and at any time.
     *
     * @param about   whose form it is, for the titles
     * @param species for each id of a species that can be audited the names keepers use, the common one first
     * @return the whole workbook
     */
    public static byte[] write(FormAnswers answers, String about, Map<String, List<String>> species, FormPlan plan) throws IOException {
        String shown = about.length() <= LONGEST_TITLE ? about : CellText.shortened(about, LONGEST_TITLE) + "...";
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            Look look = new Look(book);
            SheetWriter.write(howTo(shown), book, look);
            for (FormTable table : FormTables.of(answers, plan, shown, species.size())) {
                write(table, book, look);
            }
            SheetWriter.write(species(species), book, look);
            book.setActiveSheet(0);
            Checklist.describe(book, "Form: " + shown, SUBJECT, LocalDate.EPOCH);
            ByteArrayOutputStream made = new ByteArrayOutputStream();
            book.write(made);
            return FixedZip.of(made.toByteArray());
        }
    }

    private static void write(FormTable table, XSSFWorkbook book, Look look) {
        XSSFSheet sheet = SheetWriter.write(table.listing(), book, look);
        for (FormTable.Answered answered : table.answers()) {
            Cell cell = sheet.getRow(answered.row()).getCell(answered.column());
            if (answered.answer().isWord()) {
                cell.setCellValue(Boolean.parseBoolean(answered.answer().text()));
                // In a cell of text some programs make a number of it.
                cell.setCellStyle(look.of(Column.Kind.TEXT));
            } else {
                cell.setCellValue(CellText.exact(answered.answer().text()));
            }
        }
        table.dropDowns().forEach(choice -> choice.putOn(sheet));
        int last = SheetWriter.FIRST_ROW + table.listing().rows().size() - 1;
        sheet.addIgnoredErrors(new CellRangeAddress(SheetWriter.FIRST_ROW, last, 0, table.listing().columns().size() - 1), IgnoredErrorType.NUMBER_STORED_AS_TEXT);
        if (table.isListOfThings()) {
            sheet.createFreezePane(1, SheetWriter.FIRST_ROW);
            sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
        }
        if (table.listing().width() > WIDEST_ON_ONE_PAGE) {
            sheet.setFitToPage(false);
            sheet.getPrintSetup().setScale(PERCENT_OF_SIZE);
        }
    }

    private static Listing howTo(String about) {
        List<List<String>> rows = List.of(
                List.of("Begin", "Begin with the sheet First: it asks what decides most. Then fill in Animals, Heaters, Lamps, Furnishings and Readings, "
                        + "and as much of the other sheets as you can. What you leave empty is not known: it comes back as a question, never as a fault."),
                List.of("One thing, one column", "On sheets with numbered columns each animal, lamp or reading has a column of its own. Do you need more, "
                        + "insert a column before Key and head it with the next number. Where there is none of a kind, answer yes in the first row."),
                List.of("Units", "Write the number under Answer and its unit under Unit, or both under Answer: 4 ft 2 in, 78 °F ± 1 °F, 24 to 26 °C. "
                        + "An answer with a unit of its own keeps it. Write a decimal point, not a comma."),
                List.of("Not looked", "Write \"not looked\" where you did not look. That is an honest answer."),
                List.of("Keys", "The program knows a row by its key in the last column. Rows and sheets may change their places; keys must stay as they are. "
                        + "Notes may stand on a sheet of their own."),
                List.of("Safety", "Switch lamps and heaters off and let them cool before you touch them; never open anything electrical. Wash your hands before "
                        + "and after. Leave animals that can hurt you, and signs of illness, to people trained for them."),
                List.of("When it is filled in", "loamlight check FILE.xlsx says what cannot be used, by sheet and cell. loamlight audit FILE.xlsx judges the enclosure."));
        return new Listing("How to fill in", "HowTo", "How to fill in: " + about, List.of(Column.strong("About", 22), Column.text("What to do", 78)), rows);
    }

    private static Listing species(Map<String, List<String>> species) {
        List<List<String>> rows = new ArrayList<>();
        species.forEach((id, names) -> rows.add(List.of(id, String.join(", ", names))));
        return new Listing(FormTables.SPECIES, FormTables.SPECIES, "Species that can be audited",
                List.of(Column.strong("Id", 30), Column.text("Names", 60)), rows);
    }
}
