package org.loamlight.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loamlight.criterion.Grade;
import org.loamlight.ranking.Conclusion;
import org.loamlight.review.Fault;
import org.loamlight.review.Review;
import org.loamlight.review.Row;
import org.loamlight.review.Since;
import org.loamlight.review.Totals;
import org.loamlight.wording.Wording;

/** The summary of a review for a terminal: UTF-8 text of at most 80 columns that reads without colour. The workbook has it in full. */
public final class ReviewText {
    private static final int MOST_SETUPS = 10;
    private static final int MOST_FAULTS = 10;
    private static final int MOST_PROBLEMS = 20;
    private static final int HASH_DIGITS = 12;

    private final Review review;
    private final Totals totals;
    private final Wording wording;
    private final Lines lines = new Lines();

    private ReviewText(Review review, Wording wording) {
        this.review = review;
        this.totals = review.totals();
        this.wording = wording;
    }

    /** The whole summary, lines ended by a line feed. */
    public static String of(Review review, Optional<Since> since, Wording wording) {
        ReviewText text = new ReviewText(review, wording);
        text.conclusions();
        text.worst();
        text.unread();
        text.faults();
        since.ifPresent(text::since);
        text.notes();
        text.lines.gap().paragraph(0, wording.sentence("report.knowledge", review.with().basis().version(), review.with().basis().sha256().substring(0, HASH_DIGITS)));
        return text.lines.toString();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("review." + key, arguments);
    }

    private String setups(int count) {
        return count == 1 ? say("setups.one") : say("setups.many", count);
    }

    private void conclusions() {
        lines.paragraph(0, say("title", setups(totals.rows().size()))).rule('=');
        lines.heading(say("conclusions"));
        Map<String, Integer> counts = new LinkedHashMap<>();
        totals.worstFirst().forEach(row -> counts.merge(row.inWords(say("unread")), 1, Integer::sum));
        counts.forEach((conclusion, count) -> lines.hanging("  ", say("count", conclusion, count)));
    }

    private void worst() {
        List<Row> bad = totals.worstFirst().stream().filter(row -> row.verdict().filter(found -> found.conclusion() != Conclusion.READY).isPresent()).toList();
        lines.heading(say("worst"));
        if (bad.isEmpty()) {
            lines.paragraph(0, say(totals.judged() == 0 ? "worst.nothing" : "worst.none"));
        }
        for (int i = 0; i < Math.min(bad.size(), MOST_SETUPS); i++) {
            Row row = bad.get(i);
            lines.hanging(Lines.padded(i + 1 + ".", 4), say("worst.line", named(row), row.verdict().orElseThrow().inWords(),
                    say("counts", row.tally().toDo(Grade.CRITICAL), row.tally().toDo(Grade.MAJOR), row.tally().toFindOut())));
        }
        if (bad.size() > MOST_SETUPS) {
            lines.paragraph(0, say("worst.further", bad.size() - MOST_SETUPS));
        }
    }

    private static String named(Row row) {
        return row.animals().isEmpty() ? row.label() : row.animals() + ", " + row.label();
    }

    private void unread() {
        List<Row> unread = totals.rows().stream().filter(row -> !row.isJudged()).toList();
        if (!unread.isEmpty()) {
            lines.heading(say("unreadable"));
            unread.stream().limit(MOST_PROBLEMS).forEach(row -> {
                if (review.with().anonymous()) {
                    lines.hanging("! ", row.name() + ": " + row.problems().get(0));
                } else {
                    row.problems().forEach(problem -> lines.hanging("! ", problem));
                }
            });
            if (unread.size() > MOST_PROBLEMS) {
                lines.paragraph(0, say("worst.further", unread.size() - MOST_PROBLEMS));
            }
        }
    }

    private void faults() {
        List<Fault> faults = totals.faults();
        lines.heading(say("faults"));
        if (faults.isEmpty()) {
            lines.paragraph(0, say("faults.none"));
        }
        faults.stream().limit(MOST_FAULTS).forEach(fault -> lines.hanging("* ",
                say("faults.line", fault.title(), wording.grade(fault.grade()), fault.notRight(), fault.notKnown())));
    }

    private void since(Since since) {
        lines.heading(say("since"));
        String points = since.points().entrySet().stream().map(change -> say("count", change.getKey().inWords(), change.getValue())).collect(Collectors.joining(", "));
        lines.paragraph(0, say("since.points", points.isEmpty() ? say("none") : points));
        lines.paragraph(0, say("since.setups", since.joinedSetups(), since.goneSetups()));
        if (since.isOtherwiseJudged()) {
            lines.paragraph(0, say("since.knowledge"));
        }
        if (since.unreadable() > 0) {
            lines.paragraph(0, say("since.unreadable", since.unreadable()));
        }
    }

    private void notes() {
        List<List<Row>> namesakes = review.namesakes();
        if (!review.notes().isEmpty() || !namesakes.isEmpty()) {
            lines.heading(say("notes"));
            review.notes().forEach(note -> lines.hanging("- ", note));
            namesakes.stream().limit(MOST_PROBLEMS).forEach(group -> lines.hanging("- ",
                    say("namesakes", group.stream().map(Row::name).collect(Collectors.joining(", ")))));
        }
    }
}
