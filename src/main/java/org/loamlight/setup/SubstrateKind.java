package org.loamlight.setup;

/**
 * Kinds of substrate, with their bulk densities (kg/m³) from published tables of bulk solids and horticultural media; wet is
 * near what they hold against gravity. Where no readable figure was found the range is judgement and wide.
 */
public enum SubstrateKind {
    COIR(40, 120, 400, 880), SOIL(1220, 1290, 1500, 1800), SAND(1440, 1640, 1850, 2050), SOIL_AND_SAND(1220, 1640, 1550, 1950),
    BARK(220, 380, 300, 500), WOOD_SHAVINGS(60, 210, 150, 400), CORK_GRANULES(55, 250, 80, 300), LEAF_LITTER(40, 120, 100, 300),
    PAPER(50, 300, 150, 800), MOSS(20, 100, 200, 800), OTHER(0, 0, 0, 0), UNKNOWN(0, 0, 0, 0);

    private final double dryLow;
    private final double dryHigh;
    private final double wetLow;
    private final double wetHigh;

    SubstrateKind(double dryLow, double dryHigh, double wetLow, double wetHigh) {
        this.dryLow = dryLow;
        this.dryHigh = dryHigh;
        this.wetLow = wetLow;
        this.wetHigh = wetHigh;
    }

    /** Whether its bulk density is known. */
    public boolean isKnown() {
        return dryHigh > 0;
    }

    /** Least dry bulk density (kg/m³); 0 when not known. */
    public double dryLow() {
        return dryLow;
    }

    /** Greatest dry bulk density (kg/m³); 0 when not known. */
    public double dryHigh() {
        return dryHigh;
    }

    /** Least wet bulk density (kg/m³); 0 when not known. */
    public double wetLow() {
        return wetLow;
    }

    /** Greatest wet bulk density (kg/m³); 0 when not known. */
    public double wetHigh() {
        return wetHigh;
    }
}
