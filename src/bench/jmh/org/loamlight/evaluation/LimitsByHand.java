package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import org.loamlight.criterion.LimitUse;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.finding.Held;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Instrument;
import org.loamlight.setup.Monitoring;
import org.loamlight.setup.Reading;
import org.loamlight.setup.ReadingOf;
import org.loamlight.setup.Stated;

/** What {@code rules/limits.drl} holds and what the rules of the thermometers void, in loops. */
final class LimitsByHand implements WayOfJudging {
    private static final String BEAM = "monitoring.air-thermometer beam voids";
    private static final String INFRARED = "monitoring.air-thermometer infrared voids";
    private static final String UNSUITED = "monitoring.surface-thermometer unsuited voids";

    private final BiFunction<Quantity, ResolvedLimit, Held> holding;

    /** @param holding decides of a value and a limit that is meant for it */
    LimitsByHand(BiFunction<Quantity, ResolvedLimit, Held> holding) {
        this.holding = holding;
    }

    @Override
    public Statements judge(Auditor.Asked asked) {
        FactsByKind facts = new FactsByKind(asked.facts());
        List<Voided> voided = voided(facts);
        return new Statements(List.of(), List.of(), held(facts, voided), voided, List.of());
    }

    List<Held> held(FactsByKind facts, List<Voided> voided) {
        Set<Quantity> out = new HashSet<>();
        voided.forEach(one -> out.add(one.quantity()));
        List<Held> held = new ArrayList<>();
        facts.limits.values().stream().flatMap(List::stream).filter(limit -> limit.use() != LimitUse.OWN_RULES)
                .forEach(limit -> hold(limit, facts.quantities(limit.topic()), out, held));
        return held;
    }

    private void hold(ResolvedLimit limit, List<Quantity> quantities, Set<Quantity> out, List<Held> held) {
        for (Quantity quantity : quantities) {
            if (quantity.place().isWithin(limit.place()) && (out.isEmpty() || !out.contains(quantity))) {
                held.add(holding.apply(quantity, limit));
            }
        }
    }

    List<Voided> voided(FactsByKind facts) {
        List<Voided> voided = new ArrayList<>();
        for (Reading reading : facts.readings) {
            boolean isInfrared = reading.instrument() == Instrument.INFRARED_THERMOMETER;
            boolean isAir = reading.of() == ReadingOf.AIR_TEMPERATURE;
            voidIf(isAir && reading.inBeam() == Stated.YES, facts.from(reading), BEAM, voided);
            voidIf(isAir && isInfrared, facts.from(reading), INFRARED, voided);
            voidIf(reading.of() == ReadingOf.SURFACE_TEMPERATURE && isInfrared && isUnsuited(facts), facts.from(reading), UNSUITED, voided);
        }
        return voided;
    }

    private static boolean isUnsuited(FactsByKind facts) {
        return facts.monitoring.stream().map(Monitoring::emissivity).anyMatch(emissivity -> emissivity == Stated.NO);
    }

    private static void voidIf(boolean counts, List<Quantity> quantities, String by, List<Voided> voided) {
        if (counts) {
            quantities.forEach(quantity -> voided.add(new Voided(quantity, by)));
        }
    }
}
