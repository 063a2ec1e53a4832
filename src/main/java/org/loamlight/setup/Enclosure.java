package org.loamlight.setup;

import java.util.List;
import org.loamlight.quantity.Zone;

/**
 * The enclosure itself.
 *
 * @param length   inside, left to right (cm)
 * @param depth    inside, front to back (cm)
 * @param height   inside, bare floor to lid (cm)
 * @param warmEnd  the side the heat is on; UNKNOWN when not told
 * @param build    what it is made of and stands on
 * @param openings vents, doors, lids, cable holes; empty when there are none or nobody looked
 * @param openingsTold whether the keeper said which openings there are; an empty list that was told says there is none
 */
public record Enclosure(String title, Measure length, Measure depth, Measure height, Front front, Side warmEnd,
        Build build, List<Opening> openings, Stated openingsTold) {
    /**
     * Whether two places in words are one: the same word, or an end that is called by its side once and by its warmth once.
     *
     * @return UNKNOWN where that depends on the warm end, and nobody told which it is; NO where a place is not said in words
     */
    public Stated sameEnd(Zone one, Zone other) {
        if (one == Zone.ENCLOSURE || other == Zone.ENCLOSURE) {
            return Stated.NO;
        }
        boolean isCalledByBoth = one.isEnd() && other.isEnd() && isByWarmth(one) != isByWarmth(other);
        if (isCalledByBoth && warmEnd == Side.UNKNOWN) {
            return Stated.UNKNOWN;
        }
        return (isCalledByBoth ? isLeft(one) == isLeft(other) : one == other) ? Stated.YES : Stated.NO;
    }

    private static boolean isByWarmth(Zone end) {
        return end == Zone.WARM_END || end == Zone.COOL_END;
    }

    private boolean isLeft(Zone end) {
        return isByWarmth(end) ? (warmEnd == Side.LEFT) == (end == Zone.WARM_END) : end == Zone.LEFT_THIRD;
    }

    /** Whether the front or the lid is mesh, so that air passes whatever openings there are. */
    public Stated meshed() {
        if (front == Front.MESH || build.top().of() == PaneMaterial.MESH) {
            return Stated.YES;
        }
        return build.top().of() == PaneMaterial.UNKNOWN ? Stated.UNKNOWN : Stated.NO;
    }
}
