package org.loamlight.derivation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.DayLength;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * Hours of light, as set and as the sun gives them. As set: what the keeper says of the day, else the longest hours of all
 * lamps and of the heaters that shine, once each of them is told. Light of the room is in neither.
 */
final class DayAndNight {
    private static final String ROOM = "room";
    private static final int SUMMER = 6;
    private static final int WINTER = 12;
    /** Within hours of either solstice in our century; the length of the day does not change by a minute there. */
    private static final int SOLSTICE = 21;
    private static final double POLE = 90;
    /** Longitude is not asked for; it moves the length of a day by less than what it changes from one day to the next. */
    private static final double GREENWICH = 0;

    private final Setup setup;
    private final LocalDate on;

    DayAndNight(Setup setup, LocalDate on) {
        this.setup = setup;
        this.on = on;
    }

    List<Quantity> quantities() {
        Optional<Quantity> natural = natural();
        List<Step> outside = natural.map(Quantity::trail).orElse(List.of());
        return Stream.of(light(outside), natural).flatMap(Optional::stream).toList();
    }

    private Optional<Quantity> light(List<Step> outside) {
        Measure told = setup.care().lightHours();
        if (told.isKnown()) {
            return Optional.of(light(new Lit("care", told), outside));
        }
        return longest().map(lit -> light(lit, Stream.concat(Stream.of(Step.of("light-of-longest", lit.name())), outside.stream()).toList()));
    }

    private static Quantity light(Lit lit, List<Step> trail) {
        return new Quantity(Topic.LIGHT_HOURS, Place.ANYWHERE, lit.hours.value(), lit.hours.standardUncertainty(),
                new Origin(Method.STATED, lit.source, ""), trail);
    }

    /** @param source subject key of what shines, or the section that tells of the day */
    private record Lit(String source, Measure hours) {
        String name() {
            return source.substring(source.indexOf(':') + 1);
        }
    }

    private Optional<Lit> longest() {
        List<Lit> lit = new ArrayList<>();
        setup.lamps().stream().map(lamp -> lit(lamp)).forEach(lit::add);
        setup.heaters().stream().filter(heater -> heater.glows() == Stated.YES).map(heater -> lit(heater)).forEach(lit::add);
        boolean told = setup.told().has("lamps", Subject.ENCLOSURE) && lit.stream().allMatch(one -> one.hours.isKnown());
        return told ? lit.stream().max(Comparator.comparingDouble(one -> one.hours.value())) : Optional.empty();
    }

    private static Lit lit(Lamp lamp) {
        return new Lit(lamp.subject().key(), lamp.hours());
    }

    private static Lit lit(Heater heater) {
        return new Lit(heater.subject().key(), heater.hours());
    }

    private Optional<Quantity> natural() {
        Measure latitude = setup.room().latitude();
        boolean computable = latitude.isKnown() && on.getYear() >= DayLength.FIRST_YEAR && on.getYear() <= DayLength.LAST_YEAR;
        return computable ? Optional.of(natural(latitude)) : Optional.empty();
    }

    private Quantity natural(Measure latitude) {
        double hours = hours(latitude.value(), on);
        double north = hours(Math.min(POLE, latitude.value() + latitude.standardUncertainty()), on);
        double south = hours(Math.max(-POLE, latitude.value() - latitude.standardUncertainty()), on);
        double uncertainty = Math.max(Math.abs(north - hours), Math.abs(south - hours));
        return new Quantity(Topic.NATURAL_DAY_LENGTH, Place.ANYWHERE, hours, uncertainty, new Origin(Method.COMPUTED, ROOM, ""),
                List.of(sun(latitude, hours)));
    }

    private Step sun(Measure latitude, double hours) {
        double summer = hours(latitude.value(), LocalDate.of(on.getYear(), SUMMER, SOLSTICE));
        double winter = hours(latitude.value(), LocalDate.of(on.getYear(), WINTER, SOLSTICE));
        return Step.of("sun-is-up", latitude.amount(), amount(hours), amount(Math.min(summer, winter)), amount(Math.max(summer, winter)));
    }

    private static double hours(double latitudeDegrees, LocalDate day) {
        return DayLength.on(latitudeDegrees, GREENWICH, day).hours();
    }

    private static Amount amount(double hours) {
        return new Amount(hours, Unit.HOUR);
    }
}
