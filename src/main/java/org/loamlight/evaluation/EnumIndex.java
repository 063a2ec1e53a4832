package org.loamlight.evaluation;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;
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

/**
 * Lets a fact go straight to the rules that ask for one of its enum constants: {@code Quantity( topic == Topic.UV_INDEX )}. The rule compiler
 * indexes a comparison with a text or a number but not one with an enum constant, so that without this a quantity is held against every topic that
 * some rule names. Rules mean the same with it and without.
 */
final class EnumIndex {
    private static final Pattern ONE_CONSTANT = Pattern.compile("(\\w+) == \\w+\\.(\\w+)");
    /** Beyond the numbers the rule compiler gives the members of a fact. */
    private static final int FIRST_NUMBER = 1_000;

    private EnumIndex() {
    }

    /**
     * A constraint that asks for one constant.
     *
     * @param number   which component of its fact it asks about, from 0
     * @param reads    reads that component
     * @param constant name of the constant
     */
    record Asking(SingleConstraint1<?> constraint, int number, Method reads, String constant) {
        /** Name of the constant a fact has there. */
        String found(Object fact) {
            try {
                return ((Enum<?>) reads.invoke(fact)).name();
            } catch (ReflectiveOperationException e) {
                throw new AuditFailure("A fact cannot be read: " + reads, e);
            }
        }
    }

    /** The same model with the index. */
    static Model added(Model model) {
        asking(model).forEach(one -> one.constraint.setIndex(
                new AlphaIndexImpl<>(String.class, Index.ConstraintType.EQUAL, FIRST_NUMBER + one.number, one::found, one.constant)));
        return model;
    }

    /** Every constraint that asks a fact for one constant of an enum. */
    static Stream<Asking> asking(Model model) {
        return model.getRules().stream().map(Rule::getView).flatMap(EnumIndex::conditions)
                .flatMap(condition -> condition instanceof org.drools.model.Pattern<?> pattern ? asking(pattern) : Stream.empty());
    }

    private static Stream<Asking> asking(org.drools.model.Pattern<?> pattern) {
        Class<?> fact = pattern.getPatternVariable().getType();
        return fact.isRecord() ? constraints(pattern.getConstraint()).flatMap(constraint -> asking(constraint, List.of(fact.getRecordComponents())).stream()) : Stream.empty();
    }

    private static Optional<Asking> asking(SingleConstraint1<?> constraint, List<RecordComponent> components) {
        String said = Optional.ofNullable(constraint.predicateInformation()).map(PredicateInformation::getStringConstraint).orElse("");
        Matcher asked = ONE_CONSTANT.matcher(said);
        return !asked.matches() ? Optional.empty() : components.stream().filter(one -> one.getName().equals(asked.group(1)) && one.getType().isEnum()).findFirst()
                .map(one -> new Asking(constraint, components.indexOf(one), one.getAccessor(), asked.group(2)));
    }

    private static Stream<Condition> conditions(Condition condition) {
        return Stream.concat(Stream.of(condition), condition.getSubConditions().stream().flatMap(EnumIndex::conditions));
    }

    /** All that must hold together; of alternatives none need hold. */
    private static Stream<SingleConstraint1<?>> constraints(Constraint constraint) {
        if (constraint instanceof SingleConstraint1<?> single) {
            return Stream.of(single);
        }
        return constraint.getType() == Constraint.Type.OR ? Stream.empty() : constraint.getChildren().stream().flatMap(EnumIndex::constraints);
    }
}
