package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.ProblemsFound;

class MoistureTest {
    private static final Place WARM = Place.of(Zone.WARM_END);
    private static final Place COOL = Place.of(Zone.COOL_END);
    private static final String SIZE = "'inside': {'length': '120 cm', 'depth': '60 cm', 'height': '60 cm'}";
    private static final String GLASS = "'build': {'walls': {'of': 'glass', 'thickness': '4 mm'}, 'top': {'of': 'glass', 'thickness': '4 mm'}}";

    private static Derived derived(String members) throws ProblemsFound {
        return Derived.of("'animals': [{'name': 'Marl', 'species': 'snake'}], " + members);
    }

    private static boolean has(Derived derived, Topic topic) {
        return derived.quantities().stream().anyMatch(one -> one.topic() == topic);
    }

    private static String reading(String name, String of, String place, String time, String value) {
        return "{'name': '" + name + "', 'of': '" + of + "', 'place': '" + place + "', 'time': '" + time + "', 'value': '" + value + "'}";
    }

    private static String air(String place, String time, String value) {
        return reading(place + " " + time + " air", "air temperature", place, time, value);
    }

    private static String humidity(String place, String time, String value) {
        return reading(place + " " + time + " humidity", "humidity", place, time, value);
    }

    private static String readings(String... readings) {
        return "'readings': [" + String.join(", ", readings) + "]";
    }

    /** Single values of building and coating tables: 22 °C and 70 % give 16.3 °C, 20 and 70 give 14.4, 30 and 55 give 20. */
    @ParameterizedTest
    @CsvSource({"22, 70, 16.3", "20, 70, 14.4", "30, 55, 20"})
    void a_humidity_beside_its_temperature_gives_the_dew_point_there(String celsius, String percent, double dewPoint) throws ProblemsFound {
        Quantity found = derived(readings(humidity("cool end", "day", percent + " %"), air("cool end", "day", celsius + " °C")))
                .get(Topic.DEW_POINT, COOL);
        assertEquals(dewPoint, found.value(), 0.05);
        assertEquals(Method.COMPUTED, found.origin().method());
        assertEquals("reading:cool end day humidity", found.source());
        assertEquals(List.of("moist-air"), Derived.steps(found));
    }

    /** At 28 °C and 60 % five points of humidity shift the dew point by 1.35 K, a kelvin of air by 0.94 K. */
    @Test
    void the_uncertainty_of_both_readings_reaches_the_dew_point() throws ProblemsFound {
        Quantity found = derived(readings(humidity("cool end", "day", "60 % ± 5 %"), air("cool end", "day", "28 °C ± 1 °C")))
                .get(Topic.DEW_POINT, COOL);
        assertEquals(StrictMath.hypot(1.35, 0.94) / StrictMath.sqrt(3), found.uncertainty(), 0.01);
    }

    @Test
    void a_humidity_without_a_temperature_of_its_place_and_time_gives_nothing() throws ProblemsFound {
        String humid = humidity("cool end", "day", "60 %");
        assertFalse(has(derived(readings(humid)), Topic.DEW_POINT));
        assertFalse(has(derived(readings(humid, air("warm end", "day", "28 °C"))), Topic.DEW_POINT));
        assertFalse(has(derived(readings(humid, air("cool end", "night", "20 °C"))), Topic.DEW_POINT));
        assertFalse(has(derived(readings(humid, air("cool end", "day", "70 °C"))), Topic.DEW_POINT));
        assertFalse(has(derived(readings(humidity("cool end", "day", "0 %"), air("cool end", "day", "28 °C"))), Topic.DEW_POINT));
        String untimed = humid.replace("'time': 'day', ", "");
        assertFalse(has(derived(readings(untimed, air("cool end", "day", "28 °C"))), Topic.DEW_POINT));
    }

    @Test
    void a_thermometer_in_the_beam_does_not_tell_the_air() throws ProblemsFound {
        String inBeam = air("cool end", "day", "28 °C").replace("}", ", 'in-beam': 'yes'}");
        assertFalse(has(derived(readings(humidity("cool end", "day", "60 %"), inBeam)), Topic.DEW_POINT));
    }

