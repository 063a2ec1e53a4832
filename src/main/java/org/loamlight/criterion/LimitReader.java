package org.loamlight.criterion;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Section;
import org.loamlight.setup.Sex;
import org.loamlight.setup.Stage;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Words;

/** Reads a limit as a profile writes it. Every number is read exactly, with its unit. */
final class LimitReader {
    private static final Pattern EXACT = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*(.*)");
    private static final String FURTHER = "per-further-animal";

    private LimitReader() {
    }

    /** A limit of a profile, which names its criterion and its source. */
    static Limit limit(Section limit) {
        return limit(limit, limit.requiredText("criterion", "name the criterion"), citation(limit));
    }

    /** A limit whose criterion and citation are told elsewhere. */
    static Limit limit(Section limit, String criterion, Citation citation) {
        Optional<Topic> named = topic(limit);
        if (named.isEmpty()) {
            return unread(limit, criterion, citation);
        }
        Topic topic = named.get();
        Optional<Bound> atLeast = bound(limit, "at-least", topic.unit());
        Optional<Bound> atMost = bound(limit, "at-most", topic.unit());
        if (!limit.isAnswered("at-least") && !limit.isAnswered("at-most")) {
            limit.lacks("at-least", "give \"at-least\", \"at-most\" or both");
        }
        if (atLeast.isPresent() && atMost.isPresent() && isAbove(atLeast.get(), atMost.get(), topic.unit())) {
            limit.problem("at-most", "it lies below \"at-least\"", "write the lower end under \"at-least\"");
        }
        return new Limit(criterion, topic, zone(limit),
                limit.choice("where", Where.class, Where.EVERYWHERE), atLeast, atMost, limit.section("scope", LimitReader::scope),
                increment(limit, topic.unit()), constant(limit, "cap", topic.unit()),
                Optional.ofNullable(limit.choice("grade", Grade.class, null)), citation,
                limit.choice("chosen", Stated.class, Stated.YES) == Stated.YES, limit.text("why"));
    }

    /** Stands in for a limit whose topic is a problem told already: without it no number of the limit has a unit. */
    private static Limit unread(Section limit, String criterion, Citation citation) {
        limit.passOver();
        return new Limit(criterion, Topic.INSIDE_LENGTH, Zone.ENCLOSURE, Where.EVERYWHERE, Optional.empty(), Optional.empty(), Scope.ALL,
                Increment.NONE, Optional.empty(), Optional.empty(), citation, false, "");
    }

    static Citation citation(Section at) {
        Standing standing = must(at, "standing", Standing.class, "say how it is known");
        return new Citation(at.requiredText("source", "cite a source of sources.json"), at.text("clause"), standing);
    }

    /** A word that must be there; null after a problem, which ends the reading of the file. */
    static <E extends Enum<E>> E must(Section at, String key, Class<E> type, String allowed) {
        if (!at.isAnswered(key)) {
            at.lacks(key, allowed);
        }
        return at.choice(key, type, null);
    }

    private static boolean isAbove(Bound one, Bound other, Unit unit) {
        if (one instanceof Bound.Constant low && other instanceof Bound.Constant high) {
            return low.unit().convert(low.value(), unit) > high.unit().convert(high.value(), unit);
        }
        return one instanceof Bound.Factor low && other instanceof Bound.Factor high && low.of() == high.of()
                && low.power() == high.power() && low.factor().compareTo(high.factor()) > 0;
    }

    private static Optional<Topic> topic(Section limit) {
        String id = limit.requiredText("topic", "name what is limited");
        return id.isEmpty() ? Optional.empty() : topic(limit, "topic", id);
    }

    /** The topic of that id; empty after the problem that there is none. */
    static Optional<Topic> topic(Section at, String key, String id) {
        Optional<Topic> topic = Topic.named(id);
        if (topic.isEmpty()) {
            List<String> known = Stream.of(Topic.values()).map(Topic::id).sorted().toList();
            at.problem(key, "the topic \"" + id + "\" is not known",
                    Words.hint(id, known) + "a new one is written in Java; known are " + String.join(", ", known));
        }
        return topic;
    }

    private static Zone zone(Section limit) {
        String id = limit.text("place");
        return id.isEmpty() ? Zone.ENCLOSURE : Zone.named(id).orElseGet(() -> {
            limit.problem("place", "the place \"" + id + "\" is not known",
                    "known are " + Stream.of(Zone.values()).map(Zone::id).collect(Collectors.joining(", ")));
            return Zone.ENCLOSURE;
        });
    }

    private static Optional<Bound> bound(Section limit, String key, Unit unit) {
        if (limit.member(key).filter(JsonValue.JsonObject.class::isInstance).isPresent()) {
            return limit.section(key, bound -> factor(bound, unit));
        }
        return constant(limit, key, unit).map(Bound.class::cast);
    }

    /** Empty after a problem that is told. */
    private static Optional<Bound> factor(Section bound, Unit wanted) {
        BigDecimal factor = decimal(bound, "factor");
        BodyMeasure of = must(bound, "of", BodyMeasure.class, "say what it is a factor of");
        int power = bound.wholeNumber("power").orElse(1);
        Optional<Bound.Constant> divided = constant(bound, "divided-by", Unit.CENTIMETRE);
        Optional<Bound> made = of == null ? Optional.empty() : factor(factor, of, power, divided).filter(one -> one.unit().dimension() == wanted.dimension())
                .map(Bound.class::cast);
        if (of != null && made.isEmpty()) {
            bound.problem("", "this factor is no " + wanted.dimension(), "take a measure of that kind, or a length with \"power\" 2 for an area, 3 for a volume");
        }
        return made;
    }

