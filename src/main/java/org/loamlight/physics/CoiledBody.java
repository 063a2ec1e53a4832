package org.loamlight.physics;

/**
 * How much floor a snake takes up that lies coiled flat. The body is taken as a cylinder as dense as water: judgement, a
 * reptile neither sinks nor floats by much, and the taper of neck and tail is spread over the whole length. Lengths (m) and
 * masses (kg) are finite and above 0; anything else throws IllegalArgumentException with the name and the value. Snakes
 * only: for lizards and tortoises no source for the ground they cover was found.
 */
public final class CoiledBody {

    /** Density of the body (kg/m3), that of water: judgement. */
    public static final double DENSITY = 1000;

    /**
     * Share of the ground inside the outline of a flat coil that the body covers: judgement. Turns that touch leave little
     * open, the bends at the middle and along the rim leave some.
     */
    public static final double PACKING = 0.75;

    private CoiledBody() {
    }

    /**
     * The mean width of the body (m): the diameter of a cylinder of that length and mass,
     * w = sqrt(4 m / (pi rho L)).
     *
     * @param totalLengthMetres from snout to tip of the tail (m)
     * @param kilograms         body mass (kg)
     */
    public static double widthMetres(double totalLengthMetres, double kilograms) {
        double section = Argument.positive("kilograms", kilograms)
                / (DENSITY * Argument.positive("totalLengthMetres", totalLengthMetres));
        return 2 * StrictMath.sqrt(inRange(section) / StrictMath.PI);
    }

    /**
     * The area inside the outline of the flat coil (m2): length times mean width over {@link #PACKING}. A snake that lies
     * in two layers takes up less, a stretched one reaches farther.
     *
     * @param totalLengthMetres from snout to tip of the tail (m)
     * @param kilograms         body mass (kg)
     */
    public static double coilSquareMetres(double totalLengthMetres, double kilograms) {
        return inRange(totalLengthMetres * widthMetres(totalLengthMetres, kilograms) / PACKING);
    }

    /**
     * The diameter of the flat coil taken as round (m): what a hide must hold inside for the animal to fill it.
     *
     * @param totalLengthMetres from snout to tip of the tail (m)
     * @param kilograms         body mass (kg)
     */
    public static double coilDiameterMetres(double totalLengthMetres, double kilograms) {
        return 2 * StrictMath.sqrt(coilSquareMetres(totalLengthMetres, kilograms) / StrictMath.PI);
    }

    /** Refuses what left the range of a double, which no animal does. */
    private static double inRange(double squareMetres) {
        return Argument.positive("area of the body (m2)", squareMetres);
    }
}
