package org.loamlight.setup;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One JSON object while it is read: each question asks for its member, at the end every member nobody asked for is
 * reported with the nearest known key. Absent members and "not looked" come back as unknown.
 */
public final class Section {
    /** What a keeper writes who did not look; the same as leaving the member out, but said on purpose. */
    public static final String NOT_LOOKED = "not looked";

    /** Names stand in cells, headings and paths; what is longer is no name. */
    private static final int LONGEST_NAME = 250;
    /** Of this and the last century or the next; anything else is a slip of the keyboard. */
    private static final Pattern DAY = Pattern.compile("(?:19|20|21)\\d\\d-\\d\\d-\\d\\d");

    private final JsonValue.JsonObject object;
    private final Problems problems;
    private final Map<String, String> told;
    private final String path;
    /** Every key a question was about, as often as it was. */
    private final List<String> asked = new ArrayList<>();
    private boolean isPassedOver;
    private int answers;

    /**
     * @param told takes up the path of each answered member
     * @param path path of this object with names for positions; empty for the document
     */
    public Section(JsonValue.JsonObject object, Problems problems, Map<String, String> told, String path) {
        this.object = object;
        this.problems = problems;
        this.told = told;
        this.path = path;
    }

    /** The document as a section. A document that is no object is one problem and reads as an empty object. */
    public static Section document(JsonValue value, Problems problems, Map<String, String> told) {
        if (value instanceof JsonValue.JsonObject document) {
            return new Section(document, problems, told, "");
        }
        problems.add(value, "the document is " + value.quoted(), "it must be one JSON object, { ... }");
        return new Section(new JsonValue.JsonObject(value.where(), Map.of()), new Problems(""), told, "");
    }

    /** The member as it stands; empty when it is absent. "not looked" is returned as it is. */
    public Optional<JsonValue> member(String key) {
        asked.add(key);
        return Optional.ofNullable(object.members().get(key));
    }

    private Optional<JsonValue> answer(String key) {
        asked.add(key);
        JsonValue value = object.members().get(key);
        if (value == null || isNotLooked(value)) {
            return Optional.empty();
        }
        told.put(pathOf(key), written(value));
        answers++;
        return Optional.of(value);
    }

    /** Takes an answer back: an object that answers nothing is none. */
    private void forget(String key) {
        told.remove(pathOf(key));
        answers--;
    }

    private static String written(JsonValue value) {
        if (value instanceof JsonValue.JsonText text) {
            return text.text().strip();
        }
        return value instanceof JsonValue.JsonNumber number ? number.literal() : value.quoted();
    }

    private String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private static boolean isNotLooked(JsonValue value) {
        return value instanceof JsonValue.JsonText text && text.text().strip().equals(NOT_LOOKED);
    }

    /** The keys of this object in document order. */
    public List<String> keys() {
        return List.copyOf(object.members().keySet());
    }

    /** Whether the member is there and is not "not looked". */
    public boolean isAnswered(String key) {
        return member(key).filter(found -> !isNotLooked(found)).isPresent();
    }

    /** Whether the member is answered by a text without any digit. */
    boolean isInWords(String key) {
        return isAnswered(key) && object.members().get(key) instanceof JsonValue.JsonText text
                && text.text().codePoints().noneMatch(Character::isDigit);
    }

    boolean isEmptyList(String key) {
        return member(key).filter(value -> value instanceof JsonValue.JsonArray list && list.elements().isEmpty()).isPresent();
    }

    /** Reports that this object lacks a member it must have. */
    public void lacks(String key, String allowed) {
        problems.add(object, "\"" + key + "\" is missing", allowed);
    }

    /** Reports that a member is absent or "not looked" which must be answered. */
    void unanswered(String key, String allowed) {
        if (member(key).isPresent()) {
            problem(key, "\"" + key + "\" must be answered", allowed);
        } else {
            lacks(key, allowed);
        }
    }

