package org.loamlight.derivation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.LampStrength;
import org.loamlight.physics.LightField;
import org.loamlight.physics.UvSource;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Instrument;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampKind;
import org.loamlight.setup.LampReading;
import org.loamlight.setup.Screen;
import org.loamlight.setup.Stated;

/**
 * How strong a lamp is below whatever is mounted under it, by the readings taken beneath it.
 *
 * @param strength    index times square metre, see {@link LampStrength}
 * @param uncertainty standard uncertainty, in the same unit
 * @param method      COMPUTED from meter readings, MODELLED from the maker's chart, SEEN where nothing can pass
 * @param on          ISO date of the oldest reading used; empty when none is dated
 * @param readings    steps that tell of the readings
 * @param screens     steps that tell of what the light passes and was not read through
 */
record LampOutput(double strength, double uncertainty, Method method, String on, List<Step> readings, List<Step> screens) {

    /** Of a lamp below which nothing lets UV-B pass. */
    static final LampOutput NONE = new LampOutput(0, 0, Method.SEEN, "", List.of(Step.of("uv-blocked")), List.of());

    /** Least uncertainty of an index that somebody calls exact: below every display, so that it can be weighed at all. */
    private static final double SUREST = 1e-6;

    /**
     * From the usable readings of a lamp: those by a meter before those of a chart, those taken through what lies between before
     * those that need a guess of it. One alone is scaled by the law of its shape; of several the best fit is taken, unless they
     * contradict the law: then the one nearest to the distance asked for, so that the law has the least to bridge, as
     * uncertain as all of them together. Empty without a usable reading: none with index and distance, or
     * none of which it is told what lay between.
     *
     * @param shape              of the lamp; where it hangs does not matter
     * @param distanceOfInterest (cm) to the closest resting place; NaN when not known, then the farthest reading is taken
     */
    static Optional<LampOutput> of(Lamp lamp, UvSource shape, double distanceOfInterest) {
        List<LampReading> usable = preferred(lamp);
        return usable.isEmpty() ? Optional.empty() : Optional.of(of(lamp, shape, usable, distanceOfInterest));
    }

    private static List<LampReading> preferred(Lamp lamp) {
        List<LampReading> usable = lamp.readings().stream().filter(reading -> reading.index().isKnown() && reading.distance().isKnown())
                .filter(reading -> isScreeningTold(lamp, reading)).toList();
        return preferred(preferred(usable, reading -> reading.instrument() != Instrument.LAMP_CHART), reading -> reading.through() == Stated.YES);
    }

    private static List<LampReading> preferred(List<LampReading> readings, Predicate<LampReading> better) {
        List<LampReading> best = readings.stream().filter(better).toList();
        return best.isEmpty() ? readings : best;
    }

    private static boolean isScreeningTold(Lamp lamp, LampReading reading) {
        return reading.through() == Stated.YES
                || lamp.betweenTold() == Stated.YES && (lamp.between().isEmpty() || reading.through() == Stated.NO);
    }

    private static LampOutput of(Lamp lamp, UvSource shape, List<LampReading> usable, double distanceOfInterest) {
        LampStrength fit = LampStrength.of(shape, usable.stream().map(reading -> reading(lamp, reading)).toList());
        List<LampReading> used = fit.isContradicted() ? List.of(nearest(usable, distanceOfInterest)) : usable;
        LampStrength strength = fit.isContradicted() ? asUncertainAs(fit, LampStrength.of(shape, List.of(reading(lamp, used.get(0))))) : fit;
        List<Screen> screens = used.get(0).through() == Stated.YES ? List.of() : lamp.between();
        double passed = screens.stream().mapToDouble(Screen::share).reduce(1, (one, other) -> one * other);
        double bare = strength.indexSquareMetres();
        double uncertainty = Conformance.combine(strength.standardUncertainty() * passed, bare * passed * relative(screens));
        return new LampOutput(bare * passed, uncertainty, method(used), oldest(used), steps(lamp, usable, used), steps(screens));
    }

    private static LampStrength asUncertainAs(LampStrength fit, LampStrength one) {
        return new LampStrength(one.indexSquareMetres(), Math.max(one.standardUncertainty(), fit.standardUncertainty()), fit.farthestDeviation());
    }

    private static LampReading nearest(List<LampReading> usable, double distanceOfInterest) {
        Comparator<LampReading> byDistance = Double.isNaN(distanceOfInterest) ? Comparator.comparingDouble(reading -> -reading.distance().value())
                : Comparator.comparingDouble(reading -> Math.abs(reading.distance().value() - distanceOfInterest));
        return usable.stream().min(byDistance).orElseThrow();
    }

    /** Its distance counts with the local exponent of the law (JCGM 100:2008, 5.1.2). */
    private static LampStrength.Reading reading(Lamp lamp, LampReading reading) {
        Metres distance = Metres.of(reading.distance());
        double byDistance = reading.index().value() * exponent(lamp, distance.value()) * distance.uncertainty() / distance.value();
        double uncertainty = Conformance.combine(reading.index().standardUncertainty(), byDistance);
        return new LampStrength.Reading(reading.index().value(), Math.max(SUREST, uncertainty), distance.value());
    }

    private static double exponent(Lamp lamp, double metres) {
        return lamp.kind() == LampKind.UV_TUBE ? LightField.localExponent(metres, Metres.of(lamp.arcLength()).value()) : LightField.POINT_EXPONENT;
    }

    private static double relative(List<Screen> screens) {
        return Conformance.combine(screens.stream().filter(screen -> screen.share() > 0)
                .mapToDouble(screen -> screen.shareUncertainty() / screen.share()).toArray());
    }

    private static Method method(List<LampReading> used) {
        return used.get(0).instrument() == Instrument.LAMP_CHART ? Method.MODELLED : Method.COMPUTED;
    }

    private static String oldest(List<LampReading> used) {
        return used.stream().map(LampReading::on).flatMap(Optional::stream).min(Comparator.naturalOrder()).map(LocalDate::toString).orElse("");
    }

    private static List<Step> steps(Lamp lamp, List<LampReading> usable, List<LampReading> used) {
        List<Step> steps = new ArrayList<>();
        used.forEach(reading -> steps.add(Step.of("from-lamp-reading", reading.index().amount(), reading.distance().amount())));
        if (used.size() < usable.size()) {
            steps.add(Step.of("readings-contradict", String.valueOf(usable.size()), lamp.name()));
        }
        return steps;
    }

    /** Steps that tell of what the light passes. */
    static List<Step> steps(List<Screen> screens) {
        return screens.stream().map(screen -> Step.of("through-screen", screen.kind(),
                new Amount(Unit.FRACTION.convert(screen.share(), Unit.PERCENT), Unit.PERCENT))).toList();
    }
}
