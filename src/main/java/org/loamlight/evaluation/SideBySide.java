package org.loamlight.evaluation;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeClause;
import org.loamlight.criterion.CodePoint;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Where;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Topic;

/**
 * What the chosen codes ask, each thing beside what the species needs.
 *
 * @param codes   the chosen codes in the order in which they were chosen; empty when none was
 * @param rows    one for each thing asked in figures, in the order of topics and places
 * @param clauses what is asked in words, code by code
 */
public record SideBySide(List<Code> codes, List<Row> rows, List<InWords> clauses) {
    public SideBySide {
        codes = List.copyOf(codes);
        rows = List.copyOf(rows);
        clauses = List.copyOf(clauses);
    }

    /** The table of an audit; nothing in it when no code was chosen. */
    public static SideBySide of(Audit audit) {
        return new CodesCompared(audit).table();
    }

    /** How what several codes ask goes together. */
    public enum Agreement {
        /** At most one code asks it in numbers, or all ask the same. */
        SAME,
        /** They ask different numbers; the strictest covers the others. */
        DIFFERENT,
        /** No value meets all of them, what the species needs included. */
        CONTRADICTORY
    }

    /**
     * One thing asked: what is limited and where.
     *
     * @param own   what the species' own criteria ask there, by id and subject; empty when they ask nothing in this measure
     * @param asked what each code asks, in the order in which the codes were chosen
     */
    public record Row(Topic topic, Place place, List<Asked> own, List<ByCode> asked) {

        /** Whether any code asks it of these animals in this housing. */
        public boolean isAsked() {
            return asked.stream().anyMatch(ByCode::isAsked);
        }

        public Agreement agreement() {
            if (isContradictory()) {
                return Agreement.CONTRADICTORY;
            }
            Set<Set<Range>> different = asked.stream().map(one -> one.asked().limits()).filter(limits -> !limits.isEmpty())
                    .map(limits -> limits.stream().map(Range::of).collect(Collectors.toSet())).collect(Collectors.toSet());
            return different.size() > 1 ? Agreement.DIFFERENT : Agreement.SAME;
        }

        /** Only what is asked of the very same place can contradict itself, and a figure that is only shown asks nothing. */
        private boolean isContradictory() {
            List<ResolvedLimit> all = Stream.concat(own.stream(), asked.stream().map(ByCode::asked)).flatMap(one -> one.limits().stream())
                    .filter(limit -> limit.where() == Where.EVERYWHERE && limit.place().equals(place) && limit.decision() != DecisionRule.SHOWN).toList();
            return all.stream().mapToDouble(ResolvedLimit::low).max().orElse(0) > all.stream().mapToDouble(ResolvedLimit::high).min().orElse(0);
        }
    }

    private record Range(double low, double high, Where where) {
        static Range of(ResolvedLimit limit) {
            return new Range(limit.low(), limit.high(), limit.where());
        }
    }

    /**
     * What one criterion asks of one thing, and what it comes to there: a criterion on length and height may be right in one and
     * wrong in the other.
     *
     * @param limits   in numbers, each once; empty when none is meant for these animals or none could be stated
     * @param missing  paths of unanswered questions that decide about a limit; empty when all is known
     * @param deciding the value and the limit that decided; empty when nothing could be held
     */
    public record Asked(Finding finding, List<ResolvedLimit> limits, Set<String> missing, Optional<Held> deciding, Result result) {
        public Asked {
            limits = List.copyOf(limits);
            missing = Set.copyOf(missing);
        }
    }

    /**
     * What one point of a code asks of one thing.
     *
     * @param otherwise readings of its wording that were not taken and give other numbers here
     */
    public record ByCode(Code code, CodePoint point, Asked asked, List<Otherwise> otherwise) {
        public ByCode {
            otherwise = List.copyOf(otherwise);
        }

        /** Whether it is asked of these animals in this housing. */
        public boolean isAsked() {
            return asked.result() != Result.NOT_APPLICABLE;
        }

        /** Where it stands and how firmly it is known. */
        public Citation citation() {
            return new Citation(code.source(), point.clause(), point.standing());
        }
    }

    /**
     * A reading that was not taken.
     *
     * @param policy key of the policy that decided, under {@link Code#policies()}
     * @param limits what it would ask, in numbers; not empty
     */
    public record Otherwise(String policy, List<ResolvedLimit> limits) {
        public Otherwise {
            limits = List.copyOf(limits);
        }
    }

    /**
     * A clause in words.
     *
     * @param result the worst that the criteria found which judge it; empty when nothing here judges it
     */
    public record InWords(Code code, CodeClause clause, Optional<Result> result) {
        /** Where it stands and how firmly it is known. */
        public Citation citation() {
            return new Citation(code.source(), clause.clause(), clause.standing());
        }
    }
}
