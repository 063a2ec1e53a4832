package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeReader;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;

/** What codes ask stands beside what the species needs, and takes nothing from it. */
class CodesTest {
    private static final String SMALL_BOX = """
            {"format": 1, "on": "2026-11-02", "animals": [{"name": "Sedge", "species": "pantherophis-guttatus", "stage": "adult", "length": "120 cm"}],
             "enclosure": {"inside": {"length": "90 cm", "depth": "45 cm", "height": "70 cm"}}}""";
    private static final String FLOOR_BY_LAW = "code.at-2thvo.2-2-24-floor";

    static Audit audit(String json, String... codes) throws ProblemsFound {
        Setup setup = BuiltIn.setup(json);
        Knowledge chosen = BuiltIn.KNOWLEDGE.withCodes(CodeReader.builtIn(List.of(codes)), setup.species());
        return new Auditor(chosen, BuiltIn.RULES).audit(setup, BuiltIn.ON);
    }

    static Finding finding(Audit audit, String criterion) {
        List<Finding> found = audit.findings().stream().filter(one -> one.criterion().id().equals(criterion)).toList();
        assertEquals(1, found.size(), criterion);
        return found.get(0);
    }

    @Test
    void a_floor_too_small_for_the_snake_and_for_the_law_is_one_shortfall() throws ProblemsFound {
        Audit audit = audit(SMALL_BOX, "at-2thvo");
        Finding law = finding(audit, FLOOR_BY_LAW);
        assertEquals(Result.NONCONFORMITY, law.result());
        assertEquals(Grade.MAJOR, law.grade());
        assertEquals(0.9, law.held().get(0).limit().low());
        assertTrue(law.explainedBy().stream().anyMatch(cause -> cause.criterion().equals("space.floor-area")), () -> law.explainedBy().toString());
    }

    @Test
    void every_other_finding_stays_as_it_was() throws ProblemsFound {
        List<Finding> without = audit(SMALL_BOX).findings();
        List<Finding> own = audit(SMALL_BOX, "at-2thvo").findings().stream().filter(one -> !one.criterion().isOfCode()).toList();
        assertEquals(keys(without), keys(own));
    }

    /** What is read for one species is cut to it; the audit must be the one with the whole code. */
    @Test
    void a_code_cut_to_a_species_holds_all_that_it_asks_of_it() {
        for (String species : BuiltIn.KNOWLEDGE.profiles().keySet()) {
            List<Code> whole = CodeReader.builtIn(CodeReader.ids());
            List<Code> cut = CodeReader.builtIn(CodeReader.ids(), Set.of(species));
            assertEquals(whole.stream().map(code -> of(code, species)).toList(), cut.stream().map(CodesTest::parts).toList(), species);
            assertEquals(whole.stream().map(Code::sha256).toList(), cut.stream().map(Code::sha256).toList());
        }
        assertEquals(CodeReader.builtIn(CodeReader.ids()), CodeReader.builtIn(CodeReader.ids(), Set.of("pantherophis-guttatus", "testudo-hermanni")));
    }

    private static List<Object> parts(Code code) {
        return List.of(code.id(), code.points(), code.clauses());
    }

    private static List<Object> of(Code code, String species) {
        return List.of(code.id(), code.points().stream().filter(point -> point.species().contains(species)).toList(),
                code.clauses().stream().filter(clause -> clause.isFor(Set.of(species))).toList());
    }

    private static List<String> keys(List<Finding> findings) {
        return findings.stream().map(one -> one.pair().key() + " " + one.result() + " " + one.grade() + " " + one.held()).toList();
    }
}
