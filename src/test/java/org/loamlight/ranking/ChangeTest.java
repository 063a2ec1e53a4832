package org.loamlight.ranking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Result;

class ChangeTest {
    private static final String PAIR = "heat.guard heater:basking lamp";

    private static List<Change> between(String before, String after) {
        return Change.between(outcomes(before), outcomes(after));
    }

    private static Map<String, Outcome> outcomes(String outcome) {
        return outcome.equals("-") ? Map.of() : Map.of(PAIR, Outcome.read(outcome.replace(" / ", ", ")).orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"conformity / major, nonconformity / major, NEW", "-, nonconformity / major, NEW", "-, no evidence / major, NEW", "not applicable / minor, undecided / minor, NEW",
        "nonconformity / minor, nonconformity / major, WORSE", "no evidence / minor, no evidence / major, WORSE",
        "no evidence / major, nonconformity / major, FOUND_WRONG", "undecided / critical, nonconformity / minor, FOUND_WRONG",
        "nonconformity / major, nonconformity / major, STILL_OPEN", "no evidence / minor, undecided / minor, STILL_OPEN",
        "nonconformity / critical, nonconformity / major, LESS_GRAVE", "nonconformity / critical, no evidence / critical, LESS_GRAVE",
        "nonconformity / major, conformity / major, PUT_RIGHT", "no evidence / major, conformity / major, FOUND_RIGHT", "undecided / major, conformity / major, FOUND_RIGHT",
        "nonconformity / major, not applicable / major, GONE", "no evidence / major, -, GONE"})
    void what_is_or_was_open_has_become_something(String before, String after, Change.Kind expected) {
        assertEquals(List.of(expected), between(before, after).stream().map(Change::kind).toList());
    }

    @ParameterizedTest
    @CsvSource({"conformity / major, conformity / major", "not applicable / major, conformity / major", "-, conformity / major", "conformity / major, -"})
    void what_was_never_open_is_no_change(String before, String after) {
        assertEquals(List.of(), between(before, after));
    }

    @Test
    void the_new_and_grave_stands_first_and_the_put_right_last() {
        Outcome danger = new Outcome(Result.NONCONFORMITY, Grade.CRITICAL);
        Outcome harm = new Outcome(Result.NONCONFORMITY, Grade.MAJOR);
        Outcome right = new Outcome(Result.CONFORMITY, Grade.MAJOR);
        List<Change> changes = Change.between(Map.of("a", harm, "b", right, "c", right, "d", harm), Map.of("a", right, "b", harm, "c", danger, "d", harm));
        assertEquals(List.of("c", "b", "d", "a"), changes.stream().map(Change::pair).toList());
        assertEquals(List.of(Grade.CRITICAL, Grade.MAJOR, Grade.MAJOR, Grade.MAJOR), changes.stream().map(Change::grade).toList());
    }

    @Test
    void an_outcome_is_read_as_it_was_written() {
        for (Result result : Result.values()) {
            for (Grade grade : Grade.values()) {
                Outcome outcome = new Outcome(result, grade);
                assertEquals(Optional.of(outcome), Outcome.read(outcome.inWords()));
            }
        }
        assertEquals(Optional.empty(), Outcome.read("nonconformity"));
        assertEquals(Optional.empty(), Outcome.read("wrong, major"));
    }
}
