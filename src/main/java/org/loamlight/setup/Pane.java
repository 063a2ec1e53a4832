package org.loamlight.setup;

/**
 * One side of the enclosure.
 *
 * @param of        what it is made of; UNKNOWN when not told
 * @param thickness of the sheet (mm); unknown when not told
 */
public record Pane(PaneMaterial of, Measure thickness) {
    public static final Pane UNKNOWN = new Pane(PaneMaterial.UNKNOWN, Measure.UNKNOWN);

    /** Whether it was told what it is made of. */
    public boolean isTold() {
        return of != PaneMaterial.UNKNOWN;
    }
}
