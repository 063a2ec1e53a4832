package org.loamlight.physics;

/** Which way heat goes through a pane, and with it how well still room air takes it up (ISO 6946, Table 1). */
public enum HeatFlow {
    /** Up: through a top. */
    UP(0.10),
    /** Sideways, within 30 degrees of the horizontal (BR 443): through a wall or a front. */
    HORIZONTAL(0.13),
    /** Down: through a base with air moving below it. */
    DOWN(0.17);

    private final double innerSurfaceResistance;

    HeatFlow(double innerSurfaceResistance) {
        this.innerSurfaceResistance = innerSurfaceResistance;
    }

    /**
     * The surface resistance Rsi towards indoor air (m2K/W), for surfaces of an emissivity near 0.9. Bare metal and foil
     * give off less heat than this says.
     */
    public double innerSurfaceResistance() {
        return innerSurfaceResistance;
    }
}
