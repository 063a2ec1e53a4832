package org.loamlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.NoSuchElementException;
import java.util.concurrent.Callable;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.criterion.Species;
import org.loamlight.report.Explanation;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;
import org.loamlight.workbook.FormWriter;
import org.loamlight.workbook.form.FormAnswers;
import org.loamlight.workbook.form.FormPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code loamlight form}: an empty form, to be filled in on paper or on a screen. */
@Command(name = "form", description = "Writes an empty form (Excel workbook) to describe an enclosure with; audit and check read it when it is filled in.")
final class FormCommand implements Callable<Integer> {
    static final String XLSX = ".xlsx";

    private final Surroundings surroundings;

    @Parameters(paramLabel = "SPECIES", description = "The species the enclosure is for: its id, common or scientific name.")
    private String species;

    @Option(names = {"-o", "--output"}, paramLabel = "FILE.xlsx", required = true, description = "The workbook to write.")
    private String file;

    FormCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Complaint, IOException {
        Path target = target();
        Knowledge knowledge = KnowledgeReader.builtIn();
        Species chosen = species(knowledge);
        FormPlan plan = FormPlan.builtIn();
        byte[] form = FormWriter.write(FormAnswers.blank(chosen.id(), plan), chosen.english() + " (" + chosen.latin() + ")", knowledge.speciesNames(), plan);
        OutputFiles files = new OutputFiles();
        files.add(target, form);
        files.write();
        surroundings.out().println(file + ": fill in what you can, then: loamlight audit " + file);
        return ExitCode.IN_ORDER;
    }

    private Species species(Knowledge knowledge) throws Complaint {
        try {
            return new Explanation(knowledge, new Wording(Units.METRIC, knowledge)).profile(species).species();
        } catch (NoSuchElementException e) {
            throw new Complaint(e.getMessage());
        }
    }

    private Path target() throws Complaint {
        OutputFiles.requireEnding(file, XLSX, "the form is an Excel workbook");
        Path target = InputFile.path(file);
        OutputFiles.requireWritable(target);
        return target;
    }
}