    /** Reports a problem with a member; with the object itself when the member is absent. */
    public void problem(String key, String found, String allowed) {
        JsonValue at = object.members().get(key);
        problems.add(at == null ? object : at, found, allowed);
    }

    /** A text that must be there, be answered and not be blank; empty after a problem. */
    public String requiredText(String key, String allowed) {
        if (isAnswered(key)) {
            return text(key);
        }
        unanswered(key, allowed);
        return "";
    }

    /** A text of at most so many characters; empty when absent, not looked or after a problem. */
    public String text(String key, int longest) {
        String text = text(key);
        return text.codePointCount(0, text.length()) <= longest ? text : tooLong(key, text, longest);
    }

    private String tooLong(String key, String text, int longest) {
        problem(key, "found " + Quoted.of(text) + " of " + text.codePointCount(0, text.length()) + " characters",
                "at most " + longest + " characters are allowed here");
        return "";
    }

    /** A text; empty when absent or not looked. Control characters are a problem. */
    public String text(String key) {
        return text(key, "a text of printable characters in quotes is allowed");
    }

    /** As {@link #text(String)}, with its own words for what is allowed. */
    String text(String key, String allowed) {
        Optional<JsonValue> value = answer(key);
        if (value.isEmpty()) {
            return "";
        }
        if (value.get() instanceof JsonValue.JsonText text && Quoted.isPrintable(text.text())) {
            return text.text().strip();
        }
        problems.add(value.get(), "found " + value.get().quoted(), allowed);
        return "";
    }

    /** A text of several lines; empty when absent. */
    public String prose(String key) {
        Optional<JsonValue> value = answer(key);
        if (value.isPresent() && !(value.get() instanceof JsonValue.JsonText)) {
            problems.add(value.get(), "found " + value.get().quoted(), "a text in quotes is allowed");
        }
        return value.filter(JsonValue.JsonText.class::isInstance).map(found -> ((JsonValue.JsonText) found).text().strip()).orElse("");
    }

    /** One of the words of {@code type}; {@code unknown} when absent, not looked or after a problem. */
    public <E extends Enum<E>> E choice(String key, Class<E> type, E unknown) {
        return choice(key, type, unknown, "");
    }

    /** As {@link #choice(String, Class, Enum)}, for a question that can be answered in another way too, which the message then tells. */
    <E extends Enum<E>> E choice(String key, Class<E> type, E unknown, String alsoAllowed) {
        Optional<JsonValue> value = answer(key);
        return value.isEmpty() ? unknown : word(value.get(), type, alsoAllowed + ", " + NOT_LOOKED).orElse(unknown);
    }

    private <E extends Enum<E>> Optional<E> word(JsonValue value, Class<E> type, String alsoAllowed) {
        Optional<E> found = value instanceof JsonValue.JsonText text ? Words.find(text.text(), type) : yesNo(value, type);
        if (found.isEmpty()) {
            String near = value instanceof JsonValue.JsonText text ? Words.hint(text.text(), Words.all(type)) : "";
            problems.add(value, "found " + value.quoted(), near + "allowed are " + Words.allowed(type) + alsoAllowed);
        }
        return found;
    }

    private static <E extends Enum<E>> Optional<E> yesNo(JsonValue value, Class<E> type) {
        if (value instanceof JsonValue.JsonWord word && !word.word().equals("null")) {
            return Words.find(word.word().equals("true") ? "yes" : "no", type);
        }
        return Optional.empty();
    }

    /** A word that must be there and be answered; {@code unknown} after a problem. */
    <E extends Enum<E>> E requiredChoice(String key, Class<E> type, E unknown) {
        if (isAnswered(key)) {
            return answer(key).flatMap(value -> word(value, type, "")).orElse(unknown);
        }
        unanswered(key, "allowed are " + Words.allowed(type));
        return unknown;
    }

    /** A yes-or-no answer: "yes", "no", true or false. */
    public Stated stated(String key) {
        return choice(key, Stated.class, Stated.UNKNOWN);
    }

