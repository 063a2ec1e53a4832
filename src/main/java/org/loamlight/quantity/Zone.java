package org.loamlight.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The parts of an enclosure that keepers and limits speak of. */
public enum Zone {
    /** Any part of the enclosure: as the place of a limit it covers every other place. */
    ENCLOSURE, LEFT_THIRD, MIDDLE_THIRD, RIGHT_THIRD, WARM_END, COOL_END, BASKING_PLACE,
    /** A named thing (lamp, opening, furnishing); which one stands in {@link Place#item()}. */
    ITEM;

    private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /** Whether it is one of the two outer thirds. */
    public boolean isEnd() {
        return this == LEFT_THIRD || this == RIGHT_THIRD || this == WARM_END || this == COOL_END;
    }

    /** The name in data and results, for example {@code warm-end}. */
    public String id() {
        return id;
    }

    /** Finds a zone by its {@link #id()}; empty when there is none. */
    public static Optional<Zone> named(String id) {
        return Arrays.stream(values()).filter(zone -> zone.id().equals(id)).findFirst();
    }
}
