package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.SubjectKind;
import org.loamlight.wording.Wording;

/** The sheet of every value the audit rests on. */
final class Readings {
    private final Contents contents;
    private final Wording wording;
    private final Set<Quantity> voided;

    Readings(Contents contents) {
        this.contents = contents;
        this.wording = contents.wording();
        this.voided = contents.audit().findings().stream().flatMap(finding -> finding.voided().stream()).map(Voided::quantity)
                .collect(Collectors.toSet());
    }

    Listing listing() {
        List<Column> columns = List.of(Column.number(), Column.text("What", 28), Column.text("Where", 20),
                Column.text("Value with uncertainty", 16), Column.text("Unit", 9), Column.text("How it came about", 44),
                Column.text("Method", 12), Column.text("Date", 12));
        List<List<String>> rows = new ArrayList<>();
        contents.audit().quantities().forEach(quantity -> rows.add(row(quantity, rows.size() + 1)));
        return new Listing("Readings", "Readings", contents.titled("Readings and computed values"), columns, rows)
                .orSaying("No value was given or read.");
    }

    private List<String> row(Quantity quantity, int number) {
        String unit = wording.unit(quantity);
        return List.of(String.valueOf(number), wording.topic(quantity.topic()), wording.place(quantity.place()), wording.number(quantity),
                unit.isEmpty() ? "number" : unit, how(quantity), wording.method(quantity.origin().method()), quantity.origin().on());
    }

    private String how(Quantity quantity) {
        String trail = wording.howItCameAbout(quantity);
        String how = trail.isEmpty() ? taken(quantity.source()) : trail;
        return voided.contains(quantity) ? how + "\nDoes not count; see the other sheets." : how;
    }

    /** A value taken over: from a reading, or from what was said of a part. */
    private static String taken(String source) {
        String name = source.substring(source.indexOf(':') + 1);
        return (source.startsWith(SubjectKind.READING.id() + ":") ? "as read: " : "as described: ") + name;
    }
}
