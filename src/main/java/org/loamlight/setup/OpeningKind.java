package org.loamlight.setup;

/** Kinds of openings an animal might leave by. */
public enum OpeningKind {
    VENT, DOOR, LID, CABLE_HOLE, OTHER, UNKNOWN
}
