package org.loamlight.setup;

/** How frozen prey is thawed. */
public enum Thawing {
    REFRIGERATOR, COLD_WATER, WARM_WATER, ROOM, MICROWAVE, NEVER_FROZEN, UNKNOWN
}
