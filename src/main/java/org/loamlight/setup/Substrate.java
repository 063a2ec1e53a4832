package org.loamlight.setup;

/**
 * What covers the floor. There is one such fact when the setup tells of substrate, none otherwise.
 *
 * @param depth where it is deepest and the animal can dig (cm)
 */
public record Substrate(String material, Measure depth, Moisture moisture) {
}
