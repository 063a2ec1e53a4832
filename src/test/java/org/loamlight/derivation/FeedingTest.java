package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.ProblemsFound;

class FeedingTest {
    private static final Place MARL = Place.at("animal:Marl");
    private static final double ROOT_THREE = StrictMath.sqrt(3);

    private static String animal(String mass, String diet) {
        return "'animals': [{'name': 'Marl', 'species': 'snake', 'mass': '" + mass + "', 'diet': {" + diet + "}}]";
    }

    private static String mice(String meal, String every) {
        return "'prey': 'adult mouse', 'meal': '" + meal + "', 'every': '" + every + "'";
    }

    private static String air(String time, String value) {
        return "{'name': 'air by " + time + "', 'of': 'air temperature', 'time': '" + time + "', 'value': '" + value + "'}";
    }

    private static String readings(String... readings) {
        return ", 'readings': [" + String.join(", ", readings) + "]";
    }

    private static Optional<Quantity> energy(String members) throws ProblemsFound {
        return Derived.of(members).find(Topic.ENERGY_INTAKE, MARL);
    }

    @Test
    void a_meal_is_a_share_of_the_body_with_the_uncertainty_of_both() throws ProblemsFound {
        Quantity share = Derived.of(animal("270 g ± 5 g", "'meal': '27 g ± 1 g'")).get(Topic.MEAL_SHARE, MARL);
        assertEquals(10, share.value(), 1e-12);
        assertEquals(10 * StrictMath.hypot(1 / ROOT_THREE / 27, 5 / ROOT_THREE / 270), share.uncertainty(), 1e-12);
        assertEquals(Method.COMPUTED, share.origin().method());
        assertEquals("animal:Marl", share.source());
    }

    @Test
    void the_interval_is_taken_as_stated() throws ProblemsFound {
        Quantity interval = Derived.of(animal("270 g", "'every': 'weekly'")).get(Topic.FEEDING_INTERVAL, MARL);
        assertEquals(7, interval.value(), 1e-12);
        assertEquals(Method.STATED, interval.origin().method());
        assertEquals(List.of(), interval.trail());
    }

    /**
     * From the worked table of feeding intervals (need of 1.5 to 2 times the standard rate by Andrews and Pough 1985 at 28
     * degrees, prey of Table 71-5, 26 to 33 % of the gross energy for digestion): given as often as it lasts at best or at
     * worst, a meal is a little more or less than maintenance, and given in the middle it is maintenance.
     */
    @ParameterizedTest
    @CsvSource({"222 g, 10, 15.6", "300 g, 8, 12.3", "600 g, 4.6, 7.1"})
    void a_mouse_given_as_often_as_it_lasts_is_maintenance(String mass, double fewestDays, double mostDays) throws ProblemsFound {
        String warm = readings(air("day", "28 °C"), air("night", "28 °C"));
        double often = energy(animal(mass, mice("27 g", fewestDays + " d")) + warm).orElseThrow().value();
        double seldom = energy(animal(mass, mice("27 g", mostDays + " d")) + warm).orElseThrow().value();
        // Middle of low/often and high/often, where low is the interval at worst and high that at best.
        assertEquals(100 * (1 + mostDays / fewestDays) / 2, often, 0.04 * often);
        assertEquals(100 * (1 + fewestDays / mostDays) / 2, seldom, 0.04 * seldom);
    }

    /** Q10 of 2.40 (10^0.38): ten degrees less by day and by night make 2.40 times as much of the same meal. */
    @Test
    void the_colder_the_less_is_needed() throws ProblemsFound {
        String meal = animal("300 g", mice("27 g", "10 d"));
        double warm = energy(meal + readings(air("day", "30 °C"), air("night", "26 °C"))).orElseThrow().value();
        double cold = energy(meal + readings(air("day", "20 °C"), air("night", "16 °C"))).orElseThrow().value();
        assertEquals(2.40, cold / warm, 0.005);
    }

    @Test
    void day_and_night_count_by_the_hours_of_light() throws ProblemsFound {
        String meal = animal("300 g", mice("27 g", "10 d"));
        String read = readings(air("day", "30 °C"), air("night", "20 °C"));
        double need = 1 / energy(meal + read).orElseThrow().value();
        double day = 1 / energy(meal + readings(air("day", "30 °C"), air("night", "30 °C"))).orElseThrow().value();
        double night = 1 / energy(meal + readings(air("day", "20 °C"), air("night", "20 °C"))).orElseThrow().value();
        assertEquals((day + night) / 2, need, 1e-12);
        double longer = 1 / energy(meal + read + ", 'care': {'light-hours': '18 h'}").orElseThrow().value();
        assertEquals(0.75 * day + 0.25 * night, longer, 1e-12);
    }

