package org.loamlight.drawing;

/** What a surface is filled with: nothing, the white of the paper, ink, or a pattern that differs without colour. */
public enum Fill {
    NONE, PAPER, INK,
    /** Slanted lines: gives cover. */
    COVER
}
