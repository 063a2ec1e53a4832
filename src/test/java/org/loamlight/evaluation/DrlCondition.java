package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What stands between {@code when} and {@code then} of one rule, taken apart as far as mutations need: patterns with their
 * constraints, and groups joined by {@code and} or {@code or}. Rules that {@link DrlLintTest} lets pass are understood; anything
 * else ends in an {@link IllegalArgumentException}.
 */
final class DrlCondition {
    private static final Pattern TOKEN = Pattern.compile("\"[^\"]*\"|\\$?[A-Za-z_][\\w.]*|==|!=|<=|>=|&&|\\|\\||\\S");

    private final String text;
    private final List<MatchResult> tokens;
    private int next;
    private final List<Element> elements = new ArrayList<>();

    /** A stretch of the text, the end not included. */
    record Span(int start, int end) {
        String of(String text) {
            return text.substring(start, end);
        }
    }

    /**
     * A pattern, or a group of elements.
     *
     * @param quantifier  where {@code not} or {@code exists} stands before it; of no length where neither does
     * @param parts       of a group; empty for a pattern
     * @param constraints of a pattern, bindings among them; empty for a group
     * @param type        of a pattern; empty for a group
     */
    record Element(Span span, Span quantifier, List<Element> parts, boolean either, List<Span> constraints, String type) {
        boolean isQuantified() {
            return quantifier.start() < quantifier.end();
        }
    }

    private DrlCondition(String text) {
        this.text = text;
        this.tokens = TOKEN.matcher(text).results().toList();
    }

    static DrlCondition of(String text) {
        DrlCondition condition = new DrlCondition(text);
        while (condition.next < condition.tokens.size()) {
            condition.elements.add(condition.element());
        }
        return condition;
    }

    List<Element> elements() {
        return elements;
    }

    /** Tokens of a stretch, in order. */
    List<MatchResult> tokens(Span span) {
        return tokens.stream().filter(token -> token.start() >= span.start() && token.end() <= span.end()).toList();
    }

    /** Whether every variable is bound before it is used, here and then in the consequence. */
    boolean binds(String consequence) {
        Set<String> bound = new HashSet<>();
        return elements.stream().allMatch(element -> binds(element, bound))
                && TOKEN.matcher(consequence).results().map(MatchResult::group).allMatch(token -> isBound(token, bound));
    }

    private boolean binds(Element element, Set<String> bound) {
        Set<String> inside = new HashSet<>(bound);
        boolean complete = element.parts().isEmpty() ? bindsPattern(element, inside)
                : element.either() ? bindsEither(element, inside) : element.parts().stream().allMatch(part -> binds(part, inside));
        if (!element.isQuantified()) {
            bound.addAll(inside);
        }
        return complete;
    }

    private boolean bindsEither(Element element, Set<String> bound) {
        Set<String> byAll = null;
        for (Element part : element.parts()) {
            Set<String> byOne = new HashSet<>(bound);
            if (!binds(part, byOne)) {
                return false;
            }
            byAll = byAll == null ? byOne : byAll;
            byAll.retainAll(byOne);
        }
        bound.addAll(byAll);
        return true;
    }

    private boolean bindsPattern(Element element, Set<String> bound) {
        List<MatchResult> own = tokens(element.span());
        for (int i = 0; i < own.size(); i++) {
            String token = own.get(i).group();
            if (i + 1 < own.size() && own.get(i + 1).group().equals(":")) {
                bound.add(token);
            } else if (!isBound(token, bound)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isBound(String token, Set<String> bound) {
        return !token.startsWith("$") || bound.contains(token.split("\\.", 2)[0]);
    }

    private Element element() {
        int start = at();
        Span quantifier = new Span(start, start);
        if (is("not") || is("exists")) {
            quantifier = new Span(start, tokens.get(next).end());
            next++;
        }
        return is("(") ? group(start, quantifier) : pattern(start, quantifier);
    }

    private Element group(int start, Span quantifier) {
        take("(");
        List<Element> parts = new ArrayList<>(List.of(element()));
        boolean either = is("or");
        while (!is(")")) {
            take(either ? "or" : "and");
            parts.add(element());
        }
        return new Element(new Span(start, take(")")), quantifier, parts, either, List.of(), "");
    }

    private Element pattern(int start, Span quantifier) {
        if (tokens.get(next).group().startsWith("$")) {
            next++;
            take(":");
        }
        String type = tokens.get(next++).group();
        take("(");
        List<Span> constraints = new ArrayList<>();
        while (!is(")")) {
            constraints.add(constraint());
            if (is(",")) {
                next++;
            }
        }
        return new Element(new Span(start, take(")")), quantifier, List.of(), false, constraints, type);
    }

    private Span constraint() {
        int start = at();
        int end = start;
        int depth = 0;
        while (depth > 0 || !is(",") && !is(")")) {
            depth += is("(") ? 1 : is(")") ? -1 : 0;
            end = tokens.get(next++).end();
        }
        return new Span(start, end);
    }

    private int at() {
        if (next >= tokens.size()) {
            throw new IllegalArgumentException("ends too early: " + text);
        }
        return tokens.get(next).start();
    }

    private boolean is(String token) {
        at();
        return tokens.get(next).group().equals(token);
    }

    private int take(String token) {
        if (!is(token)) {
            throw new IllegalArgumentException("\"" + token + "\" is wanted before \"" + text.substring(at()) + "\"");
        }
        return tokens.get(next++).end();
    }
}