    /** Ends of the ranges as limits: 0.577 / 2 to 0.667 / 1.5 of the metabolisable energy over the standard rate. */
    @Test
    void where_the_answers_are_exact_the_ranges_of_digestion_and_need_are_left_as_uncertainty() throws ProblemsFound {
        String exact = animal("300 g ± 0.001 g", mice("27 g ± 0.001 g", "10 d ± 0.001 d"));
        Quantity intake = energy(exact + readings(air("day", "28 °C ± 0.001 °C"), air("night", "28 °C ± 0.001 °C"))).orElseThrow();
        double low = (1 - 0.33 / 0.78) / 2;
        double high = (1 - 0.26 / 0.78) / 1.5;
        assertEquals((high - low) / (high + low) / ROOT_THREE, intake.uncertainty() / intake.value(), 1e-4);
    }

    /** JCGM 100:2008, 5.1.2, by moving each answer to its own uncertainty and reading off what changes. */
    @Test
    void the_uncertainty_of_each_answer_counts() throws ProblemsFound {
        String warm = readings(air("day", "28 °C ± 0.001 °C"), air("night", "28 °C ± 0.001 °C"));
        double exact = energy(animal("300 g ± 0.001 g", mice("27 g ± 0.001 g", "10 d ± 0.001 d")) + warm).orElseThrow().uncertainty();
        Quantity meal = energy(animal("300 g ± 0.001 g", mice("27 g ± 2.7 g", "10 d ± 0.001 d")) + warm).orElseThrow();
        assertEquals(meal.value() * 0.1 / ROOT_THREE, root(meal, exact), 0.01 * meal.uncertainty());
        Quantity mass = energy(animal("300 g ± 30 g", mice("27 g ± 0.001 g", "10 d ± 0.001 d")) + warm).orElseThrow();
        assertEquals(mass.value() * 0.08 / ROOT_THREE, root(mass, exact), 0.01 * mass.uncertainty());
        Quantity day = energy(animal("300 g ± 0.001 g", mice("27 g ± 0.001 g", "10 d ± 0.001 d"))
                + readings(air("day", "28 °C ± 2 °C"), air("night", "28 °C ± 0.001 °C"))).orElseThrow();
        double shift = day.value() * (1 - 2 / (1 + StrictMath.pow(10, 0.038 * 2 / ROOT_THREE)));
        assertEquals(shift, root(day, exact), 0.01 * day.uncertainty());
    }

    private static double root(Quantity intake, double exact) {
        return StrictMath.sqrt(intake.uncertainty() * intake.uncertainty() - exact * exact);
    }

    @Test
    void air_read_at_both_ends_is_taken_in_the_middle_and_a_reading_in_the_beam_not_at_all() throws ProblemsFound {
        String meal = animal("300 g", mice("27 g", "10 d"));
        String cool = "{'name': 'cool', 'of': 'air temperature', 'place': 'cool end', 'time': 'day', 'value': '24 °C'}";
        String warm = "{'name': 'warm', 'of': 'air temperature', 'place': 'warm end', 'time': 'day', 'value': '28 °C'}";
        String beam = "{'name': 'beam', 'of': 'air temperature', 'place': 'warm end', 'time': 'day', 'value': '45 °C', 'in-beam': 'yes'}";
        Quantity both = energy(meal + readings(cool, warm, beam, air("night", "20 °C"))).orElseThrow();
        assertEquals(energy(meal + readings(air("day", "26 °C"), air("night", "20 °C"))).orElseThrow().value(), both.value(), 1e-9);
        assertEquals(new Amount(26, Unit.CELSIUS), both.trail().get(1).arguments().get(0));
        assertEquals(List.of("energy-fed", "warm-by-day-and-night", "energy-needed", "energy-without-growth"), Derived.steps(both));
    }

    @ParameterizedTest
    @ValueSource(strings = {"'prey': 'other', 'meal': '27 g', 'every': '10 d'", "'meal': '27 g', 'every': '10 d'",
        "'prey': 'adult mouse', 'every': '10 d'", "'prey': 'adult mouse', 'meal': '27 g'"})
    void without_prey_of_known_energy_a_meal_or_an_interval_there_is_no_energy(String diet) throws ProblemsFound {
        assertTrue(energy(animal("300 g", diet) + readings(air("day", "28 °C"), air("night", "24 °C"))).isEmpty());
    }

    @Test
    void without_air_by_day_and_by_night_or_at_an_impossible_one_there_is_no_energy() throws ProblemsFound {
        String meal = animal("300 g", mice("27 g", "10 d"));
        assertTrue(energy(meal).isEmpty());
        assertTrue(energy(meal + readings(air("day", "28 °C"))).isEmpty());
        assertTrue(energy(meal + readings(air("night", "28 °C"))).isEmpty());
        assertTrue(energy(meal + readings(air("day", "61 °C"), air("night", "24 °C"))).isEmpty());
        assertTrue(energy(meal + readings(air("day", "28 °C"), air("night", "24 °C"))).isPresent());
    }

    @Test
    void what_is_not_told_makes_no_share_and_no_interval() throws ProblemsFound {
        assertEquals(List.of(), Derived.of("'animals': [{'name': 'Marl', 'species': 'snake'}]").quantities());
        assertTrue(Derived.of(animal("300 g", "'prey': 'adult mouse'")).find(Topic.MEAL_SHARE, MARL).isEmpty());
    }
}
