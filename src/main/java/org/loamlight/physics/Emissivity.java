package org.loamlight.physics;

/**
 * What share of the radiation of a black body a surface gives off in the band of a hand instrument, 8 to 14 micrometres,
 * as the widest range that manuals of infrared thermometers and thermal cameras print for its kind (no unit; secondary).
 */
public enum Emissivity {

    /** Aluminium, polished or as received, and stainless steel; oxidised steel gives off far more. */
    BARE_METAL(0.05, 0.16),

    /** Painted or lacquered metal: oil paint 0.94, the range about it is judgement. */
    COATED_METAL(0.90, 0.96),

    /** Ceramic, porcelain, brick and glazed earthenware. */
    CERAMIC(0.90, 0.94),

    /** Window and float glass, which no radiation of this band passes. */
    GLASS(0.90, 0.97),

    /** Natural stone of any kind, from basalt to limestone. */
    STONE(0.72, 0.98),

    /** Opaque plastic; a thin film lets radiation pass. */
    PLASTIC(0.85, 0.95),

    /** Wood, planed or not. */
    WOOD(0.80, 0.90),

    /** Any surface but bare metal. */
    DULL(0.72, 0.98);

    private final double least;
    private final double most;

    Emissivity(double least, double most) {
        this.least = least;
        this.most = most;
    }

    /** The lower end of the range, above 0. */
    public double least() {
        return least;
    }

    /** The upper end of the range, at most 1. */
    public double most() {
        return most;
    }
}
