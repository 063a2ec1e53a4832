package org.loamlight.workbook.cells;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loamlight.setup.JsonFile;

/** Reads the sheets of an Excel workbook (.xlsx, and .xlsm without its macros). */
public final class CellReader {
    /** A sheet of a form with two hundred things has about seven thousand, empty ones counted. */
    private static final int MOST_CELLS_OF_SHEET = 50_000;
    private static final int MOST_SHEETS = 100;
    private static final String START = "_rels/.rels";
    private static final byte[] ZIP = {'P', 'K'};
    /** How files of the older kind begin, and workbooks with a password: they are compound files. */
    private static final byte[] COMPOUND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
    private static final String AS_XLSX = "open it in a spreadsheet program and save it as an Excel workbook (.xlsx) without a password";

    private final Parts parts;
    private final String folder;
    private final List<Sheet> sheets = new ArrayList<>();

    private CellReader(Parts parts, String folder) {
        this.parts = parts;
        this.folder = folder;
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
     * The sheets in their order, hidden ones too.
     *
     * @throws NoWorkbook when the file is none, is locked with a password, broken, or unpacks to more than is read
     */
    public static List<Sheet> read(byte[] file) throws NoWorkbook {
        if (begins(file, COMPOUND)) {
            throw new NoWorkbook("the workbook is locked with a password, or of the older kind .xls", AS_XLSX);
        }
        if (file.length > JsonFile.MOST_BYTES) {
            throw new NoWorkbook("the file is too large to be a form", "at most " + JsonFile.MOST_BYTES + " bytes are read; copy the answers into a new form");
        }
        if (!begins(file, ZIP)) {
            throw new NoWorkbook("this is no Excel workbook", AS_XLSX);
        }
        Parts parts = Parts.of(file);
        if (!parts.has(START)) {
            throw new NoWorkbook("this is a packed file, but no Excel workbook", AS_XLSX);
        }
        String main = targets(START, "", "Type", parts).entrySet().stream().filter(found -> found.getKey().endsWith("/officeDocument"))
                .map(Map.Entry::getValue).findFirst().orElse("");
        if (!main.endsWith(".xml") || !parts.has(main)) {
            throw new NoWorkbook("this is no Excel workbook that is kept as XML", AS_XLSX);
        }
        CellReader reader = new CellReader(parts, main.substring(0, main.lastIndexOf('/') + 1));
        reader.workbook(main);
        return reader.sheets;
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
        Map<String, String> names = new LinkedHashMap<>();
        boolean from1904 = false;
        boolean isWorkbook = false;
        XmlPart xml = XmlPart.of(main, parts);
        while (xml.next()) {
            isWorkbook |= xml.begins("workbook");
            if (xml.begins("workbookPr")) {
                from1904 = xml.attribute("date1904").filter(set -> set.equals("1") || set.equals("true")).isPresent();
            } else if (xml.begins("sheet")) {
                names.put(xml.attribute("id").orElse(""), xml.attribute("name").orElse(""));
            }
        }
        if (names.size() > MOST_SHEETS) {
            throw new NoWorkbook("the workbook has more than " + MOST_SHEETS + " sheets", "a form has twelve; copy them into a workbook of their own");
        }
        if (!isWorkbook) {
            throw new NoWorkbook("this is an Office document, but no Excel workbook", AS_XLSX);
        }
        sheets(names, from1904, folder + "_rels/" + main.substring(folder.length()) + ".rels");
    }

    private void sheets(Map<String, String> names, boolean from1904, String relationships) throws NoWorkbook {
        Map<String, String> byId = targets(relationships, folder, "Id", parts);
        Map<String, String> byType = new HashMap<>();
        targets(relationships, folder, "Type", parts).forEach((type, target) -> byType.put(type.substring(type.lastIndexOf('/') + 1), target));
        List<String> shared = RichText.shared(byType.getOrDefault("sharedStrings", ""), parts);
        NumberStyles styles = NumberStyles.of(byType.getOrDefault("styles", ""), parts, from1904);
        for (Map.Entry<String, String> name : names.entrySet()) {
            String part = byId.getOrDefault(name.getKey(), "");
            Sheet sheet = SheetReader.read(name.getValue(), XmlPart.of(part, parts), shared, styles, MOST_CELLS_OF_SHEET);
            parts.forget(part);
            sheets.add(sheet);
        }
    }
}
