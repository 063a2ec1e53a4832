package org.loamlight.workbook.visit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.loamlight.setup.Problems;
import org.loamlight.workbook.cells.Cell;

/**
 * A checklist that came back.
 *
 * @param recorded what it was made from; empty when that is lost
 * @param on       the day of the visit as it was written; empty when it was not
 * @param by       who made it; empty when nobody signed
 * @param keeper   the keeper; empty when not said
 * @param answers  the rows of the walk in which something was written
 * @param states   points with another state than the first
 * @param history  what was written down at earlier visits
 * @param left     keys of the rows of the walk that are still there, filled in or not
 */
public record Visit(Optional<Recorded> recorded, Optional<Cell> on, String by, String keeper, List<VisitAnswer> answers, List<PointState> states,
        List<HistoryEntry> history, List<String> left) {
    public Visit {
        answers = List.copyOf(answers);
        states = List.copyOf(states);
        history = List.copyOf(history);
        left = List.copyOf(left);
    }

    /**
     * The day of the visit; empty when it was not written down, and after a problem.
     *
     * @param problems takes up what is no day, and a day before the audit the checklist was made from
     */
    public Optional<LocalDate> day(Problems problems) {
        return on.flatMap(cell -> day(cell, problems));
    }

    private Optional<LocalDate> day(Cell cell, Problems problems) {
        try {
            LocalDate day = LocalDate.parse(cell.text().strip());
            recorded.filter(record -> day.toString().compareTo(record.on()) < 0).ifPresent(record -> problems.add(cell.place(""),
                    "the visit is said to be on " + day + ", before the audit of " + record.on(), "write the day on which the checklist was filled in"));
            return Optional.of(day);
        } catch (DateTimeException e) {
            problems.add(cell.place(""), "this is no day of the calendar", "write year-month-day, such as 2026-11-02");
            return Optional.empty();
        }
    }

    /** How many rows of the walk were deleted. */
    public long deletedRows() {
        return recorded.stream().flatMap(record -> record.rows().stream()).filter(key -> !left.contains(key)).count();
    }
}
