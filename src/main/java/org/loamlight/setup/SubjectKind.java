package org.loamlight.setup;

import java.util.Locale;

/** The kinds of things a criterion can be applied to, with the list of the setup they stand in. */
public enum SubjectKind {
    ANIMAL("animals"), ENCLOSURE("enclosure"), HEATER("heaters"), LAMP("lamps"), OPENING("enclosure.openings"),
    FURNISHING("furnishings"), READING("readings");

    private final String section;
    private final String id = name().toLowerCase(Locale.ROOT);

    SubjectKind(String section) {
        this.section = section;
    }

    /** Path of the section of the setup these stand in. */
    public String section() {
        return section;
    }

    public String id() {
        return id;
    }
}
