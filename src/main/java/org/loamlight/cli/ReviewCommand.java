package org.loamlight.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.criterion.Waivers;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.report.ReviewText;
import org.loamlight.review.Basis;
import org.loamlight.review.InputPaths;
import org.loamlight.review.Judging;
import org.loamlight.review.Review;
import org.loamlight.review.Row;
import org.loamlight.review.Since;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.ReviewBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamlight review}: many setups at once. */
@Command(name = ReviewCommand.NAME, description = "Judges many setups: one workbook, the worst first, with common faults and who owes what.",
        exitCodeListHeading = "%nExit codes, the worst of all setups:%n",
        exitCodeList = {"0:nothing at or above --fail-on", "1:something not right, not known or not decided at or above --fail-on",
            "2:wrong usage; a file that cannot be read; output that cannot be written", "3:a defect of the program"})
final class ReviewCommand implements Callable<Integer> {
    static final String NAME = "review";
    private static final String TO_STDOUT = "-";
    private static final int MOST_WORKERS = 256;

    private final Surroundings surroundings;
    private final Supplier<RuleBase.Unchecked> rules;

    @Parameters(paramLabel = "PATH", arity = "1..*", description = "Folders, zips, JSON Lines (.jsonl), setup files (JSON) and filled-in forms (xlsx); \"-\" reads JSON Lines from standard input.")
    private List<String> paths;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE.xlsx", description = "Write the workbook of the review.")
    private String workbookFile;

    @Option(names = "--jsonl", paramLabel = "FILE|-", description = "Write the results, one line for each setup; \"-\" prints them instead of the summary.")
    private String linesFile;

    @Option(names = "--resume", description = "Take over what stands in the file of --jsonl, or was left by a run that was killed.")
    private boolean resumes;

    @Option(names = "--against", paramLabel = "LAST.jsonl", description = "Tell what changed since an earlier review, from its results.")
    private String againstFile;

    @Option(names = "--anonymous", description = "Numbers instead of names.")
    private boolean anonymous;

    @Option(names = "--key", paramLabel = "FILE", description = "With --anonymous: write whose the numbers are, apart from everything else.")
    private String keyFile;

    @Option(names = "--workers", paramLabel = "N", description = "How many setups are judged at a time (default: one for each core).")
    private Integer workers;

    @Mixin
    private final PrintOptions print = new PrintOptions();

