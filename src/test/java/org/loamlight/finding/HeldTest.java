package org.loamlight.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.LimitUse;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Standing;
import org.loamlight.criterion.Where;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Subject;

class HeldTest {
    private static ResolvedLimit limit(double low, double high, DecisionRule rule) {
        return new ResolvedLimit("test.limit", Subject.ENCLOSURE, Topic.SURFACE_TEMPERATURE_BY_DAY, Place.ANYWHERE, Where.EVERYWHERE, LimitUse.NEED, low, high, 0, rule,
                Grade.CRITICAL, new Citation("invented", "", Standing.JUDGEMENT), "Marl");
    }

    private static Quantity quantity(double value, double uncertainty, Method method) {
        return new Quantity(Topic.SURFACE_TEMPERATURE_BY_DAY, Place.ANYWHERE, value, uncertainty, new Origin(method, "reading:surface", ""), List.of());
    }

    private static Held held(double value, double uncertainty, double low, double high, DecisionRule rule) {
        return Held.of(quantity(value, uncertainty, Method.MEASURED), limit(low, high, rule));
    }

    @ParameterizedTest
    @CsvSource({"35.0, INSIDE", "35.00000001, INSIDE", "35.0001, OUTSIDE", "34.9, INSIDE"})
    void simple_acceptance_lets_the_limit_itself_conform(double value, Decision expected) {
        assertEquals(expected, held(value, 1.15, Double.NEGATIVE_INFINITY, 35, DecisionRule.SIMPLE).decision());
    }

    /** JCGM 106:2012, 7.5.4: a surface of 38 °C or more, read with u = 1.15: 38.0 gives 0.50, 39.0 gives 0.81, 40.0 gives 0.958. */
    @ParameterizedTest
    @CsvSource({"38.0, 0.50, UNDECIDED", "39.0, 0.81, UNDECIDED", "40.0, 0.96, INSIDE", "36.0, 0.04, OUTSIDE"})
    void guarded_acceptance_has_three_outcomes(double value, double probability, Decision expected) {
        Held held = held(value, 1.15, 38, Double.POSITIVE_INFINITY, DecisionRule.GUARDED);
        assertEquals(probability, held.probability(), 0.005);
        assertEquals(expected, held.decision());
    }

    @Test
    void a_model_without_a_reading_never_makes_a_guarded_criterion_conform_and_never_gives_more_than_major() {
        Held held = Held.of(quantity(30, 0.1, Method.MODELLED), limit(Double.NEGATIVE_INFINITY, 43, DecisionRule.GUARDED));
        assertEquals(Decision.UNDECIDED, held.decision());
        assertEquals(Grade.MAJOR, held.grade());
        assertEquals(Grade.CRITICAL, held(50, 0.1, Double.NEGATIVE_INFINITY, 43, DecisionRule.GUARDED).grade());
    }

    /** Against at least 8 h: doubt as large as the hours and as the limit. 0.9 h with u = 85 h conforms with a probability of 0.467. */
    @ParameterizedTest
    @CsvSource({"0.9, 85, COMPUTED, UNDECIDED", "0.9, 85, MODELLED, UNDECIDED", "12, 12, MODELLED, UNDECIDED", "12, 11, MODELLED, INSIDE", "4, 8, MODELLED, UNDECIDED", "4, 7.9, MODELLED, OUTSIDE", "0.5, 0.65, MODELLED, OUTSIDE",
            "7, 3, COMPUTED, OUTSIDE", "9, 3, COMPUTED, INSIDE", "0, 0, COMPUTED, OUTSIDE", "0.9, 85, STATED, OUTSIDE"})
    void what_was_worked_out_and_is_swallowed_by_its_doubt_is_no_verdict(double hours, double uncertainty, Method method, Decision expected) {
        Quantity outage = new Quantity(Topic.OUTAGE_HOURS, Place.ANYWHERE, hours, uncertainty, new Origin(method, "enclosure", ""), List.of());
        assertEquals(expected, Held.of(outage, limit(8, Double.POSITIVE_INFINITY, DecisionRule.SIMPLE)).decision());
    }

    /** Of a normal distribution 5 % lie more than 1.645 above the middle. */
    @ParameterizedTest
    @CsvSource({"30, UNDECIDED", "43.1, UNDECIDED", "44.6, UNDECIDED", "44.7, OUTSIDE"})
    void what_is_usual_for_a_kind_decides_only_where_it_is_nearly_sure_and_never_conforms(double value, Decision expected) {
        Held held = Held.of(quantity(value, 1, Method.ESTIMATED), limit(Double.NEGATIVE_INFINITY, 43, DecisionRule.SIMPLE));
        assertEquals(expected, held.decision());
        assertEquals(Grade.MINOR, held.grade());
    }

    @Test
    void the_distance_is_taken_over_the_width_of_the_range_or_over_the_limit() {
        assertEquals(0.5, held(30, 1, 21, 27, DecisionRule.SIMPLE).distance(), 1e-12);
        assertEquals(0.2, held(42, 1, Double.NEGATIVE_INFINITY, 35, DecisionRule.SIMPLE).distance(), 1e-12);
        assertEquals(0, held(25, 1, 21, 27, DecisionRule.SIMPLE).distance());
        assertEquals(3, held(18, 1, 21, 27, DecisionRule.SIMPLE).shortfall(), 1e-12);
    }

    @Test
    void the_uncertainty_of_a_limit_counts_beside_that_of_the_value() {
        ResolvedLimit sure = limit(38, Double.POSITIVE_INFINITY, DecisionRule.SIMPLE);
        ResolvedLimit unsure = new ResolvedLimit(sure.criterion(), sure.subject(), sure.topic(), sure.place(), sure.where(), sure.use(), sure.low(), sure.high(), 3,
                sure.decision(), sure.grade(), sure.citation(), sure.animal());
        Quantity value = quantity(39, 4, Method.MEASURED);
        assertEquals(0.5987, Held.of(value, sure).probability(), 1e-4);
        assertEquals(0.5793, Held.of(value, unsure).probability(), 1e-4);
    }
}
