package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import org.loamlight.physics.Point;
import org.loamlight.physics.UvField;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Setup;

/** The UV index in the upright slice of the enclosure, from left to right, in which its lamps hang. */
public final class UvSlice {
    private final UvField field;
    private final double across;
    private final List<HungLamp> lamps;

    private UvSlice(UvField field, double across, List<HungLamp> lamps) {
        this.field = field;
        this.across = across;
        this.lamps = lamps;
    }

    /** Empty without a UV lamp, and while the strength or the place of one is not known: no place may seem darker than it is. */
    public static Optional<UvSlice> of(Setup setup) {
        UvLamps lamps = new UvLamps(setup);
        if (lamps.hung().isEmpty() || !lamps.areAllHung()) {
            return Optional.empty();
        }
        UvLine line = new UvLine(setup, Layout.of(setup, Axis.LENGTH), lamps, new SolidPieces(setup));
        return Optional.of(new UvSlice(line.field(line.across()), line.across(), lamps.hung()));
    }

    /**
     * The index on a surface that faces up; 0 or above, 0 at the height of a lamp and above it.
     *
     * @param along from the left wall (cm)
     * @param above above the bare floor (cm)
     */
    public double index(double along, double above) {
        return field.index(new Point(Metres.fromCentimetres(along), across, Metres.fromCentimetres(above)));
    }

    /** The lamps that give it, in the order of the file; at least one. */
    public List<Lamp> lamps() {
        return lamps.stream().map(HungLamp::lamp).toList();
    }

    /** Where one of {@link #lamps()} hangs along the enclosure, from the left wall (cm); the middle of its third where only that is said. */
    public double along(Lamp lamp) {
        return Metres.inCentimetres(hung(lamp).along().value());
    }

    /** How high one of {@link #lamps()} hangs above the bare floor (cm). */
    public double above(Lamp lamp) {
        return Metres.inCentimetres(hung(lamp).above().value());
    }

    private HungLamp hung(Lamp lamp) {
        return lamps.stream().filter(one -> one.lamp().equals(lamp)).findFirst().orElseThrow();
    }
}
