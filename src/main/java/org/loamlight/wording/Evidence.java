package org.loamlight.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Words;

/** What was found, how it came about, and what is not known, in words. */
final class Evidence {
    private static final String READING = "reading:";
    private static final String ANIMAL = "animal:";
    private static final double PERCENT = 100;
    /** Topics that say nothing without a place; the others are of the whole enclosure or of the thing itself. */
    private static final Set<Topic> LOCAL = Set.of(Topic.AIR_TEMPERATURE_BY_DAY, Topic.AIR_TEMPERATURE_BY_NIGHT,
            Topic.SURFACE_TEMPERATURE_BY_DAY, Topic.SURFACE_TEMPERATURE_BY_NIGHT, Topic.RESTING_TEMPERATURE_BY_DAY, Topic.RELATIVE_HUMIDITY,
            Topic.UV_INDEX, Topic.COVER_PIECES, Topic.HIDES, Topic.HEAT_SOURCES);
    /** Topics that are worked out from several answers, so that the answers have to be named. */
    private static final Set<Topic> WORKED_OUT = Set.of(Topic.UV_INDEX, Topic.LAMP_DISTANCE, Topic.LONGEST_OPEN_STRETCH, Topic.COVER_PIECES,
            Topic.HIDES, Topic.HEAT_SOURCES);

    private final Amounts amounts;
    private final Knowledge knowledge;

    Evidence(Amounts amounts, Knowledge knowledge) {
        this.amounts = amounts;
        this.knowledge = knowledge;
    }

    static String nameOf(String subjectKey) {
        return subjectKey.substring(subjectKey.indexOf(':') + 1);
    }

    String found(Finding finding) {
        return switch (finding.result()) {
            case NOT_APPLICABLE -> "";
            case NO_EVIDENCE -> notKnown(finding);
            default -> finding.held().isEmpty() ? byRules(finding) : byLimit(finding);
        };
    }

    private String byRules(Finding finding) {
        if (finding.result() != Result.NONCONFORMITY) {
            return Sentences.of("found.nothing-against");
        }
        List<String> sentences = new ArrayList<>();
        finding.variants().stream().map(finding.criterion().page()::foundFor).distinct().filter(text -> !text.isEmpty())
                .forEach(text -> sentences.add(Limits.filled(text, finding.subject(), Map.of())));
        finding.evidence().forEach(quantity -> sentences.add(startingSentence(described(quantity)) + "."));
        return String.join(" ", sentences);
    }

