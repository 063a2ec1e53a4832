package org.loamlight.workbook.visit;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.HouseRules;
import org.loamlight.criterion.Knowledge;
import org.loamlight.evaluation.Audit;
import org.loamlight.ranking.Outcome;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonPrinter;
import org.loamlight.setup.JsonValue;

/**
 * What a checklist was made from, carried along in it: the setup, the knowledge, what was found, and which rows were there to be filled in.
 *
 * @param on        ISO date of the audit
 * @param version   version of the knowledge
 * @param knowledge SHA-256 of the knowledge
 * @param codes     ids of the codes that were held beside the needs of the species
 * @param house     title and SHA-256 of the rules of a house; empty for none
 * @param setup     the setup as JSON
 * @param findings  what was found, by the keys of the pairs
 * @param rows      keys of the rows of the walk
 */
public record Recorded(String on, String version, String knowledge, List<String> codes, String house, String setup, Map<String, Outcome> findings,
        List<String> rows) {
    /** Kinds of rows of the record. */
    static final String ABOUT = "about";
    static final String SETUP = "setup";
    static final String FINDING = "finding";
    static final String ROW = "row";
    /** Keys of the rows about the whole. */
    static final String FORMAT = "format";
    static final String FORMAT_OF_TODAY = "1";
    static final String ON = "audited on";
    static final String VERSION = "knowledge version";
    static final String KNOWLEDGE = "knowledge SHA-256";
    static final String CODES = "codes";
    static final String HOUSE = "house rules";
    static final String SETUP_SHA256 = "setup SHA-256";
    /** A cell holds 32,767 characters; escapes take seven for one. */
    private static final int LONGEST_PIECE = 4_000;

    /** One row of the record. */
    public record Row(String kind, String key, String text) {
    }

    public Recorded {
        codes = List.copyOf(codes);
        rows = List.copyOf(rows);
    }

    /** What is to be carried along from an audit. */
    public static Recorded of(Audit audit, JsonValue setup, List<WalkRow> walk) {
        Knowledge knowledge = audit.knowledge();
        return new Recorded(audit.on().toString(), knowledge.version(), knowledge.sha256(), knowledge.codes().stream().map(Code::id).toList(),
                houseOf(knowledge), compact(setup), Outcome.of(audit.findings()), walk.stream().map(WalkRow::key).toList());
    }

    /** Whether the knowledge of now, with its codes and the rules of the house, is that of the record. */
    public boolean isOf(Knowledge now) {
        return knowledge.equals(now.sha256()) && codes.equals(now.codes().stream().map(Code::id).toList()) && house.equals(houseOf(now));
    }

    /** The rules of a house as a record names them; empty for none. */
    public static String houseOf(Knowledge knowledge) {
        return knowledge.house().map(Recorded::named).orElse("");
    }

    private static String named(HouseRules house) {
        return house.title() + ", SHA-256 " + house.sha256();
    }

    /** Line breaks and what is before them in a line mean nothing in JSON, and no text of it goes over a line. */
    private static String compact(JsonValue setup) {
        return JsonPrinter.print(setup).lines().map(String::strip).reduce("", String::concat);
    }

    /** As rows of a sheet, which may come back in any order. */
    public List<Row> inRows() {
        List<Row> made = new ArrayList<>(List.of(new Row(ABOUT, FORMAT, FORMAT_OF_TODAY), new Row(ABOUT, ON, on), new Row(ABOUT, VERSION, version),
                new Row(ABOUT, KNOWLEDGE, knowledge), new Row(ABOUT, CODES, String.join(", ", codes)), new Row(ABOUT, HOUSE, house),
                new Row(ABOUT, SETUP_SHA256, sha256(setup))));
        int number = 0;
        for (String piece : pieces()) {
            made.add(new Row(SETUP, SETUP + " " + ++number, piece));
        }
        findings.forEach((pair, outcome) -> made.add(new Row(FINDING, pair, outcome.inWords())));
        rows.forEach(key -> made.add(new Row(ROW, key, "")));
        return made;
    }

    private List<String> pieces() {
        List<String> pieces = new ArrayList<>();
        for (int start = 0; start < setup.length();) {
            int end = Math.min(setup.length(), start + LONGEST_PIECE);
            end -= Character.isHighSurrogate(setup.charAt(end - 1)) ? 1 : 0;
            pieces.add(setup.substring(start, end));
            start = end;
        }
        return pieces;
    }

    static String sha256(String text) {
        return JsonFile.sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Puts a record together again.
     *
     * @return empty when the setup is not complete or was changed, or the day of the audit is none
     */
    static Optional<Recorded> of(List<Row> read) {
        Map<String, String> about = new LinkedHashMap<>();
        Map<Integer, String> pieces = new TreeMap<>();
        Map<String, Outcome> findings = new TreeMap<>();
        List<String> rows = new ArrayList<>();
        for (Row row : read) {
            switch (row.kind) {
                case ABOUT -> about.put(row.key, row.text);
                case SETUP -> number(row.key).ifPresent(number -> pieces.put(number, row.text));
                case FINDING -> Outcome.read(row.text).ifPresent(outcome -> findings.put(row.key, outcome));
                case ROW -> rows.add(row.key);
                default -> {
                    // somebody's own
                }
            }
        }
        String setup = String.join("", pieces.values());
        return sha256(setup).equals(about.get(SETUP_SHA256)) && isDay(about.getOrDefault(ON, "")) ? Optional.of(new Recorded(about.getOrDefault(ON, ""), about.getOrDefault(VERSION, ""),
                about.getOrDefault(KNOWLEDGE, ""), listed(about.getOrDefault(CODES, "")), about.getOrDefault(HOUSE, ""), setup, findings, rows)) : Optional.empty();
    }

    private static boolean isDay(String text) {
        try {
            return LocalDate.parse(text).toString().equals(text);
        } catch (DateTimeException e) {
            return false;
        }
    }

    private static List<String> listed(String words) {
        return List.of(words.split(",")).stream().map(String::strip).filter(word -> !word.isEmpty()).toList();
    }

    private static Optional<Integer> number(String key) {
        String digits = key.startsWith(SETUP + " ") ? key.substring(SETUP.length() + 1) : "";
        return digits.matches("\\d{1,6}") ? Optional.of(Integer.valueOf(digits)) : Optional.empty();
    }
}
