package org.loamlight.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.review.Changed;
import org.loamlight.review.Judged;
import org.loamlight.review.Point;
import org.loamlight.review.PointWords;
import org.loamlight.review.Review;
import org.loamlight.review.Reviewed;
import org.loamlight.review.Row;
import org.loamlight.review.Since;
import org.loamlight.wording.Wording;

/**
 * The workbook of a review: overview, every setup, needs and grades, common faults, follow-up, every open point, what changed, sources,
 * and a sheet for each of the first setups. However many there are, only a few rows are in memory at a time.
 */
public final class ReviewBook {
    /** Setups that get a sheet of their own, the worst first. */
    static final int MOST_SETUP_SHEETS = 200;
    private static final String SUBJECT = "Husbandry review of reptile enclosures";
    private static final int ROWS_IN_MEMORY = 50;
    private static final int LONGEST_NAME_IN_TAB = 24;

    private final Review review;
    private final Optional<Since> since;
    private final Wording wording;
    private final ReviewSheets counting;
    private final CitedSources sources;
    private final FollowUp followUp;
    private final List<Row> rows;

    private ReviewBook(Review review, Optional<Since> since, Knowledge knowledge, Wording wording) {
        this.review = review;
        this.since = since;
        this.wording = wording;
        this.counting = new ReviewSheets(review, since, knowledge, wording);
        this.sources = new CitedSources(knowledge, wording);
        this.followUp = new FollowUp(wording);
        this.rows = review.totals().worstFirst();
    }

    /**
     * Writes the workbook. The same review gives the same bytes on every machine and at any time.
     *
     * @param knowledge with the codes and the rules of the house the setups were judged with
     * @param out       receives the workbook; it is closed
     * @throws IOException when {@code out} or a temporary file cannot be written
     */
    public static void write(Review review, Optional<Since> since, Knowledge knowledge, Wording wording, OutputStream out) throws IOException {
        Path made = Files.createTempFile("loamlight-review-", ".xlsx");
        try {
            try (OutputStream file = Files.newOutputStream(made)) {
                new ReviewBook(review, since, knowledge, wording).write(file);
            }
            FixedZip.copy(made, out);
        } finally {
            Files.deleteIfExists(made);
        }
    }

