package org.loamlight.drawing;

import java.util.Optional;
import java.util.OptionalInt;
import org.loamlight.physics.Stretch;

/**
 * Where a part stands, as far as it is told. A stretch without width is a single position. Lengths in centimetres.
 *
 * @param along         from the left wall
 * @param across        from the front
 * @param above         above the bare floor; its lower end alone counts where {@code isOpenAbove}
 * @param isInWords     whether the stretch along is known to its third only, or which way a tube runs is not told
 * @param isHeightUnsure whether a height is concluded from what carries it or where the animal lies on it
 * @param isOpenAbove   whether it is known what it stands on, but not how high it is
 * @param third         the third it stands in, 0 to 2 from the left
 */
record Placement(Part part, Form form, Optional<Stretch> along, Optional<Stretch> across, Optional<Stretch> above, boolean isInWords,
        boolean isHeightUnsure, boolean isOpenAbove, OptionalInt third) {

    /** How a part is drawn. */
    enum Form {
        PIECE, COVER, HEATER, BULB, TUBE, READING, OPENING
    }

    boolean isInPlan() {
        return along.isPresent() && across.isPresent();
    }

    boolean isInFront() {
        return along.isPresent() && above.isPresent();
    }

    /** Whether it can be drawn in neither view, though its third is known. */
    boolean isInThirdOnly() {
        return !isInPlan() && !isInFront() && third.isPresent();
    }

    /** Stands alone: a position, not a stretch. */
    static Optional<Stretch> at(double position) {
        return Optional.of(new Stretch(position, position));
    }

    static Optional<Stretch> between(double one, double other) {
        return Optional.of(new Stretch(Math.min(one, other), Math.max(one, other)));
    }
}
