package org.loamlight.setup;

/**
 * What can lie between a lamp and the animal, with the share of UV-B it passes when nobody measured it. Soda-lime glass
 * passes only above about 330 nm, general-purpose acrylic attenuates UV-B by more than 95 %; wire lids block 30 to 50 %
 * or more (secondary sources).
 */
public enum ScreenKind {
    MESH(0.60, 0.20, false), GLASS(0, 0, true), PLASTIC(0.02, 0.03, true), UV_CLEAR_PLASTIC(0.75, 0.25, false),
    OTHER(0.5, 0.5, false), UNKNOWN(0.5, 0.5, false);

    private final double passes;
    private final double halfWidth;
    private final boolean blocks;

    ScreenKind(double passes, double halfWidth, boolean blocks) {
        this.passes = passes;
        this.halfWidth = halfWidth;
        this.blocks = blocks;
    }

    /** Share of UV-B passed, 0 to 1. */
    double passes() {
        return passes;
    }

    /** Limits ±a of {@link #passes()}. */
    double halfWidth() {
        return halfWidth;
    }

    /** Whether next to no UV-B passes. */
    public boolean blocks() {
        return blocks;
    }
}
