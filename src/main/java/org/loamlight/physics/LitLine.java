package org.loamlight.physics;

import java.util.OptionalDouble;

/**
 * What of a straight line through the enclosure is lit.
 *
 * @param lit          the lit stretches of it, from 0 to its length
 * @param lengthMetres of the line (m), above 0
 */
public record LitLine(Stretches lit, double lengthMetres) {

    /** The lit share of the line, 0 (nothing) to 1 (all). */
    public double share() {
        return lit.share();
    }

    /**
     * The farthest way along the line from a lit place to the nearest shaded one (m): half of a lit stretch with shade on
     * both sides, all of one that reaches an end of the line. 0 if nothing is lit, empty if everything is.
     */
    public OptionalDouble farthestFromShadeMetres() {
        if (lit.open().isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(lit.covered().stream().mapToDouble(this::farthestFromShade).max().orElse(0));
    }

    private double farthestFromShade(Stretch piece) {
        boolean reachesAnEnd = piece.from() == 0 || piece.to() == lengthMetres;
        return reachesAnEnd ? piece.width() : piece.width() / 2;
    }
}
