package org.loamlight.wording;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Caution;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Condition;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.Need;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Standing;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

/**
 * Makes every sentence of reports and workbooks: from keys and numbers, in English, in one system of units. It holds no
 * state of an audit and serves all threads.
 */
public final class Wording {
    /** Days until harm and a shortfall are put right where an animal already lives there. Judgement. */
    private static final int DAYS_FOR_MAJOR = 7;
    private static final int DAYS_FOR_MINOR = 28;

    private final Knowledge knowledge;
    private final Amounts amounts;
    private final Limits limits;
    private final WrittenLimits written;
    private final Evidence evidence;

    public Wording(Units units, Knowledge knowledge) {
        this.knowledge = knowledge;
        this.amounts = new Amounts(units);
        this.limits = new Limits(amounts);
        this.written = new WrittenLimits(amounts);
        this.evidence = new Evidence(amounts, knowledge);
    }

    /**
     * A sentence of sentences.properties by its key.
     *
     * @throws IllegalArgumentException when there is none, or too few arguments are given
     */
    public String sentence(String key, Object... arguments) {
        return Sentences.of(key, arguments);
    }

    /** A number with its unit in this system of units, at most 6 significant digits: "31 °C", "4.1 in", "2 days". */
    public String amount(Amount amount) {
        return amounts.amount(amount);
    }

    /** The bare number of an amount in this system of units, not rounded: for charts, which round themselves. */
    public double plain(Amount amount) {
        return amounts.plain(amount);
    }

    /** The symbol of the unit an amount is printed in: "°F"; empty for plain numbers. */
    public String unitOf(Unit unit) {
        return amounts.symbol(unit);
    }

    /** A value with its expanded uncertainty (k = 2): "31 °C ± 2 °C"; without ± when the uncertainty is 0. */
    public String value(Quantity quantity) {
        return amounts.value(quantity);
    }

    /** The digits of {@link #value} without its unit: "31 ± 2". */
    public String number(Quantity quantity) {
        return amounts.number(quantity);
    }

    /** The unit of {@link #value}: "°C", "days"; empty for plain numbers. */
    public String unit(Quantity quantity) {
        return amounts.unit(quantity);
    }

    /** What a quantity is about: "air temperature by day". */
    public String topic(Topic topic) {
        return Sentences.of("topic." + topic.id());
    }

    /** What a quantity is about and where: "air temperature by day at the cool end"; without a place where none needs saying. */
    public String topicAt(Topic topic, Place place) {
        return Evidence.topicAt(topic, place);
    }

    /** A part of the enclosure: "cool end"; a named part by its name. */
    public String place(Place place) {
        return place.zone() == Zone.ITEM ? Evidence.nameOf(place.item()) : Sentences.of("zone." + place.zone().id());
    }

    /** What is judged: "basking lamp (heater)", "enclosure"; all of a kind where none was told: "heaters". */
    public String subject(Subject subject) {
        if (subject.name().isEmpty()) {
            return Sentences.of("kinds." + subject.kind().id());
        }
        return subject.kind() == SubjectKind.ANIMAL ? subject.name()
                : Sentences.of("subject.named", subject.name(), Sentences.of("kind." + subject.kind().id()));
    }

    /** danger, harm, shortfall, could be better. */
    public String grade(Grade grade) {
        return ofConstant("grade.", grade);
    }

    /** not right, not known yet, cannot tell yet, right, does not apply. */
    public String result(Result result) {
        return ofConstant("result.", result);
    }

    public String need(Need need) {
        return ofConstant("need.", need);
    }

    /** How firmly something is known: read, secondary, common practice, judgement, from memory. */
    public String standing(Standing standing) {
        return ofConstant("standing.", standing);
    }

    /** What that standing means: "the passage itself was read". */
    public String standingExplained(Standing standing) {
        return Sentences.of("standing." + id(standing) + ".explained");
    }

    /** How evidence was got: "measured", "from a model only". */
    public String method(Method method) {
        return ofConstant("method.", method);
    }

