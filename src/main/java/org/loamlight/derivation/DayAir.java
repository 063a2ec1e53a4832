package org.loamlight.derivation;

import java.util.Collection;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.DayTime;
import org.loamlight.setup.Instrument;
import org.loamlight.setup.Reading;
import org.loamlight.setup.ReadingOf;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;

/** The mean air of the enclosure by day, from its readings. */
final class DayAir {
    /** How far one reading may be from the mean of all air (K): judgement, half of the way from a cool to a warm end. */
    private static final double ONE_PLACE = 2;

    private DayAir() {
    }

    /**
     * The mean over the zones that were read. Empty without a reading of air by day; readings in the beam of a lamp or with an
     * infrared thermometer are none. The true mean lies anywhere between the coolest and the warmest zone.
     */
    static Optional<Uncertain> mean(Setup setup) {
        Map<Zone, List<Reading>> byZone = setup.readings().stream().filter(DayAir::counts)
                .collect(Collectors.groupingBy(reading -> reading.place().zone(), TreeMap::new, Collectors.toList()));
        return byZone.isEmpty() ? Optional.empty() : Optional.of(mean(byZone.values()));
    }

    private static boolean counts(Reading reading) {
        return reading.of() == ReadingOf.AIR_TEMPERATURE && reading.time() == DayTime.DAY && reading.value().isKnown()
                && reading.inBeam() != Stated.YES && reading.instrument() != Instrument.INFRARED_THERMOMETER;
    }

    private static Uncertain mean(Collection<List<Reading>> zones) {
        List<Uncertain> means = zones.stream().map(Uncertain::mean).toList();
        DoubleSummaryStatistics spread = means.stream().mapToDouble(Uncertain::value).summaryStatistics();
        Uncertain sum = means.stream().reduce(Uncertain.NOTHING, Uncertain::plus);
        double apart = means.size() == 1 ? ONE_PLACE : (spread.getMax() - spread.getMin()) / 2;
        return sum.times(1.0 / means.size()).and(Conformance.fromHalfWidth(apart));
    }
}
