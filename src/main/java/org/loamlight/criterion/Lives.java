package org.loamlight.criterion;

/** Where animals of a species spend their days. */
public enum Lives {
    GROUND, TREES
}
