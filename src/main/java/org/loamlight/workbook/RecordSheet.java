package org.loamlight.workbook;

import java.util.List;
import org.loamlight.workbook.visit.Headings;
import org.loamlight.workbook.visit.Recorded;

/** The last sheet: what the workbook was made from, for the program alone. */
final class RecordSheet {
    private RecordSheet() {
    }

    static Listing of(Contents contents, Recorded recorded) {
        List<Column> columns = List.of(new Column(Headings.KIND, 9, Column.Kind.KEY), new Column(Headings.KEY, 40, Column.Kind.KEY),
                new Column(Headings.TEXT, 100, Column.Kind.KEY));
        List<List<String>> rows = recorded.inRows().stream().map(row -> List.of(row.kind(), row.key(), row.text())).toList();
        return new Listing("Record", "Record", contents.titled("Record, read by the program: leave it as it is"), columns, rows);
    }
}
