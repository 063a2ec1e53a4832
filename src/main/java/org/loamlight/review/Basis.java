package org.loamlight.review;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.loamlight.setup.JsonFile;

/**
 * What setups were judged with: results of another basis are never taken over.
 *
 * @param version of the knowledge
 * @param sha256  of the knowledge, lower-case hexadecimal
 * @param options SHA-256 of everything else that decides what stands in a line of results: codes, house rules, waivers, day, units
 * @param isAnonymous whether names were taken out, so that a result is called by its number
 */
public record Basis(String version, String sha256, String options, boolean isAnonymous) {

    /** @param options each in one text, in a fixed order; what is not asked for as "" */
    public static Basis of(String version, String sha256, List<String> options, boolean isAnonymous) {
        StringBuilder text = new StringBuilder();
        options.forEach(option -> text.append(option.length()).append(':').append(option));
        return new Basis(version, sha256, JsonFile.sha256(text.toString().getBytes(StandardCharsets.UTF_8)), isAnonymous);
    }
}
