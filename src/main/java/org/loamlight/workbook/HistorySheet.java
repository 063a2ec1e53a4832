package org.loamlight.workbook;

import java.util.List;
import org.loamlight.workbook.visit.Headings;
import org.loamlight.workbook.visit.HistoryEntry;

/** The sheet of what was written down at earlier visits, the earliest first. */
final class HistorySheet {
    private HistorySheet() {
    }

    static Listing of(Contents contents, List<HistoryEntry> history) {
        List<Column> columns = List.of(Column.text(Headings.DATE, 11), Column.text(Headings.WHO, 14), Column.text(Headings.WHAT, 34), Column.text(Headings.WHERE, 15),
                Column.text(Headings.BEFORE, 16), Column.text(Headings.NOW, 16), Column.text(Headings.KNOWN_BY, 10), Column.text(Headings.PHOTO, 8),
                Column.text(Headings.REPLY, 24), new Column(Headings.KEY, 14, Column.Kind.KEY));
        List<List<String>> rows = history.stream().map(entry -> List.of(entry.on(), entry.who(), entry.what(), entry.where(), entry.before(), entry.now(),
                entry.knownBy(), entry.photo(), entry.reply(), entry.key())).toList();
        return new Listing("History", "History", contents.titled("What was written down at each visit"), columns, rows);
    }
}
