package org.loamlight.setup;

/** What the housing is for. */
public enum Purpose {
    PERMANENT, QUARANTINE, HOSPITAL, REARING, WINTER_REST, TRANSPORT, SHOW
}