    private void write(OutputStream out) throws IOException {
        cite();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            Look look = new Look(book);
            SheetWriter.write(counting.overview(), book, look);
            LongSheet setups = sheet("Setups", "Setups", setupColumns(), book, look);
            SheetWriter.write(counting.needs(), book, look);
            SheetWriter.write(counting.commonFaults(), book, look);
            LongSheet owed = sheet("Follow-up", "FollowUp", FollowUp.columns(), book, look);
            LongSheet findings = sheet("Findings", "Findings", findingColumns(), book, look);
            Optional<LongSheet> changes = since.map(found -> sheet("Since the earlier review", "Since", changeColumns(), book, look));
            SheetWriter.write(sources.listing(counting.titled("Sources")), book, look);
            List<LongSheet> own = ownSheets(book, look);
            Checklist.describe(book, counting.titled("Review"), SUBJECT, review.on());
            try (SXSSFWorkbook streamed = new SXSSFWorkbook(book, ROWS_IN_MEMORY)) {
                List.of(setups, owed, findings).forEach(sheet -> sheet.streamTo(streamed));
                changes.ifPresent(sheet -> sheet.streamTo(streamed));
                own.forEach(sheet -> sheet.streamTo(streamed));
                fill(setups, findings, own);
                followUp.writeTo(owed);
                changes.ifPresent(this::changes);
                setups.finish("No setup was reviewed.");
                findings.finish("No point is open anywhere.");
                owed.finish("Nobody owes anything.");
                changes.ifPresent(sheet -> sheet.finish("No point was open then or is now."));
                own.forEach(sheet -> sheet.finish("Nothing is open here."));
                streamed.write(out);
            }
        }
    }

    /** Sources are numbered in the order in which points cite them, before any sheet names them. */
    private void cite() {
        rows.stream().filter(Row::isJudged).forEach(row -> open(review.whole(row)).forEach(point -> sources.cite(point.words().orElseThrow().citations())));
    }

    private static List<Point> open(Reviewed whole) {
        return whole.judged().map(Judged::points).orElse(List.of()).stream().filter(point -> point.words().isPresent()).toList();
    }

    private LongSheet sheet(String name, String table, List<Column> columns, XSSFWorkbook book, Look look) {
        return new LongSheet(new Listing(name, table, counting.titled(name), columns, List.of()), book, look);
    }

    private static List<Column> setupColumns() {
        return List.of(Column.number(), Column.text("Setup", 30), Column.text("Animals", 14), Column.text("Species", 14), Column.strong("Conclusion", 13), count("Danger"),
                count("Harm"), count("Shortfall"), count("Could be better"), count("To find out"), count("Right"), count("Waived"), Column.text("Audited on", 11),
                Column.text("File", 22), Column.text("Remarks", 30));
    }

    private static Column count(String header) {
        return new Column(header, header.length() > 7 ? 11 : 9, Column.Kind.NUMBER);
    }

    private List<LongSheet> ownSheets(XSSFWorkbook book, Look look) {
        List<LongSheet> own = new ArrayList<>();
        for (int i = 0; i < Math.min(rows.size(), MOST_SETUP_SHEETS); i++) {
            Row row = rows.get(i);
            if (row.isJudged()) {
                String title = "No. " + (i + 1) + ", " + row.verdict().orElseThrow().inWords() + ": " + ReviewSheets.named(row).replaceAll("\\R", " ");
                own.add(new LongSheet(new Listing(tab(i + 1, row), "SetupNo" + (i + 1), title, ownColumns(), List.of()), book, look));
            }
        }
        return own;
    }

    /** Letters, digits and blanks of the names only: what else a tab may hold differs between programs. */
    private static String tab(int number, Row row) {
        String plain = row.animals().replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
        return (String.format(Locale.ROOT, "%03d ", number) + CellText.shortened(plain, Math.min(plain.length(), LONGEST_NAME_IN_TAB))).strip();
    }

    private static List<Column> ownColumns() {
        return List.of(Column.number(), Column.text("Point", 24), Column.text("Where", 16), Column.text("Result", 12), Column.strong("Grade", 10),
                Column.text("What was found, or is not known", 36), Column.text("Required", 16), Column.text("How far off", 12), Column.text("What to do", 44),
                Column.text("By when", 13), Column.text("Source and standing", 20));
    }

    private static List<Column> findingColumns() {
        return List.of(new Column("Setup no.", 8, Column.Kind.NUMBER), Column.text("Setup", 22), Column.text("Animals", 14), Column.text("Species", 14), Column.text("Point", 22),
                Column.text("Where", 14), Column.text("Result", 11), Column.strong("Grade", 10), Column.text("Need", 12), Column.text("What was found, or is not known", 32),
                Column.text("Required", 14), Column.text("How far off", 11), Column.text("What to do", 38), Column.text("By when", 12), Column.text("Source and standing", 16));
    }

    private void fill(LongSheet setups, LongSheet findings, List<LongSheet> own) {
        int next = 0;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.isJudged() && next < own.size()) {
                setups.add(setup(i + 1, row), own.get(next).name());
                each(i + 1, row, findings, Optional.of(own.get(next++)));
            } else {
                setups.add(setup(i + 1, row));
                each(i + 1, row, findings, Optional.empty());
            }
        }
    }

    private List<String> setup(int number, Row row) {
        String remarks = row.isJudged() ? since.map(changed -> changed.of(row)).orElse("") : String.join("\n", row.problems());
        List<String> texts = new ArrayList<>(List.of(String.valueOf(number), row.label(), row.animals(), String.join(", ", row.species()),
                Contents.capitalized(row.inWords(ReviewSheets.UNREAD))));
        for (Grade grade : Grade.values()) {
            texts.add(counted(row, row.tally().toDo(grade)));
        }
        texts.addAll(List.of(counted(row, row.tally().toFindOut()), counted(row, row.tally().right()), counted(row, row.tally().waived()),
                row.verdict().map(found -> found.on().toString()).orElse(""), row.name(), remarks));
        return texts;
    }

    /** Of a file that could not be read nothing was counted. */
    private static String counted(Row row, int count) {
        return row.isJudged() ? String.valueOf(count) : "";
    }

    private void each(int number, Row row, LongSheet findings, Optional<LongSheet> own) {
        if (row.isJudged()) {
            Reviewed whole = review.whole(row);
            followUp.add(number, row, whole);
            int shown = 0;
            for (Point point : open(whole)) {
                List<String> words = words(point, point.words().orElseThrow());
                findings.add(finding(number, row, point, words));
                int place = ++shown;
                own.ifPresent(sheet -> sheet.add(ofSetup(place, words)));
            }
        }
    }

    /** Point, where, result, grade, found, required, how far off, what to do, by when, sources. */
    private List<String> words(Point point, PointWords words) {
        String result = words.leave().map(until -> "waived until " + until).orElse(wording.result(point.result()));
        return List.of(words.title(), words.where(), result, wording.grade(point.grade()), Contents.capitalized(words.found()), words.required().equals(words.title()) ? "" : words.required(), words.past(), words.act(),
                words.leave().isPresent() ? "" : words.by(), words.citations().stream().map(sources::reference).distinct().collect(Collectors.joining("\n")));
    }

    private List<String> finding(int number, Row row, Point point, List<String> words) {
        List<String> texts = new ArrayList<>(List.of(String.valueOf(number), row.label(), row.animals(), String.join(", ", row.species())));
        texts.addAll(words.subList(0, 4));
        texts.add(wording.need(point.need()));
        texts.addAll(words.subList(4, words.size()));
        return texts;
    }

    private static List<String> ofSetup(int number, List<String> words) {
        List<String> texts = new ArrayList<>(List.of(String.valueOf(number)));
        texts.addAll(words);
        return texts;
    }

    private static List<Column> changeColumns() {
        return List.of(Column.number(), Column.text("Setup", 28), Column.text("Animals", 16), Column.strong("Change", 12), Column.text("Point", 30), Column.text("Where", 16),
                Column.text("Then", 34), Column.text("Now", 34));
    }

    private void changes(LongSheet sheet) {
        int[] number = {0};
        since.orElseThrow().forEach(changed -> {
            Reviewed setup = changed.now().or(changed::before).orElseThrow();
            String animals = setup.judged().orElseThrow().animals().stream().map(animal -> animal.name()).collect(Collectors.joining(", "));
            changed.ofSetup().ifPresent(change -> sheet.add(List.of(String.valueOf(++number[0]), setup.label(), animals, change.inWords(), "the whole setup", "",
                    changed.before().map(ReviewBook::concluded).orElse(""), changed.now().map(ReviewBook::concluded).orElse(""))));
            changed.points().forEach(point -> sheet.add(changed(++number[0], setup.label(), animals, point)));
        });
    }

    private static String concluded(Reviewed reviewed) {
        return reviewed.judged().map(Judged::inWords).orElse("");
    }

    private List<String> changed(int number, String setup, String animals, Changed.ChangedPoint point) {
        PointWords words = point.now().flatMap(Point::words).or(() -> point.then().flatMap(Point::words)).orElseThrow();
        return List.of(String.valueOf(number), setup, animals, point.change().inWords(), words.title(), words.where(), state(point.then()), state(point.now()));
    }

    private String state(Optional<Point> point) {
        return point.map(one -> one.isOpen() ? wording.result(one.result()) + ", " + wording.grade(one.grade())
                + one.words().map(PointWords::found).filter(found -> !found.isEmpty()).map(found -> "\n" + Contents.capitalized(found)).orElse("") : wording.result(one.result()))
                .orElse("not asked");
    }
}
