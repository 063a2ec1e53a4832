package org.loamlight.physics;

/**
 * The part of a straight way, which runs from 0 to 1, that lies in a space between parallel planes (the slab method for
 * a line and a box; textbook geometry, from memory).
 *
 * @param enters share of the way at which the space is entered
 * @param leaves share of the way at which it is left; not above {@code enters} if the way misses the space
 */
record Passage(double enters, double leaves) {

    /** All of the way. */
    static final Passage WHOLE = new Passage(0, 1);

    private static final Passage NONE = new Passage(1, 0);

    /** What is left of this passage between two planes square to an axis, on which the way runs from {@code from} to {@code to}. */
    Passage between(Stretch planes, double from, double to) {
        double run = to - from;
        if (run == 0) {
            return planes.from() < from && from < planes.to() ? this : NONE;
        }
        double one = (planes.from() - from) / run;
        double other = (planes.to() - from) / run;
        return new Passage(StrictMath.max(enters, StrictMath.min(one, other)),
                StrictMath.min(leaves, StrictMath.max(one, other)));
    }

    /** Whether the way misses the space or only touches it. */
    boolean isNone() {
        return !(enters < leaves);
    }
}
