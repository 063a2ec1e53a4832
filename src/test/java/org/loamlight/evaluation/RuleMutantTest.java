package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RuleMutantTest {
    private static final String STATES_HEATER = "insertLogical( new Fault( \"a.one\", $heater ) );";

    @Test
    void each_comparison_is_turned() {
        assertEquals(List.of("Heater( watts <= $most )", "Heater( kind not in ( Kind.LAMP, Kind.MAT ) )", "Heater( kind in ( Kind.LAMP ) )",
                "Heater( signs not contains Sign.MITES )"), Stream.of("Heater( watts > $most )", "Heater( kind in ( Kind.LAMP, Kind.MAT ) )",
                "Heater( kind not in ( Kind.LAMP ) )", "Heater( signs contains Sign.MITES )")
                .flatMap(when -> whens(RuleMutant.Kind.TURNS_OPERATOR, when).stream()).toList());
    }

    @Test
    void patterns_are_dropped_one_by_one_in_groups_too() {
        assertEquals(List.of(" not( Lamp() and Heater() )", "Room() ", "Room() not( Heater() )", "Room() not( Lamp() )"),
                whens(RuleMutant.Kind.DROPS_PATTERN, "Room() not( Lamp() and Heater() )").stream().map(when -> when.replaceAll("\\( +", "( ")
                        .replaceAll(" +\\)", " )").replaceAll("\\( (?=[LH])", "( ")).toList());
    }

    @Test
    void not_and_exists_are_exchanged() {
        assertEquals(List.of("exists Lamp() exists Heater()", "not Lamp() not Heater()"),
                whens(RuleMutant.Kind.TURNS_QUANTIFIER, "not Lamp() exists Heater()"));
    }

    @Test
    void constraints_and_their_alternatives_are_dropped() {
        String when = "Heater( hot == Stated.YES, guard == Stated.NO || reach == Stated.YES )";
        assertEquals(List.of("Heater( guard == Stated.NO || reach == Stated.YES )", "Heater( hot == Stated.YES )"),
                whens(RuleMutant.Kind.DROPS_CONSTRAINT, when));
        assertEquals(List.of("Heater( hot == Stated.YES,  reach == Stated.YES )", "Heater( hot == Stated.YES, guard == Stated.NO  )"),
                whens(RuleMutant.Kind.DROPS_ALTERNATIVE, when));
    }

    @Test
    void a_mutant_that_lacks_a_variable_is_incomplete() {
        List<RuleMutant> dropped = RuleMutant.of(rule("Applies( $heater : subject ) Heater( name == $heater.name )")).stream()
                .filter(mutant -> mutant.kind() == RuleMutant.Kind.DROPS_PATTERN).toList();
        assertEquals(List.of(false, true), dropped.stream().map(RuleMutant::isComplete).toList());
    }

    @Test
    void a_variable_bound_on_one_side_of_or_is_not_bound_behind_it() {
        assertEquals(List.of(true, false), Stream.of("( Lamp( $heater : name ) or Heater( $heater : name ) )", "( Lamp( $heater : name ) or Heater() )")
                .map(when -> DrlCondition.of(when).binds(STATES_HEATER)).toList());
    }

    @Test
    void what_is_no_condition_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> DrlCondition.of("Heater( name == $name"));
        assertThrows(IllegalArgumentException.class, () -> DrlCondition.of("( Heater() and Lamp() or Room() )"));
    }

    private static List<String> whens(RuleMutant.Kind kind, String when) {
        return RuleMutant.of(rule(when)).stream().filter(mutant -> mutant.kind() == kind).map(RuleMutant::when).toList();
    }

    private static DrlRule rule(String when) {
        return new DrlRule("a.one", "", when, STATES_HEATER);
    }
}