    private static String startingSentence(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private String byLimit(Finding finding) {
        Held deciding = finding.held().get(0);
        String first = finding.result() == Result.UNDECIDED ? undecided(deciding) : described(deciding);
        List<String> others = finding.held().stream().map(Held::quantity).distinct().filter(one -> !one.equals(deciding.quantity()))
                .map(this::described).toList();
        return others.isEmpty() ? first : first + ". " + Sentences.of("found.also", String.join("; ", others));
    }

    /** Where the doubt swallows the value it is told how far it may reach, and no probability: that would rest on the doubt alone. */
    private String undecided(Held deciding) {
        Quantity quantity = deciding.quantity();
        return quantity.isSwallowed() ? Sentences.of("found.swallowed", described(quantity, Sentences.of("found.anything-up-to", amounts.reach(quantity))))
                : Sentences.of("found.undecided", described(deciding), percent(deciding.probability()));
    }

    private static String percent(double probability) {
        return String.valueOf(StrictMath.round(probability * PERCENT));
    }

    private String notKnown(Finding finding) {
        List<String> sentences = new ArrayList<>();
        sentences.add(Sentences.of("found.not-known", whatToFindOut(finding)));
        String known = finding.held().stream().map(Held::quantity).distinct().map(this::described).collect(Collectors.joining("; "));
        if (!known.isEmpty()) {
            sentences.add(Sentences.of("found.so-far", known));
        }
        finding.voided().forEach(voided -> sentences.add(doesNotCount(voided)));
        return sentences.stream().distinct().collect(Collectors.joining(" "));
    }

    private String doesNotCount(Voided voided) {
        String criterion = voided.by().split(" ", 2)[0];
        return Sentences.of("found.voided", Questions.quoted(nameOf(voided.quantity().source())), amounts.value(voided.quantity()),
                knowledge.criterion(criterion).title());
    }

    private String described(Held held) {
        return described(held.quantity(), value(held));
    }

    /** A value that rounding would put on the other side of its limit is printed with the digits of the limit. */
    String value(Held held) {
        ResolvedLimit limit = held.limit();
        double printed = amounts.printed(held.quantity());
        boolean told = (printed < limit.low() || printed > limit.high()) == (held.shortfall() > 0);
        return told ? amounts.value(held.quantity()) : amounts.valueToTheDigitOfLimits(held.quantity());
    }

    /** The value that decided, with where it was if it was not where the limit is for, and what it rests on if nothing was measured. */
    String valueWithPlace(Held held) {
        Place place = held.quantity().place();
        boolean elsewhere = !place.equals(held.limit().place()) && place.zone() != Zone.ITEM;
        String text = elsewhere ? value(held) + " " + Sentences.of("at." + place.zone().id()) : value(held);
        return withMethod(held.quantity(), text);
    }

    String described(Quantity quantity) {
        return described(quantity, amounts.value(quantity));
    }

    private String described(Quantity quantity, String value) {
        return withMethod(quantity, withOrigin(quantity, Sentences.of("found.value", topicAt(quantity.topic(), quantity.place()), value)));
    }

    private static String withMethod(Quantity quantity, String text) {
        return switch (quantity.origin().method()) {
            case MODELLED -> Sentences.of("found.modelled", text);
            case ESTIMATED -> Sentences.of("found.estimated", text);
            default -> text;
        };
    }

    private String withOrigin(Quantity quantity, String text) {
        String how = howItCameAbout(quantity);
        if (!how.isEmpty()) {
            return Sentences.of("found.how", text, how);
        }
        return quantity.source().startsWith(READING) ? reading(quantity, text) : text;
    }

    private static String reading(Quantity quantity, String text) {
        String name = Questions.quoted(nameOf(quantity.source()));
        return quantity.origin().on().isEmpty() ? Sentences.of("found.read", text, name)
                : Sentences.of("found.read-on", text, name, quantity.origin().on());
    }

    /** "air temperature by day at the cool end", "inside length", "UV index at "UV tube"", "time between meals for Sedge". */
    static String topicAt(Topic topic, Place place) {
        String words = Sentences.of("topic." + topic.id());
        if (place.zone() == Zone.ITEM) {
            String name = nameOf(place.item());
            return words + " " + (place.item().startsWith(ANIMAL) ? Sentences.of("at.animal", name) : Sentences.of("at.item", Questions.quoted(name)));
        }
        return place.zone() == Zone.ENCLOSURE && !LOCAL.contains(topic) ? words : words + " " + Sentences.of("at." + place.zone().id());
    }

    String howItCameAbout(Quantity quantity) {
        return String.join(", ", steps(quantity));
    }

    List<String> steps(Quantity quantity) {
        return quantity.trail().stream().map(this::step).toList();
    }

    private String step(Step step) {
        return Sentences.of("step." + step.key(), step.arguments().stream().map(this::argument).toArray());
    }

    private String argument(Object argument) {
        if (argument instanceof Amount amount) {
            return amounts.amount(amount);
        }
        return argument instanceof Enum<?> constant ? Words.of(constant) : String.valueOf(argument);
    }

    /** The values wanted where only a list lacks one; else the questions; both where a value is worked out from answers. */
    String whatToFindOut(Finding finding) {
        List<String> questions = Questions.inWords(finding.missing().stream().filter(path -> !Questions.isSection(path)).toList());
        List<String> values = values(finding, questions.isEmpty());
        if (values.isEmpty()) {
            return String.join("; ", questions.isEmpty() ? Questions.inWords(finding.missing()) : questions);
        }
        String wanted = String.join("; ", values);
        return questions.isEmpty() ? wanted : Sentences.of("question.with-lack", wanted, String.join("; ", questions));
    }

    private static List<String> values(Finding finding, boolean nothingAsked) {
        if (!finding.wanted().isEmpty()) {
            return finding.wanted().stream().filter(limit -> nothingAsked || WORKED_OUT.contains(limit.topic()))
                    .map(limit -> topicAt(limit.topic(), limit.place())).distinct().toList();
        }
        if (!nothingAsked) {
            return List.of();
        }
        return finding.deciding().map(Held::limit).map(limit -> finding.result() == Result.UNDECIDED ? topicAt(limit.topic(), limit.place())
                : Sentences.of("question.elsewhere", Sentences.of("topic." + limit.topic().id()))).stream().toList();
    }
}
