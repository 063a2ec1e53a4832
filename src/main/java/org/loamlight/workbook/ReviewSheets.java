package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loamlight.criterion.Caution;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Need;
import org.loamlight.review.Fault;
import org.loamlight.review.Review;
import org.loamlight.review.Row;
import org.loamlight.review.Since;
import org.loamlight.review.Totals;
import org.loamlight.wording.HouseWording;
import org.loamlight.wording.Wording;

/** The sheets of a review that count: overview, needs and grades, common faults. */
final class ReviewSheets {
    private static final int MOST_NAMED = 5;
    private static final int MOST_NOTED = 20;
    static final String UNREAD = "could not be read";

    private final Review review;
    private final Totals totals;
    private final Optional<Since> since;
    private final Knowledge knowledge;
    private final Wording wording;
    private final List<List<String>> rows = new ArrayList<>();

    /** @param knowledge with the codes and the rules of the house the setups were judged with */
    ReviewSheets(Review review, Optional<Since> since, Knowledge knowledge, Wording wording) {
        this.review = review;
        this.totals = review.totals();
        this.since = since;
        this.knowledge = knowledge;
        this.wording = wording;
    }

    /** "Follow-up: review of 24 setups, 2026-11-02": on every printed page. */
    String titled(String words) {
        int count = totals.rows().size();
        return words + ": review of " + (count == 1 ? "1 setup" : count + " setups") + ", " + review.on();
    }

    private void say(String about, String words) {
        rows.add(List.of(about, words));
    }

    /** The first sheet: what it came to, what to do first, how to go on. */
    Listing overview() {
        conclusions();
        worst();
        faults();
        since.ifPresent(this::since);
        unread();
        notes();
        basis();
        cautions();
        howToUse();
        return new Listing("Overview", "Overview", titled("Overview"), List.of(Column.strong("About", 22), new Column("What it says", 78, Column.Kind.LEADING)), rows);
    }

