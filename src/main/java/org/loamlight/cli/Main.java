package org.loamlight.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Words;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;

/** The program {@code loamlight}. */
@Command(name = "loamlight", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        subcommands = {HelpCommand.class, GenerateCompletion.class},
        description = "Holds a described reptile enclosure against what its animals need: what is wrong, what to do first, what to find out.",
        footer = {"", "This check replaces neither a veterinarian nor a licensed electrician."})
public final class Main {
    private static final int TERMINAL_WIDTH = 80;

    private Main() {
    }

    public static void main(String[] arguments) {
        Surroundings surroundings = new Surroundings(utf8(FileDescriptor.out), utf8(FileDescriptor.err), Clock.systemDefaultZone());
        System.exit(run(surroundings, arguments));
    }

    private static PrintStream utf8(FileDescriptor stream) {
        return new PrintStream(new FileOutputStream(stream), false, StandardCharsets.UTF_8);
    }

    /** Runs one command line. Complaints go to {@code err}; returns the exit code. */
    static int run(Surroundings surroundings, String... arguments) {
        int code = commandLine(surroundings).execute(arguments);
        surroundings.out().flush();
        surroundings.err().flush();
        return code;
    }

    private static CommandLine commandLine(Surroundings surroundings) {
        CommandLine line = new CommandLine(new Main())
                .addSubcommand(new AuditCommand(surroundings)).addSubcommand(new CheckCommand(surroundings))
                .addSubcommand(new ExplainCommand(surroundings)).addSubcommand(new SpeciesCommand(surroundings))
                .addSubcommand(new CriteriaCommand(surroundings)).addSubcommand(new PrepareCommand(surroundings));
        line.setOut(writer(surroundings.out())).setErr(writer(surroundings.err()));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF)).setUsageHelpWidth(TERMINAL_WIDTH);
        line.setParameterExceptionHandler((e, given) -> wrongUsage(e, surroundings));
        line.setExecutionExceptionHandler((e, command, given) -> failed(e, surroundings));
        return line;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    private static int wrongUsage(ParameterException e, Surroundings surroundings) {
        String command = e.getCommandLine().getCommandName();
        String known = e instanceof CommandLine.UnmatchedArgumentException unmatched ? nearest(unmatched) : "";
        surroundings.err().println("loamlight: " + e.getMessage().replace('\n', ' ').strip() + known);
        surroundings.err().println("Try: loamlight " + ("loamlight".equals(command) ? "" : "help " + command).strip()
                + ("loamlight".equals(command) ? "--help" : ""));
        return ExitCode.USAGE;
    }

    private static String nearest(CommandLine.UnmatchedArgumentException e) {
        List<String> near = Words.nearest(e.getUnmatched().get(0), e.getCommandLine().getSubcommands().keySet(), 1);
        return near.isEmpty() ? "" : ". Did you mean \"" + near.get(0) + "\"?";
    }

    private static int failed(Exception e, Surroundings surroundings) {
        if (e instanceof Complaint || e instanceof ProblemsFound) {
            surroundings.err().println(e.getMessage());
            return ExitCode.USAGE;
        }
        surroundings.err().println("loamlight: this is a defect of the program, not of your setup: " + e.getMessage());
        surroundings.err().println("Nothing was judged. Please report it with the setup and the line of loamlight --version.");
        return ExitCode.FAILED;
    }

    /** Version of the program and of the knowledge in it. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            Knowledge knowledge = KnowledgeReader.builtIn();
            return new String[] {"loamlight " + knowledge.version(), "knowledge " + knowledge.sha256(),
                knowledge.criteria().size() + " criteria, " + knowledge.profiles().size() + " species"};
        }
    }
}
