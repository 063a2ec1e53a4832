package org.loamlight.setup;

/** Kinds of lamps that give light or ultraviolet; whether one is a line or a point decides how its UV falls off. */
public enum LampKind {
    UV_TUBE, UV_COMPACT, UV_BULB, DAYLIGHT_TUBE, DAYLIGHT_BULB, LED, OTHER, UNKNOWN;

    /** Whether it is sold to give ultraviolet. */
    public Stated givesUv() {
        return switch (this) {
            case UV_TUBE, UV_COMPACT, UV_BULB -> Stated.YES;
            case DAYLIGHT_TUBE, DAYLIGHT_BULB, LED -> Stated.NO;
            case OTHER, UNKNOWN -> Stated.UNKNOWN;
        };
    }
}
