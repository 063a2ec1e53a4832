package org.loamlight.quantity;

import java.util.Objects;

/**
 * What a quantity rests on.
 *
 * @param method how it was got
 * @param source subject key of the reading or part of the setup it was taken from ("reading:cool end probe")
 * @param on     ISO date of the reading; empty when not told
 */
public record Origin(Method method, String source, String on) {
    public Origin {
        Objects.requireNonNull(method, "method");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(on, "on");
    }
}
