package org.loamlight.setup;

/** How the last shed came off. */
public enum Shed {
    IN_ONE_PIECE, IN_PIECES, UNKNOWN
}
