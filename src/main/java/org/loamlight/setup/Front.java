package org.loamlight.setup;

/** How the enclosure is opened. */
public enum Front {
    GLASS_DOORS, HINGED_DOOR, OPEN_TOP_LID, MESH, PLASTIC_DOOR, OTHER, UNKNOWN
}
