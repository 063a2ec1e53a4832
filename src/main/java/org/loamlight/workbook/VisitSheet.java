package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loamlight.finding.Finding;
import org.loamlight.workbook.visit.Headings;

/** The sheet about the visit itself: who and when, what to take along, what to keep to, and the signatures of both. */
final class VisitSheet {
    private static final List<String> EVERY_TIME = List.of("tool.tape", "tool.rod-gauge", "tool.thermometer", "tool.infrared-thermometer", "tool.hygrometer");
    /** Nobody need take these along. */
    private static final List<String> AT_HAND = List.of("tool.eyes", "tool.records", "tool.label");

    private final Contents contents;
    private final List<List<String>> rows = new ArrayList<>();

    private VisitSheet(Contents contents) {
        this.contents = contents;
    }

    static Listing of(Contents contents) {
        VisitSheet visit = new VisitSheet(contents);
        visit.row("Visited on", "", Headings.VISITED_ON);
        visit.row("Visited by", "", Headings.VISITED_BY);
        visit.row("Keeper", "", Headings.KEEPER);
        visit.row("Whom to ask, and how", "", "");
        visit.row("Next visit on", "", "");
        visit.tools().forEach(tool -> visit.row("Taken along: " + tool, "", ""));
        visit.row("Agreed with the keeper before", "", "");
        visit.row("Signature of the visitor:\nI wrote down what I saw, measured and was told on this day.", "", "");
        visit.row("Signature of the keeper:\nI was there, and I have got the page For the keeper. It is no veterinary examination and no licence.", "", "");
        List<Column> columns = List.of(new Column("About", 44, Column.Kind.TEXT), Column.toFillIn(Headings.WRITTEN, 46), new Column(Headings.KEY, 12, Column.Kind.KEY));
        return new Listing("Visit", "Visit", contents.titled("Visit"), columns, visit.rows);
    }

    private void row(String about, String written, String key) {
        rows.add(List.of(about, written, key));
    }

    /** What the open points are found out with, then what every visit needs. */
    private Set<String> tools() {
        Set<String> tools = new LinkedHashSet<>();
        for (Finding finding : contents.toAsk()) {
            tools.addAll(List.of(contents.wording().instrument(finding).split("; ")));
        }
        EVERY_TIME.forEach(key -> tools.add(contents.wording().sentence(key)));
        AT_HAND.forEach(key -> tools.remove(contents.wording().sentence(key)));
        contents.wording().sentence("visit.tools").lines().forEach(tools::add);
        return tools;
    }
}
