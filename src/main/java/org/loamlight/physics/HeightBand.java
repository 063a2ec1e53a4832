package org.loamlight.physics;

import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/**
 * Between which heights a lamp must hang for the index at a place to lie between two values.
 *
 * <p>Straight below a lamp the index falls all the way as the lamp goes up. Aside of it the index first rises, up to
 * about a height as large as the way aside, then falls. Only the falling part, from the highest height down, is looked
 * at: a lamp hung so low that it lights a place aside less is no way to protect it, since it burns what lies below. Where
 * it begins is found to a 256th of the heights, on a top so flat that the index there is right to about as much squared.
 */
public final class HeightBand {

    /** Into how many equal steps the heights are cut to find where the falling part begins. */
    private static final int STEPS = 256;

    private HeightBand() {
    }

    /**
     * The band of heights, in which the index falls from at most {@code high} at its lower end to at least {@code low}
     * at its upper one; cut off at the ends of {@code heights}. Its ends are found by halving to the last digit, so
     * they are exact where the index only falls. Empty if the index lies between the values at none of the heights of
     * the falling part, or passes them in one jump (a shelf that comes to stand in the way).
     *
     * @param indexAtHeight the index at the place with the lamp at a height above the bare floor (m); finite
     * @param heights       at which the lamp can hang (m)
     * @param low           lowest index wanted, 0 or above
     * @param high          highest index wanted, not below {@code low}, finite
     * @throws IllegalArgumentException if {@code low} or {@code high} is out of its range, with the value
     */
    public static Optional<Stretch> between(DoubleUnaryOperator indexAtHeight, Stretch heights, double low, double high) {
        return falling(indexAtHeight, new Stretch(turn(indexAtHeight, heights), heights.to()), low, high);
    }

    /** As {@link #between} for an index that only falls, as it does straight below a lamp: the falling part need not be looked for. */
    public static Optional<Stretch> falling(DoubleUnaryOperator indexAtHeight, Stretch heights, double low, double high) {
        Argument.notNegative("low", low);
        if (!(high >= low && Double.isFinite(high))) {
            throw Argument.refused("high", high, "it must be a finite number, not below the lowest index wanted, " + low);
        }
        double lower = lowest(heights.from(), heights.to(), height -> indexAtHeight.applyAsDouble(height) <= high);
        double upper = highest(lower, heights.to(), height -> indexAtHeight.applyAsDouble(height) >= low);
        double middle = indexAtHeight.applyAsDouble((lower + upper) / 2);
        return Conformance.within(middle, low, high) ? Optional.of(new Stretch(lower, upper)) : Optional.empty();
    }

    /** The lowest of the heights down to which the index only rises, on a grid of {@link #STEPS}. */
    private static double turn(DoubleUnaryOperator indexAtHeight, Stretch heights) {
        double turn = heights.to();
        double highest = indexAtHeight.applyAsDouble(turn);
        for (int step = STEPS - 1; step >= 0; step--) {
            double height = heights.from() + heights.width() * step / STEPS;
            double index = indexAtHeight.applyAsDouble(height);
            if (index < highest) {
                return turn;
            }
            turn = height;
            highest = index;
        }
        return turn;
    }

    /** The lowest height that holds, of heights that hold from some height up; {@code to} if none does. */
    private static double lowest(double from, double to, DoublePredicate holds) {
        return holds.test(from) ? from : edge(to, from, holds);
    }

    /** The highest height that holds, of heights that hold up to some height; {@code from} if none does. */
    private static double highest(double from, double to, DoublePredicate holds) {
        return holds.test(to) ? to : edge(from, to, holds);
    }

    /** Halves the way from a height that holds to one that does not until no number lies between; the end that holds. */
    private static double edge(double holding, double failing, DoublePredicate holds) {
        double inside = holding;
        double outside = failing;
        double middle = (inside + outside) / 2;
        while (middle != inside && middle != outside) {
            if (holds.test(middle)) {
                inside = middle;
            } else {
                outside = middle;
            }
            middle = (inside + outside) / 2;
        }
        return inside;
    }
}
