package org.loamlight.workbook.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.DayTime;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Question;
import org.loamlight.setup.QuestionCatalogue;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;
import org.loamlight.setup.Told;
import org.loamlight.setup.Words;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.form.AnswerText;
import org.loamlight.workbook.form.FormPlan;

/**
 * The questions of the next visit, in the order in which one walks and works at an enclosure: those that are asked every time, and those on which
 * something hangs that is not right or not known.
 */
public final class Walk {
    /** What rests on more answers than these is worked out: asking for all of them again would bury the rest of the visit. Judgement. */
    private static final int MOST_TO_ASK_AGAIN = 6;
    private static final String READING_VALUE = "readings[].value";
    private static final String UV_READINGS = "lamps[].readings";

    private final WalkPlan plan = WalkPlan.builtIn();
    private final Asked asked;
    private final Audit audit;
    private final Setup setup;
    private final Wording wording;
    private final List<Finding> open;
    private final List<Finding> all = new ArrayList<>();
    private final Map<Stop, List<WalkRow>> rows = new LinkedHashMap<>();

    private Walk(Audit audit, Ranking ranking, Wording wording) {
        this.audit = audit;
        this.setup = audit.setup();
        this.wording = wording;
        this.asked = new Asked(plan, wording);
        this.open = ranking.open().stream().filter(finding -> !finding.criterion().isOfCode()).toList();
        all.addAll(open);
        ranking.right().stream().filter(finding -> !finding.criterion().isOfCode()).forEach(all::add);
        plan.stops().forEach(stop -> rows.put(stop, new ArrayList<>()));
    }

    /** The walk for a setup as it was found. */
    public static Walk of(Audit audit, Ranking ranking, Wording wording) {
        Walk walk = new Walk(audit, ranking, wording);
        QuestionCatalogue.builtIn().forEach(walk::ask);
        walk.newReadings();
        return walk;
    }

    /** The questions in their order. Keys are unique. */
    public List<WalkRow> rows() {
        return rows.values().stream().flatMap(List::stream).toList();
    }

    /** What to know before one begins, for each stop at which something is asked. */
    public Map<String, String> said() {
        Map<String, String> said = new LinkedHashMap<>();
        rows.forEach((stop, asked) -> {
            if (!asked.isEmpty()) {
                said.put(stop.title(), stop.say());
            }
        });
        return said;
    }

    private void ask(Question question) {
        if (question.path().equals(UV_READINGS)) {
            setup.lamps().forEach(this::uvIndex);
        } else if (question.path().equals(READING_VALUE)) {
            setup.readings().forEach(reading -> reading(question, reading));
        } else if (isAskable(question)) {
            plan.stop(question.path()).ifPresent(stop -> AskedPaths.subjects(question, setup).forEach(subject -> ask(question, stop, subject)));
        }
    }

    private boolean isAskable(Question question) {
        return question.kind() != Question.Kind.PARTS && question.kind() != Question.Kind.VERSION && !plan.isNeverAsked(question.path());
    }

    private void ask(Question question, Stop stop, Subject subject) {
        String path = Told.resolved(question.path(), subject);
        Optional<String> last = last(question, path);
        List<Finding> hanging = hangingOn(path, question.path());
        boolean isMissing = hanging.stream().anyMatch(finding -> finding.missing().contains(path));
        if (isMissing || last.isPresent() && (stop.always().contains(question.path()) || hanging.stream().anyMatch(Walk::asksAgain))) {
            add(stop, new WalkRow(stop.title(), path, question, withoutStop(question.label()), partOf(subject), last.orElse(""), "",
                    asked.ofPath(path, hanging), hanging));
        }
    }

    /** As a cell takes it: an empty list as "none", a place with its distances. */
    private Optional<String> last(Question question, String path) {
        String distances = question.kind() != Question.Kind.PLACE ? "" : AnswerText.COORDINATES.stream()
                .flatMap(one -> setup.told().answer(path + "." + one).map(answer -> one + " " + answer).stream()).collect(Collectors.joining(", "));
        String zone = setup.told().answer(path + ".zone").map(word -> word + ", ").orElse("");
        return distances.isEmpty() ? setup.told().answer(path).map(answer -> answer.isEmpty() ? FormPlan.NONE : answer) : Optional.of(zone + distances);
    }

