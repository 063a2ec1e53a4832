package org.loamlight.setup;

/**
 * The outlet everything is plugged into.
 *
 * @param voltage of the mains (V)
 * @param outlet  what the outlet or the strip is rated for (A)
 * @param safetySwitch whether a residual-current device protects the outlet
 * @param dripLoop whether each cable hangs lower than its socket before it rises to it
 * @param socketBelow whether a socket lies below the enclosure, where water can run to
 * @param splashProof whether everything electrical that is misted or splashed is made for it
 * @param tariff  price of a kilowatt hour, in any currency
 */
public record Electrical(Measure voltage, Measure outlet, Measure tariff, Stated safetySwitch, Stated dripLoop,
        Stated socketBelow, Stated splashProof) {
}