    /** Several words of a type; empty when absent or not looked. A single word is a list of one, and told as one. */
    public <E extends Enum<E>> Set<E> choices(String key, Class<E> type) {
        List<JsonValue> words = answer(key).map(this::elements).orElse(List.of());
        told.computeIfPresent(pathOf(key), (path, answer) -> words.stream().map(Section::written).collect(Collectors.joining("; ")));
        return words.stream().map(value -> word(value, type, "")).flatMap(Optional::stream).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private List<JsonValue> elements(JsonValue value) {
        return value instanceof JsonValue.JsonArray array ? array.elements() : List.of(value);
    }

    /** Several texts; empty when absent. */
    public List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (JsonValue value : answer(key).map(this::elements).orElse(List.of())) {
            if (value instanceof JsonValue.JsonText text && Quoted.isPrintable(text.text())) {
                texts.add(text.text().strip());
            } else {
                problems.add(value, "found " + value.quoted(), "a text in quotes is allowed");
            }
        }
        return List.copyOf(texts);
    }

    /** An object of texts under keys of their own choice, in document order; empty when absent. */
    public Map<String, String> textsByKey(String key) {
        Map<String, String> texts = new LinkedHashMap<>();
        answer(key).ifPresent(value -> {
            if (value instanceof JsonValue.JsonObject nested) {
                Section section = new Section(nested, problems, told, pathOf(key));
                nested.members().keySet().forEach(name -> texts.put(name, section.prose(name)));
            } else {
                problems.add(value, "found " + value.quoted(), "an object of texts, { ... }, is allowed");
            }
        });
        return texts;
    }

    /** A measured answer with the default uncertainty of its kind. */
    public Measure measure(String key, Answer answer) {
        return measure(key, answer, Instrument.UNKNOWN);
    }

    /** A measured answer; without a stated ± it is as good as its instrument, without an instrument as the coarsest. */
    public Measure measure(String key, Answer kind, Instrument instrument) {
        Optional<JsonValue> value = answer(key);
        if (value.isEmpty()) {
            return Measure.UNKNOWN;
        }
        try {
            return MeasureText.read(value.get(), kind, instrument);
        } catch (MeasureText.NoMeasure e) {
            problems.add(value.get(), e.getMessage(), e.allowed());
            return Measure.UNKNOWN;
        }
    }

    /** A calendar day, ISO 8601 ("2026-11-02"); empty when absent, not looked or after a problem. */
    public Optional<LocalDate> day(String key) {
        return answer(key).flatMap(value -> {
            Optional<LocalDate> day = value instanceof JsonValue.JsonText text ? day(text) : Optional.empty();
            if (day.isEmpty()) {
                problems.add(value, "found " + value.quoted(), "a day of the calendar is written year-month-day, such as \"2026-11-02\"");
            }
            return day;
        });
    }

