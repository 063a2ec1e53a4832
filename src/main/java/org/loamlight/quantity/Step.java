package org.loamlight.quantity;

import java.util.List;

/**
 * One step of how a quantity came about, as a sentence key with arguments; the sentence is made later, in one language
 * and one system of units.
 *
 * @param key       key of the sentence, for example {@code inverse-square}
 * @param arguments texts and {@link Amount}s the sentence shows, in its order; empty when it shows none
 */
public record Step(String key, List<Object> arguments) {
    public Step {
        arguments = List.copyOf(arguments);
    }

    public static Step of(String key, Object... arguments) {
        return new Step(key, List.of(arguments));
    }
}
