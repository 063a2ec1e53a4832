package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loamlight.ranking.Change;
import org.loamlight.ranking.Outcome;
import org.loamlight.ranking.Since;
import org.loamlight.wording.ChangeWording;

/** The sheet of what changed since the checklist before: the worst first, and apart what only the knowledge changed. */
final class ChangesSheet {
    private final Since since;
    private final ChangeWording words;
    private final List<List<String>> rows = new ArrayList<>();

    private ChangesSheet(Contents contents, Since since) {
        this.since = since;
        this.words = new ChangeWording(contents.audit().knowledge(), contents.wording());
    }

    static Listing of(Contents contents, Since since) {
        ChangesSheet sheet = new ChangesSheet(contents, since);
        since.changes().forEach(change -> sheet.add("since " + since.on(), change));
        since.unproven().forEach(sheet::addUnproven);
        since.byKnowledge().forEach(change -> sheet.add("by the knowledge alone, version " + since.version() + " before", change));
        List<Column> columns = List.of(Column.number(), Column.strong("Change", 16), Column.text("What", 40), Column.text("Where", 22), Column.text("Before", 20),
                Column.text("Now", 20), Column.text("Why it stands here", 22));
        return new Listing("Changes", "Changes", contents.titled("What changed"), columns, sheet.rows).orSaying(contents.wording().sentence("change.none"));
    }

    private void add(String why, Change change) {
        rows.add(List.of(String.valueOf(rows.size() + 1), words.kind(change.kind()), words.what(change.pair()), words.where(change.pair()), outcome(change.before()),
                outcome(change.after()), why));
    }

    private String outcome(Optional<Outcome> outcome) {
        return outcome.map(words::outcome).orElse("");
    }

    private void addUnproven(String pair) {
        rows.add(List.of(String.valueOf(rows.size() + 1), words.unproven(), words.what(pair), words.where(pair), "", State.DONE.inWords(), words.unprovenExplained()));
    }
}
