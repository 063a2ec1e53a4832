package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class LimitsTest {
    private static final Limits LIMITS = KnowledgeReader.builtIn().profile("lampropeltis-californiae").limits();

    @Test
    void the_limits_of_a_criterion_are_those_a_search_through_all_finds_in_the_same_order() {
        List<String> criteria = LIMITS.stream().map(Limit::criterion).distinct().toList();
        assertTrue(criteria.size() > 1);
        criteria.forEach(id -> assertEquals(LIMITS.stream().filter(limit -> limit.criterion().equals(id)).toList(),
                LIMITS.of(id).stream().map(PreparedLimit::limit).toList()));
        assertEquals(List.of(), LIMITS.of("space.nothing"));
    }

    @Test
    void what_is_a_factor_of_a_measure_is_no_constant() {
        List<PreparedLimit> lengths = LIMITS.of("space.length");
        assertFalse(lengths.isEmpty());
        lengths.forEach(limit -> assertEquals(limit.measures().isEmpty() && limit.limit().increment().equals(Increment.NONE), limit.isConstant()));
        assertTrue(lengths.stream().anyMatch(limit -> limit.measures().contains(BodyMeasure.TOTAL_LENGTH)));
    }

    @Test
    void nothing_can_be_added() {
        assertThrows(UnsupportedOperationException.class, () -> LIMITS.add(LIMITS.get(0)));
    }
}
