package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;

class DisagreementsTest {
    private static final String ANIMAL = "'animals': [{'name': 'Marl', 'species': 'snake'}], ";

    private static List<Quantity> found(String members) throws ProblemsFound {
        return Derived.of(ANIMAL + members).quantities().stream().filter(one -> one.topic() == Topic.DISAGREEMENT).toList();
    }

    private static String pair(String one, String other) {
        return "'readings': [{'name': 'a', " + one + "}, {'name': 'b', " + other + "}]";
    }

    /**
     * E_n = difference / sqrt(U1² + U2²) with U = 2 u (ISO/IEC 17043, read in a secondary source), and u = a / sqrt(3) for limits ±a
     * (JCGM 100:2008, 4.3.7). Limits of ±3 and ±4 make U = 6 / sqrt(3) and 8 / sqrt(3), together 10 / sqrt(3) = 5.7735.
     */
    @ParameterizedTest
    @CsvSource({"20, 20, 0", "20, 25.773503, 100", "25.773503, 20, 100", "20, 23, 51.961524", "20, 30, 173.205081"})
    void the_difference_is_counted_in_what_both_uncertainties_allow(String one, String other, double percent) throws ProblemsFound {
        List<Quantity> found = found(pair("'of': 'air temperature', 'place': 'cool end', 'time': 'day', 'value': '" + one + " °C ± 3 °C'",
                "'of': 'air temperature', 'place': 'cool end', 'time': 'day', 'value': '" + other + " °C ± 4 °C'"));
        assertEquals(1, found.size());
        assertEquals(percent, found.get(0).value(), 1e-5);
        assertEquals(50, found.get(0).uncertainty(), 1e-12);
        assertEquals(Place.at("reading:a"), found.get(0).place());
        assertEquals(List.of("two-readings"), Derived.steps(found.get(0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"'place': 'warm end'", "'place': 'cool end, high'", "'time': 'night'", "'on': '2026-10-30'", "'in-beam': 'yes'",
        "'instrument': 'infrared thermometer'", "'place': 'not looked'", "'time': 'not looked'"})
    void readings_that_differ_in_place_or_time_or_do_not_count_are_not_compared(String differs) throws ProblemsFound {
        String other = "'of': 'air temperature', 'value': '30 °C', 'place': 'cool end', 'time': 'day', 'on': '2026-11-01'";
        String key = differs.substring(0, differs.indexOf(':'));
        String one = other.replaceAll("(, )?" + key + ": '[^']*'", "") + ", " + differs;
        assertEquals(1, found(pair(other, other)).size());
        assertEquals(0, found(pair(one, other)).size());
    }

    @Test
    void a_surface_said_in_words_is_not_one_place_but_one_that_was_measured_is() throws ProblemsFound {
        String words = "'of': 'surface temperature', 'place': 'basking place', 'time': 'day', 'value': '31 °C'";
        String measured = "'of': 'surface temperature', 'place': {'along': '30 cm', 'above': '10 cm'}, 'time': 'day', 'value': '31 °C'";
        assertEquals(0, found(pair(words, words)).size());
        assertEquals(1, found(pair(measured, measured)).size());
    }

    @Test
    void air_colder_than_the_room_disagrees_with_it_where_something_heats() throws ProblemsFound {
        String reading = "'readings': [{'name': 'a', 'of': 'air temperature', 'place': 'cool end', 'time': 'day', 'value': '20 °C ± 3 °C'}], ";
        String room = "'room': {'when-read': '25.773503 °C ± 4 °C'}, ";
        Quantity found = found(reading + room + "'heaters': [{'name': 'h'}]").get(0);
        assertEquals(100, found.value(), 1e-5);
        assertEquals("room when read", found.source());
        assertEquals(List.of("colder-than-room"), Derived.steps(found));
        assertEquals(0, found(reading + room + "'heaters': []").size());
        assertEquals(0, found(reading + "'room': {'when-read': '18 °C'}, 'heaters': [{'name': 'h'}]").size());
    }
}
