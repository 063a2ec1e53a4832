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
        assertEquals(Set.of(new Pair("light.uv-blocked", LAMP), new Pair("light.dark-night", Subject.ENCLOSURE)), statements.stated());
        assertEquals(statements.faults(), statements.byPair().get(new Pair("light.uv-blocked", LAMP)).faults());
        assertEquals(statements.stated(), statements.byPair().keySet());
        assertEquals("glass", RuleName.variant("light.uv-blocked glass"));
        assertEquals("", RuleName.variant("light.uv-blocked"));
    }

    @Test
    void a_statement_about_a_pair_nobody_asked_for_ends_the_audit_and_is_named() {
        Set<Pair> asked = Set.of(new Pair("light.dark-night", Subject.ENCLOSURE));
        String message = assertThrows(AuditFailure.class, () -> Auditor.requireAsked(stated(new Fault("light.uv-blocked", LAMP)), asked)).getMessage();
        assertTrue(message.endsWith("light.uv-blocked lamp:tube"), message);
    }
}
