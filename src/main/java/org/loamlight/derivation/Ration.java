package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Energetics;
import org.loamlight.physics.Energetics.Range;
import org.loamlight.physics.Meal;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Diet;
import org.loamlight.setup.Measure;

/**
 * The usual meal of one animal against what holds its weight: net energy of the meal over maintenance for the days until the
 * next ({@link Meal}, {@link Energetics}). Growth, eggs and fat for the winter are no maintenance.
 *
 * @param meal  prey of one meal (g)
 * @param every days between meals
 * @param body  body mass (g)
 * @param kilojoulesPerGram metabolisable energy of the prey as fed (kJ/g)
 */
record Ration(Measure meal, Measure every, Measure body, double kilojoulesPerGram, Warmth warmth) {

    /** Empty when meal, interval or mass are not told or the energy of the prey is not known. */
    static Optional<Ration> of(Animal animal, Warmth warmth) {
        Diet diet = animal.diet();
        boolean told = Stream.of(diet.meal(), diet.every(), animal.mass()).allMatch(Measure::isKnown) && diet.prey().isKnown();
        return told ? Optional.of(new Ration(diet.meal(), diet.every(), animal.mass(), diet.prey().kilojoulesPerGram(), warmth))
                : Optional.empty();
    }

    /** Energy fed over maintenance (no unit): the middle of what the ranges of digestion and of maintenance allow. */
    double intake() {
        return middle(range());
    }

    /**
     * Standard uncertainty of it: the ranges taken as limits (JCGM 100:2008, 4.3.7), each answer by the power with which it
     * enters (5.1.2), the temperatures by moving them.
     */
    double uncertainty() {
        Range range = range();
        double intake = middle(range);
        double models = Conformance.fromHalfWidth((range.high() - range.low()) / 2);
        double answers = intake * Conformance.combine(relative(meal), relative(every), Energetics.MASS_EXPONENT * relative(body));
        double byDay = Math.abs(with(warmth.warmerByDay()).intake() - intake);
        double byNight = Math.abs(with(warmth.warmerByNight()).intake() - intake);
        return Conformance.combine(models, answers, byDay, byNight);
    }

    private static double relative(Measure measure) {
        return measure.standardUncertainty() / measure.value();
    }

    private Ration with(Warmth other) {
        return new Ration(meal, every, body, kilojoulesPerGram, other);
    }

    private Range range() {
        return prey().intakeOverMaintenance(every.value(), warmth.maintenanceKilojoules(body.value()));
    }

    private Meal prey() {
        return new Meal(meal.value(), kilojoulesPerGram);
    }

    private static double middle(Range range) {
        return (range.low() + range.high()) / 2;
    }

    List<Step> trail() {
        Range net = prey().netKilojoules();
        Range need = warmth.maintenanceKilojoules(body.value());
        return List.of(
                Step.of("energy-fed", meal.amount(), every.amount(), kilojoules(net.low() / every.value()), kilojoules(net.high() / every.value())),
                Step.of("warm-by-day-and-night", warmth.day().amount(), warmth.night().amount()),
                Step.of("energy-needed", body.amount(), kilojoules(need.low()), kilojoules(need.high())),
                Step.of("energy-without-growth"));
    }

    private static Amount kilojoules(double value) {
        return new Amount(value, Unit.KILOJOULE);
    }
}
