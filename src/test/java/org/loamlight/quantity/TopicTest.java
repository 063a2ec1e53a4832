package org.loamlight.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TopicTest {
    @ParameterizedTest
    @EnumSource(Topic.class)
    void its_unit_in_the_us_measures_the_same_thing(Topic topic) {
        assertEquals(topic.unit().dimension(), topic.unitInUs().dimension());
        assertEquals(1, topic.unitInUs().convert(topic.unit().convert(1.0, topic.unitInUs()), topic.unit()), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void a_topic_is_found_by_its_id(Topic topic) {
        assertEquals(Optional.of(topic), Topic.named(topic.id()));
        assertTrue(topic.id().matches("[a-z]+(-[a-z]+)*"), topic.id());
    }

    @Test
    void ids_differ_and_an_unknown_one_finds_nothing() {
        assertEquals(Topic.values().length, Arrays.stream(Topic.values()).map(Topic::id).distinct().count());
        assertEquals("inside-length", Topic.INSIDE_LENGTH.id());
        assertEquals(Optional.empty(), Topic.named("INSIDE_LENGTH"));
    }
}
