package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The model has no outside check: these hold it to its own geometry. */
class CoiledBodyTest {

    /** Worked by hand: 0.5 kg of water are 0.5 L; over 1.2 m that is a section of 4.17 cm2 and a width of 2.30 cm. */
    @Test
    void a_snake_of_1_2_metres_and_500_grams_coils_up_on_a_saucer() {
        assertEquals(0.0230, CoiledBody.widthMetres(1.2, 0.5), 5e-5);
        assertEquals(1.2 * 0.0230 / 0.75, CoiledBody.coilSquareMetres(1.2, 0.5), 1e-4);
        assertEquals(0.217, CoiledBody.coilDiameterMetres(1.2, 0.5), 5e-4);
    }

    @Test
    void the_cylinder_weighs_what_the_animal_weighs_and_the_circle_holds_the_coil() {
        Random random = new Random(425);
        for (int round = 0; round < 500; round++) {
            double length = 0.1 + 4 * random.nextDouble();
            double mass = 0.005 + 20 * random.nextDouble();
            double radius = CoiledBody.widthMetres(length, mass) / 2;
            assertEquals(mass, CoiledBody.DENSITY * StrictMath.PI * radius * radius * length, 1e-12 * mass);
            double reach = CoiledBody.coilDiameterMetres(length, mass) / 2;
            double covered = CoiledBody.PACKING * StrictMath.PI * reach * reach;
            assertEquals(length * 2 * radius, covered, 1e-12);
            assertTrue(covered < CoiledBody.coilSquareMetres(length, mass));
        }
    }

    /** An animal twice as long, wide and high weighs 8 times as much and covers 4 times the ground. */
    @Test
    void the_coil_grows_with_the_square_of_the_size() {
        assertEquals(4, CoiledBody.coilSquareMetres(2, 4) / CoiledBody.coilSquareMetres(1, 0.5), 1e-12);
        assertEquals(2, CoiledBody.coilDiameterMetres(2, 4) / CoiledBody.coilDiameterMetres(1, 0.5), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.3, Double.NaN, Double.POSITIVE_INFINITY})
    void a_body_that_cannot_be_is_refused_by_name_and_value(double number) {
        refused("totalLengthMetres is " + number, () -> CoiledBody.widthMetres(number, 0.5));
        refused("kilograms is " + number, () -> CoiledBody.coilSquareMetres(1.2, number));
        refused("totalLengthMetres is " + number, () -> CoiledBody.coilDiameterMetres(number, 0.5));
    }

    @Test
    void what_leaves_the_range_of_numbers_is_refused() {
        refused("area of the body (m2) is 0.0", () -> CoiledBody.widthMetres(1e300, 1e-300));
        refused("area of the body (m2) is Infinity", () -> CoiledBody.widthMetres(1e-300, 1e300));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
