package org.loamlight.physics;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * The light of one day at a place out of doors: how long the sun is up, and when it rises and sets. The day is the mean
 * solar day of the place, from midnight to midnight at 4 minutes for each degree of longitude from Greenwich; no time
 * zone of a country and none of the machine enters.
 *
 * <p>The sun is up while its centre stands higher than {@link #HORIZON_DEGREES}, seen from a level horizon at sea level.
 *
 * @param hours of light (h), 0 (polar night) to 24 (polar day)
 * @param rise  first sunrise of the day, to the second; empty if there is none
 * @param set   first sunset after that sunrise, or of the day if the sun does not rise, to the second; empty if there is
 *              none within the day
 */
public record DayLength(double hours, Optional<Instant> rise, Optional<Instant> set) {

    /**
     * Height of the centre of the sun at sunrise and sunset: -50', of which 34' are refraction and 16' half the sun's
     * disc (US Naval Observatory, Almanac for Computers 1990, read in three secondary sources that agree).
     */
    public static final double HORIZON_DEGREES = -50.0 / 60;

    /** First year taken: no published times were at hand from before 1750; the series behind the sun's place are modern. */
    public static final int FIRST_YEAR = 1700;

    /** Last year taken, as {@link #FIRST_YEAR}. */
    public static final int LAST_YEAR = 2300;

    private static final double SECONDS_PER_DEGREE = 240;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final Duration DAY = Duration.ofDays(1);

    /** Where to look on after an event, so that it is not found again. */
    private static final Duration STEP = Duration.ofMinutes(1);

    /** A search takes some fifty microseconds, and who audits many enclosures asks for the same few days at one place again and again. */
    private static final Memory<Day, DayLength> SEARCHED = new Memory<>(4000, Day::search);

    /** One day at one place, all that its light depends on. */
    record Day(double latitudeDegrees, double longitudeDegrees, LocalDate date) {
        DayLength search() {
            long east = StrictMath.round(longitudeDegrees * SECONDS_PER_DEGREE);
            Instant midnight = date.atStartOfDay().toInstant(ZoneOffset.UTC).minusSeconds(east);
            Instant next = midnight.plus(DAY);
            return between(midnight, next, new Sky(latitudeDegrees, longitudeDegrees).events(midnight, next));
        }
    }

    /**
     * The light of a day, from commons-suncalc. Events keep within a minute of published tables up to 60 degrees from the
     * equator; at 100 000 random places all over the earth the sun stood within 0.04 degrees of the horizon at them by
     * other equations, which where it grazes the horizon, at the polar circles, is several minutes.
     *
     * @param latitudeDegrees  -90 (south pole) to 90
     * @param longitudeDegrees -180 to 180, east of Greenwich positive
     * @param date             at the place, by its mean solar time, {@link #FIRST_YEAR} to {@link #LAST_YEAR}
     * @throws IllegalArgumentException if an argument is outside its range, with the value
     */
    public static DayLength on(double latitudeDegrees, double longitudeDegrees, LocalDate date) {
        requireWithin("latitudeDegrees", latitudeDegrees, 90);
        requireWithin("longitudeDegrees", longitudeDegrees, 180);
        if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
            throw new IllegalArgumentException(
                    "date is " + date + "; its year must lie between " + FIRST_YEAR + " and " + LAST_YEAR);
        }
        return SEARCHED.of(new Day(latitudeDegrees, longitudeDegrees, date));
    }

    private static void requireWithin(String name, double degrees, double most) {
        if (!(degrees >= -most && degrees <= most)) {
            throw Argument.refused(name, degrees, "it must lie between " + -most + " and " + most);
        }
    }

    /** From what follows one another between two moments; what stays up to the end is cut off there. */
    private static DayLength between(Instant start, Instant end, List<Event> events) {
        Duration light = Duration.ZERO;
        Instant last = start;
        for (Event event : events) {
            light = event.rises ? light : light.plus(Duration.between(last, event.at));
            last = event.at;
        }
        Optional<Instant> rise = first(events, event -> event.rises);
        Instant risen = rise.orElse(start);
        Optional<Instant> set = first(events,
                event -> !event.rises && !event.at.isBefore(risen) && event.at.isBefore(end));
        return new DayLength(light.getSeconds() / SECONDS_PER_HOUR, rise, set);
    }

    private static Optional<Instant> first(List<Event> events, Predicate<Event> wanted) {
        return events.stream().filter(wanted).map(Event::at).findFirst();
    }

    /** The sun comes up or goes down. */
    private record Event(Instant at, boolean rises) {
    }

    /** The sky over one place. */
    private record Sky(double latitudeDegrees, double longitudeDegrees) {

        /**
         * All events from {@code start} to {@code end}, in order; if the sun is up at the end, that counts as a last
         * set. Where the sun grazes the horizon three and more fit into a day. Light always ends with a set, so an event
         * that is found twice, or one of a pair that is lost within {@link #STEP}, costs no more than a minute or two.
         */
        List<Event> events(Instant start, Instant end) {
            List<Event> events = new ArrayList<>();
            SunTimes ahead = ahead(start, end);
            while (ahead.getRise() != null || ahead.getSet() != null) {
                Event next = earlier(ahead.getRise(), ahead.getSet());
                events.add(next);
                ahead = ahead(next.at.plus(STEP), end);
            }
            if (ahead.isAlwaysUp()) {
                events.add(new Event(end, false));
            }
            return events;
        }

        private static Event earlier(ZonedDateTime rise, ZonedDateTime set) {
            boolean rises = set == null || rise != null && rise.isBefore(set);
            return new Event((rises ? rise : set).toInstant(), rises);
        }

        /** The next rise and the next set. The library starts from the clock and its zone; both are set here. */
        private SunTimes ahead(Instant from, Instant end) {
            Instant start = from.isBefore(end) ? from : end;
            return SunTimes.compute()
                    .on(start.atZone(ZoneOffset.UTC))
                    .limit(Duration.between(start, end))
                    .at(latitudeDegrees, longitudeDegrees)
                    .twilight(HORIZON_DEGREES)
                    .execute();
        }
    }
}
