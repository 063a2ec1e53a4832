package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DistancesTest {

    /** Pythagorean quadruples: 3^2 + 4^2 + 12^2 = 13^2, 2^2 + 3^2 + 6^2 = 7^2. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0, 3, 4, 12, 13", "1, -1, 2, -1, 2, 8, 7", "0.6, 0.3, 0.1, 0.6, 0.3, 0.1, 0"})
    void distance_is_that_of_pythagoras(
            double x1, double y1, double z1, double x2, double y2, double z2, double metres) {
        assertEquals(metres, Distances.between(x1, y1, z1, x2, y2, z2), 1e-14);
        assertEquals(metres, Distances.between(x2, y2, z2, x1, y1, z1), 1e-14);
    }

    @Test
    void a_coordinate_that_is_no_number_is_refused_by_name() {
        String message = assertThrows(IllegalArgumentException.class,
                () -> Distances.between(0, Double.NaN, 0, 0, 0, 0)).getMessage();
        assertTrue(message.startsWith("y1 is NaN"), message);
        assertThrows(IllegalArgumentException.class,
                () -> Distances.between(0, 0, 0, 0, 0, Double.NEGATIVE_INFINITY));
    }
}
