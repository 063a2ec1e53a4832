package org.loamlight.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loamlight.criterion.Binding;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.evaluation.SideBySide.Agreement;
import org.loamlight.evaluation.SideBySide.Asked;
import org.loamlight.evaluation.SideBySide.ByCode;
import org.loamlight.evaluation.SideBySide.InWords;
import org.loamlight.evaluation.SideBySide.Otherwise;
import org.loamlight.evaluation.SideBySide.Row;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Place;

/** What codes ask, in words. */
public final class CodeWording {
    private final Wording wording;

    public CodeWording(Wording wording) {
        this.wording = wording;
    }

    /** That the text in force at the place decides, and what the table is not. */
    public String whatDecides() {
        return Sentences.of("code.what-decides");
    }

    /** How far a code binds a keeper. */
    public String binding(Binding binding) {
        return Wording.ofConstant("binding.", binding);
    }

    /** Who gave it and when. */
    public String issued(Code code) {
        return Sentences.of("code.issued", code.issuer(), code.date());
    }

    /** met, not met, not known, cannot tell, does not apply. */
    public String result(Result result) {
        return Wording.ofConstant("code.result.", result);
    }

    /** What is limited and where, with a capital letter: "Air temperature by day at the cool end". */
    public String thing(Row row) {
        String topic = row.place().equals(Place.ANYWHERE) ? wording.topic(row.topic()) : wording.topicAt(row.topic(), row.place());
        return Character.toUpperCase(topic.charAt(0)) + topic.substring(1);
    }

    /** What the species' own criteria ask of it, one sentence for each, with what it comes to; why there is none where there is none. */
    public List<String> own(Row row) {
        List<String> own = row.own().stream().map(one -> Sentences.of("code.own", required(one, row.place()), wording.result(one.result())))
                .distinct().toList();
        return own.isEmpty() ? List.of(noneOfItsOwn(row)) : own;
    }

    /** What a reader should look at instead, if the code's point names it. */
    private String noneOfItsOwn(Row row) {
        List<String> beside = row.asked().stream().map(one -> one.point().beside()).flatMap(Optional::stream).distinct().toList();
        return beside.isEmpty() ? Sentences.of("code.own.none") : Sentences.of("code.own.beside", String.join(", ", beside));
    }

    /** What a point asks in numbers, or why that cannot be said. */
    public String required(ByCode by) {
        return required(by.asked(), by.asked().limits().stream().map(ResolvedLimit::place).findFirst().orElse(Place.ANYWHERE));
    }

    private String required(Asked asked, Place rowPlace) {
        List<String> parts = new ArrayList<>();
        Map<Place, List<ResolvedLimit>> byPlace = asked.limits().stream().collect(Collectors.groupingBy(ResolvedLimit::place, LinkedHashMap::new,
                Collectors.toList()));
        byPlace.forEach((place, limits) -> parts.add(place.equals(rowPlace) ? wording.limits(limits)
                : Sentences.of("limit.labelled", wording.place(place), wording.limits(limits))));
        if (!asked.missing().isEmpty()) {
            parts.add(Sentences.of("code.depends-on", String.join("; ", Questions.inWords(asked.missing().stream().sorted().toList()))));
        }
        if (parts.isEmpty()) {
            return asked.result() == Result.NOT_APPLICABLE ? "" : Sentences.of("code.nothing");
        }
        String text = String.join("; ", parts);
        return asked.finding().criterion().decision() == DecisionRule.SHOWN ? Sentences.of("code.figure", text) : text;
    }

    /** The value that decided; empty where nothing could be held. */
    public String found(ByCode by) {
        return by.asked().deciding().map(wording::held).orElse("");
    }

    /** What is not known of it, or why it does not apply; empty where it was decided. */
    public String why(ByCode by) {
        return switch (by.asked().result()) {
            case NOT_APPLICABLE -> by.asked().finding().result() == Result.NOT_APPLICABLE ? wording.reason(by.asked().finding())
                    : Sentences.of("not-applicable.no-limit");
            case NO_EVIDENCE -> by.asked().missing().isEmpty() ? wording.whatToFindOut(by.asked().finding()) : "";
            default -> "";
        };
    }

    /** What was required and found, in one line: "at least 0.9 m²; found 0.41 m²". */
    public String requiredAndFound(ByCode by) {
        String required = required(by);
        Optional<Held> deciding = by.asked().deciding();
        return deciding.isEmpty() ? required : Sentences.of("code.found", required, found(by));
    }

    /** Where it stands and how firmly it is known: "Anlage 3 pt 2.2.24 (read)". */
    public String passage(Citation citation) {
        return Sentences.of("code.passage", citation.clause(), wording.standing(citation.standing()));
    }

    /** How the codes of a row go together; empty where all ask the same. */
    public String agreement(Row row) {
        return row.agreement() == Agreement.SAME ? "" : Wording.ofConstant("code.agreement.", row.agreement());
    }

    /** A reading that was not taken, with what it would ask: "An adult is held to the adult row. Read otherwise: at least 0.5 m²." */
    public String otherwise(ByCode by, Otherwise otherwise) {
        return Sentences.of("code.otherwise", by.code().policies().get(otherwise.policy()), wording.limits(otherwise.limits()));
    }

    /** What the criteria that judge a clause came to, with their ids; or that nothing here judges it. */
    public String outcome(InWords clause) {
        return clause.result().map(result -> Sentences.of("code.judged", wording.result(result), String.join(", ", clause.clause().judgedBy())))
                .orElseGet(() -> Sentences.of("code.not-judged"));
    }
}
