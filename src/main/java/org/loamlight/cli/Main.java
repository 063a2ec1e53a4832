package org.loamlight.cli;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.workbook.Checklist;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;

/** The program {@code loamlight}. */
@Command(name = "loamlight", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Holds a described reptile enclosure against what its animals need: what is wrong, what to do first, what to find out.",
        footer = {"", "This check replaces neither a veterinarian nor a licensed electrician."})
public final class Main {
    private static final int TERMINAL_WIDTH = 80;

    private Main() {
    }

    public static void main(String[] arguments) {
        System.exit(start(new Surroundings(new FileInputStream(FileDescriptor.in), utf8(FileDescriptor.out), utf8(FileDescriptor.err), Clock.systemDefaultZone()), arguments));
    }

    /** Runs one command line of a process of its own, which has to load everything first: on both of two cores. */
    static int start(Surroundings surroundings, String... arguments) {
        if (AuditCommand.writesWorkbook(arguments)) {
            // Its classes take longer to load than the rules to run. Nobody waits for this: what it has not loaded is loaded later.
            Beside.start("workbook classes", () -> {
                Checklist.warmUp();
                return true;
            });
        }
        return run(surroundings, AuditCommand.isAskedFor(arguments) || ReviewCommand.isAskedFor(arguments) ? Beside.start("rules", RuleBase::loadUnchecked)::result
                : RuleBase::loadUnchecked, arguments);
    }

    private static PrintStream utf8(FileDescriptor stream) {
        return new PrintStream(new FileOutputStream(stream), false, StandardCharsets.UTF_8);
    }

    /** Runs one command line. Complaints go to {@code err}; returns the exit code. */
    static int run(Surroundings surroundings, String... arguments) {
        return run(surroundings, RuleBase::loadUnchecked, arguments);
    }

    private static int run(Surroundings surroundings, Supplier<RuleBase.Unchecked> rules, String... arguments) {
        int code = commandLine(surroundings, subcommands(surroundings, rules), arguments).execute(arguments);
        surroundings.out().flush();
        surroundings.err().flush();
        return code;
    }

    /** The subcommands by name, in the order in which the help lists them. */
    private static Map<String, Supplier<Object>> subcommands(Surroundings surroundings, Supplier<RuleBase.Unchecked> rules) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("help", HelpCommand::new);
        commands.put("generate-completion", GenerateCompletion::new);
        commands.put(AuditCommand.NAME, () -> new AuditCommand(surroundings, rules));
        commands.put(RecheckCommand.NAME, () -> new RecheckCommand(surroundings, rules));
        commands.put(ReviewCommand.NAME, () -> new ReviewCommand(surroundings, rules));
        commands.put("check", () -> new CheckCommand(surroundings));
        commands.put("form", () -> new FormCommand(surroundings));
        commands.put("convert", () -> new ConvertCommand(surroundings));
        commands.put("explain", () -> new ExplainCommand(surroundings));
        commands.put("species", () -> new SpeciesCommand(surroundings));
        commands.put("criteria", () -> new CriteriaCommand(surroundings));
        commands.put("codes", () -> new CodesCommand(surroundings));
        commands.put("prepare", () -> new PrepareCommand(surroundings));
        return commands;
    }

    /** Knows only the subcommand that is called when it is called at once: making all of them takes some 40 ms of a cold start. */
    private static CommandLine commandLine(Surroundings surroundings, Map<String, Supplier<Object>> subcommands, String... arguments) {
        CommandLine line = new CommandLine(new Main());
        String called = arguments.length == 0 ? "" : arguments[0];
        boolean needsAll = !subcommands.containsKey(called) || called.equals("help") || called.equals("generate-completion");
        subcommands.forEach((name, command) -> {
            if (needsAll || name.equals(called)) {
                line.addSubcommand(command.get());
            }
        });
        line.setOut(writer(surroundings.out())).setErr(writer(surroundings.err()));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF)).setUsageHelpWidth(TERMINAL_WIDTH);
        Complaints complaints = new Complaints(surroundings);
        line.setParameterExceptionHandler(complaints).setExecutionExceptionHandler(complaints);
        return line;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
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
