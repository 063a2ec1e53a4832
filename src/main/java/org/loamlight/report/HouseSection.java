package org.loamlight.report;

import java.util.Locale;
import java.util.Map;
import org.loamlight.criterion.HouseRules;
import org.loamlight.criterion.Waiver;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.ranking.Ranking;
import org.loamlight.wording.HouseWording;
import org.loamlight.wording.Wording;

/** The parts of the text report on the rules of a house and on what is waived; each stands there only where there is something to say. */
final class HouseSection {
    private final Audit audit;
    private final Ranking ranking;
    private final Wording wording;
    private final HouseWording words;
    private final Lines lines;

    HouseSection(Audit audit, Ranking ranking, Wording wording, Lines lines) {
        this.audit = audit;
        this.ranking = ranking;
        this.wording = wording;
        this.words = new HouseWording(audit.knowledge(), wording);
        this.lines = lines;
    }

    void write() {
        waived();
        audit.knowledge().house().ifPresent(this::house);
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("report." + key, arguments);
    }

    private void waived() {
        if (ranking.waived().isEmpty() && audit.waived().unused().isEmpty()) {
            return;
        }
        lines.heading(say("waived"));
        Map<Pair, Waiver> leave = audit.waived().inForce();
        ranking.waived().forEach(finding -> waived(finding, leave.get(finding.pair())));
        words.dangerWaived(ranking.waived()).ifPresent(warning -> lines.gap().hanging("! ", warning));
        audit.waived().unused().forEach(waiver -> lines.gap().hanging("- ", words.unused(waiver)));
    }

    private void waived(Finding finding, Waiver waiver) {
        lines.gap().hanging("~ ", say("waived.item", wording.grade(finding.grade()).toUpperCase(Locale.ROOT), wording.result(finding.result()),
                finding.criterion().title(), wording.subject(finding.subject())));
        lines.labelled(2, say("found"), wording.found(finding));
        lines.labelled(2, say("waived.by"), words.leave(waiver));
    }

    private void house(HouseRules house) {
        lines.heading(say("house"));
        lines.paragraph(0, house.inFull());
        words.changes(house).forEach(change -> lines.hanging("- ", change));
        words.loosened(house).forEach(warning -> lines.hanging("! ", warning));
    }
}
