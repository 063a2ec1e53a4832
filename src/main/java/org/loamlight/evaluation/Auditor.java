package org.loamlight.evaluation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.kie.api.runtime.ClassObjectFilter;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.AgendaFilter;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Lives;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.derivation.Axis;
import org.loamlight.derivation.Derivation;
import org.loamlight.derivation.Wanted;
import org.loamlight.finding.Applies;
import org.loamlight.finding.Explains;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Finding;
import org.loamlight.finding.FromReading;
import org.loamlight.finding.Held;
import org.loamlight.finding.Missing;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Reading;
import org.loamlight.setup.Setup;

/** Audits setups. One instance serves all threads. */
public final class Auditor {
    /** Far more rules than any setup can fire; reaching it means rules that feed themselves. */
    private static final int MOST_FIRINGS = 200_000;

    private final Knowledge knowledge;
    private final Supplier<RuleBase> rules;
    private final AgendaFilter fires;

    public Auditor(Knowledge knowledge, RuleBase rules) {
        this(knowledge, () -> rules);
    }

    /** @param rules asked for the rules in each audit after its quantities were computed, so that they can be loaded meanwhile */
    public Auditor(Knowledge knowledge, Supplier<RuleBase> rules) {
        this(knowledge, rules, match -> true);
    }

    /** @param fires which matches fire; tests switch rules off with it to see whether anything notices */
    Auditor(Knowledge knowledge, RuleBase rules, AgendaFilter fires) {
        this(knowledge, () -> rules, fires);
    }

    private Auditor(Knowledge knowledge, Supplier<RuleBase> rules, AgendaFilter fires) {
        this.knowledge = knowledge;
        this.rules = rules;
        this.fires = fires;
    }

    /**
     * Audits one setup.
     *
     * @param on day of the audit
     * @throws AuditFailure when a rule fails, the rules do not come to rest, or state something about a pair nobody asked for
     */
    public Audit audit(Setup setup, LocalDate on) {
        Asked asked = ask(setup, on);
        return new Audit(setup, on, knowledge, asked.quantities(), judge(asked, List.of()));
    }

    /**
     * What has to be judged of a setup and what is known of it, before any rule.
     *
     * @param facts all that rules see of it
     */
    record Asked(Pairs pairs, List<Pairs.Listed> listed, List<Quantity> quantities, List<Object> facts) {
    }

    Asked ask(Setup setup, LocalDate on) {
        Pairs pairs = new Pairs(setup, knowledge);
        List<Pairs.Listed> listed = pairs.all();
        List<Quantity> quantities = Derivation.quantities(setup, axis(setup), on, wanted(listed));
        return new Asked(pairs, listed, quantities, facts(setup, quantities, listed));
    }

    /**
     * @param given statements that stand beside those of the rules
     * @throws AuditFailure as {@link #audit} does
     */
    List<Finding> judge(Asked asked, Collection<?> given) {
        return new Closing(asked.pairs(), evaluate(asked, given), asked.quantities()).close(asked.listed());
    }

    /** What the animals want, for values that are computed towards a limit: hours until the air is too cold. Codes do not move them. */
    private static Wanted wanted(List<Pairs.Listed> listed) {
        Wanted.Builder wanted = new Wanted.Builder();
        for (Pairs.Listed pair : listed) {
            for (ResolvedLimit limit : pair.limits().limits()) {
                if (pair.criterion().isOfCode()) {
                    wanted.ask(limit.topic());
                } else {
                    wanted.add(limit.topic(), limit.low(), limit.high());
                }
            }
        }
        return wanted.build();
    }

    private Axis axis(Setup setup) {
        return axis(setup, knowledge);
    }

    /** Along which axis ends, cover and heat are looked at: the height where all animals live in trees, else the length. */
    public static Axis axis(Setup setup, Knowledge knowledge) {
        return setup.animals().stream().allMatch(animal -> knowledge.profile(animal.species()).species().lives() == Lives.TREES)
                ? Axis.HEIGHT : Axis.LENGTH;
    }

    /** What the rules state, and what is given. */
    Statements evaluate(Asked asked, Collection<?> given) {
        try {
            return rules.get().withSession(session -> evaluate(session, asked, given));
        } catch (AuditFailure e) {
            throw e;
        } catch (RuntimeException e) {
            throw new AuditFailure("A rule failed: " + e.getMessage(), e);
        }
    }

    private Statements evaluate(KieSession session, Asked asked, Collection<?> given) {
        asked.facts().forEach(session::insert);
        given.forEach(session::insert);
        if (session.fireAllRules(fires, MOST_FIRINGS) >= MOST_FIRINGS) {
            throw new AuditFailure("The rules did not come to rest after " + MOST_FIRINGS + " firings");
        }
        return new Statements(all(session, Fault.class), all(session, Missing.class), all(session, Held.class),
                all(session, Voided.class), all(session, Explains.class));
    }

    private List<Object> facts(Setup setup, List<Quantity> quantities, List<Pairs.Listed> listed) {
        List<Object> facts = new ArrayList<>();
        for (Pairs.Listed pair : listed) {
            if (pair.applies()) {
                facts.add(new Applies(pair.criterion().id(), pair.subject()));
                facts.addAll(pair.limits().limits());
            }
        }
        facts.addAll(quantities);
        facts.addAll(fromReadings(setup, quantities));
        facts.addAll(Derivation.lacking(setup, axis(setup)));
        List.<Collection<?>>of(setup.animals(), setup.enclosure().openings(), setup.heaters(), setup.lamps(), setup.furnishings(),
                setup.readings(), List.of(setup.enclosure(), setup.room(), setup.care(), setup.electrical(), setup.hygiene(),
                setup.household(), setup.monitoring(), setup.season(), setup.quarantine())).forEach(facts::addAll);
        setup.substrate().ifPresent(facts::add);
        setup.water().ifPresent(facts::add);
        setup.animals().stream().map(Animal::species).distinct().map(species -> knowledge.profile(species).species()).forEach(facts::add);
        return facts;
    }

    private static List<FromReading> fromReadings(Setup setup, List<Quantity> quantities) {
        Map<String, Reading> readings = setup.readings().stream().collect(Collectors.toMap(reading -> reading.subject().key(), reading -> reading));
        return quantities.stream().filter(quantity -> readings.containsKey(quantity.source()))
                .map(quantity -> new FromReading(readings.get(quantity.source()), quantity)).toList();
    }

    private static <T> List<T> all(KieSession session, Class<T> type) {
        List<T> found = new ArrayList<>();
        session.getObjects(new ClassObjectFilter(type)).forEach(fact -> found.add(type.cast(fact)));
        return found;
    }
}
