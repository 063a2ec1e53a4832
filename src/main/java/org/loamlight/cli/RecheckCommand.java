package org.loamlight.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.ranking.Change;
import org.loamlight.ranking.Outcome;
import org.loamlight.ranking.Ranking;
import org.loamlight.ranking.Since;
import org.loamlight.report.ChangesSection;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonPrinter;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.Carried;
import org.loamlight.workbook.visit.Amendment;
import org.loamlight.workbook.visit.PointState;
import org.loamlight.workbook.visit.Recorded;
import org.loamlight.workbook.visit.Visit;
import org.loamlight.workbook.visit.VisitReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamlight recheck}: a checklist that was filled in, audited again. */
@Command(name = RecheckCommand.NAME, description = {"Reads what was written into a checklist, audits the enclosure again and says what changed.",
    "The codes of the checklist are held again; the rules of a house have to be named again."},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:nothing at or above --fail-on", "1:something not right, not known or not decided at or above --fail-on",
            "2:wrong usage or input; output that cannot be written", "3:a defect of the program"})
final class RecheckCommand implements Callable<Integer> {
    static final String NAME = "recheck";
    private static final String DONE = "done";

    private final Surroundings surroundings;
    private final Supplier<RuleBase.Unchecked> rules;

    @Parameters(paramLabel = "CHECKLIST.xlsx", description = "The checklist that was filled in.")
    private String checklist;

    @Option(names = "--setup", paramLabel = "SETUP", description = "Put the answers into this setup (JSON or form), not into the one the checklist carries.")
    private String setupFile;

    @Option(names = "--save", paramLabel = "FILE.json", description = "Also write the setup with the new answers.")
    private String savedFile;

    @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "Day of the visit, as 2026-11-02. Default: what the sheet Visit says, else today.")
    private LocalDate on;

    @Mixin
    private final AuditOutputs outputs = new AuditOutputs();

    @Mixin
    private final CodesOption codes = new CodesOption();

    @Mixin
    private final HouseOptions house = new HouseOptions();

    /** @param rules loads them, or waits for them when they are loaded beside */
    RecheckCommand(Surroundings surroundings, Supplier<RuleBase.Unchecked> rules) {
        this.surroundings = surroundings;
        this.rules = rules;
    }

    /** What a checklist was made from: the setup as its file said it, and read. */
    private record Base(JsonValue.JsonObject document, Setup setup) {
    }

    @Override
    public Integer call() throws Complaint, ProblemsFound {
        Optional<Path> saved = saved();
        InputFile input = InputFile.read(checklist);
        Problems problems = new Problems(input.name());
        Visit visit = VisitReader.read(input.bytes(), problems);
        Knowledge knowledge = KnowledgeReader.builtIn();
        Base base = base(visit, input, knowledge);
        LocalDate day = day(visit, problems);
        Amendment.Result amended = Amendment.of(visit, base.document, base.setup, day, problems);
        Setup setup = SetupReader.read(amended.setup(), problems, knowledge.speciesNames());
        Knowledge chosen = house.beside(knowledge).withCodes(codes.chosenOr(visit.recorded().map(Recorded::codes).orElse(List.of()), setup.species()), setup.species());
        requireSameHouse(visit, chosen);
        Auditor auditor = new Auditor(chosen, () -> rules.get().checked(knowledge));
        Audit audit = auditor.audit(setup, day).with(house.waivers(chosen));
        Since since = since(visit, auditor, base, audit);
        String said = ChangesSection.of(since, visit.deletedRows(), chosen, new Wording(outputs.units(), chosen));
        Ranking ranking = Ranking.of(audit.findings(), audit.waived().inForce().keySet());
        byte[] document = JsonPrinter.print(amended.setup()).getBytes(StandardCharsets.UTF_8);
        Map<Path, byte[]> files = saved.map(file -> Map.of(file, document)).orElse(Map.of());
        outputs.deliver(new AuditOutputs.Audited(audit, ranking, new Carried(amended.setup(), amended.history(), Optional.of(since)), document), files, said, surroundings);
        return outputs.exitCode(ranking);
    }

    /** Where the setup is to be saved; empty when it is not. */
    private Optional<Path> saved() throws Complaint {
        Map<String, String> read = new HashMap<>(house.files(Map.of(checklist, "the checklist itself")));
        if (setupFile != null) {
            read.put(setupFile, "the setup itself");
        }
        Optional<Path> saved = savedFile == null ? Optional.empty() : Optional.of(InputFile.path(savedFile));
        outputs.requireUsable(read, saved.stream().toList());
        return saved;
    }

    private Base base(Visit visit, InputFile input, Knowledge knowledge) throws Complaint, ProblemsFound {
        if (setupFile != null) {
            SetupFile file = SetupFile.read(InputFile.read(setupFile), knowledge);
            return new Base((JsonValue.JsonObject) file.document(), file.setup());
        }
        if (visit.recorded().isEmpty()) {
            throw new Complaint(input.name() + ": the sheet Record, which has the setup, is lost or was changed; name the setup the checklist was made from with --setup FILE");
        }
        Problems problems = new Problems(input.name());
        JsonValue document = JsonFile.read(visit.recorded().get().setup().getBytes(StandardCharsets.UTF_8), problems);
        return new Base((JsonValue.JsonObject) document, SetupReader.read(document, problems, knowledge.speciesNames()));
    }

    private LocalDate day(Visit visit, Problems problems) {
        Optional<LocalDate> written = visit.day(problems);
        return on != null ? on : written.orElseGet(() -> LocalDate.now(surroundings.clock()));
    }

    private void requireSameHouse(Visit visit, Knowledge chosen) throws Complaint {
        String before = visit.recorded().map(Recorded::house).orElse("");
        if (!before.isEmpty() && chosen.house().isEmpty()) {
            throw new Complaint(checklist + ": it was made with the rules of a house, \"" + before + "\"; name them with --house FILE");
        }
    }

    /** The same setup is audited by the knowledge of now as well, so that what only the knowledge changed stands apart. */
    private static Since since(Visit visit, Auditor auditor, Base base, Audit audit) {
        Optional<Recorded> recorded = visit.recorded();
        LocalDate before = recorded.map(Recorded::on).map(LocalDate::parse).or(() -> base.setup.on()).orElse(audit.on());
        Map<String, Outcome> baseline = Outcome.of(auditor.audit(base.setup, before).findings());
        boolean isNewer = recorded.filter(record -> record.isOf(audit.knowledge())).isEmpty();
        List<Change> byKnowledge = recorded.filter(record -> isNewer).map(record -> Change.between(record.findings(), baseline).stream()
                .filter(change -> change.kind() != Change.Kind.STILL_OPEN).toList()).orElse(List.of());
        return new Since(before.toString(), recorded.map(Recorded::version).orElse(audit.knowledge().version()), isNewer, byKnowledge,
                Change.between(baseline, Outcome.of(audit.findings())), unproven(visit, audit));
    }

    private static List<String> unproven(Visit visit, Audit audit) {
        List<String> wrong = audit.findings().stream().filter(finding -> finding.result() == Result.NONCONFORMITY).map(Finding::pair).map(Pair::key).toList();
        return visit.states().stream().filter(state -> state.state().equals(DONE)).map(PointState::pair).filter(wrong::contains).toList();
    }
}
