package org.loamlight.cli;

import java.util.Locale;
import org.loamlight.criterion.Knowledge;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.workbook.cells.CellReader;
import org.loamlight.workbook.form.FormReader;

/**
 * A description of an enclosure in either of its two shapes: a JSON file, or a form that was filled in.
 *
 * @param document its values, each at its place
 */
record SetupFile(Setup setup, JsonValue document) {

    /**
     * Reads a description.
     *
     * @throws ProblemsFound with everything in it that cannot be used
     */
    static SetupFile read(InputFile input, Knowledge knowledge) throws ProblemsFound {
        Problems problems = new Problems(input.name());
        JsonValue document = isWorkbook(input) ? FormReader.read(input.bytes(), problems) : JsonFile.read(input.bytes(), problems);
        return new SetupFile(SetupReader.read(document, problems, knowledge.speciesNames()), document);
    }

    private static boolean isWorkbook(InputFile input) {
        String name = input.name().toLowerCase(Locale.ROOT);
        return CellReader.looksLikeWorkbook(input.bytes()) || name.endsWith(".xlsx") || name.endsWith(".xlsm");
    }
}
