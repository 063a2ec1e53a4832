package org.loamlight.wording;

/** The system of units amounts are printed in. */
public enum Units {
    /** Centimetres, grams, degrees Celsius. */
    METRIC,
    /** Inches, ounces, degrees Fahrenheit. */
    US
}
