package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Code;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;

/** What the species needs and what a code asks is one shortfall where both mean the same quantity at the same place, and only there. */
class CountedOnceTest {
    private static final List<Code> CODES = List.of(MadeUpCodes.code(MadeUpCodes.LAW), MadeUpCodes.code(MadeUpCodes.CLUB));

    /** Too small every way, too cold at the cool end and too hot at the warm one, for the species and for both codes. */
    private static final String ALL_WRONG = """
            {"format": 1, "on": "2026-11-02", "animals": [{"name": "Sedge", "species": "pantherophis-guttatus", "stage": "adult", "length": "120 cm"}],
             "enclosure": {"inside": {"length": "60 cm", "depth": "30 cm", "height": "15 cm"}, "warm-end": "left"},
             "readings": [
              {"name": "cool air", "of": "air temperature", "place": "cool end", "time": "day", "value": "15 °C"},
              {"name": "warm air", "of": "air temperature", "place": "warm end", "time": "day", "value": "42 °C"}]}""";

    /** Bare for a hatchling because it is large, and still shorter than the law asks: two shortfalls that speak of one length. */
    private static final String BARE = """
            {"format": 1, "on": "2026-11-02", "animals": [{"name": "Sedge", "species": "pantherophis-guttatus", "stage": "hatchling", "length": "30 cm"}],
             "enclosure": {"inside": {"length": "120 cm", "depth": "50 cm", "height": "60 cm"}}, "furnishings": []}""";

    /** The setups of this test, to be shown to changed rules. */
    static Stream<JudgedSetup> judged() {
        return Stream.of(JudgedSetup.of("all wrong", ALL_WRONG, CODES), JudgedSetup.of("bare", BARE, CODES));
    }

    @Test
    void a_shortfall_of_a_code_is_explained_by_the_need_of_the_same_quantity_and_place() {
        Audit audit = MadeUpCodes.audit(ALL_WRONG, MadeUpCodes.LAW, MadeUpCodes.CLUB);
        assertEquals(List.of("space.floor-area animal:Sedge"), causes(audit, "code.marram-1.1-floor"));
        assertEquals(List.of("space.floor-area animal:Sedge"), causes(audit, "code.wending-2.a-floor"));
        assertEquals(List.of("space.height animal:Sedge", "space.length animal:Sedge"), causes(audit, "code.marram-1.2-sides"));
        assertEquals(List.of("heat.air-cool-day enclosure"), causes(audit, "code.marram-1.3-air"));
    }

    @Test
    void a_need_that_another_rule_judges_by_the_same_quantity_is_another_shortfall() {
        Audit audit = MadeUpCodes.audit(BARE, MadeUpCodes.LAW, MadeUpCodes.CLUB);
        assertEquals(Result.NONCONFORMITY, finding(audit, "space.bare-for-young").result());
        assertEquals(List.of("space.outgrown-soon animal:Sedge"), causes(audit, "code.marram-1.2-sides"));
    }

    private static List<String> causes(Audit audit, String criterion) {
        Finding finding = finding(audit, criterion);
        assertEquals(Result.NONCONFORMITY, finding.result(), criterion);
        return finding.explainedBy().stream().map(Pair::key).toList();
    }

    private static Finding finding(Audit audit, String criterion) {
        return audit.findings().stream().filter(one -> one.criterion().id().equals(criterion)).findFirst().orElseThrow();
    }
}
