package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DayLengthTest {

    /** Tables print whole minutes and were made by other equations: 1 minute for an event, so 2 for the length. */
    private static final double EVENT_MINUTES = 1;
    private static final double LENGTH_MINUTES = 2;

    static List<PublishedTable.Row> tables() {
        return PublishedTable.read("light-daylength.csv").rows();
    }

    @Test
    void all_eighteen_rows_are_read() {
        assertEquals(18, tables().size());
    }

    /** One-year tables of the US Naval Observatory, as carried in the public sources named in each row. */
    @ParameterizedTest
    @MethodSource("tables")
    void length_rise_and_set_follow_the_tables_of_the_naval_observatory(PublishedTable.Row row) {
        DayLength day = day(row);
        assertEquals(row.number("day_length_min"), 60 * day.hours(), LENGTH_MINUTES);
        assertEquals(0, minutesLate(row, "sunrise_hhmm", day.rise()), EVENT_MINUTES, "rise");
        assertEquals(0, minutesLate(row, "sunset_hhmm_24plus_means_next_day", day.set()), EVENT_MINUTES, "set");
    }

    /**
     * The same converted tables at 89 N 30 E for 2022: up from 20 March 23:14 to 22 September 20:14 UTC. The sun climbs
     * there by less than half a minute of arc in an hour, so 15 minutes are 0.1 minute of arc, as fine as refraction is
     * known at best.
     */
    @Test
    void at_89_north_the_sun_comes_up_in_march_and_goes_down_in_september() {
        Duration spring = Duration.between(Instant.parse("2022-03-20T23:14:00Z"), at89("2022-03-21").rise().orElseThrow());
        Duration autumn = Duration.between(Instant.parse("2022-09-22T20:14:00Z"), at89("2022-09-22").set().orElseThrow());
        assertEquals(0, spring.toSeconds() / 60.0, 15);
        assertEquals(0, autumn.toSeconds() / 60.0, 15);
        assertEquals(Optional.empty(), at89("2022-03-21").set());
    }

    @Test
    void between_them_every_day_has_24_hours_and_in_winter_none() {
        for (LocalDate on = LocalDate.of(2022, 3, 22); on.isBefore(LocalDate.of(2022, 9, 22)); on = on.plusDays(1)) {
            assertEquals(new DayLength(24, Optional.empty(), Optional.empty()), DayLength.on(89, 30, on));
        }
        for (LocalDate on = LocalDate.of(2022, 10, 5); on.isBefore(LocalDate.of(2023, 3, 8)); on = on.plusDays(1)) {
            assertEquals(new DayLength(0, Optional.empty(), Optional.empty()), DayLength.on(89, 30, on));
        }
    }

    @ParameterizedTest
    @CsvSource({"90, 2022-06-21, 24", "90, 2022-12-21, 0", "-90, 2022-06-21, 0", "-90, 2022-12-21, 24"})
    void at_the_poles_half_the_year_is_day(double latitude, String date, double hours) {
        assertEquals(hours, DayLength.on(latitude, 0, LocalDate.parse(date)).hours());
    }

    /**
     * At random places over the whole earth (seeded), the light lies between that of a horizon 0.05 degrees higher and that
     * of one 0.05 degrees lower, sampled every half minute with the equations of {@link LowPrecisionSun}. Measured so,
     * the check is as sharp at the polar circles as at the equator; the sampling itself makes up to a minute.
     */
    @Test
    void everywhere_the_light_is_that_of_an_independent_sun_within_a_twentieth_of_a_degree() {
        Random random = new Random(41);
        for (int i = 0; i < 400; i++) {
            double latitude = 180 * random.nextDouble() - 90;
            double longitude = 360 * random.nextDouble() - 180;
            LocalDate on = LocalDate.of(1990, 1, 1).plusDays(random.nextInt(20_000));
            double hours = DayLength.on(latitude, longitude, on).hours();
            LowPrecisionSun sun = new LowPrecisionSun(latitude, longitude);
            double least = sun.hoursAbove(DayLength.HORIZON_DEGREES + 0.05, on) - 1 / 60.0;
            double most = sun.hoursAbove(DayLength.HORIZON_DEGREES - 0.05, on) + 1 / 60.0;
            assertTrue(hours >= least && hours <= most, () -> latitude + " " + longitude + " " + on + ": " + hours
                    + " h, not from " + least + " to " + most);
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void the_independent_sun_stands_at_the_horizon_at_the_published_times(PublishedTable.Row row) {
        LowPrecisionSun sun = new LowPrecisionSun(row.number("lat_deg"), row.number("lon_deg_east"));
        // Half a minute of rounding is at most an eighth of a degree.
        assertEquals(DayLength.HORIZON_DEGREES, sun.heightDegrees(published(row, "sunrise_hhmm")), 0.13);
        assertEquals(DayLength.HORIZON_DEGREES,
                sun.heightDegrees(published(row, "sunset_hhmm_24plus_means_next_day")), 0.13);
    }

    @Test
    void hours_are_those_from_rise_to_set_where_there_is_one_of_each() {
        DayLength day = DayLength.on(52, 13, LocalDate.of(2024, 4, 10));
        Duration light = Duration.between(day.rise().orElseThrow(), day.set().orElseThrow());
        assertEquals(light.toSeconds() / 3600.0, day.hours(), 1e-12);
    }

    /** Close to the polar circle the short night moves over midnight, so that a day can hold two sets and one rise. */
    @Test
    void where_the_night_crosses_midnight_the_light_of_both_its_sides_counts() {
        double most = 0;
        for (LocalDate on = LocalDate.of(2023, 5, 1); on.isBefore(LocalDate.of(2023, 8, 15)); on = on.plusDays(1)) {
            double hours = DayLength.on(66, 25, on).hours();
            double before = DayLength.on(66, 25, on.minusDays(1)).hours();
            assertTrue(StrictMath.abs(hours - before) < 1.5, on + ": " + before + " then " + hours);
            most = StrictMath.max(most, hours);
        }
        assertEquals(24, most);
    }

    /** Seeded: what is summer in the north is winter in the south; light and night swap but for the 50' and the orbit. */
    @Test
    void half_a_year_later_the_other_hemisphere_has_the_same_light() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            double latitude = 55 * random.nextDouble();
            LocalDate on = LocalDate.of(2020, 1, 1).plusDays(random.nextInt(3000));
            double here = DayLength.on(latitude, 20, on).hours();
            double there = DayLength.on(-latitude, 20, on.plusDays(183)).hours();
            assertEquals(here, there, 0.5, () -> latitude + " on " + on);
        }
    }

    @Test
    void neither_the_zone_of_the_machine_nor_the_side_of_the_date_line_matters() {
        LocalDate on = LocalDate.of(2024, 2, 29);
        DayLength expected = DayLength.on(-17.5, 179.9, on);
        TimeZone before = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertEquals(expected, new DayLength.Day(-17.5, 179.9, on).search());
        } finally {
            TimeZone.setDefault(before);
        }
        assertEquals(expected.hours(), DayLength.on(-17.5, -179.9, on).hours(), 0.05);
    }

    /** Seeded. */
    @Test
    void a_day_asked_for_before_has_the_same_light_as_one_that_is_searched() {
        Random random = new Random(3);
        for (int i = 0; i < 300; i++) {
            DayLength.Day day = new DayLength.Day(random.nextInt(181) - 90, random.nextInt(361) - 180,
                    LocalDate.of(2026, 1, 1).plusDays(random.nextInt(365)));
            DayLength first = DayLength.on(day.latitudeDegrees(), day.longitudeDegrees(), day.date());
            assertEquals(day.search(), first, day::toString);
            assertSame(first, DayLength.on(day.latitudeDegrees(), day.longitudeDegrees(), day.date()), day::toString);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {90.1, -90.1, Double.NaN, Double.POSITIVE_INFINITY})
    void a_latitude_off_the_globe_is_refused_with_its_value(double degrees) {
        refused("latitudeDegrees is " + degrees, () -> DayLength.on(degrees, 0, LocalDate.of(2024, 1, 1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {180.1, -181, Double.NaN, Double.NEGATIVE_INFINITY})
    void a_longitude_off_the_globe_is_refused_with_its_value(double degrees) {
        refused("longitudeDegrees is " + degrees, () -> DayLength.on(0, degrees, LocalDate.of(2024, 1, 1)));
    }

    @Test
    void a_year_for_which_nothing_was_checked_is_refused() {
        refused("date is 1699-12-31", () -> DayLength.on(0, 0, LocalDate.of(1699, 12, 31)));
        refused("date is +999999999-12-31", () -> DayLength.on(0, 0, LocalDate.MAX));
    }

    private static DayLength at89(String date) {
        return DayLength.on(89, 30, LocalDate.parse(date));
    }

    private static DayLength day(PublishedTable.Row row) {
        return DayLength.on(row.number("lat_deg"), row.number("lon_deg_east"), LocalDate.parse(row.cell("date_of_rise")));
    }

    private static double minutesLate(PublishedTable.Row row, String column, Optional<Instant> computed) {
        return Duration.between(published(row, column), computed.orElseThrow()).toSeconds() / 60.0;
    }

    private static Instant published(PublishedTable.Row row, String column) {
        String[] time = row.cell(column).split(":");
        ZoneOffset zone = ZoneOffset.ofHours((int) row.number("tz_hours"));
        return LocalDate.parse(row.cell("date_of_rise")).atStartOfDay().toInstant(zone)
                .plus(Duration.ofHours(Long.parseLong(time[0])).plusMinutes(Long.parseLong(time[1])));
    }

    private static void refused(String said, Runnable call) {
        String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
        assertTrue(message.startsWith(said), message);
    }
}
