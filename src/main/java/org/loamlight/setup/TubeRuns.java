package org.loamlight.setup;

/** Which way a tube lies: along the length of the enclosure, or across it from front to back. */
public enum TubeRuns {
    ALONG, ACROSS, UNKNOWN
}
