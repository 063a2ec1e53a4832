package org.loamlight.setup;

/**
 * Something between a lamp and the animal.
 *
 * @param passes measured share of UV-B passed (%); unknown when not measured
 */
public record Screen(ScreenKind kind, Measure passes) {
    /** Share of UV-B passed, 0 to 1: as measured, else the usual one of its kind. */
    public double share() {
        return passes.isKnown() ? passes.value() / 100 : kind.passes();
    }

    /** Standard uncertainty of {@link #share()}. */
    public double shareUncertainty() {
        return passes.isKnown() ? passes.standardUncertainty() / 100 : kind.halfWidth() / StrictMath.sqrt(3);
    }

    /** Whether next to no UV-B passes: by its kind, unless somebody measured that it does. */
    public boolean blocks() {
        return kind.blocks() && !passes.isKnown();
    }
}
