package org.loamlight.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loamlight.setup.JsonFile;

/** What is handed on of folders, zips and lines. */
class InputsTest {
    @TempDir
    private Path folder;

    private List<String> read(Path path) throws IOException {
        List<String> found = new ArrayList<>();
        new Inputs(from(Set.of(folder.resolve("left.json")), ""), incoming -> found.add(shown(incoming))).read(path);
        return found;
    }

    private static InputPaths from(Set<Path> left, String standardInput) {
        return new InputPaths(List.of(), left, new ByteArrayInputStream(standardInput.getBytes(StandardCharsets.UTF_8)));
    }

    private String shown(Incoming incoming) {
        String name = incoming.name().replace(folder.toString(), "").replace('\\', '/');
        return incoming.problem().isEmpty() ? name : name + " - " + incoming.problem();
    }

    private Path zip(String name, String... entries) throws IOException {
        Path zip = folder.resolve(name);
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (String entry : entries) {
                out.putNextEntry(new ZipEntry(entry));
                out.write("{}\n{}\n".getBytes(StandardCharsets.UTF_8));
            }
        }
        return zip;
    }

    @Test
    void folders_are_read_by_name_and_what_is_hidden_or_of_another_kind_is_passed_over() throws IOException {
        for (String name : List.of("b.json", "a.xlsx", ".hidden.json", "~$a.xlsx", "left.json", "note.txt", "Z.JSON")) {
            Files.writeString(folder.resolve(name), "{}");
        }
        Files.createDirectories(folder.resolve("inner").resolve(".git"));
        Files.writeString(folder.resolve("inner").resolve("c.json"), "{}");
        Files.writeString(folder.resolve("inner").resolve(".git").resolve("d.json"), "{}");
        assertEquals(List.of("/Z.JSON", "/a.xlsx", "/b.json", "/inner/c.json"), read(folder));
        assertEquals(2, new Inputs(from(Set.of(), ""), incoming -> {
        }).read(folder));
    }

    @Test
    void entries_whose_path_leads_out_of_a_zip_are_told_and_the_rest_is_read() throws IOException {
        String problem = " - its path leads out of the zip; it was not read";
        Path zip = zip("a.zip", "../up.json", "in/../../up.json", "/root.json", "C:/disk.json", "..\\up.json", "ok/fine..json", "ok/", "all.jsonl", "in.zip", "note.txt", "__MACOSX/x.json");
        assertEquals(List.of("/a.zip: ../up.json" + problem, "/a.zip: in/../../up.json" + problem, "/a.zip: /root.json" + problem, "/a.zip: C:/disk.json" + problem,
                "/a.zip: ../up.json" + problem, "/a.zip: ok/fine..json", "/a.zip: all.jsonl, line 1", "/a.zip: all.jsonl, line 2",
                "/a.zip: in.zip - it is a zip in a zip; it was not read. Unpack it first"), read(zip));
        assertTrue(Files.notExists(folder.resolve("up.json")) && Files.notExists(folder.resolve("..").resolve("up.json")));
    }

    @Test
    void a_zip_that_swells_is_left_where_it_swells() throws IOException {
        Path zip = folder.resolve("bomb.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (int i = 0; i < 40; i++) {
                out.putNextEntry(new ZipEntry(i + ".json"));
                out.write(new byte[4_000_000]);
            }
        }
        List<String> found = read(zip);
        assertTrue(found.size() > 5 && found.size() < 20, found.size() + " of 40");
        assertTrue(found.get(found.size() - 1).contains("unpacks to far more than descriptions do"), found.toString());
    }

    @Test
    void a_broken_zip_gives_what_comes_before_the_break() throws IOException {
        byte[] whole = Files.readAllBytes(zip("a.zip", "a.json", "b.json"));
        Files.write(folder.resolve("cut.zip"), Arrays.copyOf(whole, 50));
        Files.write(folder.resolve("between.zip"), Arrays.copyOf(whole, whole.length - 40));
        Files.writeString(folder.resolve("none.zip"), "nothing packed");
        Files.write(folder.resolve("empty.zip"), new byte[0]);
        List<String> cut = read(folder.resolve("cut.zip"));
        assertEquals(List.of("/cut.zip: a.json - the file cannot be read to its end",
                "/cut.zip - the zip is broken here, or locked with a password; what lies behind was not read. Pack it again"), cut);
        assertEquals(List.of("/between.zip: a.json", "/between.zip: b.json", "/between.zip - the zip is broken here, or locked with a password; what lies behind was not read. Pack it again"),
                read(folder.resolve("between.zip")));
        assertEquals(List.of("/none.zip - there is nothing in this zip, or it is none"), read(folder.resolve("none.zip")));
        assertEquals(List.of("/empty.zip - there is nothing in this zip, or it is none"), read(folder.resolve("empty.zip")));
    }

    @Test
    void lines_know_where_they_begin_and_one_that_is_too_long_is_cut_and_passed() throws IOException {
        byte[] text = ("one\r\n\n" + "x".repeat(200_000) + "\nlast").getBytes(StandardCharsets.UTF_8);
        LinesIn lines = new LinesIn(new ByteArrayInputStream(text), 1000);
        LinesIn.Line first = lines.next();
        assertEquals("one\r", new String(first.bytes(), StandardCharsets.UTF_8));
        LinesIn.Line blank = lines.next();
        assertTrue(blank.isBlank() && blank.isWhole() && blank.start() == 5);
        LinesIn.Line cut = lines.next();
        assertEquals(1001, cut.bytes().length);
        LinesIn.Line last = lines.next();
        assertEquals(text.length - 4, last.start());
        assertTrue(!last.isWhole() && lines.next() == null);
    }

    @Test
    void a_line_longer_than_a_setup_is_handed_on_just_too_long() throws IOException {
        Path lines = folder.resolve("long.jsonl");
        Files.writeString(lines, "{}\n" + " ".repeat(JsonFile.MOST_BYTES + 10) + "{}\n{}\n");
        List<Integer> lengths = new ArrayList<>();
        new Inputs(from(Set.of(), ""), incoming -> lengths.add(incoming.bytes().length)).read(lines);
        assertEquals(List.of(2, JsonFile.MOST_BYTES + 1, 2), lengths);
    }

    /** Gives one line each time it is read, as a slow program at the other end of a pipe does. */
    private static final class OneByOne extends InputStream {
        private final List<String> given = new ArrayList<>();
        private final List<String> taken;
        private final int lines;

        OneByOne(int lines, List<String> taken) {
            this.lines = lines;
            this.taken = taken;
        }

        @Override
        public int read() {
            throw new AssertionError("bytes are read in blocks");
        }

        @Override
        public int read(byte[] into, int at, int most) {
            assertEquals(given, taken, "a line waits for the next");
            if (given.size() == lines) {
                return -1;
            }
            given.add("standard input, line " + (given.size() + 1));
            byte[] line = "{}\n".getBytes(StandardCharsets.UTF_8);
            System.arraycopy(line, 0, into, at, line.length);
            return line.length;
        }
    }

    @Test
    void standard_input_is_handed_on_line_by_line_as_it_comes() throws IOException {
        List<String> taken = new ArrayList<>();
        InputPaths from = new InputPaths(List.of(InputPaths.STANDARD_INPUT), Set.of(), new OneByOne(30, taken));
        assertEquals(0, new Inputs(from, incoming -> taken.add(incoming.name())).read(InputPaths.STANDARD_INPUT));
        assertEquals(30, taken.size());
    }

    @Test
    void standard_input_that_breaks_off_is_told_behind_what_came() throws IOException {
        InputStream broken = new SequenceInputStream(new ByteArrayInputStream("{}\n".getBytes(StandardCharsets.UTF_8)), new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("gone");
            }
        });
        List<String> found = new ArrayList<>();
        new Inputs(new InputPaths(List.of(), Set.of(), broken), incoming -> found.add(shown(incoming))).read(InputPaths.STANDARD_INPUT);
        assertEquals(List.of("standard input, line 1", "standard input - the file cannot be read to its end"), found);
    }
}
