package org.loamlight.setup;

/** Kinds of furnishings. Whether a kind gives cover, and whether it is a hide, is taken from here unless the keeper says. */
public enum FurnishingKind {
    HIDE(true, true), HUMID_HIDE(true, true), CORK(true, false), BARK(true, false), PLANT(true, false), LEAF_LITTER(true, false),
    BRANCH(false, false), STONE(false, false), LEDGE(false, false), WATER_DISH(false, false), BACKGROUND(false, false),
    OTHER(false, false), UNKNOWN(false, false);

    private final boolean cover;
    private final boolean hide;

    FurnishingKind(boolean cover, boolean hide) {
        this.cover = cover;
        this.hide = hide;
    }

    Stated givesCover() {
        return trait(cover);
    }

    Stated isHide() {
        return trait(hide);
    }

    private Stated trait(boolean value) {
        if (this == OTHER || this == UNKNOWN) {
            return Stated.UNKNOWN;
        }
        return value ? Stated.YES : Stated.NO;
    }
}
