package org.loamlight.setup;

/**
 * What covers the floor. There is one such fact when the setup tells of substrate, none otherwise.
 *
 * @param kind  its kind, for mass and volume
 * @param depth where it is deepest and the animal can dig (cm)
 */
public record Substrate(String material, SubstrateKind kind, Measure depth, Moisture moisture) {
}