    private static Optional<Bound.Factor> factor(BigDecimal factor, BodyMeasure of, int power, Optional<Bound.Constant> divided) {
        try {
            return Optional.of(new Bound.Factor(factor, of, power, divided));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    static Optional<Bound.Constant> constant(Section limit, String key, Unit unit) {
        String text = limit.text(key);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher exact = EXACT.matcher(text);
        Optional<Unit> spelt = exact.matches() ? unit(exact.group(2), unit) : Optional.empty();
        if (spelt.isEmpty()) {
            limit.problem(key, "found \"" + text + "\"", "write a number with a unit of " + unit.dimension());
            return Optional.empty();
        }
        return Optional.of(new Bound.Constant(new BigDecimal(exact.group(1)), spelt.get()));
    }

    private static Optional<Unit> unit(String spelt, Unit wanted) {
        boolean plain = wanted.symbol().isEmpty() || wanted == Unit.UV_INDEX;
        return spelt.isEmpty() && plain ? Optional.of(wanted)
                : Unit.spelt(spelt).filter(found -> found.dimension() == wanted.dimension());
    }

    private static BigDecimal decimal(Section at, String key) {
        String text = at.requiredText(key, "write an exact decimal number in quotes");
        if (text.matches("\\d+(\\.\\d+)?")) {
            return new BigDecimal(text);
        }
        if (!text.isEmpty()) {
            at.problem(key, "found \"" + text + "\"", "write an exact decimal number such as \"0.75\"");
        }
        return BigDecimal.ONE;
    }

    private static Scope scope(Section scope) {
        record Numbers(int fewest, int most) {
        }
        Numbers animals = scope.section("animals", one -> new Numbers(one.wholeNumber("from").orElse(Scope.ALL.fewestAnimals()),
                one.wholeNumber("up-to").orElse(Scope.ALL.mostAnimals())));
        if (animals.fewest > animals.most) {
            scope.problem("animals", "no number lies from " + animals.fewest + " up to " + animals.most,
                    "write the smaller number under \"from\"");
        }
        return new Scope(scope.choices("stages", Stage.class), scope.choices("sexes", Sex.class),
                scope.section("length", LimitReader::sizeClass), scope.section("carapace", LimitReader::sizeClass),
                scope.section("age", LimitReader::ageClass), Set.copyOf(scope.choices("purposes", Purpose.class)),
                scope.choice("season", TimeOfYear.class, TimeOfYear.ANY), animals.fewest, animals.most);
    }

    private static SizeClass sizeClass(Section size) {
        Optional<Double> from = centimetres(size, "from");
        Optional<Double> over = centimetres(size, "over");
        Optional<Double> upTo = centimetres(size, "up-to");
        Optional<Double> below = centimetres(size, "below");
        if (from.isPresent() && over.isPresent() || upTo.isPresent() && below.isPresent()) {
            size.problem("", "an end is given twice", "keep one of \"from\" and \"over\", one of \"up-to\" and \"below\"");
        }
        try {
            return new SizeClass(from.or(() -> over).orElse(Double.NEGATIVE_INFINITY), from.isPresent(),
                    upTo.or(() -> below).orElse(Double.POSITIVE_INFINITY), upTo.isPresent());
        } catch (IllegalArgumentException e) {
            size.problem("", e.getMessage(), "write the smaller length under \"from\" or \"over\"");
            return SizeClass.ANY;
        }
    }

    private static AgeClass ageClass(Section age) {
        int from = age.wholeNumber("from-months").orElse(0);
        int below = age.wholeNumber("below-months").orElse(Integer.MAX_VALUE);
        if (from >= below) {
            age.problem("", "no age lies from " + from + " to below " + below + " months", "write the smaller number under \"from-months\"");
        }
        return new AgeClass(from, below);
    }

    private static Optional<Double> centimetres(Section size, String key) {
        return constant(size, key, Unit.CENTIMETRE).map(one -> one.unit().convert(one.value(), Unit.CENTIMETRE));
    }

    /** One step as an object, or several as a list. */
    private static Increment increment(Section limit, Unit unit) {
        boolean several = limit.member(FURTHER).filter(JsonValue.JsonArray.class::isInstance).isPresent();
        List<Step> steps = several ? limit.unnamed(FURTHER, gain -> step(gain, unit))
                : limit.present(FURTHER, gain -> step(gain, unit)).stream().toList();
        return steps.isEmpty() ? Increment.NONE
                : new Increment(steps.stream().map(Step::gain).toList(), steps.stream().anyMatch(Step::compounded));
    }

    private record Step(Increment.Gain gain, boolean compounded) {
    }

    private static Step step(Section gain, Unit unit) {
        int base = gain.wholeNumber("beyond").orElse(0);
        if (base < 1) {
            gain.problem("beyond", "the number of animals the limit itself is for is not told", "write 1 or more");
        }
        Optional<Bound> amount = bound(gain, "amount", unit);
        BigDecimal share = gain.isAnswered("amount") ? BigDecimal.ZERO : decimal(gain, "share");
        return new Step(new Increment.Gain(base, share, amount), gain.stated("compounded") == Stated.YES);
    }
}
