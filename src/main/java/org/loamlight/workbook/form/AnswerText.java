package org.loamlight.workbook.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.Question;
import org.loamlight.setup.Section;
import org.loamlight.workbook.cells.Cell;

/**
 * What stands in the cell of an answer, as the value a setup file has there, and the other way round. Several words are parted by semicolons, "none" is
 * the empty list; a place is said in words, or as "along 126 cm, across 30 cm, above 76 cm".
 */
public final class AnswerText {
    private static final Pattern MEMBER = Pattern.compile("(?:^|[,;\\s])\\s*(zone|along|across|above)\\s+");
    /** The distances a place can be told by, in the order in which they are said. */
    public static final List<String> COORDINATES = List.of("along", "across", "above");
    private static final String ZONE = "zone";

    private final Question question;
    private final JsonPlace at;
    private final Problems problems;

    private AnswerText(Question question, JsonPlace at, Problems problems) {
        this.question = question;
        this.at = at;
        this.problems = problems;
    }

    /**
     * The value of an answer.
     *
     * @param path of the answer in the setup, for messages
     * @return empty after a problem
     */
    public static Optional<JsonValue> value(Question question, FilledIn filled, String path, Problems problems) {
        return new AnswerText(question, filled.cell().place(path), problems).value(filled);
    }

    private Optional<JsonValue> value(FilledIn filled) {
        Cell cell = filled.cell();
        return switch (cell.content()) {
            case TEXT, PERCENTAGE -> ofText(cell.text().strip(), filled.unit());
            case NUMBER -> ofText(cell.text(), filled.unit());
            case DAY -> question.kind() == Question.Kind.DAY ? text(cell.text())
                    : problem("the spreadsheet made the day " + cell.text() + " of this answer", "set the cell to text, and write the answer again");
            case TRUE_OR_FALSE -> Optional.of(new JsonValue.JsonWord(at, cell.text()));
            case ERROR, NO_VALUE -> problem(cell.fault().orElseThrow(), "write the answer in place of the formula");
        };
    }

    private Optional<JsonValue> problem(String found, String allowed) {
        problems.add(at, found, allowed);
        return Optional.empty();
    }

    private Optional<JsonValue> text(String text) {
        return Optional.of(new JsonValue.JsonText(at, text));
    }

    private Optional<JsonValue> ofText(String text, String unit) {
        if (text.equals(Section.NOT_LOOKED)) {
            return text(text);
        }
        return switch (question.kind()) {
            case TEXT, ONE_OF, DAY -> text(text);
            case VERSION -> text.matches("\\d{1,9}") ? Optional.of(new JsonValue.JsonNumber(at, text)) : text(text);
            case MEASURE -> text(measure(text, unit));
            case SEVERAL -> Optional.of(several(text));
            case PLACE -> place(text);
            case PARTS -> parts(text);
        };
    }

    /** An answer that ends with a digit takes its unit from the column of units. */
    private static String measure(String text, String unit) {
        return !unit.isEmpty() && endsWithDigit(text) ? text + " " + unit : text;
    }

    /** Whether an answer lacks its unit, if it needs one. */
    static boolean endsWithDigit(String text) {
        return !text.isEmpty() && Character.isDigit(text.charAt(text.length() - 1));
    }

    private JsonValue several(String text) {
        List<JsonValue> words = new ArrayList<>();
        if (!text.equals(FormPlan.NONE)) {
            Stream.of(text.split("[;,\n]")).map(String::strip).filter(word -> !word.isEmpty()).forEach(word -> words.add(new JsonValue.JsonText(at, word)));
        }
        return new JsonValue.JsonArray(at, words);
    }

    private Optional<JsonValue> parts(String text) {
        return text.equals(FormPlan.NONE) ? Optional.of(new JsonValue.JsonArray(at, List.of()))
                : problem("this cannot be answered here", "write \"none\", or \"not looked\", or list them on the sheet of their own");
    }

    private Optional<JsonValue> place(String text) {
        Matcher member = MEMBER.matcher(text);
        if (!member.find()) {
            return text(text);
        }
        Map<String, JsonValue> members = new LinkedHashMap<>();
        take(ZONE, text.substring(0, member.start()), members);
        boolean isMore = true;
        while (isMore) {
            String name = member.group(1);
            int start = member.end();
            isMore = member.find();
            if (!take(name, text.substring(start, isMore ? member.start() : text.length()), members)) {
                return problem("\"" + name + "\" is said twice", "say each once: along 126 cm, across 30 cm, above 76 cm");
            }
        }
        return Optional.of(new JsonValue.JsonObject(at, members));
    }

    /** Whether the member was not there before. */
    private boolean take(String name, String text, Map<String, JsonValue> members) {
        String plain = text.replaceFirst("[,;\\s]+$", "").strip();
        JsonPlace inner = new JsonPlace(at.line(), at.column(), at.path() + "." + name, at.sheet());
        return plain.isEmpty() || members.put(name, new JsonValue.JsonText(inner, plain)) == null;
    }

    /** The text for a value of a setup that can be used; empty for an object that says nothing. */
    static String written(JsonValue value) {
        if (value instanceof JsonValue.JsonText text) {
            return text.text().strip();
        }
        if (value instanceof JsonValue.JsonArray words) {
            return words.elements().isEmpty() ? FormPlan.NONE
                    : words.elements().stream().map(AnswerText::written).collect(Collectors.joining(FormPlan.BETWEEN_WORDS));
        }
        if (value instanceof JsonValue.JsonObject place) {
            return written(place.members());
        }
        return value instanceof JsonValue.JsonNumber number ? number.literal() : ((JsonValue.JsonWord) value).word();
    }

    /** The zone stands first and needs no name, unless it stands alone: then its name tells it from a place said in words. */
    private static String written(Map<String, JsonValue> place) {
        List<String> said = new ArrayList<>();
        COORDINATES.stream().filter(place::containsKey).forEach(name -> said.add(name + " " + written(place.get(name))));
        if (place.containsKey(ZONE)) {
            said.add(0, (said.isEmpty() ? ZONE + " " : "") + written(place.get(ZONE)));
        }
        return String.join(", ", said);
    }
}
