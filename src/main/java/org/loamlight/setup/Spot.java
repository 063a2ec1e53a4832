package org.loamlight.setup;

import java.util.Objects;
import org.loamlight.quantity.Zone;

/**
 * Where a part stands, in words, in coordinates or both.
 *
 * @param zone   the zone said in words; {@link Zone#ENCLOSURE} when none was said
 * @param along  from the left wall (cm)
 * @param across from the front (cm)
 * @param above  above the bare floor (cm)
 */
public record Spot(Zone zone, Measure along, Measure across, Measure above) {
    public static final Spot UNKNOWN = new Spot(Zone.ENCLOSURE, Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN);

    public Spot {
        Objects.requireNonNull(zone, "zone");
    }

    /** Whether anything was said about the position along the enclosure. */
    public boolean isKnown() {
        return zone != Zone.ENCLOSURE || along.isKnown();
    }
}
