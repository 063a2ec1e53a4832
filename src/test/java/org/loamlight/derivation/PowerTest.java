package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;

class PowerTest {
    private static final String ANIMAL = "'animals': [{'name': 'Marl', 'species': 'snake'}], ";
    private static final double ROOT_THREE = StrictMath.sqrt(3);
    private static final List<Topic> OF_TIME = List.of(Topic.ENERGY_PER_DAY, Topic.ENERGY_PER_MONTH, Topic.COST_PER_DAY, Topic.COST_PER_MONTH);

    private static final String TOLD = "'heaters': [{'name': 'halogen', 'kind': 'halogen lamp', 'power': '100 W', 'hours': '10 h'}],"
            + "'lamps': [{'name': 'uv', 'kind': 'UV tube', 'power': '20 W', 'hours': '5 h'}], "
            + "'electrical': {'voltage': '230 V', 'tariff': '0.30 per kWh'}";

    private static Derived derived(String members) throws ProblemsFound {
        return Derived.of(ANIMAL + members);
    }

    /** By hand: 120 W; 120 / 230 A; 100 x 10 + 20 x 5 = 1.1 kWh a day, 33 in thirty; at 0.30 that is 0.33 and 9.90. */
    @Test
    void watts_amperes_energy_and_cost_follow_from_power_voltage_hours_and_tariff() throws ProblemsFound {
        Derived all = derived(TOLD);
        assertEquals(120, all.get(Topic.CONNECTED_POWER).value(), 1e-12);
        assertEquals(0.521739, all.get(Topic.OUTLET_CURRENT).value(), 5e-7);
        assertEquals(1.1, all.get(Topic.ENERGY_PER_DAY).value(), 1e-12);
        assertEquals(33, all.get(Topic.ENERGY_PER_MONTH).value(), 1e-12);
        assertEquals(0.33, all.get(Topic.COST_PER_DAY).value(), 1e-12);
        assertEquals(9.9, all.get(Topic.COST_PER_MONTH).value(), 1e-12);
        assertEquals(List.of("power-added", "at-voltage"), Derived.steps(all.get(Topic.OUTLET_CURRENT)));
        assertEquals(List.of("power-by-hours", "at-tariff"), Derived.steps(all.get(Topic.COST_PER_MONTH)));
        assertEquals("halogen, uv", all.get(Topic.CONNECTED_POWER).trail().get(0).arguments().get(0));
    }

    /** JCGM 100:2008, 5.1.2: power to 5 %, mains to 10 %, hours to a quarter, tariff to 1 %, each as limits. */
    @Test
    void the_uncertainty_of_each_answer_is_propagated() throws ProblemsFound {
        Derived all = derived(TOLD);
        double watts = StrictMath.hypot(5, 1) / ROOT_THREE;
        assertEquals(watts, all.get(Topic.CONNECTED_POWER).uncertainty(), 1e-12);
        double amperes = StrictMath.hypot(watts / 120, 0.1 / ROOT_THREE) * 120 / 230;
        assertEquals(amperes, all.get(Topic.OUTLET_CURRENT).uncertainty(), 1e-12);
        double wattHours = StrictMath.hypot(StrictMath.hypot(5 * 10, 100 * 0.25), StrictMath.hypot(1 * 5, 20 * 0.25)) / ROOT_THREE;
        assertEquals(wattHours / 1000, all.get(Topic.ENERGY_PER_DAY).uncertainty(), 1e-12);
        double cost = StrictMath.hypot(0.3 * wattHours / 1000, 1.1 * 0.003 / ROOT_THREE);
        assertEquals(30 * cost, all.get(Topic.COST_PER_MONTH).uncertainty(), 1e-12);
    }

    @Test
    void a_lamp_without_hours_of_its_own_burns_as_long_as_it_is_told_to_be_light() throws ProblemsFound {
        String lamp = "'heaters': [], 'lamps': [{'name': 'led', 'power': '10 W'}]";
        assertTrue(derived(lamp).find(Topic.ENERGY_PER_DAY).isEmpty());
        assertEquals(0.12, derived(lamp + ", 'care': {'light-hours': '12 h'}").get(Topic.ENERGY_PER_DAY).value(), 1e-12);
    }

    @Test
    void a_heater_on_a_thermostat_is_counted_in_full_and_this_is_said() throws ProblemsFound {
        Quantity day = derived("'lamps': [], 'heaters': [{'name': 'panel', 'kind': 'radiant panel', 'power': '50 W', 'hours': '24 h', "
                + "'control': 'thermostat'}]").get(Topic.ENERGY_PER_DAY);
        assertEquals(1.2, day.value(), 1e-12);
        assertEquals(List.of("power-by-hours", "thermostat-runs-less"), Derived.steps(day));
        assertEquals("panel", day.trail().get(1).arguments().get(0));
    }

    @Test
    void nothing_plugged_in_draws_nothing() throws ProblemsFound {
        Derived none = derived("'lamps': [], 'heaters': [], 'electrical': {'voltage': '120 V'}");
        assertTrue(none.get(Topic.CONNECTED_POWER).isZero());
        assertTrue(none.get(Topic.OUTLET_CURRENT).isZero());
    }

    @ParameterizedTest
    @ValueSource(strings = {"'lamps': []", "'heaters': []", "'lamps': [{'name': 'led'}], 'heaters': []",
        "'lamps': [], 'heaters': [{'name': 'mat', 'kind': 'heat mat'}]"})
    void a_sum_of_some_is_not_made(String members) throws ProblemsFound {
        assertTrue(derived(members).find(Topic.CONNECTED_POWER).isEmpty());
    }

    @Test
    void without_voltage_there_is_no_current_without_hours_no_energy_without_tariff_no_cost() throws ProblemsFound {
        Derived without = derived("'lamps': [], 'heaters': [{'name': 'mat', 'kind': 'heat mat', 'power': '20 W'}]");
        assertTrue(without.find(Topic.CONNECTED_POWER).isPresent());
        assertTrue(without.find(Topic.OUTLET_CURRENT).isEmpty());
        OF_TIME.forEach(topic -> assertTrue(without.find(topic).isEmpty(), topic.id()));
        Derived untaxed = derived("'lamps': [], 'heaters': [{'name': 'mat', 'kind': 'heat mat', 'power': '20 W', 'hours': '24 h'}]");
        assertTrue(untaxed.find(Topic.ENERGY_PER_MONTH).isPresent());
        assertTrue(untaxed.find(Topic.COST_PER_MONTH).isEmpty());
    }
}
