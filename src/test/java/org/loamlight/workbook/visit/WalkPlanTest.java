package org.loamlight.workbook.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.DayTime;
import org.loamlight.setup.Question;
import org.loamlight.setup.QuestionCatalogue;
import org.loamlight.setup.ReadingOf;

/** The order of a visit forgets nothing and names nothing that is not asked. */
class WalkPlanTest {
    private static final WalkPlan PLAN = WalkPlan.builtIn();
    private static final Set<String> PATHS = QuestionCatalogue.builtIn().stream().map(Question::path).collect(Collectors.toSet());

    @Test
    void every_question_has_a_stop_or_is_named_as_never_asked() {
        Set<String> nowhere = QuestionCatalogue.builtIn().stream().filter(question -> question.kind() != Question.Kind.PARTS).map(Question::path)
                .filter(path -> PLAN.stop(path).isEmpty() && !PLAN.isNeverAsked(path)).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), nowhere);
    }

    @Test
    void what_is_always_asked_is_a_question_and_is_asked_there() {
        for (Stop stop : PLAN.stops()) {
            stop.always().forEach(path -> assertTrue(PATHS.contains(path), path));
            stop.always().forEach(path -> assertEquals(stop.title(), PLAN.stop(path).orElseThrow().title(), path));
        }
    }

    @Test
    void readings_have_a_stop_wherever_they_were_taken_by_day_and_by_night() {
        for (Zone zone : Zone.values()) {
            if (zone != Zone.ITEM) {
                assertTrue(PLAN.stop(zone, false).zones().contains(zone), zone.id());
                assertTrue(PLAN.stop(zone, true).night(), zone.id());
            }
        }
    }

    @Test
    void the_answer_that_is_a_value_is_a_question() {
        List<String> answers = Stream.of(Topic.values()).flatMap(topic -> PLAN.answerOf(topic).stream()).toList();
        answers.forEach(path -> assertTrue(PATHS.contains(path), path));
        assertTrue(answers.size() >= 25, answers.size() + " answers");
    }

    @Test
    void a_key_of_a_new_reading_is_read_as_it_was_written() {
        for (NewReading reading : List.of(new NewReading(ReadingOf.HUMIDITY, DayTime.NIGHT, Zone.MIDDLE_THIRD),
                new NewReading(ReadingOf.SURFACE_TEMPERATURE, DayTime.DAY, Zone.BASKING_PLACE))) {
            assertEquals(reading, NewReading.of(reading.key()).orElseThrow());
        }
        assertTrue(NewReading.of("new reading: warmth; day; cool-end").isEmpty());
        assertTrue(NewReading.of("room.sun").isEmpty());
    }
}
