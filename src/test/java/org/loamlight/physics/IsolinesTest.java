package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loamlight.physics.Isolines.Vertex;

class IsolinesTest {
    private static double fromMiddle(double x, double y) {
        return StrictMath.hypot(x - 2, y - 1);
    }

    @Test
    void circles_come_out_round_and_closed() {
        Isolines field = new Isolines(IsolinesTest::fromMiddle, 4, 2, 80, 40);
        List<List<Vertex>> lines = field.at(0.5);
        assertEquals(1, lines.size());
        List<Vertex> circle = lines.get(0);
        assertEquals(circle.get(0), circle.get(circle.size() - 1));
        circle.forEach(vertex -> assertEquals(0.5, fromMiddle(vertex.x(), vertex.y()), 1e-3));
        double length = 0;
        for (int i = 1; i < circle.size(); i++) {
            length += StrictMath.hypot(circle.get(i).x() - circle.get(i - 1).x(), circle.get(i).y() - circle.get(i - 1).y());
        }
        assertEquals(StrictMath.PI, length, 0.01, "the way around a circle of diameter 1");
    }

    @Test
    void lines_of_a_plane_are_straight_and_exact() {
        List<List<Vertex>> lines = new Isolines((x, y) -> x + 2 * y, 1, 1, 3, 7).at(1.1);
        assertEquals(1, lines.size());
        lines.get(0).forEach(vertex -> assertEquals(1.1, vertex.x() + 2 * vertex.y(), 1e-12));
    }

    @Test
    void a_line_that_leaves_the_rectangle_is_in_two_pieces() {
        assertEquals(2, new Isolines(IsolinesTest::fromMiddle, 4, 2, 80, 40).at(1.5).size());
    }

    @Test
    void two_hills_on_a_diagonal_are_not_joined() {
        List<List<Vertex>> lines = new Isolines((x, y) -> x == y ? 1 : 0, 1, 1, 1, 1).at(0.5);
        assertEquals(2, lines.size());
        lines.forEach(line -> assertTrue(StrictMath.signum(line.get(0).x() + line.get(0).y() - 1) == StrictMath.signum(line.get(1).x() + line.get(1).y() - 1), line.toString()));
        assertEquals(2, new Isolines((x, y) -> x == y ? 0 : 1, 1, 1, 1, 1).at(0.5).size());
    }

    @Test
    void there_is_none_where_the_level_is_passed_nowhere() {
        assertEquals(List.of(), new Isolines(IsolinesTest::fromMiddle, 4, 2, 8, 4).at(9));
    }

    @Test
    void a_field_that_is_no_number_and_a_rectangle_without_width_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Isolines((x, y) -> Double.NaN, 1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Isolines((x, y) -> 0, 0, 1, 1, 1));
    }
}
