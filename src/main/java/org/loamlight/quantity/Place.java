package org.loamlight.quantity;

import java.util.Objects;

/**
 * Where a quantity holds or a limit is asked for: a zone of the enclosure, or a named item.
 *
 * @param zone the part of the enclosure; {@link Zone#ITEM} when a named thing is meant
 * @param item subject key of the thing ("lamp:UV tube"); empty for every other zone
 */
public record Place(Zone zone, String item) {
    /** Anywhere in the enclosure. */
    public static final Place ANYWHERE = new Place(Zone.ENCLOSURE, "");

    public Place {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(item, "item");
        if ((zone == Zone.ITEM) == item.isEmpty()) {
            throw new IllegalArgumentException("A place names an item exactly when its zone is ITEM; got " + zone + ", '" + item + "'");
        }
    }

    public static Place of(Zone zone) {
        return new Place(zone, "");
    }

    /** The place of a named thing. */
    public static Place at(String subjectKey) {
        return new Place(Zone.ITEM, subjectKey);
    }

    /** Whether a limit asked for at {@code limitPlace} is meant for this place: the same place, or a limit for anywhere. */
    public boolean isWithin(Place limitPlace) {
        return limitPlace.zone == Zone.ENCLOSURE || equals(limitPlace);
    }

    /** Stable text: the zone's id, or the item's subject key. */
    public String key() {
        return zone == Zone.ITEM ? item : zone.id();
    }
}
