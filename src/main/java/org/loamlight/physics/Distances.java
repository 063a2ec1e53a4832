package org.loamlight.physics;

/** Distances in the enclosure. */
public final class Distances {

    private Distances() {
    }

    /**
     * The straight distance between two points (m), by Pythagoras; 0 if they are the same point.
     *
     * @param x1 first point (m), any finite number; likewise {@code y1}, {@code z1}
     * @param x2 second point (m), any finite number; likewise {@code y2}, {@code z2}
     * @throws IllegalArgumentException if a coordinate is NaN or infinite, naming it
     */
    public static double between(double x1, double y1, double z1, double x2, double y2, double z2) {
        double alongX = Argument.finite("x2", x2) - Argument.finite("x1", x1);
        double alongY = Argument.finite("y2", y2) - Argument.finite("y1", y1);
        double alongZ = Argument.finite("z2", z2) - Argument.finite("z1", z1);
        return StrictMath.hypot(StrictMath.hypot(alongX, alongY), alongZ);
    }
}
