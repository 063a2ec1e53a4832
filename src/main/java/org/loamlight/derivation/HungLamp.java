package org.loamlight.derivation;

import java.util.Optional;
import org.loamlight.physics.LineSource;
import org.loamlight.physics.Point;
import org.loamlight.physics.PointSource;
import org.loamlight.physics.UvSource;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampKind;
import org.loamlight.setup.TubeRuns;

/**
 * A UV lamp that shines down from a known place.
 *
 * @param along  of its middle from the left wall, or from wherever the place it lights is counted
 * @param across of its middle from the front; empty when not told
 * @param above  of its middle above the bare floor
 */
record HungLamp(Lamp lamp, LampOutput output, Metres along, Optional<Metres> across, Metres above) {

    /** The same, with its place as the origin from which others are seen: exact. */
    HungLamp placedExactly() {
        return new HungLamp(lamp, output, exact(along), across.map(HungLamp::exact), exact(above));
    }

    /** The same, with its place as uncertain as its distance from another lamp is. */
    HungLamp seenFrom(HungLamp other) {
        Optional<Metres> depth = across.map(own -> other.across.map(own::and).orElse(own));
        return new HungLamp(lamp, output, along.and(other.along), depth, above.and(other.above));
    }

    private static Metres exact(Metres position) {
        return new Metres(position.value(), 0);
    }

    /**
     * Its shape with the middle at a point. A tube of which nobody said how it lies is taken to lie along the enclosure, as most
     * do: a judgement.
     */
    UvSource source(Point middle) {
        return source(lamp, middle);
    }

    /** As {@link #source(Point)}; for a tube the lit length must be known. */
    static UvSource source(Lamp lamp, Point middle) {
        if (lamp.kind() != LampKind.UV_TUBE) {
            return new PointSource(middle);
        }
        LineSource.Run run = lamp.runs() == TubeRuns.ACROSS ? LineSource.Run.DEPTH : LineSource.Run.LENGTH;
        return new LineSource(middle, Metres.of(lamp.arcLength()).value(), run);
    }
}
