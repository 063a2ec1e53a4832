package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is never given is told apart from what nobody told. */
class DietTest {
    private static Diet fed(String members) throws ProblemsFound {
        return Given.read(("{'format': 1, 'animals': [{'name': 'Sedge', 'species': 'lampropeltis-californiae', 'diet': {" + members + "}}]}")
                .replace('\'', '"')).animals().get(0).diet();
    }

    @Test
    void calcium_that_is_never_given_is_none() throws ProblemsFound {
        assertTrue(fed("'calcium': 'never'").isWithoutCalcium());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "'calcium': 'not looked'", "'calcium': 'every 2 d'", "'calcium': 'every 3699 d'"})
    void calcium_that_is_given_or_not_told_is_not_none(String members) throws ProblemsFound {
        assertFalse(fed(members).isWithoutCalcium());
    }

    @Test
    void that_it_gets_nothing_besides_has_to_be_told() throws ProblemsFound {
        assertEquals(Stated.YES, fed("'also': []").alsoTold());
        assertEquals(Stated.UNKNOWN, fed("'also': 'not looked'").alsoTold());
        assertEquals(Stated.UNKNOWN, fed("'prey': 'fish'").alsoTold());
    }

    @Test
    void mice_and_rats_are_the_rodents() {
        Set<PreyKind> rodents = EnumSet.noneOf(PreyKind.class);
        for (PreyKind kind : PreyKind.values()) {
            if (kind.isRodent()) {
                rodents.add(kind);
            }
        }
        assertEquals(EnumSet.of(PreyKind.NEWBORN_MOUSE, PreyKind.YOUNG_MOUSE, PreyKind.ADULT_MOUSE, PreyKind.YOUNG_RAT, PreyKind.ADULT_RAT), rodents);
    }
}
