package org.loamlight.workbook;

import java.util.List;
import java.util.Optional;
import org.loamlight.ranking.Since;
import org.loamlight.setup.JsonValue;
import org.loamlight.workbook.visit.HistoryEntry;

/**
 * What a checklist carries along beside the audit.
 *
 * @param setup   the setup that was audited, as its file said it
 * @param history what was written down at earlier visits; empty before the first
 * @param since   what changed since the checklist before; empty for a first one
 */
public record Carried(JsonValue setup, List<HistoryEntry> history, Optional<Since> since) {
    public Carried {
        history = List.copyOf(history);
    }

    /** For the first checklist of a setup. */
    public static Carried first(JsonValue setup) {
        return new Carried(setup, List.of(), Optional.empty());
    }
}
