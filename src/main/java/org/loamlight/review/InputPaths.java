package org.loamlight.review;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/**
 * Where the descriptions of a review come from.
 *
 * @param paths         files, folders and {@link #STANDARD_INPUT}, in the order in which they are read
 * @param left          files to leave out: what this program writes or compares with
 * @param standardInput JSON Lines; read only when the paths name it
 */
public record InputPaths(List<Path> paths, Set<Path> left, InputStream standardInput) {
    /** Stands among paths for what comes in on standard input. A file of that name is reached by "./-". */
    public static final Path STANDARD_INPUT = Path.of("-");

    public InputPaths {
        paths = List.copyOf(paths);
        left = Set.copyOf(left);
    }

    /** How a path stands in messages. */
    static String shown(Path path) {
        return path.equals(STANDARD_INPUT) ? "standard input" : path.toString();
    }
}
