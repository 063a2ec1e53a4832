package org.loamlight.physics;

import java.util.List;

/**
 * How much heat a pane lets through: U = 1 / (Rsi + sum of d / lambda + Rse), in W/m2K (ISO 6946; DA DB-HE/1 eq. 2).
 * Layers stand in any order; without layers only the two surfaces resist.
 *
 * <p>With the thin panes of an enclosure the surfaces resist more than the material does: 4 mm of acrylic in the place of
 * 4 mm of glass changes U by 6 %. So a conductivity that is known to a fifth is good enough, unless the pane is foam.
 */
public final class Transmittance {

    /** The surface resistance Rse towards outdoor air (m2K/W; ISO 6946, Table 1). */
    public static final double OUTDOOR_RESISTANCE = 0.04;

    private Transmittance() {
    }

    /**
     * The resistance of layers without their surfaces (m2K/W); 0 without layers.
     *
     * @param layers none null
     */
    public static double resistance(List<Layer> layers) {
        return layers.stream().mapToDouble(Layer::resistance).sum();
    }

    /**
     * U (W/m2K) between two surface resistances.
     *
     * @param innerResistance Rsi (m2K/W), 0 or above
     * @param layers          none null; may be empty if a surface resists
     * @param outerResistance Rse (m2K/W), 0 or above
     * @throws IllegalArgumentException if a resistance is negative or not finite, or if all are 0, with the value
     */
    public static double of(double innerResistance, List<Layer> layers, double outerResistance) {
        double surfaces = Argument.notNegative("innerResistance", innerResistance)
                + Argument.notNegative("outerResistance", outerResistance);
        return Argument.positive("transmittance", 1 / (surfaces + resistance(layers)));
    }

    /**
     * U (W/m2K) of a pane between the enclosure and the room it stands in: both surfaces count as indoor ones (DA
     * DB-HE/1, Table 6, inner partitions).
     *
     * @param layers none null, may be empty
     */
    public static double betweenRooms(HeatFlow flow, List<Layer> layers) {
        return of(flow.innerSurfaceResistance(), layers, flow.innerSurfaceResistance());
    }

    /**
     * U (W/m2K) of a base that stands flat on a floor, a shelf or a cupboard: it has no free lower surface, so only its
     * upper one resists, and heat ends where the layers do. If what it stands on is warmed through, less is lost than
     * this says: it is the upper end of what can be lost, and 0 the lower (our reading of ISO 6946, which does not treat
     * the case).
     *
     * @param layers of the base and of what it stands on, none null
     */
    public static double onFurniture(List<Layer> layers) {
        return of(HeatFlow.DOWN.innerSurfaceResistance(), layers, 0);
    }
}