    @Test
    void of_two_thermometers_the_one_read_on_the_same_day_counts() throws ProblemsFound {
        String humid = humidity("cool end", "day", "70 %").replace("}", ", 'on': '2026-10-20'}");
        String old = air("cool end", "day", "30 °C").replace("}", ", 'on': '2026-09-01'}");
        String same = air("cool end", "day", "22 °C").replace("'cool end day air'", "'second'").replace("}", ", 'on': '2026-10-20'}");
        assertEquals(16.3, derived(readings(humid, old, same)).get(Topic.DEW_POINT, COOL).value(), 0.05);
    }

    /** The same 1.430 kPa of vapour over the 4.742 kPa of saturation at 32 °C and the 2.636 kPa at 22 °C. */
    @Test
    void a_reading_at_the_warm_end_tells_the_humidity_at_the_cool_end() throws ProblemsFound {
        Derived derived = derived("'enclosure': {'warm-end': 'left'}, " + readings(humidity("warm end", "day", "30 % ± 3 %"),
                air("warm end", "day", "32 °C ± 1 °C"), air("cool end", "day", "22 °C ± 1 °C"), air("middle", "night", "20 °C")));
        Quantity there = derived.get(Topic.IMPLIED_HUMIDITY, COOL);
        assertEquals(54, there.value(), 0.5);
        // 3 points of 30, 5.7 % for a kelvin at 32 °C and 6.1 % for one at 22 °C.
        assertEquals(54 * StrictMath.sqrt(0.1 * 0.1 + 0.057 * 0.057 + 0.061 * 0.061) / StrictMath.sqrt(3), there.uncertainty(), 0.1);
        assertEquals(List.of("moist-air", "same-vapour-there"), Derived.steps(there));
    }

    @Test
    void where_humidity_was_read_itself_none_is_implied() throws ProblemsFound {
        Derived derived = derived("'enclosure': {'warm-end': 'left'}, " + readings(humidity("warm end", "day", "30 %"),
                air("warm end", "day", "32 °C"), humidity("cool end", "day", "60 %"), air("cool end", "day", "22 °C")));
        assertTrue(derived.find(Topic.DEW_POINT, WARM).isPresent() && derived.find(Topic.DEW_POINT, COOL).isPresent());
        assertFalse(has(derived, Topic.IMPLIED_HUMIDITY));
    }

    private static Derived night(String enclosure, String room, String... readings) throws ProblemsFound {
        return derived("'enclosure': {" + enclosure + "}, 'room': {'coldest': '" + room + "'}, " + readings(readings));
    }

    /**
     * 4 mm of glass between two rooms: U = 3.79 W/m2K (ISO 6946), so 49 % of the way from 24 to 14 °C lies before its inside:
     * 19.1 °C. Air of 24 °C and 75 % has its dew point at 19.3 °C (WMO-No. 8), so it just condenses.
     */
    @Test
    void moist_air_condenses_on_glass_in_a_cold_room() throws ProblemsFound {
        Quantity pane = night(GLASS, "14 °C", humidity("cool end", "night", "75 %"), air("cool end", "night", "24 °C"))
                .get(Topic.PANE_HUMIDITY_BY_NIGHT);
        assertEquals(101.5, pane.value(), 0.5);
        assertEquals(Method.COMPUTED, pane.origin().method());
        assertEquals(List.of("moist-air", "coldest-pane", "between-air-and-room"), Derived.steps(pane));
        assertTrue(pane.uncertainty() > 3, pane::toString);
    }

    @Test
    void behind_foam_the_same_air_stays_dry() throws ProblemsFound {
        String foam = GLASS.replace("'glass', 'thickness': '4 mm'", "'foam board', 'thickness': '20 mm'");
        Quantity pane = night(foam, "14 °C", humidity("cool end", "night", "75 %"), air("cool end", "night", "24 °C"))
                .get(Topic.PANE_HUMIDITY_BY_NIGHT);
        assertTrue(pane.value() < 85 && pane.value() > 75, pane::toString);
    }

