package org.loamlight.report;

import java.util.List;
import org.loamlight.criterion.Knowledge;
import org.loamlight.ranking.Change;
import org.loamlight.ranking.Since;
import org.loamlight.wording.ChangeWording;
import org.loamlight.wording.Wording;

/** What changed since the audit before, printed ahead of the report. */
public final class ChangesSection {
    private final ChangeWording words;
    private final Wording wording;
    private final Lines lines = new Lines();

    private ChangesSection(Knowledge knowledge, Wording wording) {
        this.words = new ChangeWording(knowledge, wording);
        this.wording = wording;
    }

    /**
     * The section, lines ended by a line feed, with an empty line behind it.
     *
     * @param deleted how many rows of the walk were deleted
     */
    public static String of(Since since, long deleted, Knowledge knowledge, Wording wording) {
        return new ChangesSection(knowledge, wording).written(since, deleted);
    }

    private String written(Since since, long deleted) {
        lines.paragraph(0, wording.sentence("change.title", since.on())).rule('=');
        String counted = words.counted(since.changes());
        lines.paragraph(0, counted.isEmpty() ? wording.sentence("change.none") : counted + ".");
        since.changes().stream().filter(change -> change.kind() != Change.Kind.STILL_OPEN).forEach(this::line);
        since.unproven().forEach(pair -> lines.hanging("- ", wording.sentence("change.line", words.unproven(), words.what(pair), words.where(pair)) + " " + words.unprovenExplained()));
        if (deleted > 0) {
            lines.gap().paragraph(0, wording.sentence("change.deleted", deleted));
        }
        byKnowledge(since);
        return lines.gap().toString();
    }

    private void line(Change change) {
        lines.hanging("- ", wording.sentence("change.line", words.kind(change.kind()), words.what(change.pair()), words.where(change.pair())));
    }

    private void byKnowledge(Since since) {
        if (since.isNewer()) {
            List<Change> changes = since.byKnowledge();
            lines.gap().paragraph(0, wording.sentence(changes.isEmpty() ? "change.knowledge.same" : "change.knowledge", since.version()));
            changes.forEach(this::line);
        }
    }
}
