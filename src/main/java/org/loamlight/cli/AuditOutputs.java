package org.loamlight.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Numbers;
import org.loamlight.evaluation.Audit;
import org.loamlight.ranking.Ranking;
import org.loamlight.report.JsonReport;
import org.loamlight.report.SvgDrawing;
import org.loamlight.report.TextReport;
import org.loamlight.setup.JsonFile;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.Carried;
import org.loamlight.workbook.Checklist;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What an audit leaves behind: the printed report, and the files that were asked for. */
final class AuditOutputs {
    private static final String TO_STDOUT = "-";

    @Option(names = {"-o", "--output"}, paramLabel = "FILE.xlsx", description = "Also write the Excel checklist.")
    private String workbookFile;

    @Option(names = "--json", paramLabel = "FILE|-", description = "Also write the results as JSON; \"-\" prints them instead of the report.")
    private String jsonFile;

    @Option(names = "--drawing", paramLabel = "FILE.svg", description = "Also write the enclosure drawn to scale, as SVG.")
    private String drawingFile;

    @Mixin
    private final PrintOptions print = new PrintOptions();

    /**
     * Says before any work is done what would fail after it.
     *
     * @param inputs  what each file that is read is, by its name
     * @param further files to be written with the others
     */
    void requireUsable(Map<String, String> inputs, List<Path> further) throws Complaint {
        OutputFiles.requireApart(Stream.concat(targets().all().stream(), further.stream()).toList(), inputs);
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
        OutputFiles.requireEnding(workbookFile, ".xlsx", "the checklist is an Excel workbook");
        OutputFiles.requireEnding(drawingFile, ".svg", "the drawing is an SVG picture");
        return new Targets(workbook, json, drawing);
    }

    Units units() {
        return print.units();
    }

    int exitCode(Ranking ranking) {
        return print.failOn().exitCode(ranking.open());
    }

    /**
     * An audit with what goes with it.
     *
     * @param input what was audited: its SHA-256 stands in the results
     */
    record Audited(Audit audit, Ranking ranking, Carried carried, byte[] input) {
    }

    /**
     * Writes the files, whole or not at all, then prints.
     *
     * @param further files to be written with the others
     * @param before  printed before the report; empty for nothing
     */
    void deliver(Audited audited, Map<Path, byte[]> further, String before, Surroundings surroundings) throws Complaint {
        Audit audit = audited.audit;
        Ranking ranking = audited.ranking;
        Targets targets = targets();
        Wording wording = new Wording(print.units(), audit.knowledge());
        Optional<Beside<byte[]>> workbook = Optional.ofNullable(targets.workbook)
                .map(file -> Beside.start("workbook", () -> workbook(audited, wording)));
        String json = jsonFile == null ? "" : JsonReport.of(audit, ranking, wording, JsonFile.sha256(audited.input));
        String printed = TO_STDOUT.equals(jsonFile) ? json : before + TextReport.of(audit, ranking, wording);
        OutputFiles files = new OutputFiles();
        workbook.ifPresent(made -> files.add(targets.workbook, made.result()));
        if (targets.json != null) {
            files.add(targets.json, json.getBytes(StandardCharsets.UTF_8));
        }
        if (targets.drawing != null) {
            Drawing drawing = Drawing.of(audit, wording, Numbers.ofReport(ranking));
            files.add(targets.drawing, SvgDrawing.of(drawing, wording).getBytes(StandardCharsets.UTF_8));
        }
        further.forEach(files::add);
        files.write();
        surroundings.out().print(printed);
        surroundings.out().flush();
    }

    private static byte[] workbook(Audited audited, Wording wording) throws IOException {
        ByteArrayOutputStream workbook = new ByteArrayOutputStream();
        Checklist.write(audited.audit, audited.ranking, wording, audited.carried, workbook);
        return workbook.toByteArray();
    }
}
