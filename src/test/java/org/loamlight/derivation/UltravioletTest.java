package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.physics.LightField;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.SetupReader;

/** The field of UV lamps as quantities. */
class UltravioletTest {
    private static final LocalDate AUDITED = LocalDate.of(2026, 11, 2);
    private static final Wanted BAND = new Wanted.Builder().add(Topic.UV_INDEX, 1, 4).add(Topic.SHADE_DISTANCE, Double.NEGATIVE_INFINITY, 60).build();
    private static final Place UV = Place.at("lamp:uv");
    private static final Place BOX_LEDGE = Place.at("furnishing:ledge");

    private static List<Quantity> quantities(String members, Axis axis, Wanted wanted) throws ProblemsFound {
        String json = "{'format': 1, 'animals': [{'name': 'Marl', 'species': 'snake'}], " + members + "}";
        byte[] bytes = json.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
        return Derivation.quantities(SetupReader.read("test.json", bytes, List.of("snake")), axis, AUDITED, wanted);
    }

    private static List<Quantity> quantities(String members) throws ProblemsFound {
        return quantities(members, Axis.LENGTH, BAND);
    }

    private static Optional<Quantity> find(List<Quantity> all, Topic topic, Place place) {
        return all.stream().filter(one -> one.topic() == topic && one.place().equals(place)).findFirst();
    }

    private static Quantity get(List<Quantity> all, Topic topic, Place place) {
        return find(all, topic, place).orElseThrow(() -> new AssertionError("no " + topic + " at " + place + " in " + all));
    }

    private static double value(List<Quantity> all, Topic topic, Place place) {
        return get(all, topic, place).value();
    }

    private static List<String> steps(Quantity quantity) {
        return quantity.trail().stream().map(Step::key).toList();
    }

    /** A bulb of strength 0.36 index m2: index 4 at 30 cm. */
    private static String bulb(String name, String more) {
        return "{'name': '" + name + "', 'kind': 'UV bulb', 'between': [], 'readings': [{'index': '4 ± 2 %', 'distance': '30 cm ± 1 mm', 'instrument': 'UV meter'}]"
                + more + "}";
    }

    private static String hung(int along, int above) {
        return ", 'place': {'along': '" + along + " cm', 'across': '30 cm', 'above': '" + above + " cm'}";
    }

    private static final String BOX = "'enclosure': {'inside': {'length': '120 cm', 'depth': '60 cm', 'height': '60 cm'}}, 'substrate': {'depth': '10 cm'}, ";

