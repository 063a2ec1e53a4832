package org.loamlight.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.setup.Animal;
import org.loamlight.setup.JsonPrinter;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.workbook.FormWriter;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamlight convert}: a form as a setup file, or a setup file as a form. */
@Command(name = "convert", description = "Turns a filled-in form into a setup file, or a setup file into a form; nothing is lost on the way.")
final class ConvertCommand implements Callable<Integer> {
    private static final String JSON = ".json";

    private final Surroundings surroundings;

    @Parameters(paramLabel = "SETUP", description = "The setup file (JSON) or the form (xlsx).")
    private String setupFile;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", required = true, description = "The file to write: .json for a setup file, .xlsx for a form.")
    private String file;

    ConvertCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Complaint, ProblemsFound, IOException {
        boolean isJson = file.toLowerCase(Locale.ROOT).endsWith(JSON);
        Path target = target(isJson);
        if (target.toAbsolutePath().normalize().equals(InputFile.path(setupFile).toAbsolutePath().normalize())) {
            throw new Complaint(file + ": this is the setup itself; give the output another name");
        }
        InputFile input = InputFile.read(setupFile);
        Knowledge knowledge = KnowledgeReader.builtIn();
        SetupFile setup = SetupFile.read(input, knowledge);
        OutputFiles files = new OutputFiles();
        files.add(target, isJson ? JsonPrinter.print(setup.document()).getBytes(StandardCharsets.UTF_8) : form(setup, new Problems(input.name()), knowledge));
        files.write();
        surroundings.out().println(file + ": written.");
        return ExitCode.IN_ORDER;
    }

    private Path target(boolean isJson) throws Complaint {
        if (!isJson && !file.toLowerCase(Locale.ROOT).endsWith(FormCommand.XLSX)) {
            throw new Complaint(file + ": name the output with .json at the end for a setup file, with .xlsx for a form");
        }
        Path target = InputFile.path(file);
        OutputFiles.requireWritable(target);
        return target;
    }

    private static byte[] form(SetupFile setup, Problems problems, Knowledge knowledge) throws ProblemsFound, IOException {
        FormPlan plan = FormPlan.builtIn();
        FormAnswers answers = FormAnswers.of(setup.document(), plan, problems);
        problems.throwIfAny();
        String about = setup.setup().animals().stream().map(Animal::name).collect(Collectors.joining(", "));
        return FormWriter.write(answers, about, knowledge.speciesNames(), plan);
    }
}
