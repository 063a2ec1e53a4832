package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Zone;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Subject;
import org.loamlight.wording.Wording;

/** What the workbook is about, with the words several of its sheets share and the numbers they refer to. */
final class Contents {
    /** What fits beside the other words of a title on upright paper; the whole name stands in the summary. */
    private static final int LONGEST_NAME_IN_TITLE = 36;

    private final Audit audit;
    private final Ranking ranking;
    private final Wording wording;
    private final CitedSources sources;
    private final List<Finding> toAsk;
    private final List<Finding> right;
    private final Map<Pair, Integer> numbers = new HashMap<>();

    Contents(Audit audit, Ranking ranking, Wording wording) {
        this.audit = audit;
        this.ranking = ranking;
        this.wording = wording;
        this.sources = new CitedSources(audit.knowledge(), wording);
        this.toAsk = ranking.toAsk();
        this.right = Stream.concat(ranking.right().stream(), ranking.notApplicable().stream()).filter(finding -> !finding.criterion().isOfCode()).toList();
        ranking.toDo().forEach(finding -> numbers.put(finding.pair(), numbers.size() + 1));
        Stream.of(ranking.toDo().stream(), toAsk.stream(), right.stream().filter(finding -> finding.result() == Result.CONFORMITY)).flatMap(part -> part)
                .forEach(one -> sources.cite(one.citations()));
    }

    Audit audit() {
        return audit;
    }

    Ranking ranking() {
        return ranking;
    }

    /** What the sheet To find out asks, each question once. */
    List<Finding> toAsk() {
        return toAsk;
    }

    /** What is right or does not apply; what codes ask stands on a sheet of its own, met or not. */
    List<Finding> right() {
        return right;
    }

    Wording wording() {
        return wording;
    }

    CitedSources sources() {
        return sources;
    }

    /** "To do: Bracken, 2026-11-02": on every printed page, so that loose pages find their way back. */
    String titled(String words) {
        String names = audit.setup().animals().stream().map(Animal::name).collect(Collectors.joining(", "));
        String shown = names.length() <= LONGEST_NAME_IN_TITLE ? names : CellText.shortened(names, LONGEST_NAME_IN_TITLE) + "...";
        return words + ": " + shown.replaceAll("\\R", " ") + ", " + audit.on();
    }

    /** The part and its place: "Bracken, cool end". */
    String where(Finding finding) {
        Set<String> words = new LinkedHashSet<>();
        Set<String> places = places(finding).filter(place -> place.zone() != Zone.ENCLOSURE && !place.key().equals(finding.subject().key()))
                .map(wording::place).collect(Collectors.toCollection(LinkedHashSet::new));
        if (!finding.subject().equals(Subject.ENCLOSURE) || places.isEmpty()) {
            words.add(wording.subject(finding.subject()));
        }
        words.addAll(places);
        return String.join(", ", words);
    }

    private static Stream<Place> places(Finding finding) {
        if (finding.held().isEmpty() || !finding.wanted().isEmpty()) {
            return Stream.concat(finding.wanted().stream().map(ResolvedLimit::place), finding.evidence().stream().map(Quantity::place));
        }
        return Stream.of(finding.held().get(0).quantity().place());
    }

    /** The title of the criterion; below it the points of the sheet To do it comes from, if any: "because of No. 1". */
    String what(Finding finding) {
        return finding.criterion().title() + because(finding, "");
    }

    /** The points of the sheet To do that explain a finding of another sheet. */
    String becauseOfToDo(Finding finding) {
        return because(finding, " of the sheet To do");
    }

    /** Its number on the sheet To do; only for a finding that stands there. */
    int numberToDo(Finding finding) {
        return numbers.get(finding.pair());
    }

    /** "See No. 3 of the sheet To do"; empty for a finding that does not stand there. */
    String onToDo(Finding finding) {
        Integer number = numbers.get(finding.pair());
        return number == null ? "" : "See No. " + number + " of the sheet To do";
    }

    private String because(Finding finding, String ofSheet) {
        List<String> causes = finding.explainedBy().stream().map(numbers::get).filter(number -> number != null).sorted()
                .map(number -> "No. " + number).toList();
        return causes.isEmpty() ? "" : "\n(because of " + String.join(" and ", causes) + ofSheet + ")";
    }

    /** Where it stands and how firmly it is known, by the numbers of the sheet of sources: "S2: clause 4 (read)". */
    String sources(Finding finding) {
        return finding.citations().stream().map(sources::reference).distinct().collect(Collectors.joining("\n"));
    }

    /** With a capital letter at the beginning. */
    static String capitalized(String text) {
        if (text.isEmpty()) {
            return text;
        }
        return Character.toString(Character.toUpperCase(text.codePointAt(0))) + text.substring(text.offsetByCodePoints(0, 1));
    }

    /** A row for each finding, its number first. */
    static List<List<String>> numbered(List<Finding> findings, Function<Finding, List<String>> words) {
        List<List<String>> rows = new ArrayList<>();
        for (Finding finding : findings) {
            List<String> row = new ArrayList<>(List.of(String.valueOf(rows.size() + 1)));
            row.addAll(words.apply(finding));
            rows.add(row);
        }
        return rows;
    }
}
