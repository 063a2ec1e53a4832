package org.loamlight.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.loamlight.drawing.Chart;
import org.loamlight.drawing.Charts;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Numbers;
import org.loamlight.drawing.Picture;
import org.loamlight.evaluation.Audit;
import org.loamlight.ranking.Ranking;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.visit.Recorded;

/**
 * The Excel checklist of one audit, to be carried to the enclosure, filled in and read again: summary with what must be done today, what changed if
 * there was a checklist before, the walk and the visit to be filled in, what to do, what to find out, what codes ask if any were chosen, what is right,
 * a page for the keeper, every value, the history, every source, drawing, charts, and the record it is read again by.
 */
public final class Checklist {
    private static final String PROGRAM = "Loamlight";
    private static final String SUBJECT = "Husbandry audit of a reptile enclosure";

    /** Nobody reads the record on paper. */
    private static final String TITLE_ONLY = "$A$1:$C$1";

    private Checklist() {
    }

    /**
     * Writes the workbook. The same audit, ranking, wording and what is carried along give the same bytes on every machine and at any time.
     *
     * @param out receives the workbook whole, after it was made without failure; it is not closed
     * @throws IOException when {@code out} cannot be written
     */
    public static void write(Audit audit, Ranking ranking, Wording wording, Carried carried, OutputStream out) throws IOException {
        Contents contents = new Contents(audit, ranking, wording);
        WalkSheet walk = new WalkSheet(contents);
        Drawing drawing = Drawing.of(audit, wording, Numbers.ofWorkbook(ranking));
        List<Chart> charts = Charts.of(audit, wording);
        Recorded recorded = Recorded.of(audit, carried.setup(), walk.asked());
        out.write(bytes(listings(contents, walk, carried), audit.on(), (book, look) -> {
            XSSFSheet sheet = book.getSheet(WalkSheet.SHEET);
            walk.dropDowns().forEach(choice -> choice.putOn(sheet));
            DrawingSheet.write(contents.titled("Drawing to scale"), drawing, wording, book, look);
            ChartSheet.write(contents.titled("Charts"), charts, wording.sentence("drawing.chart.none"), book, look);
            XSSFSheet record = SheetWriter.write(RecordSheet.of(contents, recorded), book, look);
            book.setPrintArea(book.getSheetIndex(record), TITLE_ONLY);
            book.getSheet(KeeperPage.SHEET).getPrintSetup().setFitHeight((short) 1);
        }));
    }

    /** Every sheet in words but the record. */
    static List<Listing> listings(Audit audit, Ranking ranking, Wording wording, Carried carried) {
        Contents contents = new Contents(audit, ranking, wording);
        return listings(contents, new WalkSheet(contents), carried);
    }

    private static List<Listing> listings(Contents contents, WalkSheet walk, Carried carried) {
        Findings findings = new Findings(contents, walk);
        List<Listing> listings = new ArrayList<>(List.of(Summary.of(contents)));
        carried.since().ifPresent(since -> listings.add(ChangesSheet.of(contents, since)));
        listings.addAll(List.of(walk.listing(), VisitSheet.of(contents), findings.toDo(), findings.toFindOut()));
        if (!contents.audit().knowledge().codes().isEmpty()) {
            listings.add(new CodesAsked(contents).listing());
        }
        listings.addAll(List.of(findings.right(), KeeperPage.of(contents), new Readings(contents).listing()));
        if (!carried.history().isEmpty()) {
            listings.add(HistorySheet.of(contents, carried.history()));
        }
        listings.add(contents.sources().listing(contents.titled("Sources")));
        return listings;
    }

    /**
     * Loads the classes that write workbooks. Runs in any thread, before or beside the audit; {@link #write} works without it,
     * only later.
     */
    public static void warmUp() {
        List<Column> columns = List.of(Column.number(), Column.strong("What", 100), new Column("State", 20, Column.Kind.STATE));
        try {
            List<String> row = List.of("1", "text", State.OPEN.inWords());
            bytes(List.of(new Listing("Sheet", "Table", "Title", columns, List.of(row))), LocalDate.EPOCH, (book, look) -> {
                ChartSheet.write("Title", List.of(new Chart(Chart.Kind.RANGES, "Chart", "chart", "axis", "label", List.of("text"),
                        List.of(new Chart.Series("series", List.of(1.0))))), "", book, look);
                DrawingShapes shapes = new DrawingShapes();
                shapes.add(new Picture("Picture", "picture", 1, 1, List.of(), List.of()), 0);
                DrawingSheet.put(shapes, book.createSheet(DrawingSheet.NAME));
            });
        } catch (IOException e) {
            throw new UncheckedIOException("Nothing is read or written outside the memory here", e);
        }
    }

    static byte[] bytes(List<Listing> listings, LocalDate on) throws IOException {
        return bytes(listings, on, (book, look) -> {
        });
    }

    /** @param further adds sheets that are no listings */
    private static byte[] bytes(List<Listing> listings, LocalDate on, BiConsumer<XSSFWorkbook, Look> further) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            Look look = new Look(book);
            listings.forEach(listing -> SheetWriter.write(listing, book, look));
            further.accept(book, look);
            describe(book, listings.get(0).title(), SUBJECT, on);
            ByteArrayOutputStream made = new ByteArrayOutputStream();
            book.write(made);
            return FixedZip.of(made.toByteArray());
        }
    }

    /** What file managers and libraries show; dates are the day of the audit, never the clock's. */
    static void describe(XSSFWorkbook book, String title, String subject, LocalDate on) {
        Optional<Date> day = Optional.of(Date.from(on.atStartOfDay(ZoneOffset.UTC).toInstant()));
        POIXMLProperties.CoreProperties core = book.getProperties().getCoreProperties();
        core.setTitle(CellText.of(title));
        core.setSubjectProperty(subject);
        core.setCreator(PROGRAM);
        core.setLastModifiedByUser(PROGRAM);
        core.setCreated(day);
        core.setModified(day);
        book.getProperties().getExtendedProperties().setApplication(PROGRAM);
    }
}
