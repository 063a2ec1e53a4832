package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drools.model.AlphaIndex;
import org.drools.model.constraints.SingleConstraint1;
import org.drools.model.functions.Predicate1;
import org.junit.jupiter.api.Test;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;

class TopicIndexTest {

    /** Unchecked: the model of the rules is raw, and these constraints are all of quantities. */
    @Test
    @SuppressWarnings("unchecked")
    void an_index_lets_pass_exactly_what_its_condition_lets_pass() throws Exception {
        List<SingleConstraint1<?>> asking = RuleBase.models().map(TopicIndex::added).flatMap(TopicIndex::asking).toList();
        assertTrue(asking.size() > 50, asking.size() + " conditions ask for one topic");
        for (SingleConstraint1<?> constraint : asking) {
            for (Topic topic : Topic.values()) {
                Quantity quantity = new Quantity(topic, Place.ANYWHERE, 1, 0, new Origin(Method.MEASURED, "reading:made up", ""), List.of());
                assertEquals(passes(constraint.getPredicate1(), quantity), passes((AlphaIndex<Quantity, String>) constraint.getIndex(), quantity), constraint + " " + topic);
            }
        }
    }

    private static boolean passes(Predicate1<Quantity> condition, Quantity quantity) throws Exception {
        return condition.test(quantity);
    }

    private static boolean passes(AlphaIndex<Quantity, String> index, Quantity quantity) {
        return index.getLeftOperandExtractor().apply(quantity).equals(index.getRightValue());
    }
}
