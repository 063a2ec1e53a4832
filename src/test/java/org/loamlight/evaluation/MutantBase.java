package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.ReleaseId;
import org.kie.api.runtime.ClassObjectFilter;
import org.kie.api.runtime.KieSession;

/**
 * Many rules side by side that state nothing themselves: each keeps what it would state apart from the others, so that one
 * session tells of all of them.
 */
final class MutantBase {
    private static final int MOST_FIRINGS = 1_000_000;

    private final KieBase base;

    private MutantBase(KieBase base) {
        this.base = base;
    }

    /** A rule of one file, as it stands or changed. */
    record Variant(DrlRule rule, String when) {
        String drl(int number) {
            String then = rule.then().strip().replaceFirst("^insertLogical\\(", "insertLogical( new MutantStatement( " + number + ",")
                    .replaceFirst("\\);$", ") );");
            return "rule \"" + number + "\"\nwhen\n" + when + "\nthen\n" + then + "\nend\n";
        }
    }

    /**
     * Compiles variants of the rules of one file; each is known by its number in the list from then on.
     *
     * @param name no other base may be compiled under this name at the same time
     */
    static MutantBase compile(String name, List<Variant> variants) {
        StringBuilder drl = new StringBuilder("package org.loamlight.mutants;\nimport org.loamlight.evaluation.MutantStatement;\n")
                .append(variants.get(0).rule().imports()).append('\n');
        for (int i = 0; i < variants.size(); i++) {
            drl.append(variants.get(i).drl(i));
        }
        return compile(KieServices.get().newReleaseId("org.loamlight.mutants", name, "1"), drl.toString());
    }

    private static MutantBase compile(ReleaseId id, String drl) {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        files.generateAndWritePomXML(id);
        files.write("src/main/resources/mutants.drl", drl);
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        if (!builder.getResults().getMessages().isEmpty()) {
            throw new AssertionError(id + ": " + builder.getResults().getMessages() + "\n" + drl);
        }
        try {
            return new MutantBase(services.newKieContainer(id).getKieBase());
        } finally {
            services.getRepository().removeKieModule(id);
        }
    }

    /**
     * What each of these variants states of the facts.
     *
     * @param numbers which may fire
     * @return by number; one that states nothing is not in it
     */
    Map<Integer, Set<Object>> statements(Collection<?> facts, Set<Integer> numbers) {
        KieSession session = base.newKieSession();
        try {
            facts.forEach(session::insert);
            int fired = session.fireAllRules(match -> numbers.contains(Integer.valueOf(match.getRule().getName())), MOST_FIRINGS);
            if (fired >= MOST_FIRINGS) {
                throw new AssertionError("The mutants did not come to rest");
            }
            Map<Integer, Set<Object>> stated = new HashMap<>();
            new ArrayList<>(session.getObjects(new ClassObjectFilter(MutantStatement.class))).stream().map(MutantStatement.class::cast)
                    .forEach(one -> stated.computeIfAbsent(one.by(), by -> new HashSet<>()).add(one.statement()));
            return stated;
        } finally {
            session.dispose();
        }
    }
}
