package org.loamlight.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlaceTest {
    private static final Place LAMP = Place.at("lamp:UV tube");

    private static List<Place> places() {
        return Arrays.stream(Zone.values()).map(zone -> zone == Zone.ITEM ? LAMP : Place.of(zone)).toList();
    }

    @Test
    void every_place_is_within_itself_and_within_anywhere() {
        for (Place place : places()) {
            assertTrue(place.isWithin(place), place.key());
            assertTrue(place.isWithin(Place.ANYWHERE), place.key());
        }
    }

    @Test
    void no_place_is_within_another_but_anywhere() {
        for (Place place : places()) {
            Set<Place> around = places().stream().filter(place::isWithin).collect(Collectors.toSet());
            assertEquals(Stream.of(place, Place.ANYWHERE).collect(Collectors.toSet()), around);
        }
        assertFalse(LAMP.isWithin(Place.at("lamp:UV bulb")));
    }

    @Test
    void a_place_names_an_item_exactly_when_its_zone_is_item() {
        assertThrows(IllegalArgumentException.class, () -> new Place(Zone.WARM_END, "lamp:UV tube"));
        String message = assertThrows(IllegalArgumentException.class, () -> Place.at("")).getMessage();
        assertTrue(message.contains("ITEM"), message);
        assertThrows(NullPointerException.class, () -> Place.of(null));
        assertThrows(NullPointerException.class, () -> Place.at(null));
    }

    @Test
    void its_key_is_the_zone_or_the_item() {
        assertEquals("warm-end", Place.of(Zone.WARM_END).key());
        assertEquals("lamp:UV tube", LAMP.key());
        assertEquals(places().size(), places().stream().map(Place::key).distinct().count());
    }

    @ParameterizedTest
    @EnumSource(Zone.class)
    void a_zone_is_found_by_its_id(Zone zone) {
        assertEquals(Optional.of(zone), Zone.named(zone.id()));
        assertTrue(zone.id().matches("[a-z]+(-[a-z]+)*"), zone.id());
    }

    @Test
    void the_outer_thirds_are_ends_by_side_and_by_warmth() {
        assertEquals(EnumSet.of(Zone.LEFT_THIRD, Zone.RIGHT_THIRD, Zone.WARM_END, Zone.COOL_END),
                Arrays.stream(Zone.values()).filter(Zone::isEnd).collect(Collectors.toCollection(() -> EnumSet.noneOf(Zone.class))));
        assertEquals(Optional.empty(), Zone.named("attic"));
    }
}
