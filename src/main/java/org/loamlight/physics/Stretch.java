package org.loamlight.physics;

/**
 * A piece of one axis of the enclosure, both ends included.
 *
 * @param from lower end (m), finite
 * @param to   upper end (m), finite, not below {@code from}; equal to it for a piece without width
 */
public record Stretch(double from, double to) {

    /** @throws IllegalArgumentException if an end is NaN or infinite or the ends are the wrong way round, with the values */
    public Stretch {
        Argument.finite("from", from);
        Argument.finite("to", to);
        if (from > to) {
            throw new IllegalArgumentException("stretch runs from " + from + " to " + to + "; from must not be above to");
        }
    }

    /** Its width (m), 0 or above. */
    public double width() {
        return to - from;
    }
}
