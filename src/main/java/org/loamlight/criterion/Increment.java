package org.loamlight.criterion;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a limit gains for each animal beyond the base number, in steps: a tenth for the third and the fourth, a fifth from the
 * fifth on.
 *
 * @param gains      the steps, by rising number of animals; empty for no gain
 * @param compounded whether each share is taken of the limit already raised, or of the base
 */
public record Increment(List<Gain> gains, boolean compounded) {
    /** No gain. */
    public static final Increment NONE = new Increment(List.of(), false);

    public Increment {
        gains = gains.stream().sorted(Comparator.comparingInt(Gain::beyond)).toList();
    }

    /** One step: a share of the limit for each animal beyond a number. */
    public Increment(int baseAnimals, BigDecimal share, boolean compounded) {
        this(List.of(new Gain(baseAnimals, share, Optional.empty())), compounded);
    }

    /**
     * What each animal beyond a number adds, until the next step begins.
     *
     * @param beyond number of animals that need no gain of this step, 1 or more
     * @param share  gain per further animal as a share of the limit (0.15 for +15 %), 0 or more
     * @param amount gain per further animal as an amount of its own; empty when it is a share
     */
    public record Gain(int beyond, BigDecimal share, Optional<Bound> amount) {
    }

    /** Factor on the limit for a number of animals, amounts aside; 1 up to the base number. */
    BigDecimal factorFor(int animals) {
        Stream<BigDecimal> shares = each(animals).map(Gain::share);
        return compounded ? shares.map(BigDecimal.ONE::add).reduce(BigDecimal.ONE, BigDecimal::multiply)
                : shares.reduce(BigDecimal.ONE, BigDecimal::add);
    }

    /** The amounts that are added for a number of animals, one for each animal that adds one. */
    Stream<Bound> amountsFor(int animals) {
        return each(animals).map(Gain::amount).flatMap(Optional::stream);
    }

    /** All amounts that can be added. */
    Stream<Bound> amounts() {
        return gains.stream().map(Gain::amount).flatMap(Optional::stream);
    }

    /** The step that counts for each animal that makes the limit rise. */
    private Stream<Gain> each(int animals) {
        if (gains.isEmpty()) {
            return Stream.empty();
        }
        return IntStream.rangeClosed(1, animals)
                .mapToObj(animal -> gains.stream().filter(gain -> gain.beyond() < animal).reduce((lower, higher) -> higher)).flatMap(Optional::stream);
    }
}
