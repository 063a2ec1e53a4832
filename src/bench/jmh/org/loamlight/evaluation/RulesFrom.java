package org.loamlight.evaluation;

import java.util.List;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.loamlight.criterion.Knowledge;

/** Where a process can take its rules from. All give the same findings. */
public enum RulesFrom {
    /** The program's way: classes the build made of the DRL, loaded without a container. */
    BUILD {
        @Override
        RuleBase load(Knowledge knowledge) {
            return RuleBase.load(knowledge);
        }
    },
    /** The DRL itself, compiled when the process starts. */
    DRL {
        @Override
        RuleBase load(Knowledge knowledge) {
            return CompiledAtStart.of(DrlSource.all());
        }
    },
    /** The classes of the build once more, found by the container that looks for {@code META-INF/kmodule.xml} on the class path. */
    CONTAINER {
        @Override
        RuleBase load(Knowledge knowledge) {
            KieBase base = KieServices.get().newKieClasspathContainer().getKieBase();
            return new RuleBase(base);
        }
    };

    /** @throws RuntimeException when there are none */
    abstract RuleBase load(Knowledge knowledge);

    Auditor auditor(Knowledge knowledge) {
        return new Auditor(knowledge, load(knowledge));
    }

    /**
     * Audits every one of these setups and compares.
     *
     * @throws IllegalStateException when one finding differs from what the program finds, with the place of the first such setup
     */
    static void requireSameFindings(Auditor auditor, Auditor program, List<Auditor.Asked> setups) {
        for (int i = 0; i < setups.size(); i++) {
            if (!auditor.judge(setups.get(i), List.of()).equals(program.judge(setups.get(i), List.of()))) {
                throw new IllegalStateException("Other findings than the program's for setup " + i + " of the mixed set");
            }
        }
    }
}
