package org.loamlight.setup;

/** Forms in which water is offered. */
public enum WaterForm {
    DISH, DRIP, MIST
}
