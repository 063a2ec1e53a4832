package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;

class DayAndNightTest {
    private static final String ANIMAL = "'animals': [{'name': 'Marl', 'species': 'snake'}], ";

    private static Derived derived(String members) throws ProblemsFound {
        return Derived.of(ANIMAL + members);
    }

    @Test
    void the_day_as_told_goes_before_the_hours_of_the_lamps() throws ProblemsFound {
        Quantity light = derived("'care': {'light-hours': '12 h'}, 'lamps': [{'name': 'led', 'hours': '9 h'}]").get(Topic.LIGHT_HOURS);
        assertEquals(12, light.value());
        assertEquals(0.25 / StrictMath.sqrt(3), light.uncertainty(), 1e-12);
        assertEquals("care", light.source());
        assertEquals(List.of(), light.trail());
    }

    @Test
    void else_the_longest_of_lamps_and_of_heaters_that_shine_counts() throws ProblemsFound {
        String lamps = "'lamps': [{'name': 'uv', 'hours': '8 h'}, {'name': 'led', 'hours': '11 h'}]";
        assertEquals("lamp:led", derived(lamps).get(Topic.LIGHT_HOURS).source());
        assertEquals(List.of("light-of-longest"), Derived.steps(derived(lamps).get(Topic.LIGHT_HOURS)));
        String heaters = ", 'heaters': [{'name': 'halogen', 'kind': 'halogen lamp', 'hours': '13 h'}, {'name': 'mat', 'kind': 'heat mat', 'hours': '24 h'}]";
        assertEquals(13, derived(lamps + heaters).get(Topic.LIGHT_HOURS).value());
    }

    @Test
    void a_lamp_of_unknown_hours_might_burn_longer_so_nothing_is_made() throws ProblemsFound {
        assertTrue(derived("'lamps': [{'name': 'uv', 'hours': '8 h'}, {'name': 'led'}]").find(Topic.LIGHT_HOURS).isEmpty());
        assertTrue(derived("'lamps': [{'name': 'uv', 'hours': '8 h'}], 'heaters': [{'name': 'h', 'kind': 'basking lamp'}]")
                .find(Topic.LIGHT_HOURS).isEmpty());
        assertTrue(derived("'heaters': [{'name': 'h', 'kind': 'basking lamp', 'hours': '8 h'}]").find(Topic.LIGHT_HOURS).isEmpty());
        assertTrue(derived("'lamps': []").find(Topic.LIGHT_HOURS).isEmpty());
    }

    /**
     * US Naval Observatory tables: 60 N on 2019-06-21 18 h 52 min and on 2019-12-21 5 h 52 min; San Francisco, 37 46 N, on
     * 2012-09-22 12 h 08 min. Two minutes, as each event is printed to the minute, and the longitude is not asked for.
     */
    @ParameterizedTest
    @CsvSource({"60, 2019-06-21, 1132", "60, 2019-12-21, 352", "-60, 2019-06-21, 352", "37.7667, 2012-09-22, 728", "29, 2019-03-20, 727"})
    void the_sun_is_up_as_long_as_the_tables_say(double latitude, String date, double minutes) throws ProblemsFound {
        Quantity day = Derived.of(ANIMAL + "'room': {'latitude': '" + latitude + " °'}", LocalDate.parse(date)).get(Topic.NATURAL_DAY_LENGTH);
        assertEquals(minutes, 60 * day.value(), 2);
    }

    @Test
    void the_uncertainty_of_the_latitude_is_that_of_the_day_half_a_degree_on() throws ProblemsFound {
        Quantity day = derived("'room': {'latitude': '55 ° ± 1 °'}").get(Topic.NATURAL_DAY_LENGTH);
        double step = 1 / StrictMath.sqrt(3);
        Quantity north = derived("'room': {'latitude': '" + (55 + step) + " °'}").get(Topic.NATURAL_DAY_LENGTH);
        assertEquals(day.value() - north.value(), day.uncertainty(), 0.002);
        assertTrue(day.uncertainty() > 0.03);
    }

    @Test
    void the_shortest_and_the_longest_day_are_told_beside_it_on_either_side_of_the_equator() throws ProblemsFound {
        for (String latitude : List.of("60 °", "-60 °")) {
            List<Object> told = derived("'room': {'latitude': '" + latitude + "'}").get(Topic.NATURAL_DAY_LENGTH).trail().get(0).arguments();
            assertEquals(352, 60 * ((Amount) told.get(2)).value(), 2);
            assertEquals(1132, 60 * ((Amount) told.get(3)).value(), 2);
        }
    }

    @Test
    void the_sun_outside_is_told_beside_the_light_as_set() throws ProblemsFound {
        Quantity light = derived("'care': {'light-hours': '12 h'}, 'room': {'latitude': '53.4 °'}").get(Topic.LIGHT_HOURS);
        assertEquals(List.of("sun-is-up"), Derived.steps(light));
    }

    @Test
    void at_the_poles_it_is_all_day_or_night_and_in_a_year_out_of_reach_nothing() throws ProblemsFound {
        String pole = ANIMAL + "'room': {'latitude': '90 °'}";
        assertEquals(24, Derived.of(pole, LocalDate.of(2026, 6, 21)).get(Topic.NATURAL_DAY_LENGTH).value());
        assertEquals(0, Derived.of(pole, LocalDate.of(2026, 12, 21)).get(Topic.NATURAL_DAY_LENGTH).value());
        assertTrue(Derived.of(pole, LocalDate.of(1500, 6, 21)).find(Topic.NATURAL_DAY_LENGTH).isEmpty());
        assertTrue(derived("'room': {'coldest': '15 °C'}").find(Topic.NATURAL_DAY_LENGTH).isEmpty());
    }
}
