package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loamlight.setup.Question;
import org.loamlight.setup.Section;
import org.loamlight.workbook.form.FormPlan;

/** What the form says beside a question: its part, its words, how to find out, and what can be answered. */
final class FormWords {
    private static final String NO_PARTS = "[]";
    private static final List<String> YES_NO = List.of("yes", "no");

    private FormWords() {
    }

    /** "Enclosure, inside" for what is asked once. */
    static String part(Question question) {
        if (FormPlan.ABOUT_THE_FILE.contains(question.path())) {
            return "This form";
        }
        List<String> members = question.members();
        if (question.kind() == Question.Kind.ONE_OF && question.choices().equals(List.of(FormPlan.YES))) {
            return Contents.capitalized(question.path());
        }
        List<String> parts = members.size() == 1 ? List.of("General") : members.subList(0, members.size() - 1);
        return Contents.capitalized(parts.stream().map(part -> part.replace('-', ' ')).collect(Collectors.joining(", ")));
    }

    /** "Diet: What it is." for what is asked of each thing. */
    static String label(Question question) {
        List<String> parts = question.members().subList(0, question.members().size() - 1);
        String before = parts.stream().map(part -> part.replace('-', ' ') + ": ").collect(Collectors.joining());
        return Contents.capitalized(before) + question.label();
    }

    /** How to find out, then what can be answered, for paper shows no lists to choose from. */
    static String how(Question question) {
        if (FormPlan.ABOUT_THE_FILE.contains(question.path())) {
            return "Leave it as it stands.";
        }
        String none = question.kind() == Question.Kind.PARTS && question.list().isEmpty() ? FormPlan.YES : FormPlan.NONE;
        List<String> said = new ArrayList<>(List.of(question.how().replace(NO_PARTS, '"' + none + '"'), answers(question)));
        return said.stream().filter(words -> !words.isEmpty()).collect(Collectors.joining("\n"));
    }

    private static String answers(Question question) {
        String words = String.join(", ", question.choices());
        return switch (question.kind()) {
            case ONE_OF -> question.choices().size() < YES_NO.size() || question.choices().equals(YES_NO) ? "" : "One of: " + words + ".";
            case SEVERAL -> "Any of: " + words + ". Write ; between them, or none.";
            case DAY -> "Year-month-day, such as 2026-11-02.";
            case MEASURE -> "In " + String.join(", ", question.units()) + (words.isEmpty() ? "." : "; or " + words + ".");
            case PLACE -> "In words, such as \"warm end, back\"; or measured, such as \"along 30 cm, across 20 cm, above 35 cm\".";
            case PARTS -> question.list().isEmpty() ? "" : "List them on their own sheet, or write none.";
            case TEXT, VERSION -> "";
        };
    }

    /** What can be chosen in the cell of the answer; empty where it is written freely. */
    static List<String> choices(Question question) {
        List<String> choices = new ArrayList<>(switch (question.kind()) {
            case ONE_OF -> question.choices();
            case PARTS -> List.of(question.list().isEmpty() ? FormPlan.YES : FormPlan.NONE);
            case TEXT, SEVERAL, DAY, MEASURE, PLACE, VERSION -> List.<String>of();
        });
        if (!choices.isEmpty()) {
            choices.add(Section.NOT_LOOKED);
        }
        return choices;
    }
}
