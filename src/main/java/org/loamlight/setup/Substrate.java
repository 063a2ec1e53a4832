package org.loamlight.setup;

/**
 * What covers the floor. There is one such fact when the setup tells of substrate, none otherwise.
 *
 * @param kind  its kind, for mass and volume
 * @param holdsBurrow whether a tunnel pressed into it stays open
 * @param dryPlace whether there is a dry place to lie
 * @param layingSite whether there is a deep, damp place to lay eggs in
 * @param depth where it is deepest and the animal can dig (cm)
 */
public record Substrate(String material, SubstrateKind kind, Measure depth, Moisture moisture, Stated holdsBurrow, Stated dryPlace, Stated layingSite) {
}
