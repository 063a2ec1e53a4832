package org.loamlight.setup;

/** Kinds of lamps that give light or ultraviolet; whether one is a line or a point decides how its UV falls off. */
public enum LampKind {
    UV_TUBE, UV_COMPACT, UV_BULB, DAYLIGHT_TUBE, DAYLIGHT_BULB, LED, OTHER, UNKNOWN;

    /** Whether it screws into a holder. */
    public Stated hasBulb() {
        return switch (this) {
            case UV_COMPACT, UV_BULB, DAYLIGHT_BULB -> Stated.YES;
            case UV_TUBE, DAYLIGHT_TUBE, LED -> Stated.NO;
            case OTHER, UNKNOWN -> Stated.UNKNOWN;
        };
    }

    /** Whether touching it burns: common practice, no source; a bulb for daylight may be an incandescent one, so it is taken to. */
    public Stated hot() {
        return this == UV_COMPACT ? Stated.NO : hasBulb();
    }

    /** Whether it is sold to give ultraviolet. */
    public Stated givesUv() {
        return switch (this) {
            case UV_TUBE, UV_COMPACT, UV_BULB -> Stated.YES;
            case DAYLIGHT_TUBE, DAYLIGHT_BULB, LED -> Stated.NO;
            case OTHER, UNKNOWN -> Stated.UNKNOWN;
        };
    }
}
