package org.loamlight.workbook.visit;

import java.util.Comparator;

/**
 * What somebody wrote down at a visit.
 *
 * @param on      ISO date of the visit
 * @param who     who made it; "not told" where nobody signed
 * @param what    the question, or the point whose state was set
 * @param where   the part it is about; empty for what is asked once
 * @param before  the answer before; empty for none
 * @param now     the answer, or the state; empty where only a remark was made
 * @param knownBy seen, measured or told; empty when not said
 * @param photo   number of the photograph; empty for none
 * @param reply   what the keeper says; empty for nothing
 * @param key     what the row is known by
 */
public record HistoryEntry(String on, String who, String what, String where, String before, String now, String knownBy, String photo, String reply, String key) {
    /** The first visit first; those of one visit by their keys. */
    static final Comparator<HistoryEntry> IN_TIME = Comparator.comparing(HistoryEntry::on).thenComparing(HistoryEntry::key);
}