    private static Optional<LocalDate> day(JsonValue.JsonText text) {
        try {
            String day = text.text().strip();
            return DAY.matcher(day).matches() ? Optional.of(LocalDate.parse(day)) : Optional.empty();
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** A whole number; empty when absent or after a problem. */
    public Optional<Integer> wholeNumber(String key) {
        return answer(key).flatMap(value -> {
            if (value instanceof JsonValue.JsonNumber number && number.literal().matches("-?\\d{1,9}")) {
                return Optional.of(Integer.valueOf(number.literal()));
            }
            problems.add(value, "found " + value.quoted(), "a whole number without quotes is allowed");
            return Optional.empty();
        });
    }

    /**
     * A nested object. When absent or not looked, an empty one in which everything is unknown. One that answers nothing
     * counts as not answered: {@code "place": {}} tells no place.
     */
    public <T> T section(String key, Function<Section, T> reader) {
        Optional<JsonValue> value = answer(key);
        Optional<Section> nested = value.flatMap(found -> nested(found, pathOf(key)));
        Optional<T> read = nested.map(section -> section.readWhole(reader));
        if (nested.isPresent() && nested.get().answers == 0) {
            forget(key);
        }
        return read.orElseGet(() -> emptyRead(reader));
    }

    /** A nested object that tells by being there that the thing exists; empty when absent or not looked. */
    public <T> Optional<T> present(String key, Function<Section, T> reader) {
        return answer(key).flatMap(found -> nested(found, pathOf(key))).map(section -> section.readWhole(reader));
    }

    private <T> T emptyRead(Function<Section, T> reader) {
        return reader.apply(new Section(new JsonValue.JsonObject(object.where(), Map.of()), new Problems(""), new HashMap<>(), ""));
    }

    private Optional<Section> nested(JsonValue value, String nestedPath) {
        if (value instanceof JsonValue.JsonObject nested) {
            return Optional.of(new Section(nested, problems, told, nestedPath));
        }
        problems.add(value, "found " + value.quoted(), "an object, { ... }, is allowed");
        return Optional.empty();
    }

    private <T> T readWhole(Function<Section, T> reader) {
        T read = reader.apply(this);
        reportUnasked();
        return read;
    }

    /** A list of named objects; empty when absent or not looked. Two of one name are a problem. */
    public <T> List<T> named(String key, Function<Section, T> reader) {
        Map<String, JsonValue> names = new HashMap<>();
        return list(key, element -> nameOf(element, names), reader);
    }

    /** A list of objects without names. */
    public <T> List<T> unnamed(String key, Function<Section, T> reader) {
        return list(key, element -> "", reader);
    }

    private <T> List<T> list(String key, Function<JsonValue, String> name, Function<Section, T> reader) {
        Optional<JsonValue> value = answer(key);
        if (value.isPresent() && !(value.get() instanceof JsonValue.JsonArray)) {
            problems.add(value.get(), "found " + value.get().quoted(), "a list, [ ... ], is allowed; an empty one says there is none");
            return List.of();
        }
        List<T> read = new ArrayList<>();
        for (JsonValue element : value.map(this::elements).orElse(List.of())) {
            nested(element, pathOf(key) + "[" + name.apply(element) + "]").ifPresent(section -> read.add(section.readWhole(reader)));
        }
        return List.copyOf(read);
    }

    /** The name of a part for its path; empty when it has none, which reading the part then complains about. */
    private String nameOf(JsonValue element, Map<String, JsonValue> names) {
        JsonValue name = element instanceof JsonValue.JsonObject part ? part.members().get("name") : null;
        if (!(name instanceof JsonValue.JsonText text) || isNotLooked(text) || !Quoted.isPrintable(text.text())) {
            return "";
        }
        JsonValue earlier = names.putIfAbsent(text.text().strip(), text);
        if (earlier != null) {
            problems.add(text, "the name " + text.quoted() + " is given twice, first in " + earlier.at().inWords(),
                    "give each part a name of its own");
        }
        return text.text().strip();
    }

    /** The name every repeated part must have; empty after a problem. */
    public String name() {
        String allowed = "every repeated part has a name of its own, such as \"basking lamp\"";
        return isAnswered("name") ? text("name", LONGEST_NAME) : requiredText("name", allowed);
    }

    /** Leaves all members unread, and unreported: for an object that a problem told already makes useless. */
    public void passOver() {
        isPassedOver = true;
    }

    /** Reports every member that no question asked for, at its key. Call it last. */
    public void reportUnasked() {
        if (isPassedOver) {
            return;
        }
        List<String> unasked = new ArrayList<>(object.members().keySet());
        unasked.removeAll(asked);
        if (!unasked.isEmpty()) {
            Set<String> known = new LinkedHashSet<>(asked);
            unasked.forEach(key -> problems.add(object.keyAt(key), "the key " + Quoted.of(key) + " is not known",
                    Words.hint(key, known) + "known here are " + String.join(", ", known)));
        }
    }
}
