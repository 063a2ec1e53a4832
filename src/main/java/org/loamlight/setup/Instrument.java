package org.loamlight.setup;

import org.loamlight.quantity.Unit;

/**
 * What a value was read with, and the limits ±a within which such an instrument reads when nothing better is stated.
 * From limits with nothing else known the standard uncertainty is a / sqrt(3) (JCGM 100:2008, 4.3.7).
 */
public enum Instrument {
    /** Hobby thermometer with a probe: ±1 °C (from memory). */
    PROBE_THERMOMETER(1, 0, Unit.CELSIUS),
    /** Dial or strip thermometer: ±3 °C (judgement). */
    DIAL_THERMOMETER(3, 0, Unit.CELSIUS),
    /** Simple infrared thermometer: ±2 °C or 2 % of the reading, the greater (trade page; data sheet form from memory). */
    INFRARED_THERMOMETER(2, 0.02, Unit.CELSIUS),
    /** Digital hygrometer: 1 to 5 % by model (instruction page); the coarser end. */
    DIGITAL_HYGROMETER(5, 0, Unit.PERCENT),
    /** Dial hygrometer: ±10 % (judgement). */
    DIAL_HYGROMETER(10, 0, Unit.PERCENT),
    /** UV index hand meter: ±10 % (from memory), and never better than ±0.1, the step of its display (judgement). */
    UV_METER(0.1, 0.10, Unit.UV_INDEX),
    /** The chart printed by the lamp's maker: ±30 % (judgement; lamps of one kind scatter widely), ±0.1 at least. */
    LAMP_CHART(0.1, 0.30, Unit.UV_INDEX),
    UNKNOWN(0, 0, Unit.PIECE);

    private final double halfWidth;
    private final double relative;
    private final Unit unit;

    Instrument(double halfWidth, double relative, Unit unit) {
        this.halfWidth = halfWidth;
        this.relative = relative;
        this.unit = unit;
    }

    /** The ±a of this instrument at a reading, in the reading's own unit (°C, % or index). */
    double halfWidthAt(double value) {
        return Math.max(halfWidth, relative * Math.abs(value));
    }

    boolean reads(Unit asked) {
        return unit.dimension() == asked.dimension();
    }

    /** The coarsest instrument for a unit: what a reading without instrument and without ± is taken to come from. */
    static double coarsestHalfWidth(double value, Unit asked) {
        double coarsest = 0;
        for (Instrument instrument : values()) {
            if (instrument.reads(asked)) {
                coarsest = Math.max(coarsest, instrument.halfWidthAt(value));
            }
        }
        return coarsest;
    }
}
