package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;

class LoadsTest {
    private static final String BOX = "'enclosure': {'inside': {'length': '120 cm', 'depth': '60 cm', 'height': '60 cm'}, 'build': {%s}}, ";
    private static final String GLASS = "'walls': {'of': 'glass', 'thickness': '4 mm'}, 'top': {'of': 'glass', 'thickness': '4 mm'}";
    private static final String FILLING = "'substrate': {'kind': 'sand', 'depth': '7.5 cm', 'moisture': 'dry'}";
    private static final String REST = ", 'furnishings': [{'name': 'slate', 'kind': 'stone', 'mass': '6 kg'},"
            + " {'name': 'leaves', 'kind': 'leaf litter'}], 'water': {'offered': ['dish'], 'volume': '1.5 L'}";

    private static boolean has(Derived derived, Topic topic) {
        return derived.quantities().stream().anyMatch(one -> one.topic() == topic);
    }

    private static Derived derived(String build, String members) throws ProblemsFound {
        return Derived.of("'animals': [{'name': 'Marl', 'species': 'snake'}], " + BOX.formatted(build) + members);
    }

    @Test
    void the_volume_is_length_times_depth_times_depth_of_the_substrate() throws ProblemsFound {
        Derived derived = derived("", FILLING);
        Quantity litres = derived.get(Topic.SUBSTRATE_VOLUME);
        assertEquals(54, litres.value(), 1e-9);
        // 5 mm of 120 cm, 5 mm of 60 cm, 2 cm of 7.5 cm.
        double root = StrictMath.sqrt(3);
        assertEquals(54 * StrictMath.sqrt(sq(0.5 / 120 / root) + sq(0.5 / 60 / root) + sq(2 / 7.5 / root)), litres.uncertainty(), 1e-6);
        Quantity buy = derived.get(Topic.SUBSTRATE_TO_BUY);
        assertEquals(64.8, buy.value(), 1e-9);
        assertEquals(List.of("as-deep-everywhere", "settling"), Derived.steps(buy));
        assertTrue(buy.uncertainty() > 1.2 * litres.uncertainty(), buy::toString);
    }

    private static double sq(double value) {
        return value * value;
    }

    /** Published: sand dry 1555 and wet 1905, coir wet 770 to 880, loose earth dry 1220 kg/m3; 54 L. */
    @ParameterizedTest
    @CsvSource({"sand, dry, 1555", "sand, wet, 1905", "coir, wet, 770", "soil, dry, 1220", "bark, dry, 240"})
    void the_mass_agrees_with_published_densities(String kind, String moisture, double density) throws ProblemsFound {
        Quantity mass = derived("", FILLING.replace("'sand'", "'" + kind + "'").replace("'dry'", "'" + moisture + "'")
                .replace("7.5 cm", "7.5 cm ± 0.1 cm")).get(Topic.SUBSTRATE_MASS);
        assertTrue(Math.abs(mass.value() - 0.054 * density) <= 2 * mass.uncertainty(), mass::toString);
    }

    @Test
    void damp_substrate_may_weigh_anything_between_dry_and_wet() throws ProblemsFound {
        double dry = derived("", FILLING).get(Topic.SUBSTRATE_MASS).value();
        Quantity damp = derived("", FILLING.replace("'dry'", "'damp below'")).get(Topic.SUBSTRATE_MASS);
        double wet = derived("", FILLING.replace("'dry'", "'wet'")).get(Topic.SUBSTRATE_MASS).value();
        assertTrue(dry < damp.value() && damp.value() < wet);
        assertTrue(damp.uncertainty() > derived("", FILLING).get(Topic.SUBSTRATE_MASS).uncertainty());
        assertEquals(damp.value(), derived("", FILLING.replace(", 'moisture': 'dry'", "")).get(Topic.SUBSTRATE_MASS).value());
    }

