package org.loamlight.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;

class PlanTest {
    private static final String FLOOR = "'enclosure': {'inside': {'length': '120 cm', 'depth': '60 cm'}}, ";

    private static Derived derived(String members) throws ProblemsFound {
        return Derived.of("'animals': [{'name': 'Marl', 'species': 'snake'}], " + members);
    }

    private static boolean has(Derived derived, Topic topic) {
        return derived.quantities().stream().anyMatch(one -> one.topic() == topic);
    }

    private static String piece(String name, int from, int to, int front, int back) {
        return "{'name': '" + name + "', 'kind': 'cork', 'from': '" + from + " cm', 'to': '" + to + " cm', 'from-front': '" + front
                + " cm', 'to-front': '" + back + " cm'}";
    }

    private static Derived plan(String... pieces) throws ProblemsFound {
        return derived(FLOOR + "'furnishings': [" + String.join(", ", pieces) + "]");
    }

    @Test
    void pieces_that_overlap_cover_their_union() throws ProblemsFound {
        Quantity share = plan(piece("a", 0, 60, 0, 30), piece("b", 30, 90, 0, 30)).get(Topic.COVER_SHARE);
        assertEquals(100.0 * 90 * 30 / (120 * 60), share.value(), 1e-9);
    }

    /** Each edge ± 2 cm: the area of 60 by 30 cm is uncertain by 60 and 30 cm times the root of two edges. */
    @Test
    void the_edges_make_the_share_uncertain() throws ProblemsFound {
        double edges = StrictMath.sqrt(2) * 2 / StrictMath.sqrt(3);
        assertEquals(100 * StrictMath.hypot(60 * edges, 30 * edges) / (120 * 60),
                plan(piece("a", 0, 60, 0, 30)).get(Topic.COVER_SHARE).uncertainty(), 1e-9);
    }

    /** A hide in the corner of 40 by 20 cm: from the far corner it is the root of 80² and 40². */
    @Test
    void the_way_to_cover_is_that_from_the_farthest_place() throws ProblemsFound {
        Quantity way = plan(piece("a", 0, 40, 0, 20)).get(Topic.REFUGE_DISTANCE);
        assertEquals(StrictMath.hypot(80, 40), way.value(), way.uncertainty());
        assertTrue(way.uncertainty() < 2, way::toString);
    }

    @Test
    void a_bare_floor_has_no_cover_and_no_way_to_it() throws ProblemsFound {
        Derived bare = plan();
        assertEquals(0, bare.get(Topic.COVER_SHARE).value());
        assertFalse(has(bare, Topic.REFUGE_DISTANCE));
        assertEquals(0, plan("{'name': 's', 'kind': 'stone'}").get(Topic.COVER_SHARE).value());
    }

    @Test
    void one_edge_that_is_not_told_leaves_the_plan_untold() throws ProblemsFound {
        String whole = piece("a", 0, 60, 0, 30);
        assertTrue(has(plan(whole), Topic.COVER_SHARE));
        assertFalse(has(plan(whole, piece("b", 60, 90, 0, 30).replace(", 'to-front': '30 cm'", "")), Topic.COVER_SHARE));
        assertFalse(has(plan(whole, "{'name': 'thing'}"), Topic.COVER_SHARE));
        assertFalse(has(derived("'furnishings': [" + whole + "]"), Topic.COVER_SHARE));
        assertFalse(has(derived(FLOOR + "'heaters': []"), Topic.COVER_SHARE));
    }

    @Test
    void edges_told_the_wrong_way_round_are_turned() throws ProblemsFound {
        assertEquals(plan(piece("a", 0, 60, 0, 30)).get(Topic.COVER_SHARE).value(),
                plan(piece("a", 60, 0, 30, 0)).get(Topic.COVER_SHARE).value());
    }
}
