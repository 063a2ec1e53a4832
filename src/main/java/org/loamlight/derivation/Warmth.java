package org.loamlight.derivation;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Energetics;
import org.loamlight.physics.Energetics.Range;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;

/**
 * How warm an animal is through a day, as its energy needs it: the mean of the air read by day and the mean of that read by
 * night. A snake that lies at neither end nor under the lamp all day is about as warm as the air between; this is judgement, so
 * the spread of the readings counts as uncertainty. Readings in the beam of a lamp are left out.
 *
 * @param day      by day (°C)
 * @param night    by night (°C)
 * @param dayHours hours of the day's warmth (h)
 */
record Warmth(Level day, Level night, double dayHours) {
    /** Hours the heat runs by day where no hours of light are told. Common practice, no source. */
    static final double USUAL_DAY_HOURS = 12;
    private static final double HOURS_OF_A_DAY = 24;

    /** @param uncertainty standard uncertainty; both in °C */
    record Level(double celsius, double uncertainty) {
        Amount amount() {
            return new Amount(celsius, Unit.CELSIUS);
        }

        private boolean isLived() {
            return celsius >= Energetics.COLDEST_CELSIUS && celsius <= Energetics.WARMEST_CELSIUS;
        }

        private Level shifted() {
            return new Level(Math.min(celsius + uncertainty, Energetics.WARMEST_CELSIUS), uncertainty);
        }
    }

    /** Empty when air was not read both by day and by night, or is at a temperature no reptile lives at. */
    static Optional<Warmth> of(Setup setup, List<Quantity> read) {
        Set<String> inBeam = setup.readings().stream().filter(reading -> reading.inBeam() == Stated.YES).map(Reading::subject)
                .map(subject -> subject.key()).collect(Collectors.toSet());
        List<Quantity> counting = read.stream().filter(quantity -> !inBeam.contains(quantity.source())).toList();
        Optional<Level> night = level(counting, Topic.AIR_TEMPERATURE_BY_NIGHT);
        return level(counting, Topic.AIR_TEMPERATURE_BY_DAY).flatMap(day -> night.map(dark -> new Warmth(day, dark, dayHours(setup))));
    }

    private static double dayHours(Setup setup) {
        Measure light = setup.care().lightHours();
        return light.isKnown() ? light.value() : USUAL_DAY_HOURS;
    }

    private static Optional<Level> level(List<Quantity> read, Topic topic) {
        List<Quantity> air = read.stream().filter(quantity -> quantity.topic() == topic).toList();
        if (air.isEmpty()) {
            return Optional.empty();
        }
        DoubleSummaryStatistics values = air.stream().mapToDouble(Quantity::value).summaryStatistics();
        double instrument = air.stream().mapToDouble(Quantity::uncertainty).max().orElseThrow();
        double uncertainty = Conformance.combine(instrument, Conformance.fromHalfWidth((values.getMax() - values.getMin()) / 2));
        return Optional.of(new Level(values.getAverage(), uncertainty)).filter(Level::isLived);
    }

    /** What an animal of that mass needs in a day to hold its weight (kJ). */
    Range maintenanceKilojoules(double bodyGrams) {
        double share = dayHours / HOURS_OF_A_DAY;
        Range light = Energetics.maintenanceKilojoulesPerDay(bodyGrams, day.celsius);
        Range dark = Energetics.maintenanceKilojoulesPerDay(bodyGrams, night.celsius);
        return new Range(share * light.low() + (1 - share) * dark.low(), share * light.high() + (1 - share) * dark.high());
    }

    Warmth warmerByDay() {
        return new Warmth(day.shifted(), night, dayHours);
    }

    Warmth warmerByNight() {
        return new Warmth(day, night.shifted(), dayHours);
    }
}
