package org.loamlight.evaluation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;

/**
 * A rule with one small change to its condition.
 *
 * @param kind   what was done: one of {@link Kind}
 * @param change what was changed, readable and unlike the other changes of that rule
 * @param pattern the pattern one of whose constraints was changed, as it was; empty where more was changed
 * @param when   the condition so changed
 */
record RuleMutant(DrlRule rule, Kind kind, String change, String pattern, String when) {
    private static final Map<String, String> TURNED = Map.of("==", "!=", "!=", "==", ">", "<=", "<=", ">", "<", ">=", ">=", "<",
            "in", "not in", "contains", "not contains");

    enum Kind {
        TURNS_OPERATOR, DROPS_PATTERN, TURNS_QUANTIFIER, DROPS_CONSTRAINT, DROPS_ALTERNATIVE
    }

    /** Whether every variable it uses is still bound; the others cannot be compiled. */
    boolean isComplete() {
        return DrlCondition.of(when).binds(rule.then());
    }

    /** One line that no other mutant has: "TURNS_OPERATOR heat.guard: Heater with guard != Stated.NO". */
    String key() {
        return kind + " " + rule.name() + ": " + change;
    }

    /** All mutants of a rule, those that cannot be compiled among them. */
    static List<RuleMutant> of(DrlRule rule) {
        Maker maker = new Maker(rule);
        maker.list(DrlCondition.of(rule.when()).elements(), "");
        return maker.mutants;
    }

    private static final class Maker {
        private final DrlRule rule;
        private final String when;
        private final DrlCondition condition;
        private final List<RuleMutant> mutants = new ArrayList<>();
        private final Map<String, Integer> times = new HashMap<>();
        private String pattern = "";

        Maker(DrlRule rule) {
            this.rule = rule;
            this.when = rule.when();
            this.condition = DrlCondition.of(when);
        }

        /** @param joint the word between the elements; empty where they simply follow each other */
        void list(List<DrlCondition.Element> elements, String joint) {
            List<DrlCondition.Span> spans = elements.stream().map(DrlCondition.Element::span).toList();
            drop(Kind.DROPS_PATTERN, spans, joint.isEmpty() || elements.size() > 1);
            elements.forEach(this::element);
        }

        private void element(DrlCondition.Element element) {
            if (element.isQuantified()) {
                String turned = element.quantifier().of(when).equals("not") ? "exists" : "not";
                add(Kind.TURNS_QUANTIFIER, element.span(), element.quantifier(), turned);
            }
            if (!element.parts().isEmpty()) {
                list(element.parts(), element.either() ? "or" : "and");
            }
            pattern = element.constraints().isEmpty() ? "" : element.span().of(when);
            drop(Kind.DROPS_CONSTRAINT, element.constraints(), true);
            for (DrlCondition.Span constraint : element.constraints()) {
                operators(constraint);
                alternatives(constraint);
            }
            pattern = "";
        }

        private void operators(DrlCondition.Span constraint) {
            List<MatchResult> tokens = condition.tokens(constraint);
            for (int i = 0; i < tokens.size(); i++) {
                MatchResult token = tokens.get(i);
                if (TURNED.containsKey(token.group())) {
                    boolean negated = i > 0 && tokens.get(i - 1).group().equals("not");
                    DrlCondition.Span span = new DrlCondition.Span(negated ? tokens.get(i - 1).start() : token.start(), token.end());
                    add(Kind.TURNS_OPERATOR, constraint, span, negated ? token.group() : TURNED.get(token.group()));
                }
            }
        }

        /** Parts of one constraint that {@code ||} or {@code &&} joins on one level. */
        private void alternatives(DrlCondition.Span constraint) {
            List<MatchResult> tokens = condition.tokens(constraint);
            for (int i = 0; i < tokens.size(); i++) {
                String token = tokens.get(i).group();
                if (token.equals("||") || token.equals("&&")) {
                    add(Kind.DROPS_ALTERNATIVE, constraint, new DrlCondition.Span(before(tokens, i), tokens.get(i).end()), "");
                    if (isLast(tokens, i)) {
                        add(Kind.DROPS_ALTERNATIVE, constraint, new DrlCondition.Span(tokens.get(i).start(), after(tokens, i)), "");
                    }
                }
            }
        }

        /** Where the part that ends before this joint begins. */
        private static int before(List<MatchResult> tokens, int joint) {
            int depth = 0;
            int first = joint;
            for (int i = joint - 1; i >= 0; i--) {
                depth += depthOf(tokens.get(i), ")", "(");
                if (depth < 0 || depth == 0 && isJoint(tokens.get(i))) {
                    break;
                }
                first = i;
            }
            return tokens.get(first).start();
        }

        private static int after(List<MatchResult> tokens, int joint) {
            return tokens.get(lastAfter(tokens, joint)).end();
        }

        private static boolean isLast(List<MatchResult> tokens, int joint) {
            int end = lastAfter(tokens, joint) + 1;
            return end == tokens.size() || !isJoint(tokens.get(end));
        }

        private static int lastAfter(List<MatchResult> tokens, int joint) {
            int depth = 0;
            int last = joint;
            for (int i = joint + 1; i < tokens.size(); i++) {
                depth += depthOf(tokens.get(i), "(", ")");
                if (depth < 0 || depth == 0 && isJoint(tokens.get(i))) {
                    break;
                }
                last = i;
            }
            return last;
        }

        private static int depthOf(MatchResult token, String deeper, String out) {
            return token.group().equals(deeper) ? 1 : token.group().equals(out) ? -1 : 0;
        }

        private static boolean isJoint(MatchResult token) {
            return token.group().equals("||") || token.group().equals("&&");
        }

        /** Takes each of these out, with what joins it to the next or, for the last one, to the one before. */
        private void drop(Kind kind, List<DrlCondition.Span> spans, boolean mayDrop) {
            for (int i = 0; mayDrop && i < spans.size(); i++) {
                int start = i > 0 && i == spans.size() - 1 ? spans.get(i - 1).end() : spans.get(i).start();
                int end = i + 1 < spans.size() ? spans.get(i + 1).start() : spans.get(i).end();
                add(kind, spans.get(i), new DrlCondition.Span(start, end), kind == Kind.DROPS_PATTERN ? " " : "");
            }
        }

        /** Type of the pattern at hand and a blank; nothing outside of one. */
        private String type() {
            int end = pattern.indexOf('(');
            return end < 0 ? "" : pattern.substring(0, end).replaceAll(".*[ :]", "") + " ";
        }

        private void add(Kind kind, DrlCondition.Span shown, DrlCondition.Span replaced, String by) {
            String before = when.substring(0, replaced.start());
            String after = when.substring(replaced.end());
            String now = kind == Kind.DROPS_PATTERN || kind == Kind.DROPS_CONSTRAINT ? shown.of(when)
                    : when.substring(shown.start(), replaced.start()) + by + when.substring(replaced.end(), shown.end());
            String verb = kind == Kind.DROPS_PATTERN || kind == Kind.DROPS_CONSTRAINT ? "without " : "with ";
            String change = type() + verb + now.replaceAll("\\s+", " ").strip();
            int time = times.merge(change, 1, Integer::sum);
            mutants.add(new RuleMutant(rule, kind, time == 1 ? change : change + " (" + time + ")", pattern, before + by + after));
        }
    }
}
