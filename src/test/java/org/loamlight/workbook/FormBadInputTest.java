package org.loamlight.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.loamlight.workbook.EditedForm.FORM;
import static org.loamlight.workbook.EditedForm.assertComplaint;
import static org.loamlight.workbook.EditedForm.changed;
import static org.loamlight.workbook.EditedForm.complaints;
import static org.loamlight.workbook.EditedForm.edited;
import static org.loamlight.workbook.EditedForm.packed;
import static org.loamlight.workbook.EditedForm.unpacked;
import static org.loamlight.workbook.EditedForm.usable;
import static org.loamlight.workbook.EditedForm.withPart;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipMethod;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.setup.JsonFile;

/** Files that are no form, or were damaged or made to harm: each is told or read, within limits, and nothing is printed. */
class FormBadInputTest {
    private static final int MUTATIONS = Integer.getInteger("mutations", 500);
    private static final String WORKBOOK_XML = "xl/workbook.xml";

    @Test
    void files_that_are_no_form_say_what_they_are() throws IOException {
        assertComplaint("form.xlsx: this workbook is no form: no sheet of it has a column headed Key", Sample.workbook(Sample.audit()));
        assertComplaint("form.xlsx: this is no Excel workbook", new byte[] {'x'});
        assertComplaint("form.xlsx: the file is empty", new byte[0]);
        assertComplaint("form.xlsx: this is no Excel workbook", "{\"format\": 1}".getBytes(StandardCharsets.UTF_8));
        assertComplaint("form.xlsx: this is a packed file, but no Excel workbook", packed(Map.of("mimetype", new byte[] {1})));
        assertComplaint("form.xlsx: the workbook is broken: it cannot be unpacked", Arrays.copyOf(FORM, FORM.length / 2));
        assertComplaint("form.xlsx: this is an Office document, but no Excel workbook",
                changed(WORKBOOK_XML, xml -> xml.replaceAll("(</?)workbook(\\b)", "$1document$2")));
        assertComplaint("form.xlsx: the file is too large", Arrays.copyOf(FORM, JsonFile.MOST_BYTES + 1));
        try (POIFSFileSystem compound = new POIFSFileSystem(); ByteArrayOutputStream out = new ByteArrayOutputStream(); InputStream content = new ByteArrayInputStream(FORM)) {
            compound.createDocument(content, "EncryptedPackage");
            compound.writeFilesystem(out);
            assertComplaint("form.xlsx: the workbook is locked with a password, or of the older kind .xls", out.toByteArray());
        }
    }

    @Test
    void a_workbook_with_macros_is_read_and_they_are_not() {
        Map<String, byte[]> parts = unpacked(changed("[Content_Types].xml", xml -> xml.replace("spreadsheetml.sheet.main", "sheet.macroEnabled.main")));
        parts.put("xl/vbaProject.bin", new byte[] {1, 2, 3});
        assertEquals(usable(FORM), usable(packed(parts)));
    }

