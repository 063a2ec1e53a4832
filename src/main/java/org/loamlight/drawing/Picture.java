package org.loamlight.drawing;

import java.util.List;

/**
 * One view of the enclosure.
 *
 * @param title       what it shows, as a heading
 * @param description the same in words, for who cannot see it
 * @param width       (mm)
 * @param height      (mm)
 * @param shapes      from the lowest to the topmost
 * @param leftOut     marks for which there was no room
 */
public record Picture(String title, String description, double width, double height, List<Shape> shapes, List<String> leftOut) {
    public Picture {
        leftOut = List.copyOf(leftOut);
        shapes = List.copyOf(shapes);
    }
}
