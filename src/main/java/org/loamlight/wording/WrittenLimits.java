package org.loamlight.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Bound;
import org.loamlight.criterion.Increment;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.Scope;
import org.loamlight.criterion.SizeClass;
import org.loamlight.criterion.TimeOfYear;
import org.loamlight.criterion.Where;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Words;

/** Limits as profiles write them, before they are resolved for an animal: "at least 0.3 x total length (adult)". */
final class WrittenLimits {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Amounts amounts;

    WrittenLimits(Amounts amounts) {
        this.amounts = amounts;
    }

    /** Topic and place, then the limit, then for whom it is meant. */
    String inWords(Limit limit) {
        String topic = limit.zone() == Zone.ITEM ? Sentences.of("topic." + limit.topic().id())
                : Evidence.topicAt(limit.topic(), Place.of(limit.zone()));
        String text = Sentences.of("written.at", topic, withCap(limit));
        String whom = Stream.of(scope(limit.scope()), limit.grade().map(grade -> Sentences.of("scope.grade", Wording.ofConstant("grade.", grade)))
                .stream().toList()).flatMap(List::stream).collect(Collectors.joining("; "));
        return whom.isEmpty() ? text : Sentences.of("written.for", text, whom);
    }

    private String withCap(Limit limit) {
        String range = limit.where() == Where.SOMEWHERE ? Sentences.of("limit.somewhere", range(limit)) : range(limit);
        String capped = limit.cap().map(cap -> Sentences.of("written.cap", range, bound(cap, limit.topic().unit()))).orElse(range);
        return Stream.concat(Stream.of(capped), limit.increment().gains().stream()
                .map(gain -> further(gain, limit.increment().compounded(), limit.topic().unit()))).collect(Collectors.joining(" "));
    }

    private String further(Increment.Gain gain, boolean compounded, Unit unit) {
        if (gain.amount().isPresent()) {
            return Sentences.of("written.further-amount", bound(gain.amount().get(), unit), gain.beyond());
        }
        String share = gain.share().multiply(HUNDRED).stripTrailingZeros().toPlainString();
        return Sentences.of(compounded ? "written.further-compounded" : "written.further", share, gain.beyond());
    }

    private String range(Limit limit) {
        Optional<String> low = limit.atLeast().map(bound -> bound(bound, limit.topic().unit()));
        Optional<String> high = limit.atMost().map(bound -> bound(bound, limit.topic().unit()));
        if (low.isPresent() && high.isPresent()) {
            return Sentences.of("limit.between", low.get(), high.get());
        }
        return low.map(text -> Sentences.of("limit.at-least", text)).orElseGet(() -> Sentences.of("limit.at-most", high.orElseThrow()));
    }

    /** Constants in the unit findings are printed in. */
    private String bound(Bound bound, Unit unit) {
        if (bound instanceof Bound.Constant constant) {
            return amounts.amount(new Amount(constant.unit().convert(constant.value(), unit), unit));
        }
        Bound.Factor factor = (Bound.Factor) bound;
        String plain = factor.factor().stripTrailingZeros().toPlainString();
        String of = Wording.ofConstant("measure.", factor.of());
        String product = factor.power() == 1 ? Sentences.of("written.factor", plain, of) : Sentences.of("written.factor-power", plain, of, factor.power());
        return factor.divided().map(by -> Sentences.of("written.divided", product, amounts.amount(new Amount(by.unit().convert(by.value(), Unit.CENTIMETRE), Unit.CENTIMETRE))))
                .orElse(product);
    }

    private List<String> scope(Scope scope) {
        List<String> parts = new ArrayList<>();
        add(parts, scope.stages());
        add(parts, scope.sexes());
        size(scope.size()).ifPresent(parts::add);
        size(scope.shell()).map(size -> Sentences.of("scope.shell", size)).ifPresent(parts::add);
        if (scope.age().youngest() > 0) {
            parts.add(Sentences.of("scope.age-from", scope.age().youngest()));
        }
        if (scope.age().below() != Integer.MAX_VALUE) {
            parts.add(Sentences.of("scope.age-below", scope.age().below()));
        }
        if (scope.season() != TimeOfYear.ANY) {
            parts.add(Wording.ofConstant("scope.season.", scope.season()));
        }
        add(parts, scope.purposes());
        animals(scope).ifPresent(parts::add);
        return parts;
    }

    private static void add(List<String> parts, Set<? extends Enum<?>> words) {
        if (!words.isEmpty()) {
            parts.add(words.stream().map(constant -> (Enum<?>) constant).sorted(Comparator.comparing(Enum::ordinal)).map(Words::of).collect(Collectors.joining(", ")));
        }
    }

    private Optional<String> size(SizeClass size) {
        List<String> ends = new ArrayList<>();
        if (size.smallest() != Double.NEGATIVE_INFINITY) {
            ends.add(Sentences.of(size.smallestIncluded() ? "scope.from" : "scope.over", centimetres(size.smallest())));
        }
        if (size.largest() != Double.POSITIVE_INFINITY) {
            ends.add(Sentences.of(size.largestIncluded() ? "scope.up-to" : "scope.below", centimetres(size.largest())));
        } else if (!ends.isEmpty()) {
            ends.add(Sentences.of("scope.longer"));
        }
        return ends.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", ends));
    }

    private String centimetres(double value) {
        return amounts.amount(new Amount(value, Unit.CENTIMETRE));
    }

    private static Optional<String> animals(Scope scope) {
        int fewest = scope.fewestAnimals();
        int most = scope.mostAnimals();
        if (fewest <= 1 && most == Integer.MAX_VALUE) {
            return Optional.empty();
        }
        if (most == Integer.MAX_VALUE) {
            return Optional.of(Sentences.of("scope.animals-from", fewest));
        }
        return Optional.of(most == 1 ? Sentences.of("scope.one-animal")
                : fewest == most ? Sentences.of("scope.animals-exactly", most) : Sentences.of("scope.animals", fewest, most));
    }
}