    /** How a criterion is judged: "by a limit", "by a limit, guarded", "by rules", "by rules with a limit". */
    public String judged(Criterion criterion) {
        return Sentences.of(judgedKey(criterion));
    }

    private static String judgedKey(Criterion criterion) {
        if (!criterion.isLimit()) {
            return criterion.informs() ? "judged.informs" : criterion.quantities().isEmpty() ? "judged.rules" : "judged.rules-and-limit";
        }
        return "judged." + id(criterion.decision());
    }

    /** When a criterion applies: "the animal digs". */
    public String condition(Condition condition) {
        return ofConstant("condition.", condition);
    }

    /**
     * A habit of a species in words: "climbs".
     *
     * @param key the habit as profiles write it: "eats-snakes"
     */
    public String habit(String key, Enum<?> habit) {
        return ofConstant("habit." + key + ".", habit);
    }

    static String ofConstant(String prefix, Enum<?> constant) {
        return Sentences.of(prefix + id(constant));
    }

    private static String id(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A value with what it is, where it holds and how it came about, in one sentence. */
    public String described(Quantity quantity) {
        return evidence.described(quantity);
    }

    /** What was found, in one or a few sentences; for missing evidence what is not known, and which readings did not count. */
    public String found(Finding finding) {
        return evidence.found(finding);
    }

    /** How a quantity came about; empty for a value taken over as read. */
    public String howItCameAbout(Quantity quantity) {
        return evidence.howItCameAbout(quantity);
    }

    /** How a quantity came about, one sentence for each step; empty for a value taken over as read. */
    public List<String> steps(Quantity quantity) {
        return evidence.steps(quantity);
    }

    /** What is asked: "at least 118 cm", "21 °C to 27 °C"; for criteria judged by rules their title. */
    public String required(Finding finding) {
        return limits.required(finding);
    }

    /** A limit in this system of units: "at least 118 cm", rounded to the safe side. */
    public String limit(ResolvedLimit limit) {
        return limits.inWords(limit);
    }

    /** Several limits in one line: "at least 100 cm; at least 120 cm"; at least one. */
    public String limits(List<ResolvedLimit> several) {
        return limits.inWords(several);
    }

    /** The value that was held against a limit, with where it was if it was not where the limit is for: "33 °C ± 1 °C at the warm end". */
    public String held(Held held) {
        return evidence.valueWithPlace(held);
    }

    /** A limit as its profile writes it, with what and whom it is meant for: "inside length: at least 1 x total length (adult)". */
    public String limit(Limit limit) {
        return written.inWords(limit);
    }

    /** How far past the limit: "4 °C too hot"; empty where nothing was measured against a limit or the value lies within. */
    public String difference(Finding finding) {
        return Limits.strictest(finding).filter(held -> held.shortfall() > 0).map(limits::past).orElse("");
    }

    /** How to put it right, the first paragraph of the page with amounts filled in; empty for findings that ask for none. */
    public String correction(Finding finding) {
        return limits.correction(finding);
    }

    /** What keeps the animal safe until a danger is put right; empty for what is none. */
    public String meanwhile(Finding finding) {
        return limits.meanwhile(finding);
    }

    /** How to find out, the first paragraph of the page; may be empty. */
    public String howToMeasure(Finding finding) {
        return Limits.firstParagraph(finding.criterion().page().measure());
    }

    /** Why it matters, the first paragraph of the page; may be empty. */
    public String why(Finding finding) {
        return Limits.firstParagraph(finding.criterion().page().why());
    }

    /** What is not known, in words: "the total length of Bracken"; for an undecided finding the value to read again. */
    public String whatToFindOut(Finding finding) {
        return evidence.whatToFindOut(finding);
    }

    /** With what to find out or to check: "thermometer, its sensor in the shade". */
    public String instrument(Finding finding) {
        Stream<Topic> topics = Stream.concat(finding.wanted().stream().map(ResolvedLimit::topic), finding.held().stream().limit(1)
                .map(held -> held.quantity().topic()));
        Set<Tool> tools = finding.missing().stream().filter(path -> !Questions.isSection(path)).map(Tool::of)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Tool.class)));
        if (tools.isEmpty() || !finding.criterion().isLimit()) {
            topics.map(Tool::of).findFirst().ifPresent(tools::add);
        }
        return tools.isEmpty() ? ofConstant("tool.", Tool.EYES)
                : tools.stream().map(tool -> ofConstant("tool.", tool)).collect(Collectors.joining("; "));
    }

    /** Where it stands, in full, with its standing: of the limits that decide or are wanted, else of the criterion. */
    public List<String> sources(Finding finding) {
        return finding.citations().stream().map(this::source).distinct().toList();
    }

    /** One citation in full: "authors, year, title, clause (standing)". */
    public String source(Citation citation) {
        boolean saysItself = citation.source().equals(id(citation.standing()));
        return saysItself ? whereItStands(citation) : whereItStands(citation) + " (" + standing(citation.standing()) + ")";
    }

    /** One citation without its standing; the clause only where the title does not end with it already. */
    public String whereItStands(Citation citation) {
        String title = knowledge.source(citation.source()).title();
        return title.endsWith(citation.clause()) ? title : title + ", " + citation.clause();
    }

    /**
     * By when to act, by the grade (judgement): where an animal lives, danger today, harm within 7 days, a shortfall within 28
     * days; else before it moves in, a shortfall within 28 days of moving in.
     */
    public String dueBy(Finding finding, Audit audit) {
        Optional<LocalDate> day = dueDay(finding, audit);
        return switch (finding.grade()) {
            case CRITICAL -> day.map(today -> Sentences.of("due.today", today)).orElseGet(() -> Sentences.of("due.before"));
            case MAJOR -> day.map(last -> Sentences.of("due.by", last)).orElseGet(() -> Sentences.of("due.before"));
            case MINOR -> day.map(last -> Sentences.of("due.by", last)).orElseGet(() -> Sentences.of("due.after-arrival"));
            case IMPROVEMENT -> Sentences.of("due.next-change");
        };
    }

    /** The last day to act, as {@link #dueBy} says it; empty where no animal lives yet, and for what could be better. */
    public Optional<LocalDate> dueDay(Finding finding, Audit audit) {
        Optional<LocalDate> today = Optional.of(audit.on()).filter(day -> livesHere(audit));
        return switch (finding.grade()) {
            case CRITICAL -> today;
            case MAJOR -> today.map(day -> day.plusDays(DAYS_FOR_MAJOR));
            case MINOR -> today.map(day -> day.plusDays(DAYS_FOR_MINOR));
            case IMPROVEMENT -> Optional.empty();
        };
    }

    /** Whether any of the animals lives there on the day of the audit. */
    public boolean livesHere(Audit audit) {
        return audit.setup().animals().stream().anyMatch(animal -> animal.livesHere(audit.on()));
    }

    /** The conclusion in a few words: "not ready" before arrival, "change now" where an animal lives. */
    public String conclusion(Ranking ranking, Audit audit) {
        return Sentences.of(conclusionKey(ranking, audit));
    }

    /** What the conclusion means, in one or two sentences. */
    public String conclusionExplained(Ranking ranking, Audit audit) {
        return Sentences.of(conclusionKey(ranking, audit) + ".explained");
    }

    private String conclusionKey(Ranking ranking, Audit audit) {
        return "conclusion." + id(ranking.conclusion()) + (livesHere(audit) ? ".lives-here" : ".before");
    }

    /** Why a finding does not apply; empty for findings that do. */
    public String reason(Finding finding) {
        return Sentences.has(finding.reason()) ? Sentences.of(finding.reason()) : finding.reason();
    }

    /** The general cautions and those of open findings, each once, in the order of the knowledge. */
    public List<String> cautions(Ranking ranking, Audit audit) {
        Set<String> named = ranking.open().stream().flatMap(finding -> finding.criterion().cautions().stream()).collect(Collectors.toSet());
        return knowledge.cautions().stream().filter(caution -> caution.general() || named.contains(caution.id())).map(Caution::text).toList();
    }
}
