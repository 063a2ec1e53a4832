package org.loamlight.workbook.cells;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;

/** Reads the sheets of an Excel workbook (.xlsx, and .xlsm without its macros). */
public final class CellReader {
    private static final String START = "_rels/.rels";
    /** How a sheet is kept from sight; the second way can only be undone by a program (ECMA-376-1, 18.18.68). */
    private static final Set<String> HIDDEN = Set.of("hidden", "veryHidden");
    private static final byte[] ZIP = {'P', 'K'};
    /** How files of the older kind begin, and workbooks with a password: they are compound files. */
    private static final byte[] COMPOUND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
    private static final String AS_XLSX = "open it in a spreadsheet program and save it as an Excel workbook (.xlsx) without a password";

    private final Parts parts;
    private final String folder;
    private final ReadingLimits limits;
    private final List<Sheet> sheets = new ArrayList<>();

    private CellReader(Parts parts, String folder, ReadingLimits limits) {
        this.parts = parts;
        this.folder = folder;
        this.limits = limits;
    }

    /** Whether a file begins as a workbook does, of whatever kind. */
    public static boolean looksLikeWorkbook(byte[] file) {
        return begins(file, ZIP) || begins(file, COMPOUND);
    }

    private static boolean begins(byte[] file, byte[] sign) {
        for (int i = 0; i < sign.length; i++) {
            if (i >= file.length || file[i] != sign[i]) {
                return false;
            }
        }
        return true;
    }

    /**
     * The sheets in their order, hidden ones too. Of a formula counts the value the spreadsheet worked out last.
     *
     * @throws NoWorkbook when the file is none, is locked with a password, broken, or unpacks to more than is read
     */
    public static List<Sheet> read(byte[] file, ReadingLimits limits) throws NoWorkbook {
        if (file.length == 0) {
            throw new NoWorkbook("the file is empty", AS_XLSX);
        }
        if (begins(file, COMPOUND)) {
            throw new NoWorkbook("the workbook is locked with a password, or of the older kind .xls", AS_XLSX);
        }
        if (file.length > JsonFile.MOST_BYTES) {
            throw new NoWorkbook("the file is too large", "at most " + JsonFile.MOST_BYTES + " bytes are read; " + NoWorkbook.COPY);
        }
        if (!begins(file, ZIP)) {
            throw new NoWorkbook("this is no Excel workbook", AS_XLSX);
        }
        Parts parts = Parts.of(file, limits.megabytes());
        if (!parts.has(START)) {
            throw new NoWorkbook("this is a packed file, but no Excel workbook", AS_XLSX);
        }
        String main = targets(START, "", "Type", parts).entrySet().stream().filter(found -> found.getKey().endsWith("/officeDocument"))
                .map(Map.Entry::getValue).findFirst().orElse("");
        if (!main.endsWith(".xml") || !parts.has(main)) {
            throw new NoWorkbook("this is no Excel workbook that is kept as XML", AS_XLSX);
        }
        CellReader reader = new CellReader(parts, main.substring(0, main.lastIndexOf('/') + 1), limits);
        reader.workbook(main);
        return reader.sheets;
    }

    /**
     * The sheets in their order, hidden ones too.
     *
     * @param problems takes up why the file cannot be read
     * @throws ProblemsFound with everything found so far, when the file is no workbook, is locked, broken, or too large
     */
    public static List<Sheet> read(byte[] file, ReadingLimits limits, Problems problems) throws ProblemsFound {
        try {
            return read(file, limits);
        } catch (NoWorkbook e) {
            problems.add(new JsonPlace(0, 0, ""), e.getMessage(), e.allowed());
            throw problems.found();
        }
    }

    /** Where the relationships of a part lead, by their id or type. */
    private static Map<String, String> targets(String name, String folder, String by, Parts parts) throws NoWorkbook {
        Map<String, String> targets = new HashMap<>();
        XmlPart xml = XmlPart.of(name, parts);
        while (xml.next()) {
            if (xml.begins("Relationship")) {
                String target = xml.attribute("Target").orElse("");
                targets.putIfAbsent(xml.attribute(by).orElse(""), target.startsWith("/") ? target.substring(1) : folder + target);
            }
        }
        return targets;
    }

    private void workbook(String main) throws NoWorkbook {
        Map<String, Sheet> byId = new LinkedHashMap<>();
        boolean from1904 = false;
        boolean isWorkbook = false;
        XmlPart xml = XmlPart.of(main, parts);
        while (xml.next()) {
            isWorkbook |= xml.begins("workbook");
            if (xml.begins("workbookPr")) {
                from1904 = xml.attribute("date1904").filter(set -> set.equals("1") || set.equals("true")).isPresent();
            } else if (xml.begins("sheet")) {
                byId.put(xml.attribute("id").orElse(""), new Sheet(xml.attribute("name").orElse(""), xml.attribute("state").filter(HIDDEN::contains).isPresent()));
            }
        }
        if (byId.size() > limits.sheets()) {
            throw new NoWorkbook("the workbook has more than " + limits.sheets() + " sheets", NoWorkbook.COPY);
        }
        if (!isWorkbook) {
            throw new NoWorkbook("this is an Office document, but no Excel workbook", AS_XLSX);
        }
        sheets(byId, from1904, folder + "_rels/" + main.substring(folder.length()) + ".rels");
    }

    private void sheets(Map<String, Sheet> named, boolean from1904, String relationships) throws NoWorkbook {
        Map<String, String> byId = targets(relationships, folder, "Id", parts);
        Map<String, String> byType = new HashMap<>();
        targets(relationships, folder, "Type", parts).forEach((type, target) -> byType.put(type.substring(type.lastIndexOf('/') + 1), target));
        List<String> shared = RichText.shared(byType.getOrDefault("sharedStrings", ""), parts);
        NumberStyles styles = NumberStyles.of(byType.getOrDefault("styles", ""), parts, from1904);
        for (Map.Entry<String, Sheet> sheet : named.entrySet()) {
            String part = byId.getOrDefault(sheet.getKey(), "");
            SheetReader.read(sheet.getValue(), XmlPart.of(part, parts), shared, styles, limits.cellsOfSheet());
            parts.forget(part);
            sheets.add(sheet.getValue());
        }
    }
}