    /** Worked by hand: 3.6 m2 of 4 mm glass of 2500 kg/m3 are 36 kg; with 54 L of dry sand, 6 kg of slate and 1.5 L of water. */
    @Test
    void the_load_is_the_sum_of_its_parts() throws ProblemsFound {
        Derived derived = derived(GLASS, FILLING + REST);
        Quantity load = derived.get(Topic.TOTAL_LOAD);
        assertEquals(36 + derived.get(Topic.SUBSTRATE_MASS).value() + 6 + 1.5, load.value(), 1e-6);
        assertEquals(List.of("load-panes", "load-substrate", "as-deep-everywhere", "bulk-density", "load-furnishings", "load-water", "floor-load"),
                Derived.steps(load));
        // 127 kg on 0.72 m2, of the 2.0 kN/m2 that floors of homes are built for (EN 1991-1-1, category A).
        assertEquals(List.of("1.7"), load.trail().get(6).arguments());
        Quantity weighed = derived("'mass': '30 kg'", FILLING + REST).get(Topic.TOTAL_LOAD);
        assertEquals(load.value() - 6, weighed.value(), 1e-6);
        assertTrue(weighed.uncertainty() < load.uncertainty());
    }

    @Test
    void a_thickness_taken_as_usual_is_less_certain_than_a_measured_one() throws ProblemsFound {
        Quantity measured = derived(GLASS, FILLING + REST).get(Topic.TOTAL_LOAD);
        Quantity usual = derived(GLASS.replace(", 'thickness': '4 mm'", ""), FILLING + REST).get(Topic.TOTAL_LOAD);
        assertEquals(measured.value(), usual.value(), 1e-6);
        assertTrue(usual.uncertainty() > measured.uncertainty());
    }

    @Test
    void mesh_weighs_nothing_and_glass_doors_are_of_glass() throws ProblemsFound {
        double closed = derived(GLASS, FILLING + REST).get(Topic.TOTAL_LOAD).value();
        double open = derived(GLASS.replace("'top': {'of': 'glass', 'thickness': '4 mm'}", "'top': {'of': 'mesh'}"), FILLING + REST)
                .get(Topic.TOTAL_LOAD).value();
        assertEquals(0.72 * 0.004 * 2500, closed - open, 1e-6);
        String plywood = GLASS.replace("glass", "plywood").replace("4 mm", "12 mm");
        double doors = Derived.of("'animals': [{'name': 'Marl', 'species': 'snake'}], " + BOX.formatted(plywood).replace("'build'", "'front': 'glass doors', 'build'") + FILLING + REST)
                .get(Topic.TOTAL_LOAD).value();
        assertEquals(0.72 * (0.004 * 2500 - 0.012 * 500), doors - derived(plywood, FILLING + REST).get(Topic.TOTAL_LOAD).value(), 1e-6);
    }

    @Test
    void water_in_drops_only_weighs_nothing() throws ProblemsFound {
        double dish = derived(GLASS, FILLING + REST).get(Topic.TOTAL_LOAD).value();
        String drops = (FILLING + REST).replace("['dish'], 'volume': '1.5 L'", "['drip']");
        assertEquals(dish - 1.5, derived(GLASS, drops).get(Topic.TOTAL_LOAD).value(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"'mass': '6 kg'", "'kind': 'sand', ", "'depth': '7.5 cm', ", ", 'volume': '1.5 L'"})
    void a_part_that_is_not_told_leaves_the_load_untold(String left) throws ProblemsFound {
        String members = FILLING + REST;
        assertTrue(members.contains(left));
        String without = members.replace(left, "").replace("'kind': 'stone', }", "'kind': 'stone'}");
        assertFalse(has(derived(GLASS, without), Topic.TOTAL_LOAD));
    }

    @Test
    void neither_mass_nor_walls_leave_the_load_untold() throws ProblemsFound {
        assertFalse(has(derived("", FILLING + REST), Topic.TOTAL_LOAD));
        assertFalse(has(derived("'walls': {'of': 'glass'}", FILLING + REST), Topic.TOTAL_LOAD));
        assertFalse(has(derived(GLASS.replaceFirst("glass", "other"), FILLING + REST), Topic.TOTAL_LOAD));
    }
}
