package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;

class RestingTest {
    /** Worked by hand: 0.5 L over 1.2 m is a width of 2.303 cm; 120 x 2.303 / 0.75 = 368.5 cm2. */
    private static final String SNAKE = ", 'length': '120 cm', 'mass': '500 g'";
    private static final Place LOG = Place.at("furnishing:log");
    private static final double COIL = 368.5;

    private static Derived derived(String animal, String members) throws ProblemsFound {
        return Derived.of("'animals': [{'name': 'Marl', 'species': 'snake'" + animal + "}], " + members);
    }

    private static boolean has(Derived derived, Topic topic) {
        return derived.quantities().stream().anyMatch(one -> one.topic() == topic);
    }

    private static Derived hide(String animal, String members) throws ProblemsFound {
        return derived(animal, "'furnishings': [{'name': 'log', 'kind': 'hide'" + members + "}]");
    }

    private static final String FLOOR = ", 'inside-length': '30 cm', 'inside-width': '20 cm'";

    @Test
    void a_hide_is_measured_by_the_coil_it_must_hold() throws ProblemsFound {
        Quantity room = hide(SNAKE, FLOOR).get(Topic.HIDE_ROOM, LOG);
        assertEquals(100 * 600 / COIL, room.value(), 0.1);
        assertEquals(Method.COMPUTED, room.origin().method());
        assertEquals(List.of("inner-floor", "coiled-animal"), Derived.steps(room));
        // ± 20 % of the model alone.
        assertTrue(room.uncertainty() > 0.2 / StrictMath.sqrt(3) * room.value() && room.uncertainty() < 0.15 * room.value());
    }

    @Test
    void of_several_animals_the_one_with_the_largest_coil_counts() throws ProblemsFound {
        String two = SNAKE + "}, {'name': 'Sedge', 'species': 'snake', 'length': '100 cm', 'mass': '200 g'";
        assertEquals(hide(SNAKE, FLOOR).get(Topic.HIDE_ROOM, LOG).value(), hide(two, FLOOR).get(Topic.HIDE_ROOM, LOG).value());
        assertFalse(has(hide(SNAKE + "}, {'name': 'Sedge', 'species': 'snake', 'length': '100 cm'", FLOOR), Topic.HIDE_ROOM));
    }

    @Test
    void what_is_not_told_of_animal_or_hide_gives_no_room() throws ProblemsFound {
        assertFalse(has(hide(", 'length': '120 cm'", FLOOR), Topic.HIDE_ROOM));
        assertFalse(has(hide(SNAKE, ", 'inside-length': '30 cm'"), Topic.HIDE_ROOM));
        assertFalse(has(hide(SNAKE, FLOOR + ", 'hide': 'no'"), Topic.HIDE_ROOM));
    }

    @Test
    void the_entrance_is_taken_over_as_measured() throws ProblemsFound {
        Quantity entrance = hide("", ", 'entrance': '45 mm ± 2 mm'").get(Topic.HIDE_ENTRANCE, LOG);
        assertEquals(45, entrance.value());
        assertEquals(2 / StrictMath.sqrt(3), entrance.uncertainty(), 1e-12);
        assertEquals(Method.MEASURED, entrance.origin().method());
    }

    private static Derived heated(String heaters) throws ProblemsFound {
        return derived(SNAKE, "'heaters': [" + heaters + "]");
    }

    @Test
    void a_lamp_warms_a_round_patch_and_a_mat_a_square_one() throws ProblemsFound {
        String patch = "'warms': '25 cm', 'warms-across': '20 cm'}";
        Quantity lamp = heated("{'name': 'lamp', 'kind': 'basking lamp', " + patch).get(Topic.BASKING_PATCH);
        assertEquals(100 * StrictMath.PI / 4 * 500 / COIL, lamp.value(), 0.1);
        assertEquals(List.of("warm-patch", "coiled-animal"), Derived.steps(lamp));
        assertEquals(100 * 500 / COIL, heated("{'name': 'mat', 'kind': 'heat mat', " + patch).get(Topic.BASKING_PATCH).value(), 0.1);
    }

    @Test
    void of_two_patches_the_larger_counts() throws ProblemsFound {
        Quantity patch = heated("{'name': 'small', 'kind': 'heat mat', 'warms': '10 cm', 'warms-across': '10 cm'},"
                + "{'name': 'large', 'kind': 'heat mat', 'warms': '30 cm', 'warms-across': '20 cm'},"
                + "{'name': 'untold', 'kind': 'ceramic heater', 'warms': '30 cm'}").get(Topic.BASKING_PATCH);
        assertEquals("heater:large", patch.source());
    }

    @Test
    void where_there_is_no_heater_there_is_no_patch_and_where_nobody_told_nothing_is_known() throws ProblemsFound {
        assertEquals(0, heated("").get(Topic.BASKING_PATCH).value());
        assertFalse(has(derived(SNAKE, "'lamps': []"), Topic.BASKING_PATCH));
        assertFalse(has(heated("{'name': 'lamp', 'kind': 'basking lamp', 'warms': '25 cm'}"), Topic.BASKING_PATCH));
    }
}
