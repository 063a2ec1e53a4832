package org.loamlight.quantity;

/** What kind of thing a {@link Unit} measures; only units of one dimension convert into each other. */
public enum Dimension {
    LENGTH, AREA, VOLUME, MASS, TEMPERATURE, TEMPERATURE_DIFFERENCE, DURATION, POWER, FRACTION, UV_INDEX, COUNT, VOLTAGE, CURRENT, ENERGY, PRICE, MONEY, ANGLE, RATE
}
