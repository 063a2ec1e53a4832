package org.loamlight.criterion;

import java.util.List;
import java.util.Map;

/**
 * What a law, an expert opinion or an association asks of those who keep reptiles, beside what the species needs.
 *
 * @param id       key by which it is chosen: "at-2thvo"
 * @param name     a short name for columns and titles: "Austria 2004"
 * @param title    full title
 * @param issuer   who gave it
 * @param date     when, in words
 * @param source   id of the {@link Source} its limits are cited from
 * @param read     how much of it was read
 * @param policies how a wording that can be read in several ways is read here, by key
 * @param points   what it asks in figures
 * @param clauses  what it asks in words
 * @param page     sentences that all points share, with {code}, {clause} and {asks}
 * @param sha256   SHA-256 of its file, lower-case hexadecimal
 */
public record Code(String id, String name, String title, String issuer, String date, Binding binding, String source, String read,
        Map<String, String> policies, List<CodePoint> points, List<CodeClause> clauses, Page page, String sha256) {

    /** The id of the criterion a point becomes when the code is chosen: "code.at-2thvo.2-2-24-floor". */
    public String criterion(String part) {
        return "code." + id + "." + part;
    }
}
