package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Standing;
import org.loamlight.evaluation.SideBySide.Agreement;
import org.loamlight.evaluation.SideBySide.ByCode;
import org.loamlight.evaluation.SideBySide.Row;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Topic;
import org.loamlight.ranking.Conclusion;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.ProblemsFound;

/** Codes beside each other and beside the species, with invented codes. */
class SideBySideTest {
    private static final Audit BOTH = MadeUpCodes.audit(MadeUpCodes.BOX, MadeUpCodes.LAW, MadeUpCodes.CLUB);
    private static final SideBySide TABLE = SideBySide.of(BOTH);

    private static Row row(Topic topic) {
        List<Row> rows = TABLE.rows().stream().filter(row -> row.topic() == topic).toList();
        assertEquals(1, rows.size(), topic.id());
        return rows.get(0);
    }

    private static ByCode by(Topic topic, String point) {
        return row(topic).asked().stream().filter(one -> one.point().id().equals(point)).findFirst().orElseThrow();
    }

    @Test
    void nothing_stands_side_by_side_without_codes() throws ProblemsFound {
        SideBySide none = SideBySide.of(BuiltIn.audit(MadeUpCodes.BOX));
        assertEquals(new SideBySide(List.of(), List.of(), List.of()), none);
    }

    @Test
    void there_is_a_row_for_each_thing_asked_of_the_kept_species_in_the_order_of_topics() {
        assertEquals(List.of(Topic.INSIDE_LENGTH, Topic.INSIDE_DEPTH, Topic.INSIDE_HEIGHT, Topic.AIR_TEMPERATURE_BY_DAY, Topic.FLOOR_AREA,
                Topic.INSIDE_PERIMETER), TABLE.rows().stream().map(Row::topic).toList());
        assertEquals(List.of("1-floor", "a-floor"), row(Topic.FLOOR_AREA).asked().stream().map(one -> one.point().id()).toList());
    }

    @Test
    void a_point_carries_its_limit_what_was_found_and_where_it_stands() {
        ByCode floor = by(Topic.FLOOR_AREA, "1-floor");
        assertEquals(0.7, floor.asked().limits().get(0).low());
        assertEquals(0.6, floor.asked().deciding().orElseThrow().quantity().value(), 1e-9);
        assertEquals(Result.NONCONFORMITY, floor.asked().result());
        assertEquals("s. 1", floor.citation().clause());
        assertEquals(Standing.SECONDARY, by(Topic.FLOOR_AREA, "a-floor").citation().standing());
        assertEquals(Result.CONFORMITY, by(Topic.FLOOR_AREA, "a-floor").asked().result());
    }

    @Test
    void what_the_species_needs_stands_beside_it() {
        Finding own = CodesTest.finding(BOTH, "space.floor-area");
        List<SideBySide.Asked> beside = row(Topic.FLOOR_AREA).own();
        assertEquals(List.of(own), beside.stream().map(SideBySide.Asked::finding).toList());
        assertEquals(own.result(), beside.get(0).result());
        assertFalse(beside.get(0).limits().isEmpty());
        assertEquals(List.of(), row(Topic.INSIDE_PERIMETER).own());
    }

    /** One point on length and height: too short, but high enough. */
    @Test
    void a_point_on_two_things_is_told_apart() {
        assertEquals(Result.NONCONFORMITY, by(Topic.INSIDE_LENGTH, "2-sides").asked().result());
        assertEquals(Result.CONFORMITY, by(Topic.INSIDE_HEIGHT, "2-sides").asked().result());
        assertEquals(Result.NONCONFORMITY, CodesTest.finding(BOTH, "code.marram-1.2-sides").result());
    }

    @Test
    void what_is_meant_for_other_animals_does_not_apply() {
        ByCode young = by(Topic.INSIDE_HEIGHT, "1-young");
        assertEquals(Result.NOT_APPLICABLE, young.asked().result());
        assertFalse(young.isAsked());
        assertTrue(row(Topic.INSIDE_HEIGHT).isAsked());
    }

    @Test
    void a_bare_figure_is_shown_and_never_decided() {
        ByCode figure = by(Topic.INSIDE_DEPTH, "4-depth");
        assertEquals(Result.UNDECIDED, figure.asked().result());
        assertTrue(figure.asked().deciding().isPresent());
        assertEquals(Grade.IMPROVEMENT, figure.asked().finding().grade());
    }

