package org.loamlight.criterion;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Section;

/**
 * The waivers of a file.
 *
 * @param sha256 SHA-256 of the file, lower-case hexadecimal; empty when there is none
 * @param all    in the order of the file
 */
public record Waivers(String sha256, List<Waiver> all) {
    /** No waiver at all. */
    public static final Waivers NONE = new Waivers("", List.of());

    /**
     * Reads a JSON file of waivers.
     *
     * @param file      as the user named it
     * @param knowledge with codes and house rules; a waiver may be for any of its points
     * @throws ProblemsFound with everything that is wrong
     */
    public static Waivers read(String file, byte[] bytes, Knowledge knowledge) throws ProblemsFound {
        Problems problems = new Problems(file);
        JsonValue document = JsonFile.read(bytes, problems);
        return read(document, problems, JsonFile.sha256(bytes), knowledge);
    }

    /**
     * Reads what was read as JSON or from a spreadsheet.
     *
     * @param problems of the reading so far; further ones are added
     * @throws ProblemsFound with everything that is wrong
     */
    public static Waivers read(JsonValue document, Problems problems, String sha256, Knowledge knowledge) throws ProblemsFound {
        Section section = Section.document(document, problems, new HashMap<>());
        section.member("$schema");
        HouseRulesReader.requireFormat(section);
        Set<String> seen = new HashSet<>();
        List<Waiver> all = section.unnamed("waivers", one -> waiver(one, knowledge, seen));
        if (section.member("waivers").isEmpty()) {
            section.lacks("waivers", "write the list of waivers, which may be empty: []");
        }
        section.reportUnasked();
        problems.throwIfAny();
        return new Waivers(sha256, all);
    }

    private static Waiver waiver(Section one, Knowledge knowledge, Set<String> seen) {
        Waiver waiver = new Waiver(HouseRulesReader.criterion(one, knowledge), text(one, "setup"), text(one, "animal"), text(one, "subject"),
                one.requiredText("reason", "say why it is granted"), one.requiredText("granted-by", "say who granted it"),
                HouseRulesReader.date(one, "until", "say until when it holds, as 2026-12-31"));
        if (waiver.setup().isEmpty() && waiver.animal().isEmpty()) {
            one.lacks("setup", "name the title of the setup, or the animal, it is for");
        }
        if (!seen.add(waiver.criterion() + "\n" + waiver.setup() + "\n" + waiver.animal() + "\n" + waiver.subject())) {
            one.problem("criterion", "the same is waived twice", "keep one of the two");
        }
        return waiver;
    }

    private static Optional<String> text(Section one, String key) {
        return Optional.of(one.text(key)).filter(text -> !text.isEmpty());
    }
}
