package org.loamlight.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Need;
import org.loamlight.criterion.Page;
import org.loamlight.criterion.LimitUse;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Standing;
import org.loamlight.criterion.Where;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

class RankingTest {
    private static final Citation CITATION = new Citation("invented", "", Standing.JUDGEMENT);

    private static Criterion criterion(String id, Need need) {
        return new Criterion(id, id, need, Grade.MAJOR, Map.of(), SubjectKind.ENCLOSURE, List.of(), Set.of(), List.of(), List.of(), List.of(), false, false,
                DecisionRule.SIMPLE, List.of(CITATION), List.of(), "0.1.0", new Page("", "", "", Map.of(), "", Map.of()), List.of());
    }

    private static Finding finding(String id, Result result, Grade grade) {
        return finding(criterion(id, Need.ENVIRONMENT), result, grade, List.of());
    }

    private static Finding finding(Criterion criterion, Result result, Grade grade, List<Held> held) {
        return new Finding(criterion, Subject.ENCLOSURE, result, grade, List.of(), held, List.of(), List.of(), List.of(), List.of(), "",
                List.of(), List.of());
    }

    private static Finding wrong(String id, Grade grade) {
        return finding(id, Result.NONCONFORMITY, grade);
    }

    private static Finding warm(String id, double value, double uncertainty) {
        ResolvedLimit limit = new ResolvedLimit(id, Subject.ENCLOSURE, Topic.AIR_TEMPERATURE_BY_DAY, Place.ANYWHERE, Where.EVERYWHERE, LimitUse.NEED, 21, 27, 0,
                DecisionRule.SIMPLE, Grade.MAJOR, CITATION, "Marl");
        Quantity quantity = new Quantity(Topic.AIR_TEMPERATURE_BY_DAY, Place.ANYWHERE, value, uncertainty, new Origin(Method.MEASURED, "r", ""), List.of());
        return finding(criterion(id, Need.ENVIRONMENT), Result.NONCONFORMITY, Grade.MAJOR, List.of(Held.of(quantity, limit)));
    }

    /** Links cause and effect both ways. */
    private static void explain(List<Finding> findings, String cause, String effect) {
        Pair causePair = new Pair(cause, Subject.ENCLOSURE);
        Pair effectPair = new Pair(effect, Subject.ENCLOSURE);
        findings.replaceAll(one -> one.pair().equals(causePair) ? one.linked(added(one.explains(), effectPair), one.explainedBy()) : one);
        findings.replaceAll(one -> one.pair().equals(effectPair) ? one.linked(one.explains(), added(one.explainedBy(), causePair)) : one);
    }

    private static List<Pair> added(List<Pair> pairs, Pair further) {
        List<Pair> more = new ArrayList<>(pairs);
        more.add(further);
        return more;
    }

    private static List<String> ids(List<Finding> findings) {
        return findings.stream().map(finding -> finding.criterion().id()).toList();
    }

    @Test
    void the_graver_grade_comes_first() {
        List<Finding> findings = List.of(wrong("a.minor", Grade.MINOR), wrong("b.critical", Grade.CRITICAL), wrong("c.improvement", Grade.IMPROVEMENT),
                wrong("d.major", Grade.MAJOR));
        assertEquals(List.of("b.critical", "d.major", "a.minor", "c.improvement"), ids(Ranking.of(findings).toDo()));
    }

    @Test
    void of_equal_grades_the_surer_one_comes_first_then_the_farther_off() {
        List<Finding> findings = List.of(warm("a.unsure", 27.5, 2), warm("b.far", 40, 0.1), warm("c.farther", 45, 0.1));
        assertEquals(List.of("c.farther", "b.far", "a.unsure"), ids(Ranking.of(findings).toDo()));
    }

    @Test
    void of_otherwise_equal_findings_the_need_decides_and_then_the_id() {
        List<Finding> findings = new ArrayList<>();
        for (Need need : Need.values()) {
            findings.add(finding(criterion("x." + need.ordinal(), need), Result.NONCONFORMITY, Grade.MAJOR, List.of()));
        }
        findings.add(finding(criterion("w.0", Need.PROTECTION), Result.NONCONFORMITY, Grade.MAJOR, List.of()));
        assertEquals(List.of("w.0", "x.0", "x.1", "x.2", "x.3", "x.4"), ids(Ranking.of(findings).toDo()));
    }