    @Test
    void glass_doors_are_the_coldest_pane_of_a_wooden_box() throws ProblemsFound {
        String wood = "'build': {'walls': {'of': 'plywood'}, 'top': {'of': 'plywood'}}";
        String[] air = {humidity("cool end", "night", "75 %"), air("cool end", "night", "24 °C")};
        double closed = night(wood, "14 °C", air).get(Topic.PANE_HUMIDITY_BY_NIGHT).value();
        double glazed = night("'front': 'glass doors', " + wood, "14 °C", air).get(Topic.PANE_HUMIDITY_BY_NIGHT).value();
        double allGlass = night(GLASS, "14 °C", air).get(Topic.PANE_HUMIDITY_BY_NIGHT).value();
        assertEquals(allGlass, glazed, 1e-9);
        assertTrue(closed < glazed, closed + " and " + glazed);
    }

    @Test
    void without_a_humidity_by_night_the_vapour_of_the_day_meets_the_night() throws ProblemsFound {
        String[] day = {humidity("cool end", "day", "75 %"), air("cool end", "day", "24 °C")};
        assertFalse(has(night(GLASS, "14 °C", day), Topic.PANE_HUMIDITY_BY_NIGHT));
        Quantity pane = night(GLASS, "14 °C", day[0], day[1], air("warm end", "night", "24 °C"), air("middle", "night", "25 °C"))
                .get(Topic.PANE_HUMIDITY_BY_NIGHT);
        assertEquals(101.5, pane.value(), 0.5);
        assertEquals(List.of("moist-air", "humidity-by-day", "coldest-pane", "between-air-and-room"), Derived.steps(pane));
    }

    @ParameterizedTest
    @ValueSource(strings = {"'title': 'untold'", "'build': {'walls': {'of': 'glass'}}", "'build': {'top': {'of': 'glass'}}",
        "'build': {'walls': {'of': 'other'}, 'top': {'of': 'glass'}}"})
    void where_walls_or_lid_are_not_known_no_pane_is_judged(String enclosure) throws ProblemsFound {
        assertFalse(has(night(enclosure, "14 °C", humidity("cool end", "night", "75 %"), air("cool end", "night", "24 °C")), Topic.PANE_HUMIDITY_BY_NIGHT));
    }

    @Test
    void behind_mesh_the_air_keeps_its_humidity() throws ProblemsFound {
        Quantity pane = night("'build': {'walls': {'of': 'mesh'}, 'top': {'of': 'mesh'}}", "14 °C", humidity("cool end", "night", "75 %"),
                air("cool end", "night", "24 °C")).get(Topic.PANE_HUMIDITY_BY_NIGHT);
        assertEquals(75, pane.value(), 1e-9);
        assertEquals(List.of("moist-air", "mesh-all-round"), Derived.steps(pane));
    }

    private static Derived wet(String build, String room) throws ProblemsFound {
        return derived("'enclosure': {" + SIZE + ", " + build + "}, 'room': {" + room + "}, 'heaters': [], 'lamps': [], "
                + readings(humidity("cool end", "day", "80 %"), air("cool end", "day", "30 °C")));
    }

    /**
     * From a climate table: air of 30 °C and 80 % holds 24.3 g/m3, of 20 °C and 50 % 8.7 g/m3, 8.4 as it warms to 30 °C: 15.9 g for
     * each of the 0.432 m3 that leave, 0.165 L a day for each change an hour; wet air holds 2 % less dry air than dry.
     */
    @Test
    void moist_air_in_a_dry_room_takes_water() throws ProblemsFound {
        Derived derived = wet(GLASS, "'when-read': '20 °C'");
        Quantity water = derived.get(Topic.WATER_PER_DAY);
        double changes = derived.get(Topic.AIR_CHANGES).value();
        assertEquals(0.165 * changes, water.value(), 0.03 * water.value());
        assertTrue(water.uncertainty() > 0.4 * water.value(), water::toString);
        assertEquals(Method.ESTIMATED, water.origin().method());
        assertEquals(List.of("moist-air", "air-changing", "room-humidity-assumed"), Derived.steps(water));
    }

    @Test
    void without_room_or_walls_no_water_is_worked_out_and_a_moister_room_takes_none() throws ProblemsFound {
        assertFalse(has(wet(GLASS, "'coldest': '17 °C'"), Topic.WATER_PER_DAY));
        assertFalse(has(wet("'title': 'untold'", "'when-read': '20 °C'"), Topic.WATER_PER_DAY));
        assertEquals(0, wet(GLASS, "'when-read': '55 °C'").get(Topic.WATER_PER_DAY).value());
    }
}
