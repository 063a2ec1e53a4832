package org.loamlight.derivation;

/** Along which direction cover, ends and heat are looked at: the length, or the height for animals that live in trees. */
public enum Axis {
    LENGTH, HEIGHT
}
