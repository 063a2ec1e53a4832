package org.loamlight.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Species;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.SideBySide;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Quantity;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Subject;
import org.loamlight.setup.Words;
import org.loamlight.wording.HouseWording;
import org.loamlight.wording.Wording;

/** The report for a terminal: UTF-8 text of at most 80 columns that reads without colour. */
public final class TextReport {
    /** Digits of the knowledge hash that are shown. */
    private static final int HASH_DIGITS = 12;
    private static final int INDENT = 4;
    private static final Set<Method> WORKED_OUT = Set.of(Method.COMPUTED, Method.MODELLED, Method.ESTIMATED);

    private final Audit audit;
    private final Ranking ranking;
    private final Wording wording;
    private final List<Finding> toAsk;
    private final HouseWording house;
    private final Lines lines = new Lines();
    private final Map<Pair, Integer> numbers = new HashMap<>();
    private final Map<List<String>, Integer> firstWithSources = new HashMap<>();

    private TextReport(Audit audit, Ranking ranking, Wording wording) {
        this.audit = audit;
        this.ranking = ranking;
        this.wording = wording;
        this.house = new HouseWording(audit.knowledge(), wording);
        this.toAsk = ranking.toAsk();
        Stream.of(ranking.toDo(), toAsk).flatMap(List::stream).forEach(finding -> numbers.put(finding.pair(), numbers.size() + 1));
    }

    /** The whole report, lines ended by a line feed. Empty lists are said in words. */
    public static String of(Audit audit, Ranking ranking, Wording wording) {
        return new TextReport(audit, ranking, wording).written();
    }

    private String written() {
        head();
        toDo();
        toFindOut();
        codes();
        new HouseSection(audit, ranking, wording, lines).write();
        right();
        workedOut();
        notApplicable();
        cautions();
        notes();
        return lines.toString();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("report." + key, arguments);
    }

