package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;

class ReadingsTest {
    private static List<String> doubts(String room, String heaters, String time) throws ProblemsFound {
        String json = ("{'format': 1, 'animals': [{'name': 'Marl', 'species': 'snake'}], 'room': {'when-read': '" + room + "'}, 'heaters': " + heaters
                + ", 'readings': [{'name': 'r', 'of': 'air temperature', 'place': 'warm end', 'time': '" + time + "', 'value': '24 °C ± 1 °C'}]}")
                .replace('\'', '"');
        Setup setup = SetupReader.read("test.json", json.getBytes(StandardCharsets.UTF_8), List.of("snake"));
        return new Readings(setup, Layout.of(setup, Axis.LENGTH)).quantities().stream()
                .filter(one -> one.topic() == Topic.AIR_TEMPERATURE_BY_DAY || one.topic() == Topic.AIR_TEMPERATURE_BY_NIGHT)
                .flatMap(one -> one.trail().stream()).map(Step::key).toList();
    }

    /** ±1 and ±1 as limits are 0.58 each, 0.82 together, so a difference is sure from 1.63 on. */
    @ParameterizedTest
    @CsvSource({"26 °C ± 1 °C, day, room-was-hotter", "25.5 °C ± 1 °C, day, ''", "18 °C ± 1 °C, day, ''", "26 °C ± 1 °C, night, ''", "26 °C ± 3 °C, day, ''"})
    void air_surely_colder_than_the_room_by_day_is_doubted(String room, String time, String doubt) throws ProblemsFound {
        List<String> expected = doubt.isEmpty() ? List.of() : List.of(doubt);
        assertEquals(expected, doubts(room, "[{'name': 'h', 'kind': 'basking lamp'}]", time));
        assertEquals(List.of(), doubts(room, "[]", time));
    }
}
