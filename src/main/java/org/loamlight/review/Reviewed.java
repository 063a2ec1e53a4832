package org.loamlight.review;

import java.util.List;
import java.util.Optional;

/**
 * One line of results: a setup that was judged, or what is wrong with its file.
 *
 * @param number   its place in the review, from 1
 * @param file     where it lies
 * @param line     its line in a file of JSON Lines; 0 for a file of its own
 * @param sha256   SHA-256 of its content, lower-case hexadecimal; of an anonymous one that of what was left of it
 * @param basis    what it was judged with
 * @param problems what keeps it from being judged; empty when it was judged
 * @param isDefect whether the program failed, and not the file
 * @param judged   empty when there are problems
 */
public record Reviewed(int number, String file, int line, String sha256, Basis basis, List<String> problems, boolean isDefect, Optional<Judged> judged) {
    public Reviewed {
        problems = List.copyOf(problems);
    }

    /** A setup that was judged. */
    static Reviewed of(int number, Incoming incoming, String sha256, Basis basis, Judged judged) {
        return new Reviewed(number, incoming.file(), incoming.line(), sha256, basis, List.of(), false, Optional.of(judged));
    }

    /** A file that cannot be judged. */
    static Reviewed broken(int number, Incoming incoming, Basis basis, List<String> problems) {
        return new Reviewed(number, incoming.file(), incoming.line(), incoming.sha256(), basis, problems, false, Optional.empty());
    }

    /** With the line where it has one: "all.jsonl, line 17". */
    public String name() {
        return Incoming.name(file, line);
    }

    /** What a reader knows it by: its title, else its file. */
    public String label() {
        return judged.map(Judged::title).filter(title -> !title.isBlank()).orElse(name());
    }

    /** The same result at another place. */
    Reviewed at(int elsewhere, Incoming incoming) {
        return new Reviewed(elsewhere, incoming.file(), incoming.line(), sha256, basis, problems, isDefect, judged);
    }
}
