package org.loamlight.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The files of one run. Each appears whole or not at all, and none before all of them could be written. */
final class OutputFiles {
    private final Map<Path, Content> contents = new LinkedHashMap<>();

    /** Writes what a file shall hold. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Plans a file. */
    void add(Path file, byte[] content) {
        add(file, out -> out.write(content));
    }

    /** Plans a file whose content is too large for the memory. */
    void add(Path file, Content content) {
        contents.put(file, content);
    }

    /** Writes every planned file beside its place first, then moves them there. */
    void write() throws Complaint {
        Map<Path, Path> written = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, Content> content : contents.entrySet()) {
                written.put(content.getKey(), beside(content.getKey(), content.getValue()));
            }
            for (Map.Entry<Path, Path> file : written.entrySet()) {
                move(file.getValue(), file.getKey());
            }
        } finally {
            written.values().forEach(OutputFiles::remove);
        }
    }

    /**
     * Says before any work is done what would fail after it: outputs may be neither one file nor what is read.
     *
     * @param inputs what each file that is read is, by its name
     */
    static void requireApart(List<Path> outputs, Map<String, String> inputs) throws Complaint {
        Map<Path, String> read = new HashMap<>();
        for (Map.Entry<String, String> input : inputs.entrySet()) {
            read.put(whole(InputFile.path(input.getKey())), input.getValue());
        }
        Set<Path> before = new HashSet<>();
        for (Path output : outputs) {
            if (read.containsKey(whole(output))) {
                throw new Complaint(output + ": this is " + read.get(whole(output)) + "; give the output another name");
            }
            requireWritable(output);
            if (!before.add(whole(output))) {
                throw new Complaint(output + ": two outputs would be one file; give them two names");
            }
        }
    }

    private static Path whole(Path file) {
        return file.toAbsolutePath().normalize();
    }

    /** @param file null when it is not wanted */
    static void requireEnding(String file, String ending, String what) throws Complaint {
        if (file != null && !file.toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw new Complaint(file + ": " + what + "; name it with " + ending + " at the end");
        }
    }

    /** Says before any work is done what would fail after it. */
    static void requireWritable(Path file) throws Complaint {
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file)) {
            throw new Complaint(file + ": this is a folder; name the file to write in it");
        }
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Complaint(file + ": the folder " + folder + " does not exist; make it first");
        }
        if (!Files.isWritable(folder) || Files.exists(file) && !Files.isWritable(file)) {
            throw new Complaint(file + ": this cannot be written; check the permissions of the folder and the file");
        }
    }

    /** With the permissions any new file gets here; a file of that name left by a killed run is written over. */
    private static Path beside(Path file, Content content) throws Complaint {
        Path part = file.resolveSibling("." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try (OutputStream out = Files.newOutputStream(part)) {
            content.writeTo(out);
            return part;
        } catch (IOException e) {
            remove(part);
            throw new Complaint(file + ": writing failed (" + Reason.of(e) + "); nothing was left behind. Is the disk full?");
        }
    }

    /** Moves a file that is written whole to its place. */
    static void move(Path part, Path file) throws Complaint {
        try {
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new Complaint(file + ": writing failed (" + Reason.of(e) + "); is the file open in another program?");
        }
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            part.toFile().deleteOnExit();
        }
    }
}
