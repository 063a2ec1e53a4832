package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoistAirTest {

    /** How far the Magnus form is from the steam tables at most, 0 to 50 degrees Celsius: 0.31 %, and rounding of a table. */
    private static final double FORMULA = 0.0035;
    private static final double TWO_DECIMALS = 0.005001;
    private static final double FOUR_DECIMALS = 5.001e-5;

    private static final PublishedTable PSYCHRO = PublishedTable.read("thermal-psychro.csv");
    private static final String DEW_POINT = "published_dewpoint_C";
    private static final String ABSOLUTE = "published_abs_humidity_g_m3";

    static List<PublishedTable.Row> dewPoints() {
        return PublishedTable.read("thermal-dewpoint.csv").rows();
    }

    static List<PublishedTable.Row> saturation() {
        return PublishedTable.read("thermal-saturation.csv").rows();
    }

    static List<PublishedTable.Row> usableDewPoints() {
        return dewPoints().stream().filter(row -> row.cell("use_as_oracle").equals("yes")).toList();
    }

    static List<PublishedTable.Row> wholeDegrees() {
        return usableDewPoints().stream().filter(row -> !row.cell(DEW_POINT).contains(".")).toList();
    }

    static List<PublishedTable.Row> tenthsOfADegree() {
        return usableDewPoints().stream().filter(row -> row.cell(DEW_POINT).contains(".")).toList();
    }

    static List<PublishedTable.Row> absoluteHumidities() {
        return dewPoints().stream().filter(row -> !row.cell(ABSOLUTE).isEmpty()).toList();
    }

    @Test
    void no_row_of_the_tables_gets_lost_and_each_names_its_source() {
        assertEquals(82, dewPoints().size());
        assertEquals(39, wholeDegrees().size());
        assertEquals(5, tenthsOfADegree().size());
        assertEquals(77, absoluteHumidities().size());
        assertEquals(10, saturation().size());
        assertEquals(10, PSYCHRO.rows().size());
        List.of(dewPoints(), saturation(), PSYCHRO.rows()).forEach(
                rows -> rows.forEach(row -> assertFalse(row.cell("source").isBlank(), () -> row.cells().toString())));
    }

    /** IAPWS R7-97 region 4, and WMO-No. 8 worked apart from this code; the published columns where they have the row. */
    @ParameterizedTest
    @MethodSource("saturation")
    void saturation_is_a_third_of_a_percent_from_the_steam_tables_at_most(PublishedTable.Row row) {
        double kilopascal = MoistAir.saturationPascal(row.number("t_C")) / 1000;
        assertEquals(row.number("computed_WMO_Magnus_kPa"), kilopascal, FOUR_DECIMALS);
        assertEquals(1, kilopascal / row.number("computed_IF97_kPa"), FORMULA);
        assertClose(row, "published_textbook_steam_table_kPa", kilopascal);
        assertClose(row, "published_ASHRAE2017_Table3_Pa", 1000 * kilopascal);
    }

    private static void assertClose(PublishedTable.Row row, String column, double value) {
        if (!row.cell(column).isEmpty()) {
            assertEquals(1, value / row.number(column), FORMULA, column);
        }
    }

    /** The tables are held to the formula's 0.35 %, not to the 0.03 % of their own digits: see the class. */
    @ParameterizedTest
    @CsvSource({"P1, 5", "P2, 25", "P3, 50"})
    void saturation_is_that_of_ashrae_2017_table_3(String id, double celsius) {
        assertEquals(1, MoistAir.saturationPascal(celsius) / PSYCHRO.row("case", id).number("published"), FORMULA);
    }

    @Test
    void the_vapour_pressure_at_80_percent_is_80_percent_of_saturation() {
        double published = PSYCHRO.row("case", "P11").number("published");
        assertEquals(1, new MoistAir(25, 0.80).vapourPascal() / published, FORMULA);
    }

    /**
     * ASHRAE 2017 Table 2 is for air, in which saturation is 0.4 to 0.5 % higher than over pure water; that and the 0.31 %
     * of the formula make up to 0.8 %, all on the low side.
     */
    @ParameterizedTest
    @CsvSource({"P7, 5", "P8, 25", "P9, 50"})
    void the_saturated_humidity_ratio_is_that_of_ashrae_2017_table_2_but_for_what_is_left_out(String id, double celsius) {
        double ratio = new MoistAir(celsius, 1).humidityRatio() / PSYCHRO.row("case", id).number("published");
        assertTrue(ratio > 0.992 && ratio < 1, () -> "ratio " + ratio);
    }

    @Test
    void the_humidity_ratio_at_500_metres_is_that_of_the_worked_example() {
        PublishedTable.Row row = PSYCHRO.row("case", "P12");
        double ratio = MoistAir.humidityRatio(row.numberAfter("inputs", "e"), row.numberAfter("inputs", "at"));
        assertEquals(1, ratio / row.number("published"), 1e-6);
    }

    @Test
    void the_pressure_at_sea_level_is_that_of_ashrae_2017_table_1() {
        assertEquals(PSYCHRO.row("case", "P13").number("published"), MoistAir.SEA_LEVEL_PASCAL);
    }

    /**
     * ASHRAE 2017 ch. 1 example 1 reads W 0.0065, dew point 7, RH 14 % from its chart. Tolerances: those of the reading,
     * 0.0001 of the ratio, which is 0.2 K of dew point more than the 0.5 K of the printed digit, and 1 %.
     */
    @Test
    void ashrae_example_1_hangs_together() {
        PublishedTable.Row row = PSYCHRO.row("case", "P10");
        double ratio = row.numberAfter("published", "W");
        double humidity = MoistAir.vapourPascalOf(ratio, MoistAir.SEA_LEVEL_PASCAL) / MoistAir.saturationPascal(40);
        assertEquals(row.numberAfter("published", "RH"), 100 * humidity, 1);
        MoistAir air = new MoistAir(40, humidity);
        assertEquals(row.numberAfter("published", "dew point"), air.dewPointCelsius(), 0.5 + 0.2);
        assertEquals(ratio, air.humidityRatio(), 1e-12);
    }

    /** The table prints whole degrees and mostly rounds down, so a value may be up to 0.8 K above the printed one. */
    @ParameterizedTest
    @MethodSource("wholeDegrees")
    void dew_points_are_those_of_the_climate_table(PublishedTable.Row row) {
        assertEquals(row.number(DEW_POINT), air(row).dewPointCelsius(), 0.8);
    }

    /** Half a tenth for the printed digit. */
    @ParameterizedTest
    @MethodSource("tenthsOfADegree")
    void dew_points_are_the_single_values_of_building_and_coating_tables(PublishedTable.Row row) {
        assertEquals(row.number(DEW_POINT), air(row).dewPointCelsius(), 0.05);
    }

    /** Half a tenth of a gram for the printed digit and 0.4 % for the two formulae of saturation. */
    @ParameterizedTest
    @MethodSource("absoluteHumidities")
    void absolute_humidities_are_those_of_the_climate_table(PublishedTable.Row row) {
        double grams = 1000 * air(row).vapourKilogramsPerCubicMetre();
        assertEquals(row.number(ABSOLUTE), grams, 0.0501 + 0.004 * grams);
    }

    /** Recomputed apart from this code with the same formula, for rows of the table that are off by more than rounding too. */
    @ParameterizedTest
    @MethodSource("dewPoints")
    void dew_point_and_absolute_humidity_agree_with_a_recomputation(PublishedTable.Row row) {
        assertEquals(row.number("check_dewpoint_over_water_C"), air(row).dewPointCelsius(), TWO_DECIMALS);
        assertEquals(row.number("check_abs_humidity_g_m3"), 1000 * air(row).vapourKilogramsPerCubicMetre(), TWO_DECIMALS);
    }

    /** Lawrence 2005, BAMS 86:225: above 50 % the dew point falls by about 1 K for each 5 %. */
    @Test
    void above_50_percent_the_dew_point_falls_by_about_a_kelvin_for_each_5_percent() {
        for (double percent = 50; percent <= 100; percent += 5) {
            double rule = 20 - (100 - percent) / 5;
            assertEquals(rule, new MoistAir(20, percent / 100).dewPointCelsius(), 1);
        }
    }

    /** Air of 28 degrees and 60 %: 5 % of humidity shift the dew point by +1.30 and -1.39 K, 1 K of air by 0.94 K. */
    @Test
    void the_uncertainty_of_a_dew_point_is_how_far_the_readings_shift_it() {
        MoistAir air = new MoistAir(28, 0.60);
        assertEquals(19.51, air.dewPointCelsius(), TWO_DECIMALS);
        assertEquals((1.30 + 1.39) / 2, air.dewPointUncertainty(0, 0.05), 0.01);
        assertEquals(0.94, air.dewPointUncertainty(1, 0), TWO_DECIMALS);
        assertEquals(StrictMath.hypot(air.dewPointUncertainty(0, 0.05), air.dewPointUncertainty(1, 0)),
                air.dewPointUncertainty(1, 0.05), 1e-12);
        assertEquals(0, air.dewPointUncertainty(0, 0));
    }

    @Test
    void the_uncertainty_is_the_slope_of_the_dew_point() {
        Random random = new Random(71);
        for (int round = 0; round < 500; round++) {
            double celsius = 5 + 40 * random.nextDouble();
            double humidity = 0.05 + 0.9 * random.nextDouble();
            double byAir = slope(new MoistAir(celsius - 1e-4, humidity), new MoistAir(celsius + 1e-4, humidity), 1e-4);
            double byHumidity = slope(new MoistAir(celsius, humidity - 1e-5), new MoistAir(celsius, humidity + 1e-5), 1e-5);
            MoistAir air = new MoistAir(celsius, humidity);
            assertEquals(byAir, air.dewPointUncertainty(1, 0), 1e-6 * byAir);
            assertEquals(byHumidity, air.dewPointUncertainty(0, 1), 1e-5 * byHumidity);
        }
    }

    /** A tenth of a point of humidity or of a kelvin shifts the result by what the slope says. */
    @Test
    void the_uncertainty_elsewhere_is_how_far_the_three_readings_shift_it() {
        MoistAir air = new MoistAir(30, 0.40);
        double there = air.relativeHumidityAt(22);
        assertEquals(new MoistAir(30, 0.401).relativeHumidityAt(22) - there, air.relativeHumidityUncertaintyAt(0.001, 0, 22, 0), 1e-12);
        assertEquals(new MoistAir(30.1, 0.40).relativeHumidityAt(22) - there, air.relativeHumidityUncertaintyAt(0, 0.1, 22, 0), 2e-5);
        assertEquals(there - air.relativeHumidityAt(22.1), air.relativeHumidityUncertaintyAt(0, 0, 22, 0.1), 2e-5);
        assertEquals(Conformance.combine(air.relativeHumidityUncertaintyAt(0.03, 0, 22, 0),
                air.relativeHumidityUncertaintyAt(0, 0.6, 22, 0), air.relativeHumidityUncertaintyAt(0, 0, 22, 0.7)),
                air.relativeHumidityUncertaintyAt(0.03, 0.6, 22, 0.7), 1e-12);
    }

    private static double slope(MoistAir below, MoistAir above, double step) {
        return (above.dewPointCelsius() - below.dewPointCelsius()) / (2 * step);
    }

    @Test
    void the_dew_point_is_never_above_the_air_and_saturated_at_it() {
        Random random = new Random(72);
        for (int round = 0; round < 5000; round++) {
            MoistAir air = anyAir(random);
            double dewPoint = air.dewPointCelsius();
            assertTrue(dewPoint <= air.celsius() && Double.isFinite(dewPoint), air::toString);
            if (dewPoint >= MoistAir.LOWEST_CELSIUS) {
                assertEquals(1, MoistAir.saturationPascal(dewPoint) / air.vapourPascal(), 1e-12);
                assertEquals(1, air.relativeHumidityAt(dewPoint), 1e-12);
            }
        }
        for (double celsius = -45; celsius <= 60; celsius += 0.1) {
            assertEquals(celsius, new MoistAir(celsius, 1).dewPointCelsius(), 1e-12);
            assertTrue(new MoistAir(celsius, 1).dewPointCelsius() <= celsius);
        }
    }

    @Test
    void carried_to_another_temperature_and_back_air_has_its_humidity_and_its_dew_point_again() {
        Random random = new Random(73);
        for (int round = 0; round < 2000; round++) {
            MoistAir here = anyAir(random);
            double elsewhere = here.celsius() + (MoistAir.HIGHEST_CELSIUS - here.celsius()) * random.nextDouble();
            MoistAir there = new MoistAir(elsewhere, here.relativeHumidityAt(elsewhere));
            assertTrue(there.relativeHumidity() <= here.relativeHumidity());
            assertEquals(here.dewPointCelsius(), there.dewPointCelsius(), 1e-9);
            assertEquals(here.humidityRatio(), there.humidityRatio(), 1e-12 * here.humidityRatio());
            assertEquals(1, there.relativeHumidityAt(here.celsius()) / here.relativeHumidity(), 1e-12);
        }
    }

    @Test
    void humidity_ratio_and_vapour_pressure_are_inverse() {
        Random random = new Random(74);
        for (int round = 0; round < 1000; round++) {
            double pascal = 80_000 + 25_000 * random.nextDouble();
            double vapour = 0.9 * pascal * random.nextDouble();
            assertEquals(vapour, MoistAir.vapourPascalOf(MoistAir.humidityRatio(vapour, pascal), pascal), 1e-9 * pascal);
        }
    }

    /** 30 % at 32 degrees are 54 % at 22: the same vapour, 1.430 kPa, over 4.742 and 2.636 kPa (worked by hand). */
    @Test
    void dry_at_the_warm_end_is_not_dry_at_the_cool_end() {
        assertEquals(0.54, new MoistAir(32, 0.30).relativeHumidityAt(22), 0.005);
        assertTrue(new MoistAir(32, 0.70).relativeHumidityAt(22) > 1);
    }

    /**
     * Worked by hand from the climate table: air of 30 degrees and 80 % holds 24.3 g/m3, of 20 degrees and 50 % 8.7 g/m3,
     * which thin out to 8.4 g/m3 as the air warms to 30 degrees: 15.9 g for each m3 that leaves, or 13.7 g/h from 0.432 m3
     * twice an hour. Tolerance: the wet air holds 2.2 % less dry air than the dry, which the hand calculation leaves out.
     */
    @Test
    void a_moist_enclosure_in_a_dry_room_needs_some_grams_of_water_an_hour() {
        double grams = new MoistAir(30, 0.80).waterGramsPerHour(new MoistAir(20, 0.50), 0.432, 2);
        assertEquals(13.7, grams, 0.03 * 13.7);
    }

    @Test
    void water_is_asked_for_only_where_the_enclosure_holds_more_than_the_room_brings() {
        Random random = new Random(75);
        for (int round = 0; round < 1000; round++) {
            MoistAir room = anyAir(random);
            MoistAir inside = anyAir(random);
            double grams = inside.waterGramsPerHour(room, 0.4, 2);
            assertEquals(Math.signum(inside.humidityRatio() - room.humidityRatio()), Math.signum(grams));
            assertEquals(2 * grams, inside.waterGramsPerHour(room, 0.4, 4), 1e-9 * Math.abs(grams));
            assertEquals(0, Math.abs(inside.waterGramsPerHour(room, 0.4, 0)));
            assertEquals(0, Math.abs(inside.waterGramsPerHour(inside, 0.4, 2)));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-45.001, 60.001, 1000, Double.NaN, Double.NEGATIVE_INFINITY})
    void a_temperature_outside_the_formula_is_refused_by_name_and_value(double celsius) {
        refused("celsius is " + celsius, () -> new MoistAir(celsius, 0.5));
        refused("celsius is " + celsius, () -> MoistAir.saturationPascal(celsius));
        refused("otherCelsius is " + celsius, () -> new MoistAir(20, 0.5).relativeHumidityAt(celsius));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.0001, 60, Double.NaN, Double.POSITIVE_INFINITY})
    void a_humidity_that_cannot_be_is_refused_by_name_and_value(double humidity) {
        refused("relativeHumidity is " + humidity, () -> new MoistAir(20, humidity));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void other_numbers_that_cannot_be_are_refused_by_name_and_value(double number) {
        MoistAir air = new MoistAir(20, 0.5);
        refused("cubicMetres is " + number, () -> air.waterGramsPerHour(air, number, 2));
        refused("airChangesPerHour is " + number, () -> air.waterGramsPerHour(air, 1, number));
        refused("kelvin is " + number, () -> air.dewPointUncertainty(number, 0));
        refused("relativeHumidityDeviation is " + number, () -> air.dewPointUncertainty(0, number));
        refused("relativeHumidityDeviation is " + number, () -> air.relativeHumidityUncertaintyAt(number, 0, 20, 0));
        refused("kelvin is " + number, () -> air.relativeHumidityUncertaintyAt(0, number, 20, 0));
        refused("otherKelvin is " + number, () -> air.relativeHumidityUncertaintyAt(0, 0, 20, number));
        refused("vapourPascal is " + number, () -> MoistAir.humidityRatio(number, 101_325));
        refused("humidityRatio is " + number, () -> MoistAir.vapourPascalOf(number, 101_325));
        refused("pascal is " + number, () -> MoistAir.vapourPascalOf(0.01, number));
    }

    @Test
    void vapour_that_presses_harder_than_the_air_it_is_in_is_refused() {
        refused("vapourPascal is 101325.0", () -> MoistAir.humidityRatio(101_325, 101_325));
        refused("volume that leaves in an hour is Infinity",
                () -> new MoistAir(20, 0.5).waterGramsPerHour(new MoistAir(20, 0.4), 1e200, 1e200));
    }

    private static MoistAir air(PublishedTable.Row row) {
        return new MoistAir(row.number("t_air_C"), row.number("RH_pct") / 100);
    }

    private static MoistAir anyAir(Random random) {
        double celsius = MoistAir.LOWEST_CELSIUS + (MoistAir.HIGHEST_CELSIUS - MoistAir.LOWEST_CELSIUS) * random.nextDouble();
        return new MoistAir(celsius, 1 - random.nextDouble() * (1 - 1e-6));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
