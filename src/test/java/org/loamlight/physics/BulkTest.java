package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BulkTest {

    private static final DensityRange SAND = new DensityRange(1430, 1940);

    /** 1.2 m by 0.6 m, 7.5 cm deep: 54 L; of sand (EN 1991-1-1 Table A.7, 14 to 19 kN/m3) 77 to 105 kg. */
    @Test
    void a_layer_weighs_its_volume_times_its_lightest_to_its_heaviest() {
        double volume = Bulk.layerCubicMetres(1.2, 0.6, 0.075);
        assertEquals(0.054, volume, 1e-12);
        MassRange mass = SAND.mass(volume);
        assertEquals(77, mass.low(), 0.5);
        assertEquals(105, mass.high(), 0.5);
        assertEquals(64.8, Bulk.litresToBuy(volume), 1e-9);
        assertEquals(MassRange.NONE, SAND.mass(0));
    }

    @Test
    void a_mix_lies_between_its_parts_side_by_side_and_one_with_filled_voids() {
        Bulk.Part earth = new Bulk.Part(3, new DensityRange(1200, 1300));
        Bulk.Part sand = new Bulk.Part(1, new DensityRange(1500, 1700));
        DensityRange mix = Bulk.mix(List.of(earth, sand));
        assertEquals(1275, mix.low(), 1e-9);
        assertEquals(1400 * 1.15, mix.high(), 1e-9);
        assertEquals(earth.density(), Bulk.mix(List.of(earth)));
        assertEquals(mix, Bulk.mix(List.of(sand, earth)));
    }

    /** Floor loads for homes and their masses: EN 1991-1-1 category A 2.0 kN/m2, 204 kg/m2; IRC R301.5 1.92 kN/m2, 195 kg/m2. */
    @Test
    void a_floor_load_is_the_weight_over_the_footprint() {
        assertEquals(2.0, Bulk.kilonewtonsPerSquareMetre(204, 1), 0.005);
        assertEquals(1.92, Bulk.kilonewtonsPerSquareMetre(195, 1), 0.01);
        assertEquals(1.0, Bulk.kilonewtonsPerSquareMetre(204, 2), 0.005);
        assertEquals(0, Bulk.kilonewtonsPerSquareMetre(0, 1));
    }

    @Test
    void ranges_add_up_and_join_end_by_end() {
        assertEquals(new MassRange(11, 25), new MassRange(1, 5).plus(new MassRange(10, 20)));
        assertEquals(new MassRange(1, 5), MassRange.NONE.plus(new MassRange(1, 5)));
        assertEquals(new MassRange(3, 3), MassRange.of(3));
        assertEquals(new DensityRange(1, 9), new DensityRange(1, 5).joined(new DensityRange(4, 9)));
        assertEquals(new DensityRange(1, 9), new DensityRange(1, 9).joined(new DensityRange(4, 5)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.3, Double.NaN, Double.POSITIVE_INFINITY})
    void a_number_that_cannot_be_is_refused_by_name_and_value(double number) {
        refused("lengthMetres is " + number, () -> Bulk.layerCubicMetres(number, 1, 1));
        refused("widthMetres is " + number, () -> Bulk.layerCubicMetres(1, number, 1));
        refused("thicknessMetres is " + number, () -> Bulk.layerCubicMetres(1, 1, number));
        refused("layerCubicMetres is " + number, () -> Bulk.litresToBuy(number));
        refused("kilograms is " + number, () -> Bulk.kilonewtonsPerSquareMetre(number, 1));
        refused("squareMetres is " + number, () -> Bulk.kilonewtonsPerSquareMetre(1, number));
        refused("cubicMetres is " + number, () -> SAND.mass(number));
        refused("share is " + number, () -> new Bulk.Part(number, SAND));
        refused("low is " + number, () -> new DensityRange(number, 1));
        refused("high is " + number, () -> new MassRange(0, number));
    }

    @Test
    void ranges_the_wrong_way_round_empty_mixes_and_overflows_are_refused() {
        refused("density runs from 2.0 to 1.0", () -> new DensityRange(2, 1));
        refused("mass runs from 2.0 to 1.0", () -> new MassRange(2, 1));
        refused("low is 0.0", () -> new DensityRange(0, 1));
        refused("squareMetres is 0.0", () -> Bulk.kilonewtonsPerSquareMetre(1, 0));
        refused("sum of the shares is 0.0", () -> Bulk.mix(List.of()));
        refused("low is Infinity", () -> SAND.mass(1e308));
        refused("volume of the layer is Infinity", () -> Bulk.layerCubicMetres(1e300, 1e300, 1));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
