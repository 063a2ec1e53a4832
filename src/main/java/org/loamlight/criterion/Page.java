package org.loamlight.criterion;

import java.util.Map;
import java.util.function.Supplier;

/** The words of a criterion, for people. They may be read from the knowledge file when they are first asked for. */
public final class Page {
    private final Once<Words> words;

    private record Words(String requirement, String why, String measure, Map<String, String> correct, Map<String, String> meanwhile,
            String exceptions, Map<String, String> found) {
    }

    /**
     * @param requirement what is asked
     * @param why         why it matters
     * @param measure     how to find out
     * @param correct     how to put it right, by variant, with {shortfall} and {limit} where an amount belongs; "" for the usual one
     * @param meanwhile   what keeps the animal safe until it is put right, by variant, with {without-heat} where an animal could be left
     *                    without warmth; "" for the usual one; empty where no finding can be a danger
     * @param exceptions  when it does not hold; may be empty
     * @param found       what a finding of each variant says, with {subject}; empty for criteria judged by a limit alone
     */
    public Page(String requirement, String why, String measure, Map<String, String> correct, Map<String, String> meanwhile, String exceptions,
            Map<String, String> found) {
        this(Once.of(new Words(requirement, why, measure, correct, meanwhile, exceptions, found)));
    }

    /** A page on which no finding can be a danger. */
    public Page(String requirement, String why, String measure, Map<String, String> correct, String exceptions, Map<String, String> found) {
        this(requirement, why, measure, correct, Map.of(), exceptions, found);
    }

    private Page(Once<Words> words) {
        this.words = words;
    }

    /** A page that is read when it is first asked for. */
    static Page onDemand(Supplier<Page> read) {
        return new Page(Once.by(() -> read.get().words.get()));
    }

    public String requirement() {
        return words.get().requirement;
    }

    public String why() {
        return words.get().why;
    }

    public String measure() {
        return words.get().measure;
    }

    public Map<String, String> correct() {
        return words.get().correct;
    }

    public Map<String, String> meanwhile() {
        return words.get().meanwhile;
    }

    public String exceptions() {
        return words.get().exceptions;
    }

    public Map<String, String> found() {
        return words.get().found;
    }

    /** How to put a variant right; the usual way when the variant has no words of its own. */
    public String correctFor(String variant) {
        return correct().getOrDefault(variant, correct().getOrDefault("", ""));
    }

    /** What keeps the animal safe until a variant is put right; the usual words when it has none of its own. */
    public String meanwhileFor(String variant) {
        return meanwhile().getOrDefault(variant, meanwhile().getOrDefault("", ""));
    }

    /** What a finding of the variant says; the usual words when it has none of its own. */
    public String foundFor(String variant) {
        return found().getOrDefault(variant, found().getOrDefault("", ""));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Page page && words.get().equals(page.words.get());
    }

    @Override
    public int hashCode() {
        return words.get().hashCode();
    }

    @Override
    public String toString() {
        return words.get().toString();
    }
}
