package org.loamlight.criterion;

/** How animals of a species take up water. */
public enum Drinks {
    FROM_DISH, FROM_DROPS
}
