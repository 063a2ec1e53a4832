package org.loamlight.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences of sentences.properties by their key. A place for an argument is written {0}; everything else stands as it
 * is, so that apostrophes and braces in arguments are harmless.
 */
final class Sentences {
    private static final String RESOURCE = "sentences.properties";
    private static final Pattern SLOT = Pattern.compile("\\{(\\d)}");
    private static final Map<String, String> ENGLISH = read();

    private Sentences() {
    }

    private static Map<String, String> read() {
        try (InputStream file = Sentences.class.getResourceAsStream(RESOURCE);
                Reader reader = new InputStreamReader(file, StandardCharsets.UTF_8)) {
            Properties properties = new Properties();
            properties.load(reader);
            Map<String, String> sentences = new TreeMap<>();
            properties.forEach((key, sentence) -> sentences.put((String) key, (String) sentence));
            return sentences;
        } catch (IOException e) {
            throw new UncheckedIOException("The sentences " + RESOURCE + " cannot be read", e);
        }
    }

    static Set<String> keys() {
        return new TreeSet<>(ENGLISH.keySet());
    }

    static boolean has(String key) {
        return ENGLISH.containsKey(key);
    }

    /**
     * The sentence with its arguments.
     *
     * @throws IllegalArgumentException when there is no such sentence or it asks for an argument that was not given
     */
    static String of(String key, Object... arguments) {
        String sentence = ENGLISH.get(key);
        if (sentence == null) {
            throw new IllegalArgumentException("There is no sentence " + key + " in " + RESOURCE);
        }
        return SLOT.matcher(sentence).replaceAll(slot -> Matcher.quoteReplacement(argument(key, slot.group(1), arguments)));
    }

    private static String argument(String key, String slot, Object... arguments) {
        int index = Integer.parseInt(slot);
        if (index >= arguments.length) {
            throw new IllegalArgumentException("The sentence " + key + " asks for argument " + index + "; " + arguments.length + " were given");
        }
        return String.valueOf(arguments[index]);
    }
}
