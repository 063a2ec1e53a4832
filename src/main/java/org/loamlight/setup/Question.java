package org.loamlight.setup;

import java.util.Arrays;
import java.util.List;

/**
 * One question of the setup format, as docs/setup.schema.json asks it.
 *
 * @param path    where the answer goes, with {@code []} behind each list: {@code lamps[].between[].what}
 * @param label   what is asked, one sentence
 * @param how     how to find out, the sentences after the first; may be empty
 * @param choices the words it can be answered with, without "not looked"; empty where words do not decide
 * @param units   symbols of the units it can be answered in; empty for what is not measured
 */
public record Question(String path, String label, String how, Kind kind, List<String> choices, List<String> units) {
    private static final String OF_EACH = "[]";

    /** What an answer looks like. */
    public enum Kind {
        TEXT, ONE_OF, SEVERAL, DAY,
        /** A number with its unit, perhaps with how far it may be off; some can be said in words as well. */
        MEASURE,
        /** Words, or distances from the left wall, the front and the bare floor. */
        PLACE,
        /** Parts that are each asked questions of their own, whose paths begin with this one. */
        PARTS,
        /** The version of the format. */
        VERSION
    }

    public Question {
        choices = List.copyOf(choices);
        units = List.copyOf(units);
    }

    /** The path of the list whose parts are asked this: {@code lamps[].between}; empty for what is asked once. */
    public String list() {
        int end = path.lastIndexOf(OF_EACH);
        return end < 0 ? "" : path.substring(0, end);
    }

    /** The members that lead to the answer from the part that is asked, or from the setup: place, zone. */
    public List<String> members() {
        String inner = list().isEmpty() ? path : path.substring(list().length() + OF_EACH.length() + 1);
        return Arrays.asList(inner.split("\\."));
    }
}
