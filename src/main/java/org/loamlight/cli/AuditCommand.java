package org.loamlight.cli;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.criterion.Waivers;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.workbook.Carried;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamlight audit}: the main job. */
@Command(name = AuditCommand.NAME, description = "Holds a described setup against what its animals need and says what to do first.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:nothing at or above --fail-on", "1:something not right, not known or not decided at or above --fail-on",
            "2:wrong usage or input; output that cannot be written", "3:a defect of the program"})
final class AuditCommand implements Callable<Integer> {
    static final String NAME = "audit";

    private final Surroundings surroundings;
    private final Supplier<RuleBase.Unchecked> rules;

    @Parameters(paramLabel = "SETUP", description = "The setup file (JSON), or a form that was filled in (xlsx).")
    private String setupFile;

    @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "Day of the audit, as 2026-11-02. Default: the setup's \"on\", else today.")
    private LocalDate on;

    @Mixin
    private final AuditOutputs outputs = new AuditOutputs();

    @Mixin
    private final CodesOption codes = new CodesOption();

    @Mixin
    private final HouseOptions house = new HouseOptions();

    /** @param rules loads them, or waits for them when they are loaded beside */
    AuditCommand(Surroundings surroundings, Supplier<RuleBase.Unchecked> rules) {
        this.surroundings = surroundings;
        this.rules = rules;
    }

    /** Whether a command line, not yet parsed, asks for an audit, the first or another one. */
    static boolean isAskedFor(String... arguments) {
        return arguments.length > 0 && (arguments[0].equals(NAME) || arguments[0].equals(RecheckCommand.NAME));
    }

    /** Whether a command line, not yet parsed, seems to ask for a workbook. */
    static boolean writesWorkbook(String... arguments) {
        return Arrays.stream(arguments).anyMatch(argument -> argument.startsWith("-o") || argument.startsWith("--output"));
    }

    @Override
    public Integer call() throws Complaint, ProblemsFound {
        outputs.requireUsable(house.files(Map.of(setupFile, "the setup itself")), List.of());
        InputFile input = InputFile.read(setupFile);
        Knowledge knowledge = KnowledgeReader.builtIn();
        SetupFile file = SetupFile.read(input, knowledge);
        Setup setup = file.setup();
        Knowledge chosen = house.beside(knowledge).withCodes(codes.chosen(setup.species()), setup.species());
        Waivers waivers = house.waivers(chosen);
        Audit audit = new Auditor(chosen, () -> rules.get().checked(knowledge)).audit(setup, day(setup)).with(waivers);
        Ranking ranking = Ranking.of(audit.findings(), audit.waived().inForce().keySet());
        outputs.deliver(new AuditOutputs.Audited(audit, ranking, Carried.first(file.document()), input.bytes()), Map.of(), "", surroundings);
        return outputs.exitCode(ranking);
    }

    private LocalDate day(Setup setup) {
        return on != null ? on : setup.on().orElseGet(() -> LocalDate.now(surroundings.clock()));
    }
}
