package org.loamlight.setup;

import java.util.List;

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
    /** Whether the front or the lid is mesh, so that air passes whatever openings there are. */
    public Stated meshed() {
        if (front == Front.MESH || build.top().of() == PaneMaterial.MESH) {
            return Stated.YES;
        }
        return build.top().of() == PaneMaterial.UNKNOWN ? Stated.UNKNOWN : Stated.NO;
    }
}
