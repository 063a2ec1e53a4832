package org.loamlight.setup;

/**
 * The outlet everything is plugged into.
 *
 * @param voltage of the mains (V)
 * @param outlet  what the outlet or the strip is rated for (A)
 * @param tariff  price of a kilowatt hour, in any currency
 */
public record Electrical(Measure voltage, Measure outlet, Measure tariff) {
}
