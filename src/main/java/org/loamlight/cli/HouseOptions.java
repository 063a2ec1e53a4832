package org.loamlight.cli;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.loamlight.criterion.HouseRulesReader;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Waivers;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.workbook.SheetInput;
import picocli.CommandLine.Option;

/** The rules of a house and the leave it gave, each from a JSON file or a spreadsheet. */
final class HouseOptions {
    @Option(names = "--house", paramLabel = "FILE", description = "House rules of a club or a rescue (JSON or .xlsx): they tighten, and say where they do not.")
    private String houseFile;

    @Option(names = "--waivers", paramLabel = "FILE", description = "Waivers (JSON or .xlsx): open points somebody gave leave for, until a day.")
    private String waiversFile;

    /** The files that were named. */
    List<String> files() {
        return Stream.of(houseFile, waiversFile).filter(Objects::nonNull).toList();
    }

    /** The knowledge with the rules of the house, if any. */
    Knowledge beside(Knowledge knowledge) throws Complaint, ProblemsFound {
        if (houseFile == null) {
            return knowledge;
        }
        InputFile file = InputFile.read(houseFile);
        if (!isSpreadsheet(houseFile)) {
            return knowledge.withHouse(HouseRulesReader.read(file.name(), file.bytes(), knowledge));
        }
        Problems problems = new Problems(file.name());
        return knowledge.withHouse(HouseRulesReader.read(SheetInput.house(file.bytes(), problems), problems, JsonFile.sha256(file.bytes()), knowledge));
    }

    /** @param knowledge with the rules of the house and the chosen codes: any of their points can be waived */
    Waivers waivers(Knowledge knowledge) throws Complaint, ProblemsFound {
        if (waiversFile == null) {
            return Waivers.NONE;
        }
        InputFile file = InputFile.read(waiversFile);
        if (!isSpreadsheet(waiversFile)) {
            return Waivers.read(file.name(), file.bytes(), knowledge);
        }
        Problems problems = new Problems(file.name());
        return Waivers.read(SheetInput.waivers(file.bytes(), problems), problems, JsonFile.sha256(file.bytes()), knowledge);
    }

    /** What each file that is read is, by its name, these two among them. */
    Map<String, String> files(Map<String, String> others) {
        Map<String, String> files = new HashMap<>(others);
        files().forEach(file -> files.put(file, "read as well"));
        return files;
    }

    private static boolean isSpreadsheet(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(".xlsx") || lower.endsWith(".xlsm") || lower.endsWith(".xls");
    }
}
