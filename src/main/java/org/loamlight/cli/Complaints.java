package org.loamlight.cli;

import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Words;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns whatever ends a command early into words on stderr and an exit code. */
final class Complaints implements IParameterExceptionHandler, IExecutionExceptionHandler {
    private final Surroundings surroundings;

    Complaints(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public int handleParseException(ParameterException e, String[] arguments) {
        String command = e.getCommandLine().getCommandName();
        String known = e instanceof UnmatchedArgumentException unmatched ? nearest(unmatched) : "";
        surroundings.err().println("loamlight: " + e.getMessage().replace('\n', ' ').strip() + known);
        surroundings.err().println(command.equals("loamlight") ? "Try: loamlight --help" : "Try: loamlight help " + command);
        return ExitCode.USAGE;
    }

    private static String nearest(UnmatchedArgumentException e) {
        return Words.nearest(e.getUnmatched().get(0), e.getCommandLine().getSubcommands().keySet())
                .map(near -> ". Did you mean \"" + near + "\"?").orElse("");
    }

    @Override
    public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
        if (e instanceof Complaint || e instanceof ProblemsFound) {
            surroundings.err().println(e.getMessage());
            return ExitCode.USAGE;
        }
        surroundings.err().println("loamlight: this is a defect of the program, not of your setup: " + e.getMessage());
        surroundings.err().println("Nothing was judged. Please report it with the setup and the line of loamlight --version.");
        return ExitCode.FAILED;
    }
}
