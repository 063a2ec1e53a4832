package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drools.model.AlphaIndex;
import org.drools.model.functions.Predicate1;
import org.junit.jupiter.api.Test;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.review.InventedSetup;
import org.loamlight.setup.ProblemsFound;

class EnumIndexTest {
    private static final int SETUPS = 60;

    /** Unchecked: the model of the rules is raw, and each constraint is asked about facts of its own class only. */
    @Test
    @SuppressWarnings("unchecked")
    void an_index_lets_pass_exactly_what_its_condition_lets_pass() throws Exception {
        List<EnumIndex.Asking> asking = RuleBase.models().map(EnumIndex::added).flatMap(EnumIndex::asking).toList();
        Map<Class<?>, List<Object>> facts = facts();
        int passed = 0;
        for (EnumIndex.Asking one : asking) {
            AlphaIndex<Object, String> index = (AlphaIndex<Object, String>) one.constraint().getIndex();
            for (Object fact : facts.getOrDefault(one.reads().getDeclaringClass(), List.of())) {
                boolean passes = index.getLeftOperandExtractor().apply(fact).equals(index.getRightValue());
                assertEquals(passes(one.constraint().getPredicate1(), fact), passes, one.constraint() + " " + fact);
                passed += passes ? 1 : 0;
            }
        }
        assertTrue(asking.size() > 150 && passed > asking.size(), asking.size() + " conditions ask for one constant, " + passed + " times it was there");
    }

    private static boolean passes(Predicate1<Object> condition, Object fact) throws Exception {
        return condition.test(fact);
    }

    /** What rules see of many setups, by its class, and a quantity of every topic. */
    private static Map<Class<?>, List<Object>> facts() {
        Stream<Object> ofSetups = IntStream.rangeClosed(1, SETUPS).boxed().flatMap(number -> facts(number).stream());
        Stream<Object> ofTopics = Stream.of(Topic.values()).map(topic -> new Quantity(topic, Place.ANYWHERE, 1, 0, new Origin(Method.MEASURED, "reading:made up", ""), List.of()));
        return Stream.concat(ofSetups, ofTopics).distinct().collect(Collectors.groupingBy(Object::getClass));
    }

    private static List<Object> facts(int number) {
        try {
            return BuiltIn.AUDITOR.ask(BuiltIn.setup(new InventedSetup(number).json("No. %d", true)), BuiltIn.ON).facts();
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }
}
