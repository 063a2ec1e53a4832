package org.loamlight.setup;

/** What the surface of a heater is made of: how soon it burns the hand depends on it. */
public enum SurfaceMaterial {
    METAL, COATED_METAL, CERAMIC, GLASS, STONE, PLASTIC, WOOD, UNKNOWN
}
