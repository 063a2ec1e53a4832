package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Knowledge;

class RuleBaseTest {

    @Test
    void rules_that_differ_from_the_catalogue_are_named() {
        String message = assertThrows(AuditFailure.class,
                () -> RuleBase.requireSame(Set.of("a.one", "b.two"), Set.of("b.two", "c.three"))).getMessage();
        assertTrue(message.contains("not compiled: a.one") && message.contains("not in the catalogue: c.three"), message);
    }

    @Test
    void rules_loaded_beside_are_held_against_the_catalogue_before_anything_is_audited() {
        Knowledge built = BuiltIn.KNOWLEDGE;
        Knowledge other = new Knowledge(built.version(), built.sha256(), built.criteria(), built.profiles(), built.sources(),
                built.cautions(), List.of("no such rule"));
        RuleBase.Unchecked unchecked = RuleBase.loadUnchecked();
        String message = assertThrows(AuditFailure.class, () -> unchecked.checked(other)).getMessage();
        assertTrue(message.contains("not compiled: no such rule") && message.contains("not in the catalogue: limits held"), message);
        assertDoesNotThrow(() -> unchecked.checked(built));
    }

    @Test
    void an_empty_model_never_audits() {
        assertThrows(AuditFailure.class, () -> RuleBase.requireSame(Set.of(), Set.of()));
    }

    @Test
    void the_rules_of_this_build_are_those_of_the_catalogue() {
        assertDoesNotThrow(() -> RuleBase.load(BuiltIn.KNOWLEDGE));
        long rules = BuiltIn.KNOWLEDGE.criteria().values().stream().mapToLong(criterion -> criterion.rules().size()).sum();
        assertTrue(rules > 20, rules + " rules");
        assertEquals(List.of("limits held", "limits lost", "limits lost one-place", "limits counted once"), BuiltIn.KNOWLEDGE.limitRules());
    }
}
