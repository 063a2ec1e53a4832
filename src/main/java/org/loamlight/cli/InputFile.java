package org.loamlight.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.loamlight.setup.JsonFile;

/**
 * A file the user named, read whole.
 *
 * @param name  as the user named it
 * @param bytes its content
 */
record InputFile(String name, byte[] bytes) {

    /** Reads the file; one that is larger than any setup is not read to its end. */
    static InputFile read(String name) throws Complaint {
        Path path = path(name);
        if (Files.notExists(path)) {
            throw new Complaint(name + ": there is no such file; check the name and the folder");
        }
        if (Files.isDirectory(path)) {
            throw new Complaint(name + ": this is a folder; name the setup file in it");
        }
        try (InputStream file = Files.newInputStream(path)) {
            return new InputFile(name, file.readNBytes(JsonFile.MOST_BYTES + 1));
        } catch (IOException e) {
            throw new Complaint(name + ": the file cannot be read (" + Reason.of(e) + "); check its permissions");
        }
    }

    static Path path(String name) throws Complaint {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new Complaint("\"" + name + "\" is no file name: " + e.getReason());
        }
    }
}
