package org.loamlight.physics;

/**
 * From which surface temperature skin that touches a solid is burned. Every figure is for <em>human</em> skin: no
 * threshold for a reptile has been published. They hold for less than 10 % of the skin and are thresholds of injury, not
 * limits of what is comfortable. An animal that rests on a surface stays for hours, so {@link #LASTING_CELSIUS} is the
 * one to hold against it.
 *
 * <p>Thresholds after DIN EN 563:1994, the forerunner of ISO 13732-1:2006, in the extract of the rules of a German
 * accident insurer for the building trade (secondary source).
 */
public final class ContactBurn {

    /** The threshold for contacts of 8 h and longer (degrees Celsius), the same on every surface. */
    public static final double LASTING_CELSIUS = 43;

    /** The shortest contact with a threshold here (s); below it the threshold of this one is given, which is lower. */
    public static final double SHORTEST_SECONDS = 1;

    /** How long a contact may be to fall under the second of the four thresholds (s). */
    public static final double MINUTE_SECONDS = 60;

    /** How long a contact may be to fall under the third of the four thresholds (s). */
    public static final double TEN_MINUTES_SECONDS = 600;

    private static final double TEN_MINUTES_CELSIUS = 48;

    private ContactBurn() {
    }

    /** What is touched; a surface that is none of these is safest taken as {@link #BARE_METAL}. */
    public enum Surface {

        /** Smooth metal without a coat. */
        BARE_METAL(65, 70, 51),

        /** Metal under 50 micrometres of lacquer; a thinner coat counts as none. */
        COATED_METAL(75, 80, 51),

        /** Ceramic, glass and stone. */
        STONE(80, 86, 56),

        /** Solid plastic. */
        PLASTIC(86, 93, 60),

        /** Wood, dry and without a coat. */
        WOOD(110, 140, 60);

        private final Threshold second;
        private final Threshold minute;

        Surface(double secondFromCelsius, double secondToCelsius, double minuteCelsius) {
            this.second = new Threshold(secondFromCelsius, secondToCelsius);
            this.minute = Threshold.of(minuteCelsius);
        }
    }

    /**
     * A threshold as published: where it is a range, burns begin somewhere in it, so what must be safe stays below
     * {@code fromCelsius} (this reading of the range is from memory). Both ends are the same where one figure is published.
     *
     * @param fromCelsius the lower end (degrees Celsius)
     * @param toCelsius   the upper end (degrees Celsius), not below the lower one
     */
    public record Threshold(double fromCelsius, double toCelsius) {

        /**
         * Refuses what is no range.
         *
         * @throws IllegalArgumentException if an end is NaN or infinite or they are the wrong way round, with the value
         */
        public Threshold {
            Argument.finite("fromCelsius", fromCelsius);
            if (Argument.finite("toCelsius", toCelsius) < fromCelsius) {
                throw Argument.refused("toCelsius", toCelsius, "it must not be below fromCelsius, " + fromCelsius);
            }
        }

        private static Threshold of(double celsius) {
            return new Threshold(celsius, celsius);
        }
    }

    /**
     * The threshold of the shortest of the tabulated contacts (1 s, 1 min, 10 min, 8 h) that lasts at least as long as
     * the contact in question: between two of them the lower threshold, never a value in between; beyond 8 h that of 8 h.
     *
     * @param surface        what is touched
     * @param contactSeconds how long (s), above 0, finite
     * @throws IllegalArgumentException if the contact is not above 0 or not finite, with the value
     */
    public static Threshold threshold(Surface surface, double contactSeconds) {
        Argument.positive("contactSeconds", contactSeconds);
        if (contactSeconds <= SHORTEST_SECONDS) {
            return surface.second;
        }
        if (contactSeconds <= MINUTE_SECONDS) {
            return surface.minute;
        }
        return Threshold.of(contactSeconds <= TEN_MINUTES_SECONDS ? TEN_MINUTES_CELSIUS : LASTING_CELSIUS);
    }

    /**
     * The effusivity of a material, sqrt(lambda rho c) (W s^0.5 / (m2 K)): how firmly it holds its own temperature when
     * it touches another. Steel has about 13 000, wood about 300.
     *
     * @param wattsPerMetreKelvin     thermal conductivity (W/(m K)), above 0, finite
     * @param kilogramsPerCubicMetre  density (kg/m3), above 0, finite
     * @param joulesPerKilogramKelvin specific heat (J/(kg K)), above 0, finite
     * @throws IllegalArgumentException if one is not above 0 or not finite, with its name and value
     */
    public static double effusivity(double wattsPerMetreKelvin, double kilogramsPerCubicMetre,
            double joulesPerKilogramKelvin) {
        return StrictMath.sqrt(Argument.positive("wattsPerMetreKelvin", wattsPerMetreKelvin))
                * StrictMath.sqrt(Argument.positive("kilogramsPerCubicMetre", kilogramsPerCubicMetre))
                * StrictMath.sqrt(Argument.positive("joulesPerKilogramKelvin", joulesPerKilogramKelvin));
    }

    /**
     * The temperature of the face between two thick solids from the moment they touch (degrees Celsius),
     * (b1 T1 + b2 T2) / (b1 + b2). The principle is explained by the German institute for occupational safety (BAuA); the
     * formula, that of two half-spaces in sudden contact, is from memory. It holds until the warmth has passed through
     * the thinner of the two, so not for hours, and not for a surface that is heated from behind.
     *
     * @param oneEffusivity   of one solid (W s^0.5 / (m2 K)), above 0, finite
     * @param oneCelsius      its temperature before (degrees Celsius), finite
     * @param otherEffusivity of the other, above 0, finite
     * @param otherCelsius    its temperature before (degrees Celsius), finite
     * @throws IllegalArgumentException if an argument is outside its range, with its name and value
     */
    public static double contactCelsius(double oneEffusivity, double oneCelsius, double otherEffusivity,
            double otherCelsius) {
        Argument.positive("oneEffusivity", oneEffusivity);
        Argument.positive("otherEffusivity", otherEffusivity);
        Argument.finite("oneCelsius", oneCelsius);
        Argument.finite("otherCelsius", otherCelsius);
        // A share of each instead of one sum over another: neither product nor sum can leave the range of a double.
        return oneCelsius / (1 + otherEffusivity / oneEffusivity) + otherCelsius / (1 + oneEffusivity / otherEffusivity);
    }
}
