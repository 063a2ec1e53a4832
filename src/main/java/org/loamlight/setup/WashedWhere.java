package org.loamlight.setup;

/** Where dishes and furnishings are cleaned. */
public enum WashedWhere {
    KITCHEN, BATHROOM, UTILITY_ROOM, OUTSIDE, UNKNOWN
}
