package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Species;
import org.loamlight.criterion.Standing;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Words;
import org.loamlight.wording.CodeWording;
import org.loamlight.wording.Wording;

/** The first sheet: the conclusion, what it is about, what to do first, and how to go on. */
final class Summary {
    private static final int MOST_FIRST_STEPS = 3;

    private final Contents contents;
    private final Audit audit;
    private final Ranking ranking;
    private final Wording wording;
    private final List<List<String>> rows = new ArrayList<>();
    /** What stands in the box. */
    private final List<Finding> today = new ArrayList<>();

    private Summary(Contents contents) {
        this.contents = contents;
        this.audit = contents.audit();
        this.ranking = contents.ranking();
        this.wording = contents.wording();
    }

    static Listing of(Contents contents) {
        Summary summary = new Summary(contents);
        summary.actToday();
        int boxed = summary.rows.size();
        summary.conclusion();
        summary.about();
        summary.first();
        new House(contents).rows().forEach(summary.rows::add);
        summary.rows.addAll(CodesAsked.summary(contents.audit().knowledge().codes(), new CodeWording(contents.wording())));
        summary.wording.cautions(summary.ranking, summary.audit).forEach(caution -> summary.say("Caution", caution));
        summary.howToUse();
        summary.say("Knowledge", "version " + summary.audit.knowledge().version() + ", SHA-256 " + summary.audit.knowledge().sha256());
        return new Listing("Summary", "Summary", contents.titled("Checklist"),
                List.of(Column.strong("About", 22), new Column("What it says", 78, Column.Kind.LEADING)), summary.rows, boxed);
    }

    private void say(String about, String words) {
        rows.add(List.of(about, words));
    }

    /**
     * Danger only: what to stop, what keeps the animal safe until it is put right, by when, and who does it. A danger another one explains is put right
     * with that one.
     */
    private void actToday() {
        Set<Pair> dangers = ranking.toDo().stream().filter(finding -> finding.grade() == Grade.CRITICAL).map(Finding::pair).collect(Collectors.toSet());
        ranking.toDo().stream().filter(finding -> dangers.contains(finding.pair()) && finding.explainedBy().stream().noneMatch(dangers::contains))
                .forEach(today::add);
        today.forEach(danger -> say("Act today\n(To do No. " + contents.numberToDo(danger) + ")", actToday(danger)));
    }

    private String actToday(Finding danger) {
        String meanwhile = wording.meanwhile(danger);
        return String.join("\n", contents.what(danger), "Where: " + contents.where(danger), "Found: " + Contents.capitalized(wording.found(danger)),
                (meanwhile.isEmpty() ? "" : "Now, until it is put right: " + meanwhile + "\n") + "Put right: " + wording.correction(danger),
                "By when: " + wording.dueBy(danger, audit), "Who does it, and when it was done: ______________________________");
    }

    private void conclusion() {
        say("Conclusion", Contents.capitalized(wording.conclusion(ranking, audit)) + ". " + wording.conclusionExplained(ranking, audit));
        say("Points looked at", "to put right: " + ranking.toDo().size() + ", to find out: " + contents.toAsk().size() + ", right: "
                + right(Result.CONFORMITY) + ", does not apply: " + right(Result.NOT_APPLICABLE)
                + (ranking.waived().isEmpty() ? "" : ", waived: " + ranking.waived().size()));
    }

    private long right(Result result) {
        return contents.right().stream().filter(finding -> finding.result() == result).count();
    }

    private void about() {
        List<Animal> animals = audit.setup().animals();
        say(animals.size() == 1 ? "Animal" : "Animals", animals.stream().map(this::animal).collect(Collectors.joining("\n")));
        say("Species", animals.stream().map(animal -> species(audit.knowledge().profile(animal.species()).species())).distinct()
                .collect(Collectors.joining("\n")));
        say("Enclosure", enclosure());
        say("Date of the audit", audit.on().toString());
        say("Purpose of the housing", Words.of(audit.setup().purpose()));
    }

    private String animal(Animal animal) {
        return animal.since().map(since -> animal.name() + (animal.livesHere(audit.on()) ? ", lives here since " : ", to move in on ") + since)
                .orElse(animal.name() + ", not moved in yet, as far as is said");
    }

    private static String species(Species species) {
        return species.english() + " (" + species.latin() + ")";
    }

    private String enclosure() {
        Enclosure enclosure = audit.setup().enclosure();
        String title = Stream.of(enclosure.title(), audit.setup().title()).filter(text -> !text.isBlank()).findFirst().orElse("without a name");
        return title + "\nInside length " + size(enclosure.length()) + ", depth " + size(enclosure.depth()) + ", height "
                + size(enclosure.height());
    }

    private String size(Measure measure) {
        return measure.isKnown() ? wording.amount(measure.amount()) : "not known";
    }

    private void first() {
        List<Finding> steps = ranking.toDo().stream().filter(finding -> !today.contains(finding)).limit(MOST_FIRST_STEPS).toList();
        for (Finding step : steps) {
            say("To do first: No. " + contents.numberToDo(step), String.join("\n", contents.what(step), "Where: " + contents.where(step),
                    wording.correction(step), "By when: " + wording.dueBy(step, audit)));
        }
        if (ranking.toDo().isEmpty()) {
            say("To do first", contents.toAsk().isEmpty() ? "Nothing. Audit again after every change."
                    : "Find out what is not known yet: see the sheet To find out.");
        }
    }

    private void howToUse() {
        say("How to use this workbook", """
                At home: the sheet To do has what to put right, what does most harm first; set a state for each point, with date and initials.
                At the enclosure: take the sheet Walk along, printed or on a device, and fill it in row by row: what you see, measure or are told now, under Now.
                An empty cell is no answer and changes nothing; "not looked" takes an old answer back. Leave the page For the keeper behind, and fill in Visit.
                Then loamlight recheck this file: it audits again with the new answers and says what changed. Points hang together; one change can mend or spoil another.
                Rows may be sorted, filtered or deleted; the keys in the last column must stay as they are.""");
        say("What the grades mean", Arrays.stream(Grade.values()).map(this::explained).collect(Collectors.joining("\n")));
        say("What ± means", "The true value lies between the two ends with about 95 % certainty (k = 2). "
                + "A limit that lies between them may be kept or not.");
        say("What the standings mean", Arrays.stream(Standing.values())
                .map(standing -> wording.standing(standing) + ": " + wording.standingExplained(standing))
                .collect(Collectors.joining("\n")));
    }

    private String explained(Grade grade) {
        return wording.grade(grade) + ": " + switch (grade) {
            case CRITICAL -> "to life, or of serious injury";
            case MAJOR -> "lasting, if it stays as it is";
            case MINOR -> "less than the animal needs, without lasting harm";
            case IMPROVEMENT -> "nothing is wrong; this would do the animal good";
        };
    }
}
