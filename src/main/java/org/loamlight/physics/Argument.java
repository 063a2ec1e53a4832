package org.loamlight.physics;

/** Turns away numbers that no formula of this package can work with, before they spread as NaN. */
final class Argument {

    private Argument() {
    }

    /** Returns {@code value}, or throws IllegalArgumentException if it is NaN or infinite. */
    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw refused(name, value, "it must be a finite number");
        }
        return value;
    }

    /** Returns {@code value}, or throws IllegalArgumentException if it is NaN, infinite, zero or negative. */
    static double positive(String name, double value) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw refused(name, value, "it must be a finite number above 0");
        }
        return value;
    }

    /** Returns {@code value}, or throws IllegalArgumentException if it is NaN, infinite or negative. */
    static double notNegative(String name, double value) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw refused(name, value, "it must be a finite number, 0 or above");
        }
        return value;
    }

    /** As {@link #notNegative(String, double)} for one of several; its name, "{@code names[index]}", is put together only where it is told. */
    static double notNegative(String names, int index, double value) {
        return value >= 0 && Double.isFinite(value) ? value : notNegative(names + "[" + index + "]", value);
    }

    /** The exception for an argument, in the form "{@code name} is {@code value}; {@code allowed}". */
    static IllegalArgumentException refused(String name, double value, String allowed) {
        return new IllegalArgumentException(name + " is " + value + "; " + allowed);
    }
}
