package org.loamlight.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loamlight.review.InventedSetup;
import org.loamlight.workbook.GeneratedSetup;

/**
 * A review of 1,000 setups opens in LibreOffice, with every row. Skipped where LibreOffice is not installed; with
 * {@code -Ddesktop=required} it fails there.
 */
class ReviewInLibreOfficeTest {
    private static final int SETUPS = 1000;
    /** One in so many is an odd one. */
    private static final int ODD = 50;
    private static final long MINUTES = 8;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private static boolean isInstalled() {
        return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)).anyMatch(path -> Files.isExecutable(Path.of(path, "soffice")));
    }

    @Test
    void a_review_of_a_thousand_setups_opens_with_every_row() throws IOException, InterruptedException {
        boolean isRequired = "required".equals(System.getProperty("desktop"));
        assumeTrue(isRequired || isInstalled(), "LibreOffice (soffice) is not installed");
        Path setups = folder.resolve("setups.jsonl");
        Files.write(setups, Stream.iterate(1, seed -> seed + 1).limit(SETUPS).map(ReviewInLibreOfficeTest::setup).toList());
        Path book = folder.resolve("review.xlsx");
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Main.run(new Surroundings(new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), CLOCK), "review",
                setups.toString(), "-o", book.toString());
        assertEquals("", err.toString(StandardCharsets.UTF_8));
        opened(book);
        Map<String, Long> rows = Map.of("Setups", SETUPS + 2L, "Findings", 1 + rowsOf(book, "Findings"));
        for (Map.Entry<String, Long> sheet : rows.entrySet()) {
            try (Stream<Path> files = Files.list(folder)) {
                Path csv = files.filter(file -> file.getFileName().toString().equals("review-" + sheet.getKey() + ".csv")).findFirst().orElseGet(() -> fail("no sheet " + sheet.getKey()));
                assertEquals(sheet.getValue(), records(Files.readString(csv, StandardCharsets.UTF_8)), sheet.getKey());
            }
        }
    }

    /** Mostly such as keepers describe, some with every oddity a description can have. */
    private static String setup(int seed) {
        return seed % ODD == 0 ? new GeneratedSetup(seed).json() : new InventedSetup(seed).json("Invented member %d", true).replaceAll("\\R *", " ");
    }

    /** Rows of a table with its header, as the workbook itself says. */
    private static long rowsOf(Path book, String table) throws IOException {
        try (ZipFile zip = new ZipFile(book.toFile())) {
            String found = zip.stream().filter(entry -> entry.getName().startsWith("xl/tables/")).map(entry -> {
                try {
                    return new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }).filter(text -> text.contains("name=\"" + table + "\"")).findFirst().orElseThrow();
            long rows = Long.parseLong(found.replaceAll("(?s).*?ref=\"[A-Z]+\\d+:[A-Z]+(\\d+)\".*", "$1")) - 1;
            assertTrue(rows > 10 * SETUPS && rows < 1_048_576, table + ": " + rows);
            return rows;
        }
    }

    /** Each sheet as a file of its own. */
    private void opened(Path book) throws IOException, InterruptedException {
        Process office = new ProcessBuilder(List.of("soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless", "--convert-to",
                "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1", "--outdir", folder.toString(), book.toString()))
                .redirectErrorStream(true).redirectOutput(folder.resolve("office.log").toFile()).start();
        try {
            assertTrue(office.waitFor(MINUTES, TimeUnit.MINUTES), "LibreOffice did not end within " + MINUTES + " minutes");
            assertEquals(0, office.exitValue(), Files.readString(folder.resolve("office.log")));
        } finally {
            office.destroyForcibly();
        }
    }

    /** Lines of a file of comma-separated values; a line feed between quotes ends none. */
    private static long records(String csv) {
        long records = 0;
        boolean isQuoted = false;
        for (int i = 0; i < csv.length(); i++) {
            isQuoted ^= csv.charAt(i) == '"';
            records += csv.charAt(i) == '\n' && !isQuoted ? 1 : 0;
        }
        return records;
    }
}
