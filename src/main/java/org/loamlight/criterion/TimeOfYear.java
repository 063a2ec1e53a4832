package org.loamlight.criterion;

import org.loamlight.setup.Purpose;
import org.loamlight.setup.Setup;
import org.loamlight.setup.WinterRest;

/** When in the year a limit is meant. Where nobody tells of a winter rest, it is not winter for the animal. */
public enum TimeOfYear {
    ANY, ACTIVE, WINTER;

    boolean excludes(Setup setup) {
        boolean winter = setup.season().rest() == WinterRest.RUNNING || setup.purpose() == Purpose.WINTER_REST;
        return this == ACTIVE && winter || this == WINTER && !winter;
    }
}
