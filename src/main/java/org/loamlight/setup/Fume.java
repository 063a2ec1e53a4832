package org.loamlight.setup;

/** What can hang in the air of a room. */
public enum Fume {
    SMOKE, SPRAYS, FLEA_PRODUCTS, FRESH_SEALANT, AROMATIC_WOOD, COOKING_FUMES, UNKNOWN
}