    @Test
    void a_cause_stands_directly_before_what_it_explains_and_takes_over_its_grade() {
        List<Finding> findings = new ArrayList<>(List.of(wrong("a.other", Grade.MAJOR), wrong("b.effect", Grade.CRITICAL), wrong("c.cause", Grade.MINOR)));
        explain(findings, "c.cause", "b.effect");
        assertEquals(List.of("c.cause", "b.effect", "a.other"), ids(Ranking.of(findings).toDo()));
    }

    @Test
    void a_mild_effect_follows_its_cause_and_not_its_own_grade() {
        List<Finding> findings = new ArrayList<>(List.of(wrong("a.cause", Grade.CRITICAL), wrong("b.other", Grade.MAJOR), wrong("c.effect", Grade.MINOR)));
        explain(findings, "a.cause", "c.effect");
        assertEquals(List.of("a.cause", "c.effect", "b.other"), ids(Ranking.of(findings).toDo()));
    }

    @Test
    void an_effect_with_two_causes_comes_after_both() {
        List<Finding> findings = new ArrayList<>(List.of(wrong("a.one", Grade.MAJOR), wrong("b.effect", Grade.MAJOR), wrong("c.two", Grade.MINOR)));
        explain(findings, "a.one", "b.effect");
        explain(findings, "c.two", "b.effect");
        assertEquals(List.of("a.one", "c.two", "b.effect"), ids(Ranking.of(findings).toDo()));
    }

    @Test
    void a_circle_of_causes_is_a_defect_that_is_named() {
        List<Finding> findings = new ArrayList<>(List.of(wrong("a.one", Grade.MAJOR), wrong("b.two", Grade.MAJOR)));
        explain(findings, "a.one", "b.two");
        explain(findings, "b.two", "a.one");
        String message = assertThrows(IllegalArgumentException.class, () -> Ranking.of(findings)).getMessage();
        assertEquals("Findings explain each other in a circle: [a.one enclosure, b.two enclosure]", message);
    }

    @Test
    void the_order_does_not_depend_on_the_order_of_the_findings() {
        List<Finding> findings = new ArrayList<>(List.of(wrong("a.a", Grade.MINOR), warm("b.b", 30, 1), warm("c.c", 35, 1), wrong("d.d", Grade.CRITICAL),
                finding("e.e", Result.NO_EVIDENCE, Grade.MAJOR), finding("f.f", Result.UNDECIDED, Grade.MAJOR), finding("g.g", Result.CONFORMITY, Grade.MAJOR)));
        explain(findings, "a.a", "b.b");
        explain(findings, "a.a", "e.e");
        Ranking expected = Ranking.of(findings);
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Collections.shuffle(findings, random);
            assertEquals(expected, Ranking.of(findings));
        }
        assertEquals(List.of("d.d", "c.c", "a.a", "b.b"), ids(expected.toDo()));
        assertEquals(List.of("e.e", "f.f"), ids(expected.toFindOut()));
    }

    @Test
    void a_critical_nonconformity_is_not_ready_whatever_else_is_right() {
        assertEquals(Conclusion.NOT_READY, Ranking.of(List.of(wrong("a.a", Grade.CRITICAL), finding("b.b", Result.NO_EVIDENCE, Grade.MAJOR))).conclusion());
    }

    @Test
    void missing_evidence_at_major_is_incomplete_even_beside_a_major_fault() {
        assertEquals(Conclusion.EVIDENCE_INCOMPLETE,
                Ranking.of(List.of(wrong("a.a", Grade.MAJOR), finding("b.b", Result.UNDECIDED, Grade.MAJOR))).conclusion());
        assertEquals(Conclusion.EVIDENCE_INCOMPLETE, Ranking.of(List.of(finding("b.b", Result.NO_EVIDENCE, Grade.CRITICAL))).conclusion());
    }

    @Test
    void a_major_fault_alone_is_ready_once_corrected_and_lesser_ones_are_ready() {
        assertEquals(Conclusion.READY_ONCE_CORRECTED, Ranking.of(List.of(wrong("a.a", Grade.MAJOR))).conclusion());
        assertEquals(Conclusion.READY, Ranking.of(List.of(wrong("a.a", Grade.MINOR), finding("b.b", Result.NO_EVIDENCE, Grade.MINOR))).conclusion());
    }
}
