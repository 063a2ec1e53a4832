package org.loamlight.wording;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Where;
import org.loamlight.finding.Decision;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Amount;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

/** Limits in words, how far past them a value is, and what to do about it. */
final class Limits {
    private static final Pattern SLOT = Pattern.compile("\\{(shortfall|limit|subject|without-heat)}");

    private final Amounts amounts;

    Limits(Amounts amounts) {
        this.amounts = amounts;
    }

    String required(Finding finding) {
        List<ResolvedLimit> asked = asked(finding).distinct().toList();
        return asked.isEmpty() ? finding.criterion().title() : inWords(asked);
    }

    /** Several limits in one line, with what each is about or how grave it is where that differs. */
    String inWords(List<ResolvedLimit> asked) {
        boolean topics = asked.stream().map(ResolvedLimit::topic).distinct().count() > 1;
        boolean grades = asked.stream().map(ResolvedLimit::grade).distinct().count() > 1;
        return asked.stream().map(limit -> graded(topics ? labelled(limit) : inWords(limit), limit, grades)).distinct()
                .collect(Collectors.joining("; "));
    }

    /** The limits that were not kept; where none was, all that are held against the subject. */
    private static Stream<ResolvedLimit> asked(Finding finding) {
        return finding.result() == Result.NONCONFORMITY
                ? finding.held().stream().filter(held -> held.decision() == Decision.OUTSIDE).map(Held::limit)
                : Stream.concat(finding.wanted().stream(), finding.held().stream().map(Held::limit));
    }

    private String labelled(ResolvedLimit limit) {
        return Sentences.of("limit.labelled", Sentences.of("topic." + limit.topic().id()), inWords(limit));
    }

    private static String graded(String text, ResolvedLimit limit, boolean severalGrades) {
        return severalGrades ? Sentences.of("limit.graded", text, Wording.ofConstant("grade.", limit.grade())) : text;
    }

    /**
     * What has to be reached to be right: of all limits the deciding value does not keep, the one it is farthest from, since a
     * graver limit often stands behind a stricter one.
     */
    static Optional<Held> strictest(Finding finding) {
        return finding.deciding().map(deciding -> finding.held().stream()
                .filter(held -> held.quantity().equals(deciding.quantity()) && isBelow(held) == isBelow(deciding))
                .max(Comparator.comparingDouble(Held::shortfall)).orElse(deciding));
    }

    String inWords(ResolvedLimit limit) {
        return limit.where() == Where.SOMEWHERE ? Sentences.of("limit.somewhere", range(limit)) : range(limit);
    }

    private String range(ResolvedLimit limit) {
        if (!limit.hasHigh()) {
            return Sentences.of("limit.at-least", low(limit));
        }
        if (!limit.hasLow()) {
            return Sentences.of("limit.at-most", high(limit));
        }
        if (limit.low() == limit.high()) {
            return limit.decision() == DecisionRule.SHOWN ? low(limit) : Sentences.of("limit.exactly", low(limit));
        }
        return Sentences.of("limit.between", low(limit), high(limit));
    }

    private String low(ResolvedLimit limit) {
        return amounts.atLeast(new Amount(limit.low(), limit.topic().unit()));
    }

    private String high(ResolvedLimit limit) {
        return amounts.atMost(new Amount(limit.high(), limit.topic().unit()));
    }

    /** @param held a value outside its limit */
    String past(Held held) {
        return Sentences.of("past." + held.limit().topic().id() + (isBelow(held) ? ".low" : ".high"), shortfall(held));
    }

    private String shortfall(Held held) {
        return held.shortfall() > 0 ? amounts.difference(held.limit().topic(), held.shortfall()) : Sentences.of("shortfall.undecided");
    }

    private static boolean isBelow(Held held) {
        return held.quantity().value() < held.limit().low();
    }

    /** The end of the limit that is to be kept: the one that was passed, or both while none was. */
    private String end(Held held) {
        if (held.shortfall() == 0) {
            return range(held.limit()).replaceFirst("^(" + Sentences.of("limit.at-least", "") + "|" + Sentences.of("limit.at-most", "") + ")", "");
        }
        return isBelow(held) ? low(held.limit()) : high(held.limit());
    }

    String correction(Finding finding) {
        if (finding.result() != Result.NONCONFORMITY && finding.result() != Result.UNDECIDED) {
            return "";
        }
        List<String> variants = finding.variants().isEmpty() ? List.of("") : finding.variants();
        Map<String, String> filling = strictest(finding).map(held -> Map.of("shortfall", shortfall(held), "limit", end(held))).orElse(Map.of());
        return variants.stream().map(variant -> firstParagraph(finding.criterion().page().correctFor(variant))).distinct()
                .map(text -> filled(text, finding.subject(), filling)).collect(Collectors.joining(" "));
    }

    /** What keeps the animal safe until a danger is put right; empty for what is none, and where the page says nothing. */
    String meanwhile(Finding finding) {
        if (finding.result() != Result.NONCONFORMITY || finding.grade() != Grade.CRITICAL) {
            return "";
        }
        List<String> variants = finding.variants().isEmpty() ? List.of("") : finding.variants();
        Map<String, String> filling = Map.of("without-heat", Sentences.of("until.without-heat"));
        return variants.stream().map(finding.criterion().page()::meanwhileFor).filter(text -> !text.isEmpty()).distinct()
                .map(text -> filled(text, finding.subject(), filling)).collect(Collectors.joining(" "));
    }

    static String firstParagraph(String prose) {
        return prose.lines().findFirst().orElse("");
    }

    /** Fills in what is known; every other slot stays, so that nobody reads a sentence with a hole. */
    static String filled(String text, Subject subject, Map<String, String> amounts) {
        String filled = SLOT.matcher(text).replaceAll(slot -> Matcher.quoteReplacement(
                slot.group(1).equals("subject") ? inSentence(subject) : amounts.getOrDefault(slot.group(1), slot.group())));
        return text.startsWith("{subject}") ? Character.toUpperCase(filled.charAt(0)) + filled.substring(1) : filled;
    }

    private static String inSentence(Subject subject) {
        if (subject.name().isEmpty()) {
            return Sentences.of(subject.kind() == SubjectKind.ENCLOSURE ? "in-sentence.enclosure" : "kinds." + subject.kind().id());
        }
        String name = subject.kind() == SubjectKind.ANIMAL ? subject.name() : Questions.quoted(subject.name());
        return Sentences.of("in-sentence." + subject.kind().id(), name);
    }
}
