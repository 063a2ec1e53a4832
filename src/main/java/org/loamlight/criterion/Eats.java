package org.loamlight.criterion;

/** What animals of a species live on. */
public enum Eats {
    WHOLE_PREY, INSECTS, PLANTS, INSECTS_AND_PLANTS
}