    /** By hand: two bulbs over one place, 0.36 / 0.3^2 of the one and 0.36 h^2 / r^4 of the other, 40 cm aside and as high: 4 + 0.5184. */
    @Test
    void what_another_lamp_adds_at_the_closest_resting_place_is_counted() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(30, 55) + ", 'nearest-rest': '30 cm'") + ", " + bulb("second", hung(70, 55)) + "]");
        Quantity index = get(all, Topic.UV_INDEX, UV);
        assertEquals(4 + 0.36 * 0.3 * 0.3 / (0.25 * 0.25), index.value(), 1e-9);
        assertTrue(steps(index).contains("other-lamps-add"), index.toString());
    }

    @Test
    void a_lamp_of_unknown_place_is_left_out_and_named() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(30, 55) + ", 'nearest-rest': '30 cm'") + ", " + bulb("second", "") + "]");
        Quantity index = get(all, Topic.UV_INDEX, UV);
        assertEquals(4, index.value(), 1e-9);
        assertEquals(Step.of("other-lamp-left-out", "second"), index.trail().get(index.trail().size() - 1));
        assertTrue(find(all, Topic.UV_LIT_SHARE, Place.ANYWHERE).isEmpty(), "and the field as a whole is not known");
    }

    @Test
    void a_lamp_behind_glass_adds_nothing_wherever_it_hangs() throws ProblemsFound {
        String glass = "{'name': 'second', 'kind': 'UV bulb', 'between': [{'what': 'glass'}]}";
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(30, 55) + ", 'nearest-rest': '30 cm'") + ", " + glass + "]");
        assertEquals(List.of("from-lamp-reading", "inverse-square", "distance-measured"), steps(get(all, Topic.UV_INDEX, UV)));
        assertTrue(find(all, Topic.UV_LIT_SHARE, Place.ANYWHERE).isPresent());
    }

    /** By hand: 2 at 30 cm and 0.5 at 60 cm are both a strength of 0.18, so 1.125 at 40 cm; surer than either alone. */
    @Test
    void readings_that_fit_the_law_are_fitted_together() throws ProblemsFound {
        List<Quantity> all = quantities(readings("{'index': '2 ± 5 %', 'distance': '30 cm'}, {'index': '0.5 ± 5 %', 'distance': '60 cm'}"));
        Quantity both = get(all, Topic.UV_INDEX, UV);
        Quantity one = get(quantities(readings("{'index': '2 ± 5 %', 'distance': '30 cm'}")), Topic.UV_INDEX, UV);
        assertEquals(1.125, both.value(), 1e-9);
        assertTrue(both.uncertainty() < one.uncertainty());
        assertEquals(List.of("from-lamp-reading", "from-lamp-reading", "inverse-square", "distance-measured"), steps(both));
    }

    private static String readings(String readings) {
        return "'lamps': [{'name': 'uv', 'kind': 'UV bulb', 'between': [], 'nearest-rest': '40 cm', 'readings': [" + readings + "]}]";
    }

    /** A keeper's readings of a reflector bulb (published series A: 3.8 at 10 cm, 1.3 at 20 cm; exponent 1.55) read to 2 %. */
    @Test
    void readings_that_contradict_the_law_leave_the_one_nearest_to_the_resting_place() throws ProblemsFound {
        List<Quantity> all = quantities(readings("{'index': '3.8 ± 2 %', 'distance': '10 cm ± 1 mm'}, {'index': '1.3 ± 2 %', 'distance': '20 cm ± 1 mm'}")
                .replace("40 cm", "20 cm ± 1 mm"));
        Quantity index = get(all, Topic.UV_INDEX, UV);
        assertEquals(1.3, index.value(), 1e-9);
        assertEquals(List.of("from-lamp-reading", "readings-contradict", "inverse-square", "distance-measured"), steps(index));
        assertTrue(index.uncertainty() > 0.1 * 1.3, "as uncertain as the readings are of one mind: " + index);
    }

    @Test
    void a_chart_counts_only_where_nobody_measured() throws ProblemsFound {
        String chart = "{'index': '9', 'distance': '40 cm', 'instrument': 'lamp chart'}";
        Quantity measured = get(quantities(readings(chart + ", {'index': '2', 'distance': '40 cm', 'instrument': 'UV meter'}")), Topic.UV_INDEX, UV);
        assertEquals(2, measured.value(), 1e-9);
        assertEquals(Method.COMPUTED, measured.origin().method());
        assertEquals(Method.MODELLED, get(quantities(readings(chart)), Topic.UV_INDEX, UV).origin().method());
    }

    @Test
    void the_oldest_of_several_readings_gives_the_date() throws ProblemsFound {
        List<Quantity> all = quantities(readings("{'index': '2', 'distance': '40 cm', 'on': '2026-10-20'}, {'index': '2', 'distance': '40 cm', 'on': '2026-03-01'},"
                + "{'index': '2', 'distance': '40 cm'}"));
        assertEquals("2026-03-01", get(all, Topic.UV_INDEX, UV).origin().on());
    }

    /** Straight below is closest; but of ledges beneath a bulb the one aside may be closer and darker: the brighter one counts. */
    @Test
    void the_index_is_that_of_the_resting_place_that_gets_the_most() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(30, 50)) + "], 'furnishings': ["
                + "{'name': 'side ledge', 'kind': 'ledge', 'from': '58 cm', 'to': '80 cm', 'rest-height': '40 cm'},"
                + "{'name': 'low ledge', 'kind': 'ledge', 'from': '20 cm', 'to': '40 cm', 'rest-height': '18 cm'}]");
        assertEquals(StrictMath.hypot(28, 10), value(all, Topic.LAMP_DISTANCE, UV), 1e-9);
        Quantity index = get(all, Topic.UV_INDEX, UV);
        assertEquals(0.36 / 0.32 / 0.32, index.value(), 1e-9);
        assertEquals("distance-brightest", steps(index).get(2));
    }

    @Test
    void what_lies_under_any_part_of_a_tube_is_straight_below_it() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [{'name': 'uv', 'kind': 'UV tube', 'lit-length': '60 cm', 'runs': 'along'" + hung(50, 55) + "}],"
                + "'furnishings': [{'name': 'ledge', 'kind': 'ledge', 'from': '70 cm', 'to': '100 cm', 'rest-height': '25 cm'}]");
        assertEquals(30, value(all, Topic.LAMP_DISTANCE, UV), 1e-9);
    }

    /** Baines et al. 2016, Figure 3 text: up to 1.0 at 85 cm under the strongest; 26 times less under the weakest. */
    @Test
    void of_a_tube_that_nobody_read_only_what_tubes_give_is_told() throws ProblemsFound {
        List<Quantity> all = quantities("'lamps': [{'name': 'uv', 'kind': 'UV tube', 'lit-length': '55 cm', 'between': [], 'nearest-rest': '85 cm'}]");
        Quantity index = get(all, Topic.UV_INDEX, UV);
        assertEquals(Method.ESTIMATED, index.origin().method());
        assertEquals((1.0 + 1.0 / 26) / 2, index.value(), 0.01);
        assertEquals((1.0 - 1.0 / 26) / 2 / StrictMath.sqrt(3), index.uncertainty(), 0.02);
        assertTrue(find(all, Topic.LAMP_HEIGHT_LEAST, UV).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"'kind': 'UV bulb', 'between': [], 'nearest-rest': '30 cm'", "'kind': 'UV tube', 'between': [], 'nearest-rest': '30 cm'",
        "'kind': 'UV tube', 'lit-length': '55 cm', 'nearest-rest': '30 cm'", "'kind': 'UV tube', 'lit-length': '55 cm', 'between': []"})
    void without_a_reading_nothing_is_told_of_bulbs_or_of_tubes_half_described(String told) throws ProblemsFound {
        assertTrue(find(quantities("'lamps': [{'name': 'uv', " + told + "}]"), Topic.UV_INDEX, UV).isEmpty());
    }

    /** By hand: strength 0.36, so index 4 at 30 cm and index 1 at 60 cm; 2 % of the index are 1 % of the height. */
    @Test
    void the_heights_of_a_bulb_follow_from_what_the_animals_want() throws ProblemsFound {
        List<Quantity> all = quantities("'lamps': [" + bulb("uv", ", 'nearest-rest': '40 cm'") + "]");
        assertEquals(30, value(all, Topic.LAMP_HEIGHT_LEAST, UV), 1e-9);
        assertEquals(60, value(all, Topic.LAMP_HEIGHT_MOST, UV), 1e-9);
        double relative = StrictMath.hypot(0.02, 2 * 0.1 / 30) / StrictMath.sqrt(3) / 2;
        assertEquals(30 * relative, get(all, Topic.LAMP_HEIGHT_LEAST, UV).uncertainty(), 1e-6);
    }

    /** Keitz' table: at D / L of 0.5 doubling the distance divides by 2.9767; L = 60 cm, so 4 at 30 cm is 1.34 at 60 cm. */
    @Test
    void the_heights_of_a_tube_follow_the_finite_line() throws ProblemsFound {
        Wanted wanted = new Wanted.Builder().add(Topic.UV_INDEX, 4 / 2.9767, 4).build();
        List<Quantity> all = quantities("'lamps': [{'name': 'uv', 'kind': 'UV tube', 'lit-length': '60 cm', 'between': [], 'nearest-rest': '40 cm',"
                + "'readings': [{'index': '4', 'distance': '30 cm'}]}]", Axis.LENGTH, wanted);
        assertEquals(30, value(all, Topic.LAMP_HEIGHT_LEAST, UV), 1e-6);
        assertEquals(60, value(all, Topic.LAMP_HEIGHT_MOST, UV), 1e-3);
    }

    @Test
    void without_a_wanted_index_no_height_is_told_and_with_one_end_only_one() throws ProblemsFound {
        String lamp = "'lamps': [" + bulb("uv", ", 'nearest-rest': '40 cm'") + "]";
        assertTrue(find(quantities(lamp, Axis.LENGTH, Wanted.NOTHING), Topic.LAMP_HEIGHT_MOST, UV).isEmpty());
        List<Quantity> atMost = quantities(lamp, Axis.LENGTH, new Wanted.Builder().add(Topic.UV_INDEX, Double.NEGATIVE_INFINITY, 4).build());
        assertEquals(30, value(atMost, Topic.LAMP_HEIGHT_LEAST, UV), 1e-9);
        assertTrue(find(atMost, Topic.LAMP_HEIGHT_MOST, UV).isEmpty());
    }

    private static final String LEDGE = "{'name': 'ledge', 'kind': 'ledge', 'from': '40 cm', 'to': '80 cm', 'from-front': '10 cm', 'to-front': '50 cm',"
            + "'bottom': '24 cm', 'top': '26 cm', 'rest-height': '26 cm'}";

    /** By hand: the ledge reaches to 10 cm aside of the bulb and lies 29 cm below it. */
    @Test
    void a_ledge_is_lit_where_it_is_nearest_to_the_lamp() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(30, 55)) + "], 'furnishings': [" + LEDGE + "]");
        Quantity index = get(all, Topic.UV_INDEX, BOX_LEDGE);
        double squared = 0.29 * 0.29 + 0.1 * 0.1;
        assertEquals(0.36 * 0.29 * 0.29 / squared / squared, index.value(), 1e-9);
        assertTrue(index.uncertainty() > 0 && index.uncertainty() < index.value());
        assertEquals(List.of("lit-by", "at-height"), steps(index));
    }

    @Test
    void a_place_under_a_shelf_gets_nothing_though_a_lamp_hangs_above_it() throws ProblemsFound {
        String under = "{'name': 'stone', 'kind': 'stone', 'from': '55 cm', 'to': '65 cm', 'from-front': '25 cm', 'to-front': '35 cm', 'rest-height': '14 cm'}";
        String lit = BOX + "'lamps': [" + bulb("uv", hung(60, 55)) + "], 'furnishings': [";
        assertEquals(0, value(quantities(lit + LEDGE + ", " + under + "]"), Topic.UV_INDEX, Place.at("furnishing:stone")));
        assertTrue(value(quantities(lit + under + "]"), Topic.UV_INDEX, Place.at("furnishing:stone")) > 2);
        String thicket = LEDGE.replace("'kind': 'ledge'", "'kind': 'plant'");
        assertTrue(value(quantities(lit + thicket + ", " + under + "]"), Topic.UV_INDEX, Place.at("furnishing:stone")) > 2, "a plant is no box");
    }

    @Test
    void a_sheet_a_hair_above_a_place_shades_it() throws ProblemsFound {
        String sheet = LEDGE.replace("'bottom': '24 cm', 'top': '26 cm', 'rest-height': '26 cm'", "'bottom': '15 cm', 'top': '15.5 cm'");
        String under = "{'name': 'stone', 'kind': 'stone', 'from': '55 cm', 'to': '65 cm', 'from-front': '25 cm', 'to-front': '35 cm', 'rest-height': '14.9 cm'}";
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(60, 55)) + "], 'furnishings': [" + sheet + ", " + under + "]");
        assertEquals(0, value(all, Topic.UV_INDEX, Place.at("furnishing:stone")));
    }

    /** How high either lamp hangs decides how far the place below the one is from the other. */
    @ParameterizedTest
    @ValueSource(strings = {"uv", "second"})
    void what_is_added_is_as_uncertain_as_the_places_of_both_lamps(String coarse) throws ProblemsFound {
        String exact = BOX + "'lamps': [" + bulb("uv", hung(30, 55) + ", 'nearest-rest': '30 cm ± 1 mm'") + ", " + bulb("second", hung(70, 55)) + "]";
        String loose = exact.replaceFirst("('" + coarse + "'.*?)'55 cm'", "$1'55 cm ± 9 cm'");
        assertFalse(loose.equals(exact), coarse);
        double more = get(quantities(loose), Topic.UV_INDEX, UV).uncertainty();
        assertTrue(more > 1.1 * get(quantities(exact), Topic.UV_INDEX, UV).uncertainty(), "with " + coarse + " " + more);
    }

    /** By hand: 0.36 h^2 / r^4 is the trace, for h = 0.45 m, where r^2 = h sqrt(0.36 / trace). */
    @Test
    void the_lit_share_ends_where_the_index_falls_to_the_trace() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(60, 55)) + "]");
        double aside = 100 * StrictMath.sqrt(0.45 * StrictMath.sqrt(0.36 / UvLine.TRACE) - 0.45 * 0.45);
        Quantity share = get(all, Topic.UV_LIT_SHARE, Place.ANYWHERE);
        assertEquals(100 * 2 * aside / 120, share.value(), 0.01);
        assertTrue(share.uncertainty() > 0.5 && share.uncertainty() < 10, share.toString());
        assertEquals(List.of("lit-by", "lit-above"), steps(share));
    }

    @Test
    void along_the_height_the_lit_share_is_counted_from_the_lamp_down() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(60, 58)) + "]", Axis.HEIGHT, BAND);
        assertEquals(100 * 58.0 / 60, value(all, Topic.UV_LIT_SHARE, Place.ANYWHERE), 0.01);
    }

    @ParameterizedTest
    @CsvSource({"'length': '120 cm'; ", "'substrate': {'depth': '10 cm'}; ", "'above': '55 cm'; 'across': '31 cm'"})
    void without_length_substrate_or_height_of_the_lamp_no_share_is_told(String pair) throws ProblemsFound {
        String told = BOX + "'lamps': [" + bulb("uv", hung(60, 55)) + "]";
        String taken = pair.replaceFirst(";.*", "").strip();
        String without = told.replace(taken + ", ", "").replace(", " + taken, "");
        assertFalse(without.equals(told), taken);
        assertTrue(find(quantities(without), Topic.UV_LIT_SHARE, Place.ANYWHERE).isEmpty());
    }

    private static String withCover(String furnishings) {
        return BOX + "'lamps': [" + bulb("uv", hung(60, 55)).replace("'index': '4", "'index': '40") + "], 'furnishings': [" + furnishings + "]";
    }

    private static String cover(String kind, int from, int to) {
        return "{'name': '" + kind + from + "', 'kind': '" + kind + "', 'from': '" + from + " cm', 'to': '" + to + " cm'}";
    }

    /** Everything is lit; by hand: open from 20 to 90 cm between two covers is 35 cm, to the wall all of it. */
    @ParameterizedTest
    @CsvSource({"0, 20, 90, 120, 35", "10, 20, 80, 90, 30", "0, 30, 40, 60, 60"})
    void the_way_to_shade_is_half_of_a_lit_stretch_or_all_of_it_at_a_wall(int from, int to, int nextFrom, int nextTo, double way) throws ProblemsFound {
        List<Quantity> all = quantities(withCover(cover("hide", from, to) + ", " + cover("cork", nextFrom, nextTo)));
        assertEquals(100, value(all, Topic.UV_LIT_SHARE, Place.ANYWHERE), 1e-9);
        assertEquals(way, value(all, Topic.SHADE_DISTANCE, Place.ANYWHERE), 0.01);
        assertEquals(2, value(all, Topic.UV_SHADES, Place.ANYWHERE));
    }

    @Test
    void where_all_is_lit_and_nothing_covers_there_is_no_shade() throws ProblemsFound {
        List<Quantity> all = quantities(withCover(cover("plant", 0, 120)));
        assertTrue(get(all, Topic.UV_SHADES, Place.ANYWHERE).isZero());
        assertTrue(find(all, Topic.SHADE_DISTANCE, Place.ANYWHERE).isEmpty());
    }

    @Test
    void where_little_light_falls_there_is_shade_without_cover() throws ProblemsFound {
        List<Quantity> all = quantities(withCover("").replace("'index': '40", "'index': '4"));
        double aside = 100 * StrictMath.sqrt(0.45 * StrictMath.sqrt(0.36 / UvLine.TRACE) - 0.45 * 0.45);
        assertEquals(aside, value(all, Topic.SHADE_DISTANCE, Place.ANYWHERE), 0.01);
        assertEquals(2, value(all, Topic.UV_SHADES, Place.ANYWHERE));
    }

    /** The lamp hangs who knows where: with cover every 60 cm shade is near enough, with less it cannot be told. */
    @Test
    void with_cover_near_enough_everywhere_the_light_need_not_be_known() throws ProblemsFound {
        String lamp = "'lamps': [{'name': 'uv', 'kind': 'UV bulb'}], ";
        List<Quantity> near = quantities(BOX + lamp + "'furnishings': [" + cover("hide", 0, 20) + ", " + cover("cork", 80, 120) + "]");
        assertEquals(30, value(near, Topic.SHADE_DISTANCE, Place.ANYWHERE), 1e-9);
        assertEquals(List.of("all-taken-as-lit", "merged"), steps(get(near, Topic.SHADE_DISTANCE, Place.ANYWHERE)));
        List<Quantity> far = quantities(BOX + lamp + "'furnishings': [" + cover("hide", 0, 20) + "]");
        assertTrue(find(far, Topic.SHADE_DISTANCE, Place.ANYWHERE).isEmpty());
        assertTrue(find(far, Topic.UV_SHADES, Place.ANYWHERE).isEmpty());
    }

    @Test
    void mirrored_setups_have_the_same_light_and_shade() throws ProblemsFound {
        String there = BOX + "'lamps': [" + bulb("uv", hung(20, 55)) + "], 'furnishings': [" + cover("hide", 30, 50) + ", " + LEDGE + "]";
        String mirrored = BOX + "'lamps': [" + bulb("uv", hung(100, 55)) + "], 'furnishings': [" + cover("hide", 70, 90) + ", " + LEDGE + "]";
        for (Topic topic : List.of(Topic.UV_LIT_SHARE, Topic.SHADE_DISTANCE, Topic.UV_SHADES)) {
            assertEquals(value(quantities(there), topic, Place.ANYWHERE), value(quantities(mirrored), topic, Place.ANYWHERE), 0.01, topic.id());
        }
        assertEquals(value(quantities(there), Topic.UV_INDEX, BOX_LEDGE), value(quantities(mirrored), Topic.UV_INDEX, BOX_LEDGE), 1e-9);
    }

    @Test
    void a_lamp_that_shines_from_the_side_makes_no_field_but_keeps_its_own_index() throws ProblemsFound {
        List<Quantity> all = quantities(BOX + "'lamps': [" + bulb("uv", hung(60, 55) + ", 'nearest-rest': '60 cm', 'shines': 'from the side'") + "]");
        assertEquals(1, value(all, Topic.UV_INDEX, UV), 1e-9);
        assertTrue(find(all, Topic.UV_LIT_SHARE, Place.ANYWHERE).isEmpty());
    }

    @Test
    void beside_a_mercury_vapour_lamp_among_the_heaters_the_field_is_not_known() throws ProblemsFound {
        String heater = "'heaters': [{'name': 'heat', 'kind': 'mercury vapour lamp'}], ";
        List<Quantity> all = quantities(BOX + heater + "'lamps': [" + bulb("uv", hung(60, 55)) + "], 'furnishings': [" + cover("hide", 0, 20) + ", " + cover("cork", 80, 120) + "]");
        assertTrue(find(all, Topic.UV_LIT_SHARE, Place.ANYWHERE).isEmpty());
        assertEquals(List.of("all-taken-as-lit", "merged"), steps(get(all, Topic.SHADE_DISTANCE, Place.ANYWHERE)));
        List<Quantity> alone = quantities(BOX + heater + "'lamps': []");
        assertTrue(find(alone, Topic.UV_INDEX, Place.ANYWHERE).isEmpty(), "it gives some, nobody knows how much");
    }

    /** LightField and the field of the setup are one law. */
    @Test
    void a_tube_over_the_middle_of_a_ledge_is_the_law_of_the_tube() throws ProblemsFound {
        String tube = "{'name': 'uv', 'kind': 'UV tube', 'lit-length': '40 cm', 'between': [], 'readings': [{'index': '4', 'distance': '30 cm'}]" + hung(60, 55) + "}";
        List<Quantity> all = quantities(BOX + "'lamps': [" + tube + "], 'furnishings': [" + LEDGE + "]");
        assertEquals(4 * LightField.tubeScale(0.30, 0.29, 0.40), value(all, Topic.UV_INDEX, BOX_LEDGE), 1e-9);
        assertTrue(steps(get(all, Topic.UV_INDEX, BOX_LEDGE)).contains("tube-taken-along"));
    }
}
