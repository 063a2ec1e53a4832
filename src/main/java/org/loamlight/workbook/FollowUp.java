package org.loamlight.workbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loamlight.criterion.Grade;
import org.loamlight.review.Point;
import org.loamlight.review.PointWords;
import org.loamlight.review.Reviewed;
import org.loamlight.review.Row;
import org.loamlight.wording.Wording;

/** Who owes what by when: one row for the corrections of a setup that are due on a day, one for its readings. What could be better is owed by nobody. */
final class FollowUp {
    private static final Comparator<Owed> SOONEST_FIRST = Comparator.comparing((Owed owed) -> owed.due.orElse(LocalDate.MAX)).thenComparing(owed -> owed.gravest)
            .thenComparingInt(owed -> owed.number).thenComparing(owed -> owed.isReading);

    private final Wording wording;
    private final List<Owed> all = new ArrayList<>();
    /** Titles are the same for many setups and are kept once. */
    private final Map<String, String> titles = new HashMap<>();

    FollowUp(Wording wording) {
        this.wording = wording;
    }

    /** What one setup owes by one day. */
    private static final class Owed {
        private final int number;
        private final Row row;
        private final boolean isReading;
        private final String by;
        private final Optional<LocalDate> due;
        private final Map<String, Integer> points = new LinkedHashMap<>();
        private Grade gravest = Grade.IMPROVEMENT;

        Owed(int number, Row row, boolean isReading, PointWords words) {
            this.number = number;
            this.row = row;
            this.isReading = isReading;
            this.by = words.by();
            this.due = words.due();
        }

        void add(String title, Grade grade) {
            points.merge(title, 1, Integer::sum);
            gravest = gravest.graver(grade);
        }
    }

    /** @param number of the setup on the sheet of setups */
    void add(int number, Row row, Reviewed whole) {
        Map<String, Owed> owed = new LinkedHashMap<>();
        whole.judged().ifPresent(judged -> judged.points().stream().filter(point -> (point.isToDo() || point.isToFindOut()) && point.grade() != Grade.IMPROVEMENT)
                .forEach(point -> add(point, point.words().orElseThrow(), number, row, owed)));
        all.addAll(owed.values());
    }

    private void add(Point point, PointWords words, int number, Row row, Map<String, Owed> owed) {
        owed.computeIfAbsent(point.isToFindOut() + words.by(), first -> new Owed(number, row, point.isToFindOut(), words))
                .add(titles.computeIfAbsent(words.title(), title -> title), point.grade());
    }

    static List<Column> columns() {
        return List.of(Column.number(), Column.strong("By when", 14), new Column("Setup no.", 8, Column.Kind.NUMBER), Column.text("Setup", 30), Column.text("Animals", 18),
                Column.text("Owes", 11), Column.text("Points", 56), Column.text("Gravest", 10), new Column("Done on", 11, Column.Kind.DATE_TO_FILL_IN), Column.toFillIn("Initials", 8));
    }

    /** What is due first stands first; what has no day yet comes last. */
    void writeTo(LongSheet sheet) {
        all.sort(SOONEST_FIRST);
        for (int i = 0; i < all.size(); i++) {
            Owed owed = all.get(i);
            sheet.add(List.of(String.valueOf(i + 1), owed.by, String.valueOf(owed.number), owed.row.label(), owed.row.animals(), owed.isReading ? "reading" : "correction",
                    points(owed), wording.grade(owed.gravest), "", ""));
        }
    }

    private static String points(Owed owed) {
        List<String> told = new ArrayList<>();
        owed.points.forEach((title, count) -> told.add(count == 1 ? title : title + " (" + count + " times)"));
        return String.join("; ", told);
    }
}
