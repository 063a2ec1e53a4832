package org.loamlight.finding;

import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

/** A criterion and the subject it is held against; a setup has at most one finding for each. */
public record Pair(String criterion, Subject subject) {
    /** Stable text: "heat.guard heater:basking lamp". */
    public String key() {
        return criterion + " " + subject.key();
    }

    /** Reads what {@link #key()} wrote; empty for anything else. */
    public static Optional<Pair> read(String key) {
        int space = key.indexOf(' ');
        int colon = key.indexOf(':', space);
        if (space <= 0) {
            return Optional.empty();
        }
        String kind = key.substring(space + 1, colon < 0 ? key.length() : colon);
        return Stream.of(SubjectKind.values()).filter(one -> one.id().equals(kind)).findFirst()
                .map(one -> new Pair(key.substring(0, space), new Subject(one, colon < 0 ? "" : key.substring(colon + 1))));
    }
}
