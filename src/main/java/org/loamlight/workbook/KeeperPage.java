package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.wording.Wording;

/** The one page that stays with the keeper: what is good, what to do and by when, what to find out, when to call a veterinarian. Plain words, no codes. */
final class KeeperPage {
    static final String SHEET = "For the keeper";
    /** What still fits on one page, and what one can keep in mind. Judgement. */
    private static final int MOST_GOOD = 5;
    private static final int MOST_TO_DO = 5;
    private static final int MOST_TO_FIND_OUT = 5;

    private final Contents contents;
    private final Wording wording;
    private final List<List<String>> rows = new ArrayList<>();

    private KeeperPage(Contents contents) {
        this.contents = contents;
        this.wording = contents.wording();
    }

    static Listing of(Contents contents) {
        KeeperPage page = new KeeperPage(contents);
        page.say("How it stands", Contents.capitalized(page.wording.conclusion(contents.ranking(), contents.audit())) + ". "
                + page.wording.conclusionExplained(contents.ranking(), contents.audit()));
        page.good();
        page.toDo();
        page.toFindOut();
        page.say("Call a veterinarian who sees reptiles at once", page.wording.sentence("keeper.veterinarian"));
        page.say("Keep people safe", page.wording.sentence("keeper.people"));
        page.say("What this page is", page.wording.sentence("keeper.what"));
        page.say("Next visit, whom to ask, signatures", "\n\n\n");
        return new Listing(SHEET, "Keeper", contents.titled("For the keeper"),
                List.of(Column.strong("About", 22), Column.text("What it says", 78)), page.rows);
    }

    private void say(String about, String words) {
        rows.add(List.of(about, words));
    }

    /** What protects the animal most is named first. */
    private void good() {
        List<Finding> good = contents.ranking().right().stream().filter(finding -> finding.result() == Result.CONFORMITY && !finding.criterion().isOfCode())
                .sorted((one, other) -> one.grade().compareTo(other.grade())).toList();
        String titles = good.stream().map(finding -> finding.criterion().title()).distinct().limit(MOST_GOOD).collect(Collectors.joining(".\n"));
        say("What is good", titles.isEmpty() ? wording.sentence("keeper.nothing-shown") : titles + "." + more(good.stream().map(finding -> finding.criterion().id()).distinct().count(), MOST_GOOD));
    }

    private void toDo() {
        List<Finding> toDo = contents.ranking().toDo().stream().filter(finding -> finding.grade() != Grade.IMPROVEMENT).toList();
        toDo.stream().limit(MOST_TO_DO).forEach(finding -> say(Contents.capitalized(wording.dueBy(finding, contents.audit())), toDo(finding)));
        if (toDo.isEmpty()) {
            say("What to do", wording.sentence("keeper.nothing-to-do"));
        } else if (toDo.size() > MOST_TO_DO) {
            say("And more", wording.sentence("keeper.more", toDo.size() - MOST_TO_DO));
        }
    }

    private String toDo(Finding finding) {
        String meanwhile = wording.meanwhile(finding);
        String required = finding.deciding().isEmpty() ? "" : " " + wording.sentence("keeper.required", wording.required(finding));
        return contents.where(finding) + ": " + Contents.capitalized(wording.found(finding)) + required + "\n" + wording.correction(finding)
                + (meanwhile.isEmpty() ? "" : "\nUntil then: " + meanwhile);
    }

    private void toFindOut() {
        List<Finding> toAsk = contents.toAsk();
        if (!toAsk.isEmpty()) {
            say("Please find out", toAsk.stream().limit(MOST_TO_FIND_OUT).map(finding -> Contents.capitalized(wording.whatToFindOut(finding)) + ".").distinct()
                    .collect(Collectors.joining("\n")) + more(toAsk.size(), MOST_TO_FIND_OUT));
        }
    }

    private String more(long all, int told) {
        return all <= told ? "" : "\n" + wording.sentence("keeper.more", all - told);
    }
}
