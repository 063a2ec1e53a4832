package org.loamlight.setup;

/** On which side of wall, floor or mesh a thing is mounted. */
public enum Mount {
    INSIDE, OUTSIDE, UNKNOWN
}
