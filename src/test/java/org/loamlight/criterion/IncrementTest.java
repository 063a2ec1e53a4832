package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Floors and volumes of published codes, worked by hand; where a code leaves its wording open both readings are checked. */
class IncrementTest {
    /** The worked cases print four decimals at most. */
    private static final double FOUR_DECIMALS = 5e-5;

    /** W24: 0.40 m² for three females, +20 % for each further one; the leaflet leaves open whether it compounds. */
    @Test
    void two_geckos_more_add_0_16_or_0_176_square_metres() {
        List<Double> readings = WorkedCase.of("W24").numbers("expected");
        assertEquals(readings.get(0), raised("0.40", new Increment(3, new BigDecimal("0.2"), false), 5));
        assertEquals(readings.get(2), raised("0.40", new Increment(3, new BigDecimal("0.2"), true), 5));
    }

    /** W02 and W03: +20 % of the volume for the third and the fourth animal, added. */
    @Test
    void a_third_and_a_fourth_corn_snake_add_a_fifth_of_the_volume_each() {
        Increment fifth = new Increment(2, new BigDecimal("0.20"), false);
        assertEquals(Double.parseDouble(WorkedCase.of("W02").all("arithmetic", "x1.20=([\\d.]+)").get(0).group(1)), raised("0.864", fifth, 3));
        assertEquals(Double.parseDouble(WorkedCase.of("W03").all("arithmetic", "=([\\d.]+) m3").get(0).group(1)), raised("0.864", fifth, 4));
        assertEquals(0.864, raised("0.864", fifth, 2));
    }

    /** W22: one gecko more than the pair, +15 % of the floor. */
    @Test
    void a_third_gecko_adds_15_percent_of_the_floor() {
        assertEquals(WorkedCase.of("W22").numbers("expected").get(0), raised("0.1728", new Increment(2, new BigDecimal("0.15"), false), 3));
    }

    /** W33: +10 % for the third and the fourth, +20 % for the fifth: two increments, one after the other. */
    @Test
    void five_tortoises_need_1_792_or_1_8586_square_metres() {
        List<Double> readings = WorkedCase.of("W33").numbers("expected");
        BigDecimal base = new BigDecimal("1.28");
        BigDecimal added = factor(2, "0.10", false, 4).add(factor(4, "0.20", false, 5)).subtract(BigDecimal.ONE);
        BigDecimal compounded = factor(2, "0.10", true, 4).multiply(factor(4, "0.20", true, 5));
        assertEquals(readings.get(0), base.multiply(added).doubleValue());
        assertEquals(readings.get(2), base.multiply(compounded).doubleValue(), FOUR_DECIMALS);
    }

    /** W28: half as much again for the second dragon, a fifth of the base for each from the third on. */
    @Test
    void one_two_three_and_five_dragons_need_what_the_code_of_new_south_wales_says() {
        List<Double> floors = WorkedCase.of("W28").numbers("expected");
        Increment second = new Increment(1, new BigDecimal("0.5"), false);
        assertEquals(floors.get(0), raised("0.375", second, 1));
        assertEquals(floors.get(1), raised("0.375", second, 2));
        for (int animals : new int[] {3, 5}) {
            BigDecimal all = factor(1, "0.5", false, 2).add(factor(2, "0.2", false, animals)).subtract(BigDecimal.ONE);
            assertEquals(floors.get(animals == 3 ? 2 : 3), new BigDecimal("0.375").multiply(all).doubleValue());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void up_to_the_base_number_nothing_is_added(int animals) {
        assertEquals(BigDecimal.ONE, new Increment(3, new BigDecimal("0.2"), true).factorFor(animals));
        assertEquals(0, BigDecimal.ONE.compareTo(new Increment(3, new BigDecimal("0.2"), false).factorFor(animals)));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7})
    void without_an_increment_the_number_of_animals_does_not_matter(int animals) {
        assertEquals(0, BigDecimal.ONE.compareTo(Increment.NONE.factorFor(animals)));
    }

    private static BigDecimal factor(int base, String share, boolean compounded, int animals) {
        return new Increment(base, new BigDecimal(share), compounded).factorFor(animals);
    }

    private static double raised(String base, Increment increment, int animals) {
        return new BigDecimal(base).multiply(increment.factorFor(animals)).doubleValue();
    }
}
