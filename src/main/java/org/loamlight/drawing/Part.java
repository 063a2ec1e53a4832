package org.loamlight.drawing;

import java.util.List;
import java.util.stream.Collectors;
import org.loamlight.setup.Subject;

/**
 * A thing in the enclosure with its mark in the pictures.
 *
 * @param key       "H1", "F3": one letter for its kind and its number in the order of the setup
 * @param kind      what it is, in words
 * @param toDo      numbers of what is to be done about it, ascending
 * @param toFindOut numbers of what is to be found out about it, ascending
 */
public record Part(String key, Subject subject, String kind, List<Integer> toDo, List<Integer> toFindOut) {
    private static final int MOST_SHOWN = 3;

    public Part {
        toDo = List.copyOf(toDo);
        toFindOut = List.copyOf(toFindOut);
    }

    /** The mark in the pictures: "F3 !1,4 ?12", with the first numbers and a + where there are more. */
    String mark() {
        return key + marked(toDo, toFindOut);
    }

    /** " !1,4 ?12"; empty without numbers. */
    static String marked(List<Integer> toDo, List<Integer> toFindOut) {
        return (toDo.isEmpty() ? "" : " !" + first(toDo)) + (toFindOut.isEmpty() ? "" : " ?" + first(toFindOut));
    }

    private static String first(List<Integer> numbers) {
        return numbers.stream().limit(MOST_SHOWN).map(String::valueOf).collect(Collectors.joining(",")) + (numbers.size() > MOST_SHOWN ? "+" : "");
    }

    /** "1, 4"; empty without numbers. */
    public static String listed(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
