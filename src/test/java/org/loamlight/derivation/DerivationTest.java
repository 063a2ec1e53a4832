package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.SetupReader;

class DerivationTest {
    private static final String HEAD = "{'format': 1, 'animals': [{'name': 'Marl', 'species': 'snake'}], ";

    private static final LocalDate AUDITED = LocalDate.of(2026, 11, 2);

    private static List<Quantity> quantities(String members, Axis axis) throws ProblemsFound {
        byte[] json = (HEAD + members + "}").replace('\'', '"').getBytes(StandardCharsets.UTF_8);
        return Derivation.quantities(SetupReader.read("test.json", json, List.of("snake")), axis, AUDITED, Wanted.NOTHING);
    }

    private static List<Quantity> quantities(String members) throws ProblemsFound {
        return quantities(members, Axis.LENGTH);
    }

    private static Optional<Quantity> find(List<Quantity> all, Topic topic, Place place) {
        return all.stream().filter(one -> one.topic() == topic && one.place().equals(place)).findFirst();
    }

    private static double value(List<Quantity> all, Topic topic, Place place) {
        return find(all, topic, place).orElseThrow(() -> new AssertionError("no " + topic + " at " + place + " in " + all)).value();
    }

    private static Place zone(Zone zone) {
        return Place.of(zone);
    }

    @Test
    void nothing_told_makes_no_quantity() throws ProblemsFound {
        assertEquals(List.of(), quantities("'title': 'bare'"));
    }

    @Test
    void sizes_in_feet_come_out_in_centimetres_with_their_uncertainty() throws ProblemsFound {
        Quantity length = find(quantities("'enclosure': {'inside': {'length': '4 ft ± 1 in'}}"), Topic.INSIDE_LENGTH, Place.ANYWHERE).orElseThrow();
        assertEquals(121.92, length.value(), 1e-9);
        assertEquals(2.54 / StrictMath.sqrt(3), length.uncertainty(), 1e-9);
    }

    @Test
    void pieces_that_overlap_are_merged_and_the_longest_open_stretch_is_left() throws ProblemsFound {
        List<Quantity> all = quantities("'enclosure': {'inside': {'length': '120 cm'}}, 'furnishings': ["
                + "{'name': 'a', 'kind': 'hide', 'from': '0 cm', 'to': '30 cm'}, {'name': 'b', 'kind': 'cork', 'from': '20 cm', 'to': '50 cm'},"
                + "{'name': 'c', 'kind': 'plant', 'from': '90 cm', 'to': '100 cm'}, {'name': 'd', 'kind': 'stone', 'from': '50 cm', 'to': '90 cm'}]");
        assertEquals(40, value(all, Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE), 1e-9);
        assertEquals(2, value(all, Topic.COVER_PIECES, zone(Zone.LEFT_THIRD)));
        assertEquals(1, value(all, Topic.COVER_PIECES, zone(Zone.MIDDLE_THIRD)));
        assertEquals(1, value(all, Topic.COVER_PIECES, zone(Zone.RIGHT_THIRD)));
    }

    @Test
    void no_cover_at_all_leaves_the_whole_length_open_and_counts_zero_in_each_third() throws ProblemsFound {
        List<Quantity> all = quantities("'enclosure': {'inside': {'length': '120 cm'}}, 'furnishings': []");
        assertEquals(120, value(all, Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE), 1e-9);
        assertTrue(find(all, Topic.COVER_PIECES, zone(Zone.MIDDLE_THIRD)).orElseThrow().isZero());
    }

    @Test
    void a_piece_without_a_place_keeps_empty_thirds_from_counting_zero() throws ProblemsFound {
        List<Quantity> all = quantities("'furnishings': [{'name': 'a', 'kind': 'hide', 'place': 'left'}, {'name': 'b', 'kind': 'hide'}]");
        assertEquals(1, value(all, Topic.HIDES, zone(Zone.LEFT_THIRD)));
        assertTrue(find(all, Topic.HIDES, zone(Zone.MIDDLE_THIRD)).isEmpty());
        assertTrue(find(all, Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE).isEmpty());
    }

