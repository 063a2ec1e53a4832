package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loamlight.finding.Fault;
import org.loamlight.finding.Missing;
import org.loamlight.finding.Pair;
import org.loamlight.finding.RuleName;
import org.loamlight.review.InventedSetup;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

class StrayStatementTest {
    private static final Subject LAMP = new Subject(SubjectKind.LAMP, "tube");

    private static Statements stated(Fault fault) {
        return new Statements(List.of(fault), List.of(new Missing("light.dark-night told", Subject.ENCLOSURE, "lamps")), List.of(), List.of(), List.of());
    }

    @Test
    void a_statement_belongs_to_the_pair_its_rule_name_begins_with() {
        Statements statements = stated(new Fault("light.uv-blocked glass", LAMP));
        Pair blocked = new Pair("light.uv-blocked", LAMP);
        assertEquals(Set.of(blocked, new Pair("light.dark-night", Subject.ENCLOSURE)), statements.byPair().keySet());
        assertEquals(statements.faults(), statements.byPair().get(blocked).faults());
        assertEquals("glass", RuleName.variant("light.uv-blocked glass"));
        assertEquals("", RuleName.variant("light.uv-blocked"));
    }

    @Test
    void a_statement_about_a_pair_nobody_asked_for_ends_the_audit_and_is_named() throws ProblemsFound {
        Auditor.Asked asked = BuiltIn.AUDITOR.ask(BuiltIn.setup(new InventedSetup(1).json("No. %d", false)), BuiltIn.ON);
        Missing onTheWall = new Missing("light.dark-night told", new Subject(SubjectKind.LAMP, "on the wall"), "lamps");
        String message = assertThrows(AuditFailure.class,
                () -> BuiltIn.AUDITOR.judge(asked, List.of(onTheWall, new Fault("light.uv-blocked", LAMP)))).getMessage();
        assertEquals("Rules stated something about pairs nobody asked for: light.dark-night lamp:on the wall, light.uv-blocked lamp:tube", message);
    }

    @Test
    void a_statement_about_a_pair_that_does_not_apply_ends_the_audit() throws ProblemsFound {
        Auditor.Asked asked = BuiltIn.AUDITOR.ask(BuiltIn.setup(new InventedSetup(1).json("No. %d", false)), BuiltIn.ON);
        Pair other = asked.listed().stream().filter(pair -> !pair.applies()).map(Pairs.Listed::pair).findFirst().orElseThrow();
        List<Fault> given = List.of(new Fault(other.criterion(), other.subject()));
        assertTrue(assertThrows(AuditFailure.class, () -> BuiltIn.AUDITOR.judge(asked, given)).getMessage().endsWith(": " + other.key()));
    }
}
