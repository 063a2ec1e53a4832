package org.loamlight.workbook;

import java.util.List;
import java.util.stream.Stream;
import org.loamlight.criterion.HouseRules;
import org.loamlight.evaluation.WaivedFindings;
import org.loamlight.finding.Finding;
import org.loamlight.wording.HouseWording;
import org.loamlight.wording.Wording;

/** What the summary says of house rules and of leave that was given: rows of what it is about and what it says; none where there is neither. */
final class House {
    private final Contents contents;
    private final Wording wording;
    private final HouseWording words;

    House(Contents contents) {
        this.contents = contents;
        this.wording = contents.wording();
        this.words = new HouseWording(contents.audit().knowledge(), wording);
    }

    Stream<List<String>> rows() {
        Stream<List<String>> house = contents.audit().knowledge().house().stream().flatMap(this::house);
        WaivedFindings leave = contents.audit().waived();
        Stream<List<String>> waived = contents.ranking().waived().stream()
                .map(finding -> List.of("Waived", described(finding) + ". " + ended(Contents.capitalized(words.leave(leave.inForce().get(finding.pair()))))));
        Stream<List<String>> ranOut = contents.ranking().open().stream().filter(finding -> leave.expired().containsKey(finding.pair()))
                .map(finding -> List.of("Leave that ran out", described(finding) + ". It " + ended(words.ranOut(leave.expired().get(finding.pair())))));
        Stream<List<String>> danger = words.dangerWaived(contents.ranking().waived()).map(warning -> List.of("Caution", warning)).stream();
        Stream<List<String>> unused = leave.unused().stream().map(waiver -> List.of("Waiver", words.unused(waiver)));
        return Stream.of(house, waived, danger, ranOut, unused).flatMap(rows -> rows);
    }

    private Stream<List<String>> house(HouseRules house) {
        return Stream.of(Stream.of(List.of("House rules", house.inFull())), words.changes(house).stream().map(change -> List.of("House rule", change)),
                words.loosened(house).stream().map(warning -> List.of("Caution", warning))).flatMap(rows -> rows);
    }

    private String described(Finding finding) {
        return wording.grade(finding.grade()) + ", " + wording.result(finding.result()) + ": " + finding.criterion().title() + ", " + wording.subject(finding.subject());
    }

    /** What somebody wrote may end with a full stop or not. */
    private static String ended(String text) {
        return text.endsWith(".") ? text : text + ".";
    }
}
