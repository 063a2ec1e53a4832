package org.loamlight.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.criterion.Waivers;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Numbers;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.ranking.Ranking;
import org.loamlight.report.JsonReport;
import org.loamlight.report.SvgDrawing;
import org.loamlight.report.TextReport;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.Checklist;
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
    private static final String TO_STDOUT = "-";

    private final Surroundings surroundings;
    private final Supplier<RuleBase.Unchecked> rules;

    @Parameters(paramLabel = "SETUP", description = "The setup file (JSON), or a form that was filled in (xlsx).")
    private String setupFile;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE.xlsx", description = "Also write the Excel checklist.")
    private String workbookFile;

    @Option(names = "--json", paramLabel = "FILE|-", description = "Also write the results as JSON; \"-\" prints them instead of the report.")
    private String jsonFile;

    @Option(names = "--drawing", paramLabel = "FILE.svg", description = "Also write the enclosure drawn to scale, as SVG.")
    private String drawingFile;

    @Option(names = "--units", paramLabel = "UNITS", defaultValue = "metric",
            description = "Units in print: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private UnitChoice units;

    @Option(names = "--fail-on", paramLabel = "GRADE", defaultValue = "major",
            description = "Grade from which the exit code is 1: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private FailOn failOn;

    @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "Day of the audit, as 2026-11-02. Default: the setup's \"on\", else today.")
    private LocalDate on;

    @Mixin
    private final CodesOption codes = new CodesOption();

    @Mixin
    private final HouseOptions house = new HouseOptions();

    /** @param rules loads them, or waits for them when they are loaded beside */
    AuditCommand(Surroundings surroundings, Supplier<RuleBase.Unchecked> rules) {
        this.surroundings = surroundings;
        this.rules = rules;
    }

    /** Whether a command line, not yet parsed, asks for an audit. */
    static boolean isAskedFor(String... arguments) {
        return arguments.length > 0 && arguments[0].equals(NAME);
    }

    /** Whether a command line, not yet parsed, seems to ask for a workbook. */
    static boolean writesWorkbook(String... arguments) {
        return Arrays.stream(arguments).anyMatch(argument -> argument.startsWith("-o") || argument.startsWith("--output"));
    }

    @Override
    public Integer call() throws Complaint, ProblemsFound {
        Targets targets = targets();
        InputFile input = InputFile.read(setupFile);
        Knowledge knowledge = KnowledgeReader.builtIn();
        Setup setup = SetupFile.read(input, knowledge).setup();
        Knowledge chosen = house.beside(knowledge).withCodes(codes.chosen(setup.species()), setup.species());
        Waivers waivers = house.waivers(chosen);
        Audit audit = new Auditor(chosen, () -> rules.get().checked(knowledge)).audit(setup, day(setup)).with(waivers);
        Ranking ranking = Ranking.of(audit.findings(), audit.waived().inForce().keySet());
        deliver(audit, ranking, input, targets);
        return failOn.exitCode(ranking.open());
    }

    /** @param json null when it goes to stdout or nowhere; the others null when they are not wanted */
    private record Targets(Path workbook, Path json, Path drawing) {
        List<Path> all() {
            return Stream.of(workbook, json, drawing).filter(Objects::nonNull).toList();
        }
    }

    private Targets targets() throws Complaint {
        Path workbook = workbookFile == null ? null : InputFile.path(workbookFile);
        Path json = jsonFile == null || jsonFile.equals(TO_STDOUT) ? null : InputFile.path(jsonFile);
        Path drawing = drawingFile == null ? null : InputFile.path(drawingFile);
        requireEnding(workbookFile, ".xlsx", "the checklist is an Excel workbook");
        requireEnding(drawingFile, ".svg", "the drawing is an SVG picture");
        Targets targets = new Targets(workbook, json, drawing);
        requireApart(targets.all());
        return targets;
    }

    private static void requireEnding(String file, String ending, String what) throws Complaint {
        if (file != null && !file.toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw new Complaint(file + ": " + what + "; name it with " + ending + " at the end");
        }
    }

    private void requireApart(List<Path> outputs) throws Complaint {
        Path setup = whole(InputFile.path(setupFile));
        Set<Path> before = new HashSet<>();
        for (Path output : outputs) {
            if (whole(output).equals(setup)) {
                throw new Complaint(output + ": this is the setup itself; give the output another name");
            }
            OutputFiles.requireWritable(output);
            if (!before.add(whole(output))) {
                throw new Complaint(output + ": two outputs would be one file; give them two names");
            }
        }
    }

    private static Path whole(Path file) {
        return file.toAbsolutePath().normalize();
    }

    private LocalDate day(Setup setup) {
        return on != null ? on : setup.on().orElseGet(() -> LocalDate.now(surroundings.clock()));
    }

    private void deliver(Audit audit, Ranking ranking, InputFile input, Targets targets) throws Complaint {
        Wording wording = new Wording(units.units(), audit.knowledge());
        Optional<Beside<byte[]>> workbook = Optional.ofNullable(targets.workbook)
                .map(file -> Beside.start("workbook", () -> workbook(audit, ranking, wording)));
        String json = jsonFile == null ? "" : JsonReport.of(audit, ranking, wording, JsonFile.sha256(input.bytes()));
        String printed = TO_STDOUT.equals(jsonFile) ? json : TextReport.of(audit, ranking, wording);
        OutputFiles files = new OutputFiles();
        workbook.ifPresent(made -> files.add(targets.workbook, made.result()));
        if (targets.json != null) {
            files.add(targets.json, json.getBytes(StandardCharsets.UTF_8));
        }
        if (targets.drawing != null) {
            Drawing drawing = Drawing.of(audit, wording, Numbers.ofReport(ranking));
            files.add(targets.drawing, SvgDrawing.of(drawing, wording).getBytes(StandardCharsets.UTF_8));
        }
        files.write();
        surroundings.out().print(printed);
        surroundings.out().flush();
    }

    private static byte[] workbook(Audit audit, Ranking ranking, Wording wording) throws IOException {
        ByteArrayOutputStream workbook = new ByteArrayOutputStream();
        Checklist.write(audit, ranking, wording, workbook);
        return workbook.toByteArray();
    }
}
