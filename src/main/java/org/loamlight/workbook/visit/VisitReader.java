package org.loamlight.workbook.visit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.workbook.cells.Cell;
import org.loamlight.workbook.cells.CellReader;
import org.loamlight.workbook.cells.ReadingLimits;
import org.loamlight.workbook.cells.Sheet;

/** Reads a checklist that was filled in. Sheets, rows and columns may have changed their places; sheets without a column of keys are passed over. */
public final class VisitReader {
    private static final JsonPlace NOWHERE = new JsonPlace(0, 0, "");
    /** A checklist of many visits has a long history: twelve columns a row. */
    private static final ReadingLimits LIMITS = new ReadingLimits(30, 100, 200_000);
    private static final String MAKE_ONE = "make one with loamlight audit SETUP -o FILE.xlsx and fill that in; a form is read by loamlight audit";
    /** The state every point has before somebody looks at it. */
    private static final String FIRST_STATE = "open";

    private final Problems problems;
    private final List<Recorded.Row> record = new ArrayList<>();
    private final Map<String, Cell> once = new HashMap<>();
    /** By their keys, in the order of the rows. */
    private final Map<String, VisitAnswer> answers = new LinkedHashMap<>();
    private final List<PointState> states = new ArrayList<>();
    private final List<HistoryEntry> history = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    private VisitReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * Reads a checklist.
     *
     * @param workbook the whole file
     * @param problems takes up what is wrong with single cells
     * @throws ProblemsFound with everything found so far, when the file is no workbook or no checklist
     */
    public static Visit read(byte[] workbook, Problems problems) throws ProblemsFound {
        VisitReader reader = new VisitReader(problems);
        for (Sheet sheet : CellReader.read(workbook, LIMITS, problems)) {
            KeyedSheet.of(sheet).ifPresent(reader::sheet);
        }
        if (reader.record.isEmpty() && reader.left.isEmpty()) {
            problems.add(NOWHERE, "this workbook is no checklist: no sheet of it has the keys of one", MAKE_ONE);
            throw problems.found();
        }
        reader.requireFormat();
        return new Visit(Recorded.of(reader.record), Optional.ofNullable(reader.once.get(Headings.VISITED_ON)), reader.written(Headings.VISITED_BY),
                reader.written(Headings.KEEPER), List.copyOf(reader.answers.values()), reader.states, reader.history, reader.left);
    }

    private void requireFormat() throws ProblemsFound {
        Optional<String> format = record.stream().filter(row -> row.kind().equals(Recorded.ABOUT) && row.key().equals(Recorded.FORMAT)).map(Recorded.Row::text).findFirst();
        if (format.isPresent() && !format.get().equals(Recorded.FORMAT_OF_TODAY)) {
            problems.add(NOWHERE, "this checklist is of format " + format.get(), "this program reads format " + Recorded.FORMAT_OF_TODAY + "; take the program that made it, or a newer one");
            throw problems.found();
        }
    }

    private String written(String key) {
        return Optional.ofNullable(once.get(key)).map(cell -> cell.text().strip()).orElse("");
    }

    private void sheet(KeyedSheet sheet) {
        if (sheet.has(Headings.NOW) && sheet.has(Headings.STOP)) {
            sheet.complainOfMerged(problems);
            sheet.rows().forEach(this::walked);
        } else if (sheet.has(Headings.STATE)) {
            sheet.rows().forEach(this::point);
        } else if (sheet.has(Headings.WRITTEN)) {
            sheet.rows().forEach(row -> row.cell(Headings.WRITTEN).ifPresent(cell -> once.put(row.text(Headings.KEY), cell)));
        } else if (sheet.has(Headings.BEFORE) && sheet.has(Headings.WHO)) {
            sheet.rows().forEach(this::remembered);
        } else if (sheet.has(Headings.KIND) && sheet.has(Headings.TEXT)) {
            sheet.rows().forEach(row -> record.add(new Recorded.Row(row.text(Headings.KIND), row.text(Headings.KEY),
                    row.cell(Headings.TEXT).map(Cell::text).orElse(""))));
        }
    }

    private void walked(KeyedSheet.Row row) {
        String key = row.text(Headings.KEY);
        VisitAnswer answer = new VisitAnswer(key, row.cell(Headings.KEY).orElse(row.any()), row.text(Headings.WHAT), row.text(Headings.WHERE),
                row.cell(Headings.NOW), row.text(Headings.UNIT), row.text(Headings.KNOWN_BY), row.text(Headings.PHOTO), row.text(Headings.REPLY));
        boolean isEmpty = answer.now().isEmpty() && answer.photo().isEmpty() && answer.reply().isEmpty();
        if (key.isEmpty()) {
            complainOfKeyless(answer, isEmpty);
            return;
        }
        left.add(key);
        if (!isEmpty) {
            VisitAnswer earlier = answers.putIfAbsent(key, answer);
            if (earlier != null) {
                problems.add(answer.at().place(key), "this is answered twice, first in " + earlier.at().place("").inWords(), "keep one of the two rows");
            }
        }
    }

    private void complainOfKeyless(VisitAnswer answer, boolean isEmpty) {
        if (!isEmpty) {
            problems.add(answer.now().orElse(answer.at()).place(""), "this row has no key", "write in the rows that have one; notes may stand on a sheet of their own");
        }
    }

    private void point(KeyedSheet.Row row) {
        String state = row.text(Headings.STATE);
        String key = row.text(Headings.KEY);
        if (!key.isEmpty() && !state.isEmpty() && !state.equals(FIRST_STATE)) {
            states.add(new PointState(key, row.text(Headings.WHAT), row.text(Headings.WHERE), state));
        }
    }

    private void remembered(KeyedSheet.Row row) {
        if (!row.text(Headings.KEY).isEmpty()) {
            history.add(new HistoryEntry(row.text(Headings.DATE), row.text(Headings.WHO), row.text(Headings.WHAT), row.text(Headings.WHERE), row.text(Headings.BEFORE),
                    row.text(Headings.NOW), row.text(Headings.KNOWN_BY), row.text(Headings.PHOTO), row.text(Headings.REPLY), row.text(Headings.KEY)));
        }
    }
}
