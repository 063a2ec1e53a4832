package org.loamlight.physics;

import java.util.List;

/**
 * What fillings, panes and water weigh, how much of a loose material to buy, and what it all puts on the floor. Lengths are
 * in metres. A number that is negative, NaN or infinite throws IllegalArgumentException with its name and value.
 */
public final class Bulk {

    /**
     * How much more loose material to buy than the layer will have, as a share of the layer: judgement. Loose material
     * settles when it is spread, watered and walked on.
     */
    public static final double SETTLING = 0.2;

    /**
     * How much denser a mix may get than its parts side by side, because the fine part fills the voids of the coarse one:
     * a guess of our own, from memory.
     */
    public static final double VOID_FILLING = 0.15;

    /** Standard acceleration of free fall (m/s2), exact by convention. */
    private static final double GRAVITY = 9.80665;
    private static final double NEWTONS_IN_A_KILONEWTON = 1000;
    private static final double LITRES_IN_A_CUBIC_METRE = 1000;

    private Bulk() {
    }

    /**
     * The volume (m3) of a layer or a pane of even thickness.
     *
     * @param lengthMetres    0 or above
     * @param widthMetres     0 or above
     * @param thicknessMetres 0 or above
     */
    public static double layerCubicMetres(double lengthMetres, double widthMetres, double thicknessMetres) {
        double area = Argument.notNegative("lengthMetres", lengthMetres) * Argument.notNegative("widthMetres", widthMetres);
        return Argument.finite("volume of the layer", area * Argument.notNegative("thicknessMetres", thicknessMetres));
    }

    /**
     * The density of loose materials mixed: from their mean by volume up to that of the upper ends and
     * {@link #VOID_FILLING} more.
     *
     * @param parts one or more, none null
     * @throws IllegalArgumentException if there are no parts
     */
    public static DensityRange mix(List<Part> parts) {
        double volume = parts.stream().mapToDouble(Part::share).sum();
        Argument.positive("sum of the shares", volume);
        double low = parts.stream().mapToDouble(part -> part.share() * part.density().low()).sum() / volume;
        double high = parts.stream().mapToDouble(part -> part.share() * part.density().high()).sum() / volume;
        return new DensityRange(low, parts.size() == 1 ? high : high * (1 + VOID_FILLING));
    }

    /**
     * A part of a mix.
     *
     * @param share   of the loose volume, above 0, finite, in any unit that is the same for all parts
     * @param density of the part alone
     */
    public record Part(double share, DensityRange density) {

        /** @throws IllegalArgumentException if the share is not above 0 or not finite, with the value */
        public Part {
            Argument.positive("share", share);
        }
    }

    /**
     * The loose volume to buy (L) for a layer: its volume and {@link #SETTLING} more. It is the volume as poured; a pressed
     * block says on its wrapper what it makes.
     *
     * @param layerCubicMetres volume the layer is to have (m3), 0 or above
     */
    public static double litresToBuy(double layerCubicMetres) {
        return Argument.finite("litres to buy", LITRES_IN_A_CUBIC_METRE * (1 + SETTLING)
                * Argument.notNegative("layerCubicMetres", layerCubicMetres));
    }

    /**
     * The load on the floor (kN/m2) below a footprint, spread evenly: m g / A. Feet and frames put more on less.
     *
     * @param kilograms    0 or above
     * @param squareMetres footprint (m2), above 0
     */
    public static double kilonewtonsPerSquareMetre(double kilograms, double squareMetres) {
        double newtons = GRAVITY * Argument.notNegative("kilograms", kilograms);
        return Argument.finite("load", newtons / NEWTONS_IN_A_KILONEWTON / Argument.positive("squareMetres", squareMetres));
    }
}
