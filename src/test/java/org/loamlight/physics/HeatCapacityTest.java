package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatCapacityTest {

    /** EN ISO 10456 gives water 4182 J/kgK at 20 degrees Celsius: 0.1 % from the rounded value used. */
    @Test
    void a_litre_of_water_holds_what_the_standard_says_to_a_thousandth() {
        assertEquals(4182, HeatCapacity.ofWater(1), 4.2);
        assertEquals(4186 * 2.5, HeatCapacity.ofWater(2.5), 1e-9);
    }

    /** Density and specific heat from ISO 10456 / EN 12524; the products by hand for 1 m2. */
    @ParameterizedTest
    @CsvSource({"0.004, 2500, 750, 7500", "0.012, 500, 1600, 9600", "0.006, 1390, 900, 7506", "0, 2500, 750, 0"})
    void a_pane_holds_its_mass_times_its_specific_heat(double metres, double density, double specificHeat, double joules) {
        assertEquals(joules, HeatCapacity.ofPane(metres, density, specificHeat), 1e-9);
    }

    /** Dry air at 20 degrees Celsius: 1.204 kg/m3 (standard tables) times 1005 J/kgK. */
    @Test
    void a_cubic_metre_of_air_holds_1210_joules() {
        assertEquals(1.204 * 1005, HeatCapacity.ofAir(1, 20), 1);
        assertEquals(AirExchange.wattHoursPerCubicMetreKelvin(31) * 3600 * 0.4, HeatCapacity.ofAir(0.4, 31), 1e-9);
    }

    @Test
    void water_in_substrate_adds_to_what_is_dry() {
        assertEquals(10 * 800 + 3 * 4186, HeatCapacity.ofSubstrate(10, 800, 3), 1e-9);
        assertEquals(HeatCapacity.ofMass(10, 800), HeatCapacity.ofSubstrate(10, 800, 0));
    }

    @Test
    void what_cannot_be_is_refused_by_name_and_value() {
        refused("kilograms is -1.0", () -> HeatCapacity.ofWater(-1));
        refused("joulesPerKilogramKelvin is 0.0", () -> HeatCapacity.ofMass(1, 0));
        refused("kilograms * joulesPerKilogramKelvin is Infinity", () -> HeatCapacity.ofMass(1e200, 1e200));
        refused("kilogramsPerCubicMetre is NaN", () -> HeatCapacity.ofPane(1, Double.NaN, 900));
        refused("cubicMetres is -0.5", () -> HeatCapacity.ofPane(-0.5, 2500, 900));
        refused("cubicMetres is -0.5", () -> HeatCapacity.ofAir(-0.5, 20));
        refused("celsius is -300.0", () -> HeatCapacity.ofAir(1, -300));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
