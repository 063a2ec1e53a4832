package org.loamlight.derivation;

import org.loamlight.physics.Conformance;
import org.loamlight.setup.Measure;

/**
 * A length or position that the arithmetic of light works with.
 *
 * @param value       (m)
 * @param uncertainty standard uncertainty (m), 0 or above
 */
record Metres(double value, double uncertainty) {
    static final Metres ZERO = new Metres(0, 0);

    private static final double CENTIMETRES = 100;
    private static final double NANOMETRES = 1e9;

    /** A known measure in centimetres. */
    static Metres of(Measure centimetres) {
        return new Metres(centimetres.value() / CENTIMETRES, centimetres.standardUncertainty() / CENTIMETRES);
    }

    /** To the whole nanometre, so that what was told in centimetres comes back as it was told. */
    static double inCentimetres(double metres) {
        return Math.rint(metres * NANOMETRES) / (NANOMETRES / CENTIMETRES);
    }

    static double fromCentimetres(double centimetres) {
        return centimetres / CENTIMETRES;
    }

    /** The same place seen from another uncertain one: its uncertainty is added to this one's. */
    Metres and(Metres other) {
        return new Metres(value, Conformance.combine(uncertainty, other.uncertainty));
    }
}
