package org.loamlight.cli;

import java.util.concurrent.Callable;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code loamlight check}: reads a setup and says what cannot be used in it. */
@Command(name = "check", description = "Only checks that a setup file can be read; judges nothing.")
final class CheckCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "SETUP", description = "The setup file (JSON), or a form that was filled in (xlsx).")
    private String setupFile;

    CheckCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Complaint, ProblemsFound {
        InputFile input = InputFile.read(setupFile);
        Setup setup = SetupFile.read(input, KnowledgeReader.builtIn()).setup();
        surroundings.out().println(input.name() + ": can be read; it answers " + setup.told().answers().size() + " questions about "
                + setup.animals().size() + (setup.animals().size() == 1 ? " animal." : " animals."));
        return ExitCode.IN_ORDER;
    }
}