    @Test
    void for_animals_in_trees_cover_runs_along_the_height_and_the_top_is_the_warm_end() throws ProblemsFound {
        List<Quantity> all = quantities("'enclosure': {'inside': {'height': '120 cm'}}, 'furnishings': ["
                + "{'name': 'a', 'kind': 'plant', 'bottom': '0 cm', 'top': '50 cm'}, {'name': 'b', 'kind': 'plant', 'bottom': '90 cm', 'top': '120 cm'}]",
                Axis.HEIGHT);
        assertEquals(40, value(all, Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE), 1e-9);
        assertEquals(1, value(all, Topic.COVER_PIECES, zone(Zone.WARM_END)));
        assertEquals(1, value(all, Topic.COVER_PIECES, zone(Zone.COOL_END)));
        assertEquals(1, value(all, Topic.COVER_PIECES, zone(Zone.MIDDLE_THIRD)));
    }

    @Test
    void the_heater_tells_which_end_is_the_warm_one() throws ProblemsFound {
        List<Quantity> all = quantities("'enclosure': {'inside': {'length': '120 cm'}}, 'heaters': [{'name': 'h', 'kind': 'basking lamp', 'place': {'along': '100 cm'}}],"
                + "'readings': [{'name': 'r', 'of': 'air temperature', 'place': {'along': '10 cm'}, 'time': 'day', 'value': '24 °C'}]");
        assertEquals(24, value(all, Topic.AIR_TEMPERATURE_BY_DAY, zone(Zone.COOL_END)));
        assertEquals(1, value(all, Topic.HEAT_SOURCES, zone(Zone.WARM_END)));
    }

    @Test
    void a_temperature_at_an_unknown_time_of_day_makes_no_quantity() throws ProblemsFound {
        assertEquals(List.of(), quantities("'readings': [{'name': 'r', 'of': 'air temperature', 'place': 'cool end', 'value': '24 °C'}]"));
    }

    @Test
    void a_reading_without_instrument_and_without_limits_takes_the_coarsest_of_its_kind() throws ProblemsFound {
        Quantity air = quantities("'readings': [{'name': 'r', 'of': 'air temperature', 'place': 'cool end', 'time': 'day', 'value': '24 °C'}]").get(0);
        assertEquals(3 / StrictMath.sqrt(3), air.uncertainty(), 1e-12);
    }

    private static String lamp(String kind, String more) {
        return "'lamps': [{'name': 'uv', 'kind': '" + kind + "', 'between': [], 'lit-length': '55 cm', 'nearest-rest': '60 cm',"
                + "'readings': [{'index': '4', 'distance': '30 cm', 'through-what-lies-between': 'no'}]" + more + "}]";
    }

    private static final Place UV = Place.at("lamp:uv");

    /** Health Physics Society, answer 11543: at twice the distance a point source gives a quarter. */
    @Test
    void a_bulb_falls_off_by_the_inverse_square() throws ProblemsFound {
        assertEquals(1, value(quantities(lamp("UV bulb", "")), Topic.UV_INDEX, UV), 1e-9);
    }

    /** Keitz' line (IUVA lamp-output protocol): at D/L = 0.5 doubling the distance divides by 2.9767; here L = 60 cm. */
    @Test
    void a_tube_falls_off_by_the_finite_line() throws ProblemsFound {
        String tube = lamp("UV tube", "").replace("'lit-length': '55 cm'", "'lit-length': '60 cm'");
        assertEquals(4 / 2.9767, value(quantities(tube), Topic.UV_INDEX, UV), 1e-4);
    }

    /** A mesh of transmission 0.60 leaves an index of 3.0 of 5.0 (S. Wunderlich, web page on materials). */
    @ParameterizedTest
    @CsvSource({"mesh, 60 %, 3.0", "glass, , 0.0", "UV clear plastic, 90 %, 4.5"})
    void what_lies_between_takes_its_share(String what, String passes, double expected) throws ProblemsFound {
        String screen = passes == null ? "{'what': '" + what + "'}" : "{'what': '" + what + "', 'passes': '" + passes + "'}";
        String lamp = "'lamps': [{'name': 'uv', 'kind': 'UV bulb', 'between': [" + screen + "], 'nearest-rest': '30 cm',"
                + "'readings': [{'index': '5', 'distance': '30 cm', 'through-what-lies-between': 'no'}]}]";
        assertEquals(expected, value(quantities(lamp), Topic.UV_INDEX, UV), 1e-9);
    }

    @Test
    void a_reading_taken_through_the_screen_is_not_weakened_again() throws ProblemsFound {
        String lamp = "'lamps': [{'name': 'uv', 'kind': 'UV bulb', 'between': [{'what': 'mesh', 'passes': '60 %'}], 'nearest-rest': '30 cm',"
                + "'readings': [{'index': '5', 'distance': '30 cm', 'through-what-lies-between': 'yes'}]}]";
        assertEquals(5, value(quantities(lamp), Topic.UV_INDEX, UV), 1e-9);
    }

