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
        JsonValue document = values(input.name(), input.bytes(), problems);
        return new SetupFile(SetupReader.read(document, problems, knowledge.speciesNames()), document);
    }

    /**
     * The values of a description, of either shape.
     *
     * @throws ProblemsFound when the reading ends early; what else is wrong goes to {@code problems}
     */
    static JsonValue values(String file, byte[] bytes, Problems problems) throws ProblemsFound {
        return isWorkbook(file, bytes) ? FormReader.read(bytes, problems) : JsonFile.read(bytes, problems);
    }

    private static boolean isWorkbook(String file, byte[] bytes) {
        String name = file.toLowerCase(Locale.ROOT);
        return CellReader.looksLikeWorkbook(bytes) || name.endsWith(".xlsx") || name.endsWith(".xlsm");
    }
}
