package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.SetupReader;

/** What is worked out for each UV lamp beside its light: the heat it shares, and how old what was read under it is. */
class LampPlacesTest {
    private static final LocalDate AUDITED = LocalDate.of(2026, 11, 2);

    private static OptionalDouble atTube(Topic topic, String lamp, String heaters) throws ProblemsFound {
        String text = "{'format': 1, 'animals': [{'name': 'Marl', 'species': 'snake'}], 'enclosure': {'inside': {'length': '120 cm'}, 'warm-end': 'left'}, "
                + "'lamps': [{'name': 'tube', 'kind': 'UV tube'" + lamp + "}], 'heaters': [" + heaters + "]}";
        List<Quantity> all = Derivation.quantities(SetupReader.read("test.json", text.replace('\'', '"').getBytes(StandardCharsets.UTF_8), List.of("snake")),
                Axis.LENGTH, AUDITED, Wanted.NOTHING);
        return all.stream().filter(one -> one.topic() == topic && one.place().equals(Place.at("lamp:tube"))).mapToDouble(Quantity::value).findFirst();
    }

    private static OptionalDouble heat(String lamp, String heaters) throws ProblemsFound {
        return atTube(Topic.HEAT_SOURCES, lamp, heaters);
    }

    @Test
    void a_lamp_and_a_heater_over_the_same_end_are_counted_together() throws ProblemsFound {
        assertEquals(OptionalDouble.of(1), heat(", 'place': 'warm end'", "{'name': 'panel', 'place': {'along': '20 cm'}}"));
        assertEquals(OptionalDouble.of(0), heat(", 'place': 'cool end'", "{'name': 'panel', 'place': {'along': '20 cm'}}"));
    }

    @Test
    void a_tube_along_the_length_shares_the_heat_of_every_third_it_reaches() throws ProblemsFound {
        String panel = "{'name': 'panel', 'place': {'along': '20 cm'}}";
        assertEquals(OptionalDouble.of(0), heat(", 'place': {'along': '60 cm'}", panel));
        assertEquals(OptionalDouble.of(1), heat(", 'place': {'along': '60 cm'}, 'lit-length': '55 cm', 'runs': 'along'", panel));
        assertEquals(OptionalDouble.of(0), heat(", 'place': {'along': '60 cm'}, 'lit-length': '55 cm', 'runs': 'across'", panel));
    }

    @Test
    void without_a_place_or_without_heat_nothing_is_counted() throws ProblemsFound {
        assertEquals(OptionalDouble.empty(), heat("", "{'name': 'panel', 'place': 'warm end'}"));
        assertEquals(OptionalDouble.empty(), heat(", 'place': 'warm end'", ""));
    }

    @Test
    void a_heater_without_place_leaves_open_whether_there_is_heat_below_the_lamp() throws ProblemsFound {
        assertEquals(OptionalDouble.empty(), heat(", 'place': 'warm end'", "{'name': 'panel'}"));
        assertEquals(OptionalDouble.of(1), heat(", 'place': 'warm end'", "{'name': 'panel'}, {'name': 'mat', 'place': 'warm end'}"));
    }

    @Test
    void a_lamp_is_as_well_known_as_the_last_day_a_meter_was_held_under_it() throws ProblemsFound {
        assertEquals(OptionalDouble.of(13), atTube(Topic.READING_AGE, ", 'readings': [{'index': '1', 'distance': '30 cm', 'instrument': 'UV meter', "
                + "'on': '2026-10-20'}, {'index': '2', 'distance': '30 cm', 'instrument': 'UV meter', 'on': '2026-03-01'}]", ""));
        assertEquals(OptionalDouble.empty(), atTube(Topic.READING_AGE,
                ", 'readings': [{'index': '1', 'distance': '30 cm', 'instrument': 'lamp chart', 'on': '2026-10-20'}]", ""));
    }
}
