package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MemoryTest {

    private final List<Integer> computed = new ArrayList<>();

    private Memory<Integer, Integer> squares(int most) {
        return new Memory<>(most, number -> {
            computed.add(number);
            return number * number;
        });
    }

    @Test
    void what_was_asked_before_is_not_computed_again() {
        Memory<Integer, Integer> squares = squares(3);
        assertEquals(List.of(49, 64, 49), List.of(squares.of(7), squares.of(8), squares.of(7)));
        assertEquals(List.of(7, 8), computed);
    }

    @Test
    void it_never_holds_more_than_it_may_and_still_answers() {
        Memory<Integer, Integer> squares = squares(3);
        for (int number = 0; number < 100; number++) {
            assertEquals(number * number, squares.of(number));
            assertTrue(squares.size() >= 1 && squares.size() <= 3, () -> "holds " + squares.size());
        }
        assertEquals(0, squares.of(0));
    }

    @Test
    void many_threads_get_the_same_results() {
        Memory<Integer, Integer> squares = new Memory<>(5, number -> number * number);
        List<Integer> wanted = IntStream.range(0, 20_000).map(i -> i % 17).map(number -> number * number).boxed().toList();
        assertEquals(wanted, IntStream.range(0, 20_000).parallel().mapToObj(i -> squares.of(i % 17)).toList());
        assertTrue(squares.size() <= 5, () -> "holds " + squares.size());
    }

    @Test
    void what_fails_is_not_remembered_and_fails_again() {
        Memory<Integer, Integer> quotients = new Memory<>(3, number -> 12 / number);
        assertThrows(ArithmeticException.class, () -> quotients.of(0));
        assertThrows(ArithmeticException.class, () -> quotients.of(0));
        assertEquals(3, quotients.of(4));
        assertEquals(1, quotients.size());
    }
}
