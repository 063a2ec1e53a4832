package org.loamlight.criterion;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A knowledge file by its lines. The build arranges the one JSON document so that its lines end where a reader can stop: each
 * criterion and each profile takes two lines, what every audit needs and the rest. What is handed out are the bytes of JSON
 * objects, each of which can be read by itself.
 *
 * <pre>
 * {"version": ..., "limit-rules": [...], "cautions": [...]
 * ,"criteria":[
 * {"id": "air.humid-retreat", all of its front matter
 * ,"page": {...}},
 * ...
 * ],"every-reptile": [...]
 * ,"species":[
 * {"id": "boa-imperator", its names
 * ,"habits": {...}, "limits": [...]},
 * ...
 * ],"sources": [...]
 * }
 * </pre>
 */
final class KnowledgeLines {
    private final Iterator<String> lines;
    private int taken;

    private final String head;
    private final List<Element> criteria;
    private final String every;
    private final List<Element> species;
    private final String sources;

    /**
     * An element of a list.
     *
     * @param first an object that is not closed
     * @param rest  its further members, each after a comma, and the brace that closes it
     */
    private record Element(String first, String rest) {
        Element {
            rest = rest.endsWith(",") ? rest.substring(0, rest.length() - 1) : rest;
        }
    }

    /**
     * Finds the parts and reads none of them.
     *
     * @throws IllegalStateException when the lines do not stand as the build writes them, naming the first that does not
     */
    KnowledgeLines(byte[] file) {
        // Latin 1 keeps every byte as it is: cutting does not read, whatever the bytes are.
        this.lines = List.of(new String(file, StandardCharsets.ISO_8859_1).split("\n", -1)).iterator();
        this.head = after("", taken());
        after(",\"criteria\":[", taken());
        this.criteria = new ArrayList<>();
        this.every = after("],", elements(criteria));
        after(",\"species\":[", taken());
        this.species = new ArrayList<>();
        this.sources = after("],", elements(species));
        after("}", taken());
        if (!taken().isEmpty() || lines.hasNext()) {
            throw misplaced("nothing more");
        }
    }

    private String taken() {
        taken++;
        if (!lines.hasNext()) {
            throw misplaced("another line");
        }
        return lines.next();
    }

    private String after(String beginning, String line) {
        if (!line.startsWith(beginning)) {
            throw misplaced(beginning);
        }
        return line.substring(beginning.length());
    }

    private IllegalStateException misplaced(String expected) {
        return KnowledgeReader.unreadable(new IOException("line " + taken + " is not as the build writes it, expected is " + expected
                + "; build the program again with mvn package"));
    }

    /** Takes the elements of a list; returns the first line that is none. */
    private String elements(List<Element> elements) {
        String line = taken();
        while (line.startsWith("{")) {
            elements.add(new Element(line, taken()));
            line = taken();
        }
        return line;
    }

    /** Version, rules of the limits, cautions. */
    byte[] head() {
        return bytes(head + "}");
    }

    /** The front matter of all criteria, under "criteria". */
    byte[] criteria() {
        return firsts("criteria", criteria);
    }

    /** The page of the criterion of a number, under "page". */
    byte[] page(int number) {
        return bytes("{" + criteria.get(number).rest.substring(1));
    }

    /** The limits for every reptile, under "every-reptile". */
    byte[] every() {
        return bytes("{" + every + "}");
    }

    /** Id and names of all species, under "species". */
    byte[] species() {
        return firsts("species", species);
    }

    /** The profile of the species of a number. */
    byte[] profile(int number) {
        return bytes(species.get(number).first + species.get(number).rest);
    }

    /** The sources, under "sources". */
    byte[] sources() {
        return bytes("{" + sources + "}");
    }

    private static byte[] firsts(String key, List<Element> elements) {
        return bytes(elements.stream().map(element -> element.first + "}").collect(Collectors.joining(",\n", "{\"" + key + "\":[", "]}")));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
