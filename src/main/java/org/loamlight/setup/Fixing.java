package org.loamlight.setup;

/**
 * How a lamp or heater is fitted.
 *
 * @param holderRating most power its holder is marked for (W)
 * @param holder       what the holder is made of
 * @param hung         how it is held
 * @param clearance    nearest thing that can burn (cm)
 * @param marked       smallest distance to what can burn that is marked on it (cm)
 */
public record Fixing(Measure holderRating, HolderMaterial holder, Hung hung, Measure clearance, Measure marked) {
}
