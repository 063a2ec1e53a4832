package org.loamlight.evaluation;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.kiesession.session.StatefulKnowledgeSessionImpl;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Knowledge;

/** The rules that were compiled at build time. Made once, shared by all threads; each audit has a session to itself. */
public final class RuleBase {
    private static final String MODEL_LIST = "/META-INF/kie/org.loamlight/loamlight/drools-model";
    private static final String VERSION_LINE = "Drools-Model-Version";

    private final KieBase base;
    /** As many as were ever needed at a time: one for each thread that audits. */
    private final Queue<StatefulKnowledgeSessionImpl> idle = new ConcurrentLinkedQueue<>();

    /** @param base not held against the catalogue: its maker answers for its rules */
    RuleBase(KieBase base) {
        this.base = base;
    }

    /**
     * Loads the compiled rules.
     *
     * @throws AuditFailure when they are absent or are not exactly the rules of the catalogue, naming the difference
     */
    public static RuleBase load(Knowledge knowledge) {
        return loadUnchecked().checked(knowledge);
    }

    /**
     * Loads the compiled rules, which can be done beside reading the knowledge.
     *
     * @throws AuditFailure when they are absent
     */
    public static Unchecked loadUnchecked() {
        KieBase base = KieBaseBuilder.createKieBaseFromModel(models().map(EnumIndex::added).toList());
        return new Unchecked(base, ruleNames(base));
    }

    /** Rules that nobody has held against the catalogue yet: nothing can be audited with them. */
    public static final class Unchecked {
        private final KieBase base;
        private final Set<String> names;

        private Unchecked(KieBase base, Set<String> names) {
            this.base = base;
            this.names = names;
        }

        /** @throws AuditFailure when they are not exactly the rules of the catalogue, naming the difference */
        public RuleBase checked(Knowledge knowledge) {
            requireSame(ruleNames(knowledge), names);
            return new RuleBase(base);
        }
    }

    /**
     * Lends a session without facts. Afterwards it is emptied and kept for the next one, which spares a third of what rules take; after a failure
     * it is thrown away.
     */
    <T> T withSession(Function<KieSession, T> work) {
        StatefulKnowledgeSessionImpl session = Optional.ofNullable(idle.poll()).orElseGet(() -> (StatefulKnowledgeSessionImpl) base.newKieSession());
        boolean sound = false;
        try {
            T result = work.apply(session);
            session.reset();
            sound = true;
            return result;
        } finally {
            if (sound) {
                idle.add(session);
            } else {
                session.dispose();
            }
        }
    }

    /** Whether every audit has given back its session; one that stays open holds its facts for ever. */
    boolean hasNoOpenSession() {
        return base.getKieSessions().size() == idle.size() && idle.stream().allMatch(session -> session.getObjects().isEmpty());
    }

    static Stream<Model> models() {
        return modelClasses().stream().map(RuleBase::model);
    }

    private static List<String> modelClasses() {
        try (InputStream list = RuleBase.class.getResourceAsStream(MODEL_LIST)) {
            if (list == null) {
                throw new AuditFailure("The compiled rules " + MODEL_LIST + " are not in the program; build it with mvn package");
            }
            return new String(list.readAllBytes(), StandardCharsets.UTF_8).lines().map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith(VERSION_LINE)).sorted().toList();
        } catch (IOException e) {
            throw new AuditFailure("The compiled rules " + MODEL_LIST + " cannot be read", e);
        }
    }

    private static Model model(String className) {
        try {
            return (Model) Class.forName(className).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new AuditFailure("The compiled rules of " + className + " cannot be loaded", e);
        }
    }

    private static Set<String> ruleNames(Knowledge knowledge) {
        Stream<String> own = knowledge.criteria().values().stream().map(Criterion::rules).flatMap(List::stream);
        return Stream.concat(own, knowledge.limitRules().stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> ruleNames(KieBase base) {
        return base.getKiePackages().stream().flatMap(group -> group.getRules().stream()).map(rule -> rule.getName())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    static void requireSame(Set<String> catalogued, Set<String> compiled) {
        List<String> differences = new ArrayList<>();
        catalogued.stream().filter(name -> !compiled.contains(name)).forEach(name -> differences.add("not compiled: " + name));
        compiled.stream().filter(name -> !catalogued.contains(name)).forEach(name -> differences.add("not in the catalogue: " + name));
        if (catalogued.isEmpty() || !differences.isEmpty()) {
            throw new AuditFailure("The compiled rules are not those of the catalogue (" + catalogued.size() + " rules): "
                    + String.join("; ", differences));
        }
    }
}
