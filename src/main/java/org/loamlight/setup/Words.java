package org.loamlight.setup;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** Turns enum constants into the words of the setup format and back; hyphens and spaces are the same, capitals and small letters too. */
public final class Words {
    private static final String UNKNOWN = "UNKNOWN";

    /** What is meant by a word as the format spells it, and by the name of the constant. Made once for each type, of which there are few. */
    private static final ClassValue<Map<String, Enum<?>>> MEANT = new ClassValue<>() {
        @Override
        protected Map<String, Enum<?>> computeValue(Class<?> type) {
            Map<String, Enum<?>> meant = new HashMap<>();
            Arrays.stream(type.getEnumConstants()).map(constant -> (Enum<?>) constant).filter(constant -> !constant.name().equals(UNKNOWN)).forEach(constant -> {
                meant.put(of(constant), constant);
                meant.put(constant.name(), constant);
            });
            return Map.copyOf(meant);
        }
    };

    private Words() {
    }

    /** The word for a constant: {@code DIMMING_THERMOSTAT} is "dimming thermostat". */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The constant for a word; empty when there is none. UNKNOWN is never a word: leave out the member or say "not looked". */
    public static <E extends Enum<E>> Optional<E> find(String word, Class<E> type) {
        Map<String, Enum<?>> meant = MEANT.get(type);
        Enum<?> found = meant.get(word);
        return Optional.ofNullable(type.cast(found != null ? found : meant.get(name(word))));
    }

    private static String name(String word) {
        return word.strip().toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
    }

    /** All words of a type, as a list for a message: "yes, no". */
    public static String allowed(Class<? extends Enum<?>> type) {
        return String.join(", ", all(type));
    }

    /** All words of a type in the order of its constants, without UNKNOWN. */
    public static List<String> all(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants()).filter(e -> !e.name().equals(UNKNOWN)).map(Words::of).toList();
    }

    /** The known word most like the one found; empty when nothing is near. Near is at most two in five letters changed. */
    public static Optional<String> nearest(String found, Iterable<String> known) {
        return nearest(found, known, 1).stream().findFirst();
    }

    /** The question "did you mean ...? " for the start of a message; empty when nothing known is near. */
    public static String hint(String found, Iterable<String> known) {
        return nearest(found, known).map(word -> "did you mean \"" + word + "\"? ").orElse("");
    }

    /** The known words most like the one found, the nearest first; at most {@code most}, possibly none. */
    public static List<String> nearest(String found, Iterable<String> known, int most) {
        String wanted = found.toLowerCase(Locale.ROOT);
        record Near(String word, int distance) {
        }
        return stream(known).filter(word -> isNear(Math.abs(wanted.length() - word.length()), wanted, word))
                .map(word -> new Near(word, distance(wanted, word.toLowerCase(Locale.ROOT))))
                .filter(near -> isNear(near.distance, wanted, near.word))
                .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::word))
                .limit(most).map(Near::word).toList();
    }

    private static boolean isNear(int distance, String wanted, String word) {
        return distance * 5 <= Math.max(wanted.length(), word.length()) * 2;
    }

    private static Stream<String> stream(Iterable<String> words) {
        return StreamSupport.stream(words.spliterator(), false);
    }

    /** Letters added, dropped, changed, or exchanged with their neighbour (optimal string alignment): what fingers do wrong. */
    private static int distance(String one, String other) {
        int[][] steps = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : fewest(steps, one, other, i, j);
            }
        }
        return steps[one.length()][other.length()];
    }

    private static int fewest(int[][] steps, String one, String other, int i, int j) {
        int changed = steps[i - 1][j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        int fewest = Math.min(changed, Math.min(steps[i - 1][j], steps[i][j - 1]) + 1);
        boolean isExchanged = i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return isExchanged ? Math.min(fewest, steps[i - 2][j - 2] + 1) : fewest;
    }
}
