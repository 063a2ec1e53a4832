package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.loamlight.criterion.Form;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.finding.Applies;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Held;
import org.loamlight.finding.Missing;
import org.loamlight.finding.RuleName;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.FurnishingKind;
import org.loamlight.setup.Instrument;
import org.loamlight.setup.Reading;
import org.loamlight.setup.ReadingOf;
import org.loamlight.setup.Sex;
import org.loamlight.setup.Stage;
import org.loamlight.setup.Stated;

/** Limits and five rules of logic as somebody would write them who has no rule engine. */
final class FiveRulesByHand implements WayOfJudging {
    static final String LIT_TOO_WIDE = "light.uv-coverage wide";
    static final String UNHEATED = "heat.night-support unheated";
    static final String BARE_WAY = "cover.basking-both-ways";
    static final String GRAVID_UNTOLD = "substrate.laying-site gravid-told";
    static final String EMISSIVITY_UNTOLD = "monitoring.surface-thermometer emissivity-told";

    private static final Set<FurnishingKind> NOTHING_TO_LIE_ON = EnumSet.of(FurnishingKind.HIDE, FurnishingKind.HUMID_HIDE, FurnishingKind.LEAF_LITTER,
            FurnishingKind.WATER_DISH, FurnishingKind.BACKGROUND, FurnishingKind.PLANT);

    private final LimitsByHand limits = new LimitsByHand(Held::of);

    @Override
    public Statements judge(Auditor.Asked asked) {
        FactsByKind facts = new FactsByKind(asked.facts());
        List<Voided> voided = limits.voided(facts);
        List<Fault> faults = new ArrayList<>();
        litTooWide(facts, faults);
        unheated(facts, faults);
        bareWay(facts, faults);
        List<Missing> missing = new ArrayList<>();
        gravidUntold(facts, missing);
        emissivityUntold(facts, missing);
        return new Statements(faults, missing, limits.held(facts, voided), voided, List.of());
    }

    private static List<Applies> asked(FactsByKind facts, String rule) {
        return facts.applies(RuleName.criterion(rule));
    }

    private static void litTooWide(FactsByKind facts, List<Fault> faults) {
        List<ResolvedLimit> limits = facts.limits(RuleName.criterion(LIT_TOO_WIDE));
        for (ResolvedLimit limit : limits) {
            for (Quantity share : facts.quantities(limit.topic())) {
                if (share.value() > limit.high() && limits.stream().noneMatch(one -> one.grade() == Grade.MAJOR && one.high() < share.value())) {
                    add(new Fault(LIT_TOO_WIDE, limit.subject(), share), faults);
                }
            }
        }
    }

    private static void unheated(FactsByKind facts, List<Fault> faults) {
        if (facts.heaters.stream().anyMatch(heater -> heater.onAtNight() == Stated.YES)) {
            return;
        }
        for (Applies one : asked(facts, UNHEATED)) {
            for (ResolvedLimit limit : facts.limits(one.criterion())) {
                facts.quantities(Topic.COLD_ROOM_AIR_BY_NIGHT).stream().filter(air -> air.value() < limit.low())
                        .forEach(air -> add(new Fault(UNHEATED, one.subject(), air), faults));
            }
        }
    }

    private static void bareWay(FactsByKind facts, List<Fault> faults) {
        boolean isTold = !facts.furnishings.isEmpty() || !facts.quantities(Topic.COVER_PIECES).isEmpty();
        if (isTold && facts.furnishings.stream().noneMatch(FiveRulesByHand::mayCoverTheWay)) {
            asked(facts, BARE_WAY).forEach(one -> faults.add(new Fault(BARE_WAY, one.subject())));
        }
    }

    private static boolean mayCoverTheWay(Furnishing piece) {
        return piece.beneath() == Stated.YES || piece.beneath() == Stated.UNKNOWN && !NOTHING_TO_LIE_ON.contains(piece.kind());
    }

    private static void gravidUntold(FactsByKind facts, List<Missing> missing) {
        if (facts.substrates.stream().anyMatch(substrate -> substrate.layingSite() == Stated.YES)) {
            return;
        }
        for (Applies one : asked(facts, GRAVID_UNTOLD)) {
            facts.animals.stream().filter(animal -> animal.name().equals(one.subject().name()) && mayLay(animal, facts))
                    .forEach(animal -> missing.add(new Missing(GRAVID_UNTOLD, one.subject(), "animals[].gravid")));
        }
    }

    private static boolean mayLay(Animal animal, FactsByKind facts) {
        return animal.sex() == Sex.FEMALE && animal.stage() == Stage.ADULT && animal.health().gravid() == Stated.UNKNOWN
                && facts.species.get(animal.species()).form() == Form.SNAKE;
    }

    private static void emissivityUntold(FactsByKind facts, List<Missing> missing) {
        if (facts.readings.stream().anyMatch(FiveRulesByHand::isInfraredSurface)
                && facts.monitoring.stream().anyMatch(monitoring -> monitoring.emissivity() == Stated.UNKNOWN)) {
            asked(facts, EMISSIVITY_UNTOLD).forEach(one -> missing.add(new Missing(EMISSIVITY_UNTOLD, one.subject(), "monitoring.emissivity-suits")));
        }
    }

    private static boolean isInfraredSurface(Reading reading) {
        return reading.of() == ReadingOf.SURFACE_TEMPERATURE && reading.instrument() == Instrument.INFRARED_THERMOMETER;
    }

    /** Two limits may find the same wrong; it is stated once. */
    private static void add(Fault fault, List<Fault> faults) {
        if (!faults.contains(fault)) {
            faults.add(fault);
        }
    }
}
