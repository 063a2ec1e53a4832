package org.loamlight.evaluation;

import java.util.List;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.ReleaseId;

/** Rules compiled from DRL in the process that uses them. */
final class CompiledAtStart {
    private static int compiled;

    private CompiledAtStart() {
    }

    /** @throws IllegalStateException when they cannot be compiled, with what the compiler says */
    static synchronized RuleBase of(List<DrlSource> sources) {
        KieServices services = KieServices.get();
        ReleaseId id = services.newReleaseId("org.loamlight.bench", "compiled-at-start-" + ++compiled, "1");
        KieFileSystem files = services.newKieFileSystem();
        files.generateAndWritePomXML(id);
        sources.forEach(source -> files.write("src/main/resources/" + source.name(), source.text()));
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        if (sources.isEmpty() || !builder.getResults().getMessages().isEmpty()) {
            throw new IllegalStateException(sources.size() + " files of rules: " + builder.getResults().getMessages());
        }
        return new RuleBase(services.newKieContainer(id).getKieBase());
    }
}