    /** Sizes of eight bytes stand behind the data where a program did not know them before, and in the directory. */
    @ParameterizedTest
    @CsvSource({"DEFLATED, Always", "DEFLATED, AlwaysWithCompatibility", "DEFLATED, Never", "STORED, Always", "STORED, Never"})
    void forms_are_read_however_they_were_packed(ZipMethod method, Zip64Mode sizes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
            zip.setUseZip64(sizes);
            for (Map.Entry<String, byte[]> part : unpacked(FORM).entrySet()) {
                ZipArchiveEntry entry = new ZipArchiveEntry(part.getKey());
                entry.setMethod(method.getCode());
                if (method == ZipMethod.STORED) {
                    CRC32 sum = new CRC32();
                    sum.update(part.getValue());
                    entry.setCrc(sum.getValue());
                    entry.setSize(part.getValue().length);
                }
                zip.putArchiveEntry(entry);
                zip.write(part.getValue());
                zip.closeArchiveEntry();
            }
        }
        assertEquals(usable(FORM), usable(out.toByteArray()));
    }

    @Test
    void what_swells_or_has_too_many_parts_is_not_unpacked_to_its_end() {
        assertComplaint("form.xlsx: the workbook unpacks to more than 30 megabytes", withPart("xl/media/bomb.bin", new byte[200_000_000]));
        Map<String, byte[]> many = unpacked(FORM);
        for (int i = 0; i < 1_000; i++) {
            many.put("xl/worksheets/extra" + i + ".xml", new byte[0]);
        }
        assertComplaint("form.xlsx: the workbook has more than 300 parts", packed(many));
        String sheets = IntStream.range(0, 1_000).mapToObj(i -> "<sheet name=\"s" + i + "\" sheetId=\"" + (i + 100) + "\" r:id=\"x" + i + "\"/>")
                .collect(Collectors.joining());
        assertComplaint("form.xlsx: the workbook has more than 100 sheets", changed(WORKBOOK_XML, xml -> xml.replace("</sheets>", sheets + "</sheets>")));
    }

    static List<String> heavySheets() {
        return List.of("<c t=\"str\"><v>x</v></c>".repeat(900_000), "<mergeCell ref=\"A1:B2\"/>".repeat(900_000), "<c r=\"A1\" t=\"s\"><v>1</v></c>".repeat(700_000));
    }

    @ParameterizedTest
    @MethodSource("heavySheets")
    void more_cells_than_a_form_has_end_the_reading(String cells) {
        assertComplaint("form.xlsx: the sheet My notes has more than 50000 cells, empty ones counted", notes("<sheetData><row r=\"1\">" + cells + "</row></sheetData>"));
    }

    @Test
    void a_million_empty_rows_and_six_million_empty_texts_are_passed_over() {
        assertEquals(usable(FORM), usable(notes("<sheetData>" + "<row r=\"9\"/>".repeat(1_048_576) + "</sheetData>")));
        assertEquals(usable(FORM), usable(changed("xl/sharedStrings.xml", xml -> xml.replace("</sst>", "<si/>".repeat(5_500_000) + "</sst>"))));
    }

    /** The form with one more sheet. */
    private static byte[] notes(String content) {
        byte[] form = edited(book -> book.createSheet("My notes").createRow(0).createCell(0).setCellValue("!"));
        Map<String, byte[]> parts = unpacked(form);
        String last = parts.keySet().stream().filter(name -> name.matches("xl/worksheets/sheet\\d+.xml")).max(Comparator.comparingInt(FormBadInputTest::number)).orElseThrow();
        parts.put(last, ("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">" + content + "</worksheet>").getBytes(StandardCharsets.UTF_8));
        return packed(parts);
    }

    private static int number(String part) {
        return Integer.parseInt(part.replaceAll("\\D", ""));
    }

    @Test
    void entities_of_its_own_and_files_it_names_are_not_read() {
        String secret = Path.of("README.md").toUri().toString();
        byte[] named = changed("xl/sharedStrings.xml", xml -> xml.replaceFirst("(?s)(<\\?xml.*?\\?>)?\\s*<sst", "<!DOCTYPE sst [<!ENTITY x SYSTEM \"" + secret + "\">]><sst")
                .replaceFirst("<si>.*?</si>", "<si><t>&x;</t></si>"));
        assertFalse(complaints(named).toString().contains("Loamlight checks"), complaints(named).toString());
        byte[] laughs = changed("xl/sharedStrings.xml", xml -> xml.replaceFirst("(?s)(<\\?xml.*?\\?>)?\\s*<sst",
                "<!DOCTYPE sst [<!ENTITY a \"" + "ha".repeat(1_000) + "\"><!ENTITY b \"" + "&a;".repeat(1_000) + "\"><!ENTITY c \"" + "&b;".repeat(1_000) + "\">]><sst")
                .replaceFirst("<si>.*?</si>", "<si><t>&c;</t></si>"));
        assertTrue(complaints(laughs).size() <= 1, complaints(laughs).toString());
    }

    @Test
    void whatever_is_done_to_a_form_it_is_read_or_complained_about_and_nothing_is_printed() {
        PrintStream err = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            damageForms();
        } finally {
            System.setErr(err);
        }
        assertEquals("", printed.toString(StandardCharsets.UTF_8));
    }

    private static void damageForms() {
        List<String> texts = List.of("", "=1+1", "31,5", "none", "yes", "not looked", "x".repeat(40_000), "\u202E", "along", "1", "-1", "1e999 cm", "2026-02-30", "4 ft 2 in", "#REF!", ";;;");
        int told = 0;
        Map<String, byte[]> parts = unpacked(FORM);
        List<String> names = new ArrayList<>(parts.keySet());
        for (int seed = 0; seed < MUTATIONS; seed++) {
            byte[] damaged = damaged(new Random(seed), parts, names, texts);
            try {
                List<String> complaints = complaints(damaged);
                told += complaints.isEmpty() ? 0 : 1;
                complaints.forEach(text -> assertTrue(text.length() < 2_000 && text.codePoints().noneMatch(Character::isISOControl), text));
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("seed " + seed, e);
            }
        }
        assertTrue(told > MUTATIONS / 4 && told < MUTATIONS, "complained about: " + told);
    }

    /** One time in three the packed bytes are damaged, else a part: in its bytes, its numbers or its texts. */
    private static byte[] damaged(Random random, Map<String, byte[]> parts, List<String> names, List<String> texts) {
        if (random.nextInt(3) == 0) {
            return flipped(random, FORM);
        }
        Map<String, byte[]> damaged = new TreeMap<>(parts);
        String name = names.get(random.nextInt(names.size()));
        String xml = new String(parts.get(name), StandardCharsets.UTF_8);
        String text = texts.get(random.nextInt(texts.size())).replace("<", "");
        int at = random.nextInt(xml.length());
        damaged.put(name, switch (random.nextInt(4)) {
            case 0 -> flipped(random, parts.get(name));
            case 1 -> (xml.substring(0, at) + xml.substring(at).replaceFirst(">[^<]+<", ">" + text + "<")).getBytes(StandardCharsets.UTF_8);
            case 2 -> (xml.substring(0, at) + xml.substring(at).replaceFirst("\"[^\"]*\"", "\"" + random.nextInt(300) + "\"")).getBytes(StandardCharsets.UTF_8);
            default -> (xml.substring(0, at) + xml.substring(Math.min(xml.length(), at + random.nextInt(200)))).getBytes(StandardCharsets.UTF_8);
        });
        return packed(damaged);
    }

    private static byte[] flipped(Random random, byte[] bytes) {
        byte[] flipped = bytes.clone();
        for (int i = random.nextInt(4); i >= 0; i--) {
            flipped[random.nextInt(flipped.length)] = (byte) random.nextInt(256);
        }
        return flipped;
    }
}