    @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "Day of every audit. Default: each setup's \"on\", else today.")
    private LocalDate on;

    @Mixin
    private final CodesOption codes = new CodesOption();

    @Mixin
    private final HouseOptions house = new HouseOptions();

    /** @param rules loads them, or waits for them when they are loaded beside */
    ReviewCommand(Surroundings surroundings, Supplier<RuleBase.Unchecked> rules) {
        this.surroundings = surroundings;
        this.rules = rules;
    }

    /** Whether a command line, not yet parsed, asks for a review. */
    static boolean isAskedFor(String... arguments) {
        return arguments.length > 0 && arguments[0].equals(NAME);
    }

    /** @param all every file that is written, compared with or holds rules; none of them is a description */
    private record Targets(Optional<Path> workbook, Optional<Path> lines, Optional<Path> key, Optional<Path> against, Set<Path> all) {
    }

    @Override
    public Integer call() throws Complaint, ProblemsFound, IOException {
        List<Path> inputs = inputs();
        Targets targets = targets(inputs);
        requireComparable(targets);
        Judging judging = judging();
        try (ResultLines lines = lines(targets)) {
            Review review = new Review(judging, lines.earlier(), lines.lines(), againstFile != null);
            byte[] key = run(review, inputs, targets);
            if (review.totals().rows().isEmpty()) {
                throw new Complaint(String.join("\n", review.notes()));
            }
            deliver(review, key, lines, targets);
            return exitCode(review);
        }
    }

    private List<Path> inputs() throws Complaint {
        List<Path> inputs = new ArrayList<>();
        for (String path : paths) {
            Path input = InputFile.path(path);
            boolean isStandardInput = input.equals(InputPaths.STANDARD_INPUT);
            if (isStandardInput && inputs.contains(input)) {
                throw new Complaint("-: standard input can be read once only; name it once, or write ./- for a file of that name");
            }
            if (!isStandardInput && Files.notExists(input)) {
                throw new Complaint(path + ": there is no such file or folder; check the name");
            }
            inputs.add(input);
        }
        return inputs;
    }

    private Targets targets(List<Path> inputs) throws Complaint {
        OutputFiles.requireEnding(workbookFile, FormCommand.XLSX, "the review is an Excel workbook");
        requireTogether();
        Optional<Path> lines = TO_STDOUT.equals(linesFile) ? Optional.empty() : path(linesFile);
        Targets targets = new Targets(path(workbookFile), lines, path(keyFile), path(againstFile), new LinkedHashSet<>());
        List<Path> outputs = Stream.of(targets.workbook, targets.lines, targets.key).flatMap(Optional::stream).toList();
        requireApart(outputs, inputs, targets.against);
        targets.all.addAll(outputs);
        targets.against.ifPresent(targets.all::add);
        for (String file : house.files()) {
            targets.all.add(InputFile.path(file));
        }
        lines.ifPresent(file -> targets.all.addAll(List.of(ResultLines.sibling(file, ".part"), ResultLines.sibling(file, ".earlier"))));
        return targets;
    }

    private static Optional<Path> path(String name) throws Complaint {
        return name == null ? Optional.empty() : Optional.of(InputFile.path(name));
    }

    private void requireTogether() throws Complaint {
        if (resumes && (linesFile == null || linesFile.equals(TO_STDOUT))) {
            throw new Complaint("--resume: there is nothing to take over; name the file of results with --jsonl FILE");
        }
        if (keyFile != null && !anonymous) {
            throw new Complaint("--key: without --anonymous names stand in the results themselves; leave one out or add the other");
        }
        if (workers != null && (workers < 1 || workers > MOST_WORKERS)) {
            throw new Complaint("--workers: " + workers + " is no number of workers; 1 to " + MOST_WORKERS + " can be asked for");
        }
    }

    private static void requireApart(List<Path> outputs, List<Path> inputs, Optional<Path> against) throws Complaint {
        Map<String, String> read = new HashMap<>();
        Stream.concat(inputs.stream().filter(input -> !input.equals(InputPaths.STANDARD_INPUT)), against.stream()).forEach(input -> read.put(input.toString(), "an input"));
        OutputFiles.requireApart(outputs, read);
    }

    private static void requireComparable(Targets targets) throws Complaint {
        if (targets.against.isPresent()) {
            Path against = targets.against.get();
            try {
                Since.requireComparable(against);
            } catch (Since.NotComparable e) {
                throw new Complaint(e.getMessage());
            } catch (IOException e) {
                throw new Complaint(against + ": the file cannot be read (" + Reason.of(e) + "); check its name and permissions");
            }
        }
    }

    private Judging judging() throws Complaint, ProblemsFound {
        Knowledge builtIn = KnowledgeReader.builtIn();
        Knowledge ruled = house.beside(builtIn);
        List<Code> all = codes.chosen();
        Waivers waivers = house.waivers(ruled.withCodes(all, builtIn.speciesNames().keySet()));
        Knowledge shown = anonymous && ruled.house().isPresent() ? builtIn.withHouse(ruled.house().get().withoutNames()) : ruled;
        RuleBase checked = rules.get().checked(builtIn);
        LocalDate today = LocalDate.now(surroundings.clock());
        List<String> options = List.of(String.join(",", all.stream().map(Code::id).toList()), ruled.house().map(rules -> rules.sha256()).orElse(""), waivers.sha256(),
                on == null ? "" : on.toString(), print.units().name().toLowerCase(Locale.ROOT));
        return new Judging(Basis.of(builtIn.version(), builtIn.sha256(), options, anonymous), species -> withCodes(shown, species), () -> checked, waivers,
                Optional.ofNullable(on), today, print.units(), anonymous, SetupFile::values);
    }

    /** What codes ask of these species; of none nothing. The names of the codes were looked up before. */
    private Knowledge withCodes(Knowledge knowledge, Set<String> species) {
        try {
            return species.isEmpty() ? knowledge : knowledge.withCodes(codes.chosen(species), species);
        } catch (Complaint e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    private ResultLines lines(Targets targets) throws Complaint {
        try {
            if (targets.lines.isPresent()) {
                return ResultLines.in(targets.lines.get(), resumes);
            }
            return targets.workbook.isPresent() || targets.against.isPresent() ? ResultLines.temporary() : ResultLines.unkept();
        } catch (IOException e) {
            throw new Complaint("the results cannot be written (" + Reason.of(e) + "); check the permissions of the folder and the room on the disk");
        }
    }

    /** Judges everything; returns the key. */
    private byte[] run(Review review, List<Path> inputs, Targets targets) throws Complaint {
        Progress progress = Progress.of(surroundings);
        ByteArrayOutputStream key = new ByteArrayOutputStream();
        try {
            InputPaths from = new InputPaths(inputs, targets.all, surroundings.in());
            review.run(from, workers == null ? Runtime.getRuntime().availableProcessors() : workers, new Review.Listener() {
                @Override
                public void result(String line) {
                    if (TO_STDOUT.equals(linesFile)) {
                        surroundings.out().println(line);
                    }
                    progress.step();
                }

                @Override
                public void key(String line) {
                    if (keyFile != null) {
                        key.writeBytes((line + "\n").getBytes(StandardCharsets.UTF_8));
                    }
                }
            });
        } catch (IOException e) {
            throw new Complaint("the results cannot be written (" + Reason.of(e) + "); what was done stays where --jsonl FILE is to be, go on with --resume. Is the disk full?");
        } finally {
            progress.end();
        }
        return key.toByteArray();
    }

    private void deliver(Review review, byte[] key, ResultLines lines, Targets targets) throws Complaint, IOException {
        Optional<Since> since = since(review, targets);
        try {
            Knowledge knowledge = review.with().knowledge().apply(review.totals().species());
            Wording wording = new Wording(print.units(), knowledge);
            String summary = ReviewText.of(review, since, wording);
            OutputFiles files = new OutputFiles();
            targets.workbook.ifPresent(file -> files.add(file, out -> ReviewBook.write(review, since, knowledge, wording, out)));
            targets.key.ifPresent(file -> files.add(file, key));
            files.write();
            lines.deliver();
            if (!TO_STDOUT.equals(linesFile)) {
                surroundings.out().print(summary);
            }
            surroundings.out().flush();
        } finally {
            if (since.isPresent()) {
                since.get().close();
            }
        }
    }

    private static Optional<Since> since(Review review, Targets targets) throws Complaint, IOException {
        try {
            return targets.against.isPresent() ? Optional.of(Since.of(targets.against.get(), review)) : Optional.empty();
        } catch (Since.NotComparable e) {
            throw new Complaint(e.getMessage());
        }
    }

    private int exitCode(Review review) {
        if (review.totals().rows().stream().anyMatch(Row::isDefect)) {
            return ExitCode.FAILED;
        }
        return review.totals().unread() > 0 ? ExitCode.USAGE : print.failOn().exitCode(review.totals().rows().stream().flatMap(row -> row.tally().gravest().stream()));
    }
}
