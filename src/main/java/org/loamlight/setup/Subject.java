package org.loamlight.setup;

import java.util.Objects;

/**
 * What a criterion is applied to: an animal, the enclosure or a named part of it.
 *
 * @param kind what it is
 * @param name the name given in the setup; empty for the enclosure
 */
public record Subject(SubjectKind kind, String name) {
    public static final Subject ENCLOSURE = new Subject(SubjectKind.ENCLOSURE, "");

    public Subject {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
    }

    /** Path of one of its members in the setup: "heaters[basking lamp].guard". */
    public String path(String member) {
        return name.isEmpty() ? kind.section() + "." + member : kind.section() + "[" + name + "]." + member;
    }

    /** Stable text that never holds a position: "heater:basking lamp", "enclosure". */
    public String key() {
        return name.isEmpty() ? kind.id() : kind.id() + ":" + name;
    }
}