    @Test
    void a_limit_that_hangs_on_an_answer_names_it() {
        ByCode perimeter = by(Topic.INSIDE_PERIMETER, "5-vent");
        assertEquals(Result.NO_EVIDENCE, perimeter.asked().result());
        assertEquals(List.of(), perimeter.asked().limits());
        assertEquals(Set.of("animals[Sedge].snout-vent-length"), perimeter.asked().missing());
    }

    @Test
    void another_reading_is_told_only_where_it_gives_other_numbers_for_these_animals() {
        List<SideBySide.Otherwise> otherwise = by(Topic.FLOOR_AREA, "1-floor").otherwise();
        assertEquals(List.of("whole-group"), otherwise.stream().map(SideBySide.Otherwise::policy).toList());
        assertEquals(1.65, otherwise.get(0).limits().get(0).low());
        SideBySide hatchling = SideBySide.of(MadeUpCodes.audit(MadeUpCodes.BOX.replace("adult", "hatchling"), MadeUpCodes.LAW));
        List<String> policies = hatchling.rows().stream().filter(row -> row.topic() == Topic.FLOOR_AREA).flatMap(row -> row.asked().stream())
                .flatMap(one -> one.otherwise().stream()).map(SideBySide.Otherwise::policy).toList();
        assertEquals(List.of("whole-group", "never-matters"), policies);
    }

    @Test
    void codes_that_differ_and_codes_that_cannot_both_be_met_are_told() {
        assertEquals(Agreement.DIFFERENT, row(Topic.FLOOR_AREA).agreement());
        assertEquals(Agreement.CONTRADICTORY, row(Topic.AIR_TEMPERATURE_BY_DAY).agreement());
        assertEquals(Agreement.SAME, row(Topic.INSIDE_LENGTH).agreement());
    }

    /** The species needs 27 °C at most at the cool end, the invented law 29 °C at least. */
    @Test
    void a_code_that_goes_against_the_species_is_told() {
        SideBySide law = SideBySide.of(MadeUpCodes.audit(MadeUpCodes.BOX, MadeUpCodes.LAW));
        assertEquals(List.of(Agreement.CONTRADICTORY), law.rows().stream().filter(row -> row.topic() == Topic.AIR_TEMPERATURE_BY_DAY)
                .map(Row::agreement).toList());
    }

    @Test
    void a_clause_in_words_has_the_worst_outcome_of_those_that_judge_it() {
        List<Optional<Result>> outcomes = TABLE.clauses().stream().map(SideBySide.InWords::result).toList();
        List<Result> judges = List.of(CodesTest.finding(BOTH, "monitoring.air-thermometer").result(), CodesTest.finding(BOTH, "monitoring.hygrometer").result());
        assertEquals(List.of(Optional.of(judges.stream().min(Result::compareTo).orElseThrow()), Optional.empty()), outcomes);
    }

    @Test
    void what_is_unknown_of_a_code_is_a_shortfall_at_most() {
        Finding air = CodesTest.finding(BOTH, "code.marram-1.3-air");
        assertEquals(Result.NO_EVIDENCE, air.result());
        assertEquals(Grade.MAJOR, air.criterion().grade());
        assertEquals(Grade.MINOR, air.grade());
    }

    /** Everything the species needs is known and right here, so that the conclusion hangs on the code alone. */
    @Test
    void what_is_unknown_of_a_code_alone_does_not_hold_up_the_conclusion() {
        List<Finding> codes = BOTH.findings().stream().filter(one -> one.criterion().isOfCode() && one.result() != Result.NONCONFORMITY).toList();
        assertEquals(Conclusion.READY, Ranking.of(codes).conclusion());
    }

    @Test
    void a_question_is_asked_once_however_many_codes_lack_its_answer() {
        Ranking ranking = Ranking.of(BOTH.findings());
        List<String> asked = ranking.toAsk().stream().filter(one -> one.criterion().isOfCode()).map(one -> one.criterion().id()).toList();
        assertEquals(List.of("code.marram-1.5-vent"), asked, "not the air, which the species needs read anyhow, nor the length to the vent again, nor the bare figure");
        assertEquals(ranking.toFindOut().stream().filter(one -> !one.criterion().isOfCode()).toList(),
                ranking.toAsk().stream().filter(one -> !one.criterion().isOfCode()).toList());
    }
}
