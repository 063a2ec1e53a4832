package org.loamlight.evaluation;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Index;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.constraints.SingleConstraint1;
import org.drools.model.functions.PredicateInformation;
import org.drools.model.index.AlphaIndexImpl;
import org.loamlight.quantity.Quantity;

/**
 * Lets a quantity go straight to the rules that ask for its topic. The rule compiler indexes a comparison with a text or a number but not one with
 * an enum constant, so that without this every quantity is held against every topic that some rule names. Rules mean the same with it and without.
 */
final class TopicIndex {
    private static final Pattern ONE_TOPIC = Pattern.compile("topic == Topic\\.(\\w+)");

    private TopicIndex() {
    }

    /** The same model with the index. */
    static Model added(Model model) {
        asking(model).forEach(constraint -> constraint.setIndex(new AlphaIndexImpl<>(String.class, Index.ConstraintType.EQUAL, 0,
                (Quantity quantity) -> quantity.topic().name(), topic(constraint).orElseThrow())));
        return model;
    }

    /** Every constraint that asks a quantity for one topic. */
    static Stream<SingleConstraint1<?>> asking(Model model) {
        return model.getRules().stream().map(Rule::getView).flatMap(TopicIndex::conditions)
                .filter(condition -> condition instanceof org.drools.model.Pattern<?> pattern && pattern.getPatternVariable().getType() == Quantity.class)
                .flatMap(condition -> constraints(((org.drools.model.Pattern<?>) condition).getConstraint()))
                .filter(constraint -> topic(constraint).isPresent());
    }

    /** The name of the topic a constraint asks for, as the rule says it; empty when it asks for something else. */
    static Optional<String> topic(SingleConstraint1<?> constraint) {
        Matcher asked = ONE_TOPIC.matcher(Optional.ofNullable(constraint.predicateInformation()).map(PredicateInformation::getStringConstraint).orElse(""));
        return asked.matches() ? Optional.of(asked.group(1)) : Optional.empty();
    }

    private static Stream<Condition> conditions(Condition condition) {
        return Stream.concat(Stream.of(condition), condition.getSubConditions().stream().flatMap(TopicIndex::conditions));
    }

    /** All that must hold together; of alternatives none need hold. */
    private static Stream<SingleConstraint1<?>> constraints(Constraint constraint) {
        if (constraint instanceof SingleConstraint1<?> single) {
            return Stream.of(single);
        }
        return constraint.getType() == Constraint.Type.OR ? Stream.empty() : constraint.getChildren().stream().flatMap(TopicIndex::constraints);
    }
}
