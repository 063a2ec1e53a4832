package org.loamlight.quantity;

import java.util.Objects;

/**
 * An answer that is not given and without which quantities of a topic cannot be told.
 *
 * @param place where those quantities would hold
 * @param path  of the question, with the name of the part in brackets: {@code furnishings[fern].place}
 */
public record Lacking(Topic topic, Place place, String path) {
    public Lacking {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(path, "path");
    }
}
