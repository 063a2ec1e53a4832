package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.loamlight.physics.Stretch;
import org.loamlight.physics.Stretches;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Spot;

/** Where things stand along one axis of the enclosure, as the audit takes it. Lengths in centimetres, thirds from the left or from the floor. */
public final class Whereabouts {
    private final Setup setup;
    private final Layout layout;

    private Whereabouts(Setup setup, Layout layout) {
        this.setup = setup;
        this.layout = layout;
    }

    public static Whereabouts of(Setup setup, Axis axis) {
        return new Whereabouts(setup, Layout.of(setup, axis));
    }

    /** The third a spot lies in, 0 to 2; empty when that cannot be told. */
    public OptionalInt third(Spot spot) {
        return layout.third(spot);
    }

    /** What a third is called, 0 to 2: by its warmth where the warm end is known, by its side otherwise. */
    public Zone zone(int third) {
        return layout.zoneOf(third);
    }

    /** The stretch a piece takes up; empty when that cannot be told. */
    public Optional<Stretch> stretch(Furnishing piece) {
        return layout.stretch(piece);
    }

    /** Whether the stretch of a piece rests on a place said in words, so that it is known to its third only. */
    public boolean isPlacedInWords(Furnishing piece) {
        return layout.isPlacedInWords(piece);
    }

    /** Where there is cover and where there is none; empty while that cannot be told all along. */
    public Optional<Stretches> cover() {
        return new Cover(setup, layout).merged();
    }

    /** The stretches without cover, in order; empty where there is cover all along, and while that cannot be told. */
    public List<Stretch> open() {
        return cover().map(Stretches::open).orElse(List.of());
    }
}
