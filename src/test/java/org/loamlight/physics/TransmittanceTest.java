package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class TransmittanceTest {

    /** "brick 110/0.69": a material, its thickness in millimetres and its conductivity. */
    private static final Pattern LAYER = Pattern.compile("(\\d+(?:\\.\\d+)?)/(\\d+(?:\\.\\d+)?)");
    private static final List<Layer> PLYWOOD = List.of(new Layer(0.012, 0.13));

    static List<PublishedTable.Row> published() {
        return PublishedTable.read("thermal-uvalue.csv").rows();
    }

    @Test
    void the_table_has_twelve_walls_and_boxes_with_a_source_each() {
        assertEquals(12, published().size());
        published().forEach(row -> assertFalse(row.cell("source").isBlank(), () -> row.cells().toString()));
        assertEquals(5, layers(published().get(2)).size());
    }

    /** Each row against the value worked out apart from this code; tolerance half a unit of its last printed digit. */
    @ParameterizedTest
    @MethodSource("published")
    void transmittance_follows_iso_6946(PublishedTable.Row row) {
        double found = Transmittance.of(row.number("Rsi"), layers(row), row.number("Rse"));
        assertEquals(row.number("exact_U_recomputed"), found, halfLastDigit(row.cell("exact_U_recomputed")));
    }

    /**
     * U1 to U5 as printed by their sources. Tolerance half a unit of the last printed digit; 0.02 for U1, whose page rounds
     * R to 0.54 before it inverts it.
     */
    @ParameterizedTest
    @CsvSource({"U1, 0.02", "U2, 0.005", "U3, 0.005", "U4, 0.005", "U5, 0.005"})
    void walls_of_buildings_have_the_transmittance_their_sources_print(String id, double tolerance) {
        PublishedTable.Row row = PublishedTable.read("thermal-uvalue.csv").row("id", id);
        double found = Transmittance.of(row.number("Rsi"), layers(row), row.number("Rse"));
        assertEquals(row.number("published_U_W_m2K"), found, tolerance);
    }

    /** The totals of R that three of the sources print, to two decimals. */
    @ParameterizedTest
    @CsvSource({"U1", "U2", "U3", "U5"})
    void walls_of_buildings_have_the_resistance_their_sources_print(String id) {
        PublishedTable.Row row = PublishedTable.read("thermal-uvalue.csv").row("id", id);
        double total = row.number("Rsi") + Transmittance.resistance(layers(row)) + row.number("Rse");
        assertEquals(row.number("published_R_total"), total, 0.005001);
    }

    /** B1 to B7: panes of an enclosure in a room, both surfaces indoors, with the flow each row names. */
    @ParameterizedTest
    @CsvSource({"B1, HORIZONTAL", "B2, HORIZONTAL", "B3, UP", "B4, DOWN", "B5, HORIZONTAL", "B6, HORIZONTAL", "B7, HORIZONTAL"})
    void panes_in_a_room_have_indoor_surfaces_on_both_sides(String id, HeatFlow flow) {
        PublishedTable.Row row = PublishedTable.read("thermal-uvalue.csv").row("id", id);
        assertEquals(row.number("exact_U_recomputed"), Transmittance.betweenRooms(flow, layers(row)), 5.001e-4);
    }

    /**
     * What the surface resistances stand for: 1 / (hc + 0.9 x 5.7) with the convective parts of BS EN ISO 13789:2017, Table 8
     * (5.0 up, 2.5 sideways, 0.7 down) and radiation at 20 degrees Celsius; the standard rounds to two decimals.
     */
    @ParameterizedTest
    @CsvSource({"UP, 5.0", "HORIZONTAL, 2.5", "DOWN, 0.7"})
    void surface_resistances_are_those_of_convection_and_radiation(HeatFlow flow, double convective) {
        assertEquals(1 / (convective + 0.9 * 5.7), flow.innerSurfaceResistance(), 0.005);
    }

    /** UK building regulations trade table: 0.10, 0.13, 0.17 indoors, 0.04 outdoors (ISO 6946, Table 1). */
    @Test
    void without_layers_the_surfaces_alone_resist() {
        assertEquals(1 / 0.26, Transmittance.betweenRooms(HeatFlow.HORIZONTAL, List.of()), 1e-12);
        assertEquals(1 / 0.17, Transmittance.of(0.13, List.of(), Transmittance.OUTDOOR_RESISTANCE), 1e-12);
        assertEquals(0, Transmittance.resistance(List.of()));
    }

    /** Glass 4 mm at 1.0, acrylic 4 mm at 0.18 W/mK (ISO 10456). */
    @Test
    void another_thin_material_changes_little_and_foam_much() {
        double glass = Transmittance.betweenRooms(HeatFlow.HORIZONTAL, List.of(new Layer(0.004, 1.0)));
        double acrylic = Transmittance.betweenRooms(HeatFlow.HORIZONTAL, List.of(new Layer(0.004, 0.18)));
        double foam = Transmittance.betweenRooms(HeatFlow.HORIZONTAL, List.of(new Layer(0.020, 0.034)));
        assertEquals(0.94, acrylic / glass, 0.01);
        assertTrue(foam < glass / 3);
    }

    /** 0.17 + 0.012 / 0.13 by hand. */
    @Test
    void a_base_on_furniture_has_no_free_lower_surface_and_loses_more_than_one_over_air() {
        double onFurniture = Transmittance.onFurniture(PLYWOOD);
        assertEquals(1 / 0.262308, onFurniture, 1e-5);
        assertTrue(onFurniture > Transmittance.betweenRooms(HeatFlow.DOWN, PLYWOOD));
    }

    @ParameterizedTest
    @EnumSource(HeatFlow.class)
    void each_further_layer_lets_less_through_wherever_it_stands(HeatFlow flow) {
        Random random = new Random(611);
        List<Layer> layers = new ArrayList<>();
        double before = Transmittance.betweenRooms(flow, layers);
        for (int i = 0; i < 100; i++) {
            layers.add(random.nextInt(layers.size() + 1),
                    new Layer(0.001 + 0.03 * random.nextDouble(), 0.03 + random.nextDouble()));
            double after = Transmittance.betweenRooms(flow, layers);
            assertTrue(after < before, layers::toString);
            before = after;
        }
    }

    @Test
    void what_cannot_be_is_refused_by_name_and_value() {
        refused("metres is 0.0", () -> new Layer(0, 0.13));
        refused("wattsPerMetreKelvin is NaN", () -> new Layer(0.01, Double.NaN));
        refused("metres / wattsPerMetreKelvin is Infinity", () -> new Layer(1e300, 1e-300).resistance());
        refused("innerResistance is -0.1", () -> Transmittance.of(-0.1, PLYWOOD, 0));
        refused("outerResistance is Infinity", () -> Transmittance.of(0.1, PLYWOOD, Double.POSITIVE_INFINITY));
        refused("transmittance is Infinity", () -> Transmittance.of(0, List.of(), 0));
    }

    private static List<Layer> layers(PublishedTable.Row row) {
        List<Layer> layers = LAYER.matcher(row.cell("layers_mm_lambda")).results()
                .map(found -> new Layer(Double.parseDouble(found.group(1)) / 1000, Double.parseDouble(found.group(2)))).toList();
        assertFalse(layers.isEmpty());
        return layers;
    }

    private static double halfLastDigit(String printed) {
        int decimals = printed.length() - printed.indexOf('.') - 1;
        return 0.5001 * StrictMath.pow(10, -decimals);
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