    private void head() {
        lines.paragraph(0, say("title", audit.on())).rule('=');
        lines.labelled(0, say("setup"), audit.setup().title());
        List<Animal> animals = audit.setup().animals();
        for (int i = 0; i < animals.size(); i++) {
            lines.labelled(0, i > 0 ? "" : say(animals.size() == 1 ? "animal" : "animals"), described(animals.get(i)));
        }
        lines.labelled(0, say("enclosure"), described(audit.setup().enclosure()));
        lines.labelled(0, say("purpose"), Words.of(audit.setup().purpose()));
        lines.labelled(0, say("conclusion"), say("conclusion.described", capital(wording.conclusion(ranking, audit)),
                wording.conclusionExplained(ranking, audit)));
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private String described(Animal animal) {
        Species species = audit.knowledge().profile(animal.species()).species();
        Stream<String> parts = Stream.of(
                Stream.of(animal.stage(), animal.sex()).filter(word -> !word.name().equals("UNKNOWN")).map(Words::of),
                size("animal.long", animal.length()).stream(), Stream.of(stay(animal))).flatMap(part -> part);
        return Stream.concat(Stream.of(say("animal.described", animal.name(), species.english(), species.latin())), parts)
                .collect(Collectors.joining(", "));
    }

    private String stay(Animal animal) {
        if (animal.livesHere(audit.on())) {
            return say("animal.since", animal.since().orElseThrow());
        }
        return animal.since().map(day -> say("animal.moves-in", day)).orElseGet(() -> say("animal.not-yet"));
    }

    private String described(Enclosure enclosure) {
        String inside = Stream.of(size("enclosure.length", enclosure.length()), size("enclosure.depth", enclosure.depth()),
                size("enclosure.height", enclosure.height())).flatMap(Optional::stream).collect(Collectors.joining(", "));
        String size = inside.isEmpty() ? say("enclosure.untold") : say("enclosure.inside", inside);
        return enclosure.title().isEmpty() ? capital(size) : enclosure.title() + ", " + size;
    }

    private Optional<String> size(String key, Measure measure) {
        return measure.isKnown() ? Optional.of(say(key, wording.amount(measure.amount()))) : Optional.empty();
    }

    private void toDo() {
        lines.heading(say("to-do"));
        if (ranking.toDo().isEmpty()) {
            lines.paragraph(0, say("to-do.none"));
        }
        for (Finding finding : ranking.toDo()) {
            begin(finding);
            String past = wording.difference(finding);
            lines.labelled(INDENT, say("found"), past.isEmpty() ? wording.found(finding) : say("found.past", wording.found(finding), past));
            lines.labelled(INDENT, say("required"), required(finding));
            lines.labelled(INDENT, say("correct"), wording.correction(finding));
            lines.labelled(INDENT, say("meanwhile"), wording.meanwhile(finding));
            end(finding);
        }
    }

    private void toFindOut() {
        lines.heading(say("to-find-out"));
        if (toAsk.isEmpty()) {
            lines.paragraph(0, say("to-find-out.none"));
        }
        toAsk.forEach(finding -> {
            if (finding.grade().atLeast(Grade.MAJOR)) {
                toFindOut(finding);
            } else {
                inBrief(finding);
            }
        });
    }

    private void toFindOut(Finding finding) {
        begin(finding);
        lines.labelled(INDENT, say("what"), wording.found(finding));
        lines.labelled(INDENT, say("required"), required(finding));
        lines.labelled(INDENT, say("with"), wording.instrument(finding));
        lines.labelled(INDENT, say("how"), wording.howToMeasure(finding));
        end(finding);
    }

    /** What harms little takes two or three lines; the workbook has them in full. */
    private void inBrief(Finding finding) {
        String what = finding.result() == Result.UNDECIDED ? wording.found(finding) : wording.whatToFindOut(finding);
        lines.gap().hanging(Lines.padded(numbers.get(finding.pair()) + ".", INDENT),
                say("brief", wording.grade(finding.grade()).toUpperCase(Locale.ROOT), finding.criterion().title(), wording.subject(finding.subject())));
        lines.hanging(" ".repeat(INDENT), say("brief.what", what.replaceFirst("\\.$", ""), wording.instrument(finding)));
    }

    private void begin(Finding finding) {
        lines.gap().hanging(Lines.padded(numbers.get(finding.pair()) + ".", INDENT),
                say("item", wording.grade(finding.grade()).toUpperCase(Locale.ROOT), wording.result(finding.result()),
                        finding.criterion().title()));
        String causes = numbered(finding.explainedBy());
        lines.labelled(INDENT, say("because"), causes.isEmpty() ? "" : say("because.of", causes));
        lines.labelled(INDENT, say("where"), wording.subject(finding.subject()));
        Optional.ofNullable(audit.waived().expired().get(finding.pair())).ifPresent(waiver -> lines.labelled(INDENT, say("waived.by"), house.ranOut(waiver)));
    }

    private void end(Finding finding) {
        lines.labelled(INDENT, say("by"), wording.dueBy(finding, audit));
        sources(finding);
        lines.labelled(INDENT, say("explains"), numbered(finding.explains()));
    }

    /** Each in full, one below the other; where an earlier finding rests on the very same long ones, its number. */
    private void sources(Finding finding) {
        List<String> sources = wording.sources(finding);
        int number = numbers.get(finding.pair());
        int first = firstWithSources.computeIfAbsent(sources, same -> number);
        if (first != number && String.join("; ", sources).length() > Lines.WIDTH) {
            lines.labelled(INDENT, say("source"), say("source.as", first));
            return;
        }
        for (int i = 0; i < sources.size(); i++) {
            lines.labelled(INDENT, i == 0 ? say("source") : "", sources.get(i));
        }
    }

    /** The numbers of findings that stand in this report; empty when none of them does. */
    private String numbered(List<Pair> pairs) {
        return pairs.stream().map(numbers::get).filter(number -> number != null).sorted().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** The limit; for criteria judged by rules the requirement, since their title stands above already. */
    private String required(Finding finding) {
        String required = wording.required(finding);
        return required.equals(finding.criterion().title()) ? finding.criterion().page().requirement().lines().findFirst().orElse("") : required;
    }

    private void codes() {
        if (!audit.knowledge().codes().isEmpty()) {
            new CodesSection(SideBySide.of(audit), wording, numbers, lines).write();
        }
    }

    /** What codes ask stands in a section of its own, met or not. */
    private static List<Finding> ofSpecies(List<Finding> findings) {
        return findings.stream().filter(finding -> !finding.criterion().isOfCode()).toList();
    }

    private void right() {
        lines.heading(say("right"));
        List<Finding> right = ofSpecies(ranking.right());
        if (right.isEmpty()) {
            lines.paragraph(0, say("right.none"));
        }
        Map<String, List<String>> subjects = new LinkedHashMap<>();
        right.forEach(finding -> subjects.computeIfAbsent(finding.criterion().title(), title -> new ArrayList<>()).add(inShort(finding)));
        subjects.forEach((title, where) -> lines.hanging("+ ", say("right.line", title, String.join("; ", where))));
    }

    /** The subject, and the value that decided with what and where it was. */
    private String inShort(Finding finding) {
        String subject = wording.subject(finding.subject());
        return finding.deciding().map(Held::quantity)
                .map(quantity -> say("right.value", subject, what(quantity, finding.subject()), wording.value(quantity))).orElse(subject);
    }

    /** Without the place where that is the subject itself. */
    private String what(Quantity quantity, Subject subject) {
        return quantity.place().item().equals(subject.key()) ? wording.topic(quantity.topic()) : wording.topicAt(quantity.topic(), quantity.place());
    }

    /** What was computed and decides nothing here: watts, litres, hours, money. What decides stands with its finding. */
    private void workedOut() {
        Set<Quantity> shown = audit.findings().stream().flatMap(finding -> Stream.concat(finding.held().stream().map(Held::quantity),
                finding.criterion().informs() ? Stream.empty() : finding.evidence().stream())).collect(Collectors.toSet());
        List<Quantity> others = audit.quantities().stream().filter(one -> WORKED_OUT.contains(one.origin().method()) && !shown.contains(one)).toList();
        if (!others.isEmpty()) {
            lines.heading(say("worked-out"));
            others.forEach(one -> lines.hanging("= ", capital(wording.described(one))));
        }
    }

    private void notApplicable() {
        lines.heading(say("not-applicable"));
        List<Finding> notApplicable = ofSpecies(ranking.notApplicable());
        if (notApplicable.isEmpty()) {
            lines.paragraph(0, say("not-applicable.none"));
        }
        Map<List<String>, List<String>> subjects = new LinkedHashMap<>();
        notApplicable.forEach(finding -> subjects
                .computeIfAbsent(List.of(finding.criterion().title(), wording.reason(finding)), key -> new ArrayList<>())
                .add(wording.subject(finding.subject())));
        subjects.forEach((why, where) -> lines.hanging("- ",
                say("not-applicable.line", why.get(0), String.join(", ", where), why.get(1))));
    }

    private void cautions() {
        List<String> cautions = wording.cautions(ranking, audit);
        if (!cautions.isEmpty()) {
            lines.heading(say("cautions"));
            cautions.forEach(caution -> lines.hanging("! ", caution));
        }
    }

    private void notes() {
        lines.heading(say("notes"));
        Stream.of("notes.uncertainty", "notes.standing", "notes.due").forEach(note -> lines.paragraph(0, say(note)));
        lines.gap().paragraph(0, say("knowledge", audit.knowledge().version(), audit.knowledge().sha256().substring(0, HASH_DIGITS)));
    }
}
