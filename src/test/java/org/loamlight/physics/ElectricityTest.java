package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ElectricityTest {

    /** Joules in 1 kWh: 1 000 W over the 3 600 s of an hour (SI Brochure, 9th ed., tables 4 and 8; from memory). */
    private static final double JOULES_PER_KILOWATT_HOUR = 3.6e6;
    private static final double SECONDS_PER_HOUR = 3600;

    /** Rated pairs every electrician knows, from memory: 13 A at 230 V are 2 990 W, 16 A are 3 680 W, 15 A at 120 V 1 800 W. */
    @ParameterizedTest
    @CsvSource({"2990, 230, 13", "3680, 230, 16", "1800, 120, 15", "0, 230, 0"})
    void current_is_power_over_voltage(double watts, double volts, double amperes) {
        assertEquals(amperes, Electricity.amperes(watts, volts), 1e-12);
    }

    @Test
    void a_kilowatt_for_an_hour_is_3_6_megajoules() {
        double kilowattHours = Electricity.wattHoursPerDay(1000, 1) / 1000;
        assertEquals(1000 * SECONDS_PER_HOUR, kilowattHours * JOULES_PER_KILOWATT_HOUR, 1e-6);
    }

    /** 100 W for 10 h: 1 kWh a day, 30 kWh a month; at 0.30 that is 9.00. Worked by hand. */
    @Test
    void a_lamp_of_100_watts_for_10_hours_a_day_uses_30_kilowatt_hours_a_month() {
        assertEquals(1000, Electricity.wattHoursPerDay(100, 10), 1e-12);
        double month = Electricity.kilowattHoursPerMonth(100, 10);
        assertEquals(30, month, 1e-12);
        assertEquals(9, Electricity.cost(month, 0.30), 1e-12);
        assertEquals(0, Electricity.cost(month, 0));
    }

    @Test
    void all_day_is_24_hours_and_no_hour_is_no_energy() {
        assertEquals(24 * 24, Electricity.wattHoursPerDay(24, 24), 1e-12);
        assertEquals(0, Electricity.kilowattHoursPerMonth(24, 0));
    }

    /** Seeded: equipment taken together uses what its parts use, and a day of the month is a thirtieth of it. */
    @Test
    void parts_add_up_to_the_whole() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            double lamp = 200 * random.nextDouble();
            double mat = 60 * random.nextDouble();
            double hours = 24 * random.nextDouble();
            double together = Electricity.kilowattHoursPerMonth(lamp + mat, hours);
            assertEquals(together, Electricity.kilowattHoursPerMonth(lamp, hours)
                    + Electricity.kilowattHoursPerMonth(mat, hours), 1e-9);
            assertEquals(together, Electricity.wattHoursPerDay(lamp + mat, hours) * 0.03, 1e-9);
            assertEquals(lamp + mat, 230 * Electricity.amperes(lamp + mat, 230), 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void what_cannot_be_is_refused_by_name_and_value(double wrong) {
        refused("watts is " + wrong, () -> Electricity.amperes(wrong, 230));
        refused("volts is " + wrong, () -> Electricity.amperes(60, wrong));
        refused("watts is " + wrong, () -> Electricity.wattHoursPerDay(wrong, 12));
        refused("hoursPerDay is " + wrong, () -> Electricity.wattHoursPerDay(60, wrong));
        refused("hoursPerDay is " + wrong, () -> Electricity.kilowattHoursPerMonth(60, wrong));
        refused("kilowattHours is " + wrong, () -> Electricity.cost(wrong, 0.3));
        refused("tariffPerKilowattHour is " + wrong, () -> Electricity.cost(1, wrong));
    }

    @Test
    void more_hours_than_a_day_has_no_voltage_and_overflow_are_refused() {
        refused("hoursPerDay is 24.5", () -> Electricity.wattHoursPerDay(60, 24.5));
        refused("volts is 0.0", () -> Electricity.amperes(60, 0));
        refused("watts / volts is Infinity", () -> Electricity.amperes(1e300, 1e-300));
        refused("watts * hoursPerDay is Infinity", () -> Electricity.wattHoursPerDay(1.7e308, 24));
        refused("kilowattHours * tariffPerKilowattHour is Infinity", () -> Electricity.cost(1e300, 1e300));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