    private static String withoutStop(String label) {
        return label.endsWith(".") ? label.substring(0, label.length() - 1) : label;
    }

    private String partOf(Subject subject) {
        return subject.equals(Subject.ENCLOSURE) ? "" : wording.subject(subject);
    }

    private List<Finding> hangingOn(String path, String pattern) {
        return all.stream().filter(finding -> finding.missing().contains(path) || finding.criterion().reads().stream()
                .anyMatch(read -> read.equals(pattern) && !isOfAnother(finding, read, path))).toList();
    }

    /** Whether a finding about one part reads the answer of that part, and the path is that of another. */
    private static boolean isOfAnother(Finding finding, String read, String path) {
        String resolved = Told.resolved(read, finding.subject());
        return !resolved.equals(read) && !resolved.equals(path);
    }

    private static boolean asksAgain(Finding finding) {
        return finding.isOpen() && finding.result() != Result.NO_EVIDENCE && answers(finding) <= MOST_TO_ASK_AGAIN;
    }

    private static long answers(Finding finding) {
        return finding.criterion().reads().stream().filter(read -> read.indexOf('.') >= 0).count();
    }

    private void reading(Question question, Reading reading) {
        String key = reading.subject().key();
        String path = Told.resolved(READING_VALUE, reading.subject());
        Optional<Quantity> read = audit.quantities().stream().filter(quantity -> quantity.source().equals(key) && quantity.topic() != Topic.READING_AGE).findFirst();
        List<Finding> hanging = all.stream().filter(finding -> finding.missing().contains(path)
                || finding.held().stream().anyMatch(held -> held.quantity().source().equals(key))).toList();
        Stop stop = plan.stop(read.map(Walk::zone).orElse(Zone.ENCLOSURE), reading.time() == DayTime.NIGHT);
        String what = read.map(quantity -> wording.topicAt(quantity.topic(), quantity.place())).orElseGet(() -> withoutStop(question.label()));
        add(stop, new WalkRow(stop.title(), path, question, what, reading.name(), setup.told().answer(path).orElse(""), "",
                asked.ofReading(key, hanging), hanging));
    }

    private static Zone zone(Quantity quantity) {
        return quantity.place().zone() == Zone.ITEM ? Zone.ENCLOSURE : quantity.place().zone();
    }

    /** Readings that limits wait for, each once. */
    private void newReadings() {
        Map<NewReading, List<Finding>> wanted = new LinkedHashMap<>();
        open.forEach(finding -> finding.wanted().forEach(limit -> NewReading.wantedFor(limit)
                .ifPresent(reading -> wanted.computeIfAbsent(reading, missing -> new ArrayList<>()).add(finding))));
        Question question = QuestionCatalogue.question(READING_VALUE).orElseThrow();
        wanted.forEach((reading, findings) -> {
            Stop stop = plan.stop(reading.zone(), reading.time() == DayTime.NIGHT);
            add(stop, new WalkRow(stop.title(), reading.key(), question, Words.of(reading.of()) + " by " + Words.of(reading.time()) + " "
                    + wording.sentence("at." + reading.zone().id()), "", "", wording.unitOf(reading.unit()), asked.ofNew(reading, findings), findings));
        });
    }

    private void uvIndex(Lamp lamp) {
        if (lamp.givesUv() != Stated.NO) {
            String list = Told.resolved(UV_READINGS, lamp.subject());
            List<Finding> hanging = hangingOn(list, UV_READINGS);
            Stop stop = plan.stop("lamps").orElseThrow();
            add(stop, new WalkRow(stop.title(), UvReading.key(list), UvReading.QUESTION, withoutStop(UvReading.QUESTION.label()), partOf(lamp.subject()),
                    UvReading.last(lamp, wording), "", asked.ofPath(list, hanging), hanging));
        }
    }

    private void add(Stop stop, WalkRow row) {
        rows.get(stop).add(row);
    }
}