    @Test
    void a_tube_without_its_lit_length_and_a_lamp_without_a_reading_give_no_index() throws ProblemsFound {
        assertTrue(find(quantities(lamp("UV tube", "").replace("'lit-length': '55 cm', ", "")), Topic.UV_INDEX, UV).isEmpty());
        assertTrue(find(quantities("'lamps': [{'name': 'uv', 'kind': 'UV bulb', 'between': [], 'nearest-rest': '30 cm'}]"), Topic.UV_INDEX, UV).isEmpty());
    }

    @Test
    void a_value_from_the_makers_chart_is_a_model_and_a_meter_reading_is_computed_from() throws ProblemsFound {
        String chart = lamp("UV bulb", "").replace("'distance': '30 cm'", "'distance': '30 cm', 'instrument': 'lamp chart'");
        assertEquals(Method.MODELLED, find(quantities(chart), Topic.UV_INDEX, UV).orElseThrow().origin().method());
        assertEquals(Method.COMPUTED, find(quantities(lamp("UV bulb", "")), Topic.UV_INDEX, UV).orElseThrow().origin().method());
    }

    /**
     * JCGM 100:2008, 5.1.2: ±10 % of the index, ±1 cm at 30 cm and at 60 cm, each distance with exponent 2. The resting place is moved by its
     * uncertainty (5.1.3 note 2), which differs from the slope by 2 (u/d)^2 of its part.
     */
    @Test
    void the_uncertainty_of_reading_and_distances_is_propagated() throws ProblemsFound {
        String lamp = lamp("UV bulb", "").replace("'index': '4'", "'index': '4 ± 10 %'");
        double root = StrictMath.sqrt(3);
        double expected = StrictMath.sqrt(sq(0.1 / root) + sq(2 * (1 / root) / 30) + sq(2 * (1 / root) / 60));
        Quantity index = find(quantities(lamp), Topic.UV_INDEX, UV).orElseThrow();
        assertEquals(expected, index.uncertainty() / index.value(), 2e-6);
    }

    private static double sq(double value) {
        return value * value;
    }

    @Test
    void the_closest_of_all_resting_places_counts_and_is_named() throws ProblemsFound {
        List<Quantity> all = quantities("'substrate': {'depth': '8 cm'}, 'lamps': [{'name': 'uv', 'kind': 'UV bulb', 'place': {'along': '30 cm', 'above': '60 cm'}}],"
                + "'furnishings': [{'name': 'ledge', 'kind': 'ledge', 'from': '20 cm', 'to': '40 cm', 'rest-height': '25 cm'},"
                + "{'name': 'far branch', 'kind': 'branch', 'from': '70 cm', 'to': '90 cm', 'rest-height': '40 cm'}]");
        Quantity distance = find(all, Topic.LAMP_DISTANCE, UV).orElseThrow();
        assertEquals(35, distance.value(), 1e-9);
        Step step = distance.trail().get(0);
        assertEquals("ledge", step.arguments().get(0));
        double overHypotenuse = StrictMath.sqrt(40 * 40 + 20 * 20);
        assertTrue(overHypotenuse > distance.value());
    }

    @Test
    void a_branch_of_unknown_height_might_be_closer_so_no_distance_is_computed() throws ProblemsFound {
        List<Quantity> all = quantities("'substrate': {'depth': '8 cm'}, 'lamps': [{'name': 'uv', 'kind': 'UV bulb', 'place': {'above': '60 cm'}}],"
                + "'furnishings': [{'name': 'branch', 'kind': 'branch'}]");
        assertTrue(find(all, Topic.LAMP_DISTANCE, UV).isEmpty());
    }

    @Test
    void where_it_is_told_that_no_lamp_gives_ultraviolet_the_index_is_zero() throws ProblemsFound {
        assertEquals(0, value(quantities("'lamps': []"), Topic.UV_INDEX, Place.ANYWHERE));
        assertEquals(0, value(quantities("'lamps': [{'name': 'led', 'kind': 'LED'}]"), Topic.UV_INDEX, Place.ANYWHERE));
        assertTrue(find(quantities("'heaters': []"), Topic.UV_INDEX, Place.ANYWHERE).isEmpty());
    }
}