    private void conclusions() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        List<Row> sorted = totals.worstFirst();
        sorted.forEach(row -> counts.merge(row.inWords(UNREAD), 1, Integer::sum));
        say("Conclusions", counts.entrySet().stream().map(count -> count.getKey() + ": " + count.getValue()).collect(Collectors.joining("\n")));
        int danger = (int) sorted.stream().filter(row -> row.tally().toDo(Grade.CRITICAL) > 0).count();
        int toDo = sorted.stream().mapToInt(row -> row.tally().toDo()).sum();
        int toAsk = sorted.stream().mapToInt(row -> row.tally().toFindOut()).sum();
        int right = sorted.stream().mapToInt(row -> row.tally().right()).sum();
        say("Points looked at", "to put right: " + toDo + ", to find out: " + toAsk + ", right: " + right + "\nSetups with a danger: " + danger);
    }

    private void worst() {
        List<Row> sorted = totals.worstFirst();
        say("Look first at", IntStream.range(0, Math.min(MOST_NAMED, sorted.size()))
                .mapToObj(i -> "No. " + (i + 1) + ": " + named(sorted.get(i)) + ": " + sorted.get(i).inWords(UNREAD))
                .collect(Collectors.joining("\n")));
    }

    static String named(Row row) {
        return row.animals().isEmpty() ? row.label() : row.animals() + ", " + row.label();
    }

    private void faults() {
        List<Fault> often = totals.faults().stream().filter(fault -> fault.notRight() > 0).limit(MOST_NAMED).toList();
        say("Common faults", often.isEmpty() ? "No point is found not right anywhere."
                : often.stream().map(fault -> fault.title() + " (" + wording.grade(fault.grade()) + "): " + fault.notRight() + " of " + totals.judged() + " setups")
                        .collect(Collectors.joining("\n")));
    }

    private void since(Since found) {
        String points = found.points().entrySet().stream().map(change -> change.getKey().inWords() + ": " + change.getValue()).collect(Collectors.joining(", "));
        say("Since the earlier review", "Points of setups that were there both times - " + (points.isEmpty() ? "none open then or now" : points) + "\nSetups joined: "
                + found.joinedSetups() + ", gone: " + found.goneSetups()
                + (found.isOtherwiseJudged() ? "\nJudged with other knowledge than then: a point can be new because it is asked now." : ""));
    }

    private void unread() {
        List<Row> unread = totals.rows().stream().filter(row -> !row.isJudged()).toList();
        if (!unread.isEmpty()) {
            say("Could not be read", shown(unread.stream().map(Row::name).toList()) + "\nWhat is wrong with each stands on the sheet Setups.");
        }
    }

    private static String shown(List<String> all) {
        String first = all.stream().limit(MOST_NOTED).collect(Collectors.joining("\n"));
        return all.size() <= MOST_NOTED ? first : first + "\n... and " + (all.size() - MOST_NOTED) + " more";
    }

    private void notes() {
        List<String> notes = new ArrayList<>(review.notes());
        review.namesakes().forEach(group -> notes.add("Of the same name, each judged for itself: " + group.stream().map(Row::name).limit(MOST_NOTED)
                .collect(Collectors.joining(", "))));
        if (!notes.isEmpty()) {
            say("Notes", shown(notes));
        }
    }

    private void basis() {
        knowledge.house().ifPresent(house -> say("House rules", house.inFull()));
        knowledge.house().map(house -> new HouseWording(knowledge, wording).loosened(house)).ifPresent(warnings -> warnings.forEach(warning -> say("Caution", warning)));
        if (!knowledge.codes().isEmpty()) {
            say("Codes", knowledge.codes().stream().map(Code::name).collect(Collectors.joining("\n")));
        }
        say("Knowledge", "version " + knowledge.version() + ", SHA-256 " + knowledge.sha256());
    }

    /** General ones, and those of points that are open somewhere. */
    private void cautions() {
        Set<String> named = totals.faults().stream().map(fault -> Optional.ofNullable(knowledge.criteria().get(fault.criterion()))).flatMap(Optional::stream)
                .map(Criterion::cautions).flatMap(List::stream).collect(Collectors.toSet());
        knowledge.cautions().stream().filter(caution -> caution.general() || named.contains(caution.id())).map(Caution::text).forEach(text -> say("Caution", text));
    }

    private void howToUse() {
        say("How to use this workbook", """
                Setups: every setup, the worst first; its number leads to its own sheet, of which the first 200 have one.
                Needs and grades, Common faults: where many go wrong alike, so that one evening can put much right.
                Follow-up: who owes what by when; filter by day, write when it was done.
                Findings: one row for each open point, to be filtered. What could be better is owed by nobody and stands here only.""");
        say("What the grades mean", Arrays.stream(Grade.values()).map(grade -> wording.grade(grade) + ": " + meaning(grade)).collect(Collectors.joining("\n")));
    }

    private static String meaning(Grade grade) {
        return switch (grade) {
            case CRITICAL -> "can kill or maim";
            case MAJOR -> "harms for good, if it stays as it is";
            case MINOR -> "is less than the animal needs, without lasting harm";
            case IMPROVEMENT -> "nothing is wrong; it would do the animal good";
        };
    }

    /** What was found about each need, by grade; points of all setups. */
    Listing needs() {
        List<Column> columns = new ArrayList<>(List.of(Column.strong("Need", 16)));
        for (Grade grade : Grade.values()) {
            columns.add(count("Not right: " + wording.grade(grade)));
        }
        for (Grade grade : Grade.values()) {
            columns.add(count("To find out: " + wording.grade(grade)));
        }
        columns.add(count("Right"));
        List<List<String>> counted = new ArrayList<>();
        for (Need need : Need.values()) {
            counted.add(counted(wording.need(need), List.of(totals.of(need))));
        }
        counted.add(counted("all needs", Arrays.stream(Need.values()).map(totals::of).toList()));
        return new Listing("Needs and grades", "Needs", titled("Needs and grades"), columns, counted);
    }

    private static Column count(String header) {
        return new Column(header, 10, Column.Kind.NUMBER);
    }

    private static List<String> counted(String name, List<Totals.Counts> counts) {
        List<String> row = new ArrayList<>(List.of(Contents.capitalized(name)));
        for (Grade grade : Grade.values()) {
            row.add(String.valueOf(counts.stream().mapToInt(one -> one.toDo(grade)).sum()));
        }
        for (Grade grade : Grade.values()) {
            row.add(String.valueOf(counts.stream().mapToInt(one -> one.toFindOut(grade)).sum()));
        }
        row.add(String.valueOf(counts.stream().mapToInt(Totals.Counts::right).sum()));
        return row;
    }

    /** Which point fails how often, and for which species; setups are counted, not parts. */
    Listing commonFaults() {
        List<Column> columns = List.of(Column.number(), Column.text("Point", 40), Column.text("Need", 12), Column.strong("Gravest", 11),
                new Column("Setups not right", 11, Column.Kind.NUMBER), new Column("Setups not known", 11, Column.Kind.NUMBER), Column.text("Not right, by species", 46));
        List<List<String>> counted = new ArrayList<>();
        for (Fault fault : totals.faults()) {
            counted.add(List.of(String.valueOf(counted.size() + 1), fault.title(), wording.need(fault.need()), wording.grade(fault.grade()),
                    String.valueOf(fault.notRight()), String.valueOf(fault.notKnown()), species(fault)));
        }
        return new Listing("Common faults", "CommonFaults", titled("Common faults"), columns, counted).orSaying("No point is open anywhere.");
    }

    private String species(Fault fault) {
        return fault.notRightBySpecies().entrySet().stream().map(count -> count.getKey() + ": " + count.getValue() + " of " + totals.kept(count.getKey()))
                .collect(Collectors.joining("; "));
    }
}
