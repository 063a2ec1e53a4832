package org.loamlight.criterion;

import org.loamlight.setup.Measure;

/**
 * A class of length, total or of a shell, with open or closed ends: "over 50 cm up to 100 cm".
 *
 * @param smallest         lower end (cm); negative infinity when open
 * @param smallestIncluded whether exactly {@code smallest} belongs to it
 * @param largest          upper end (cm); infinity when open
 * @param largestIncluded  whether exactly {@code largest} belongs to it
 */
public record SizeClass(double smallest, boolean smallestIncluded, double largest, boolean largestIncluded) {
    /** Every size. */
    public static final SizeClass ANY = new SizeClass(Double.NEGATIVE_INFINITY, false, Double.POSITIVE_INFINITY, false);

    public SizeClass {
        if (!(smallest < largest || smallest == largest && smallestIncluded && largestIncluded)) {
            throw new IllegalArgumentException("No size lies between " + smallest + " cm and " + largest + " cm");
        }
    }

    public boolean isAny() {
        return smallest == Double.NEGATIVE_INFINITY && largest == Double.POSITIVE_INFINITY;
    }

    /** Whether a known length (cm) belongs to it. */
    public boolean holds(Measure length) {
        double value = length.value();
        return (value > smallest || smallestIncluded && value == smallest) && (value < largest || largestIncluded && value == largest);
    }
}
