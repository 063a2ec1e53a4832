package org.loamlight.drawing;

import java.util.List;

/** A piece of a picture. Lengths in millimetres on paper, from the upper left corner of the picture to the right and down. */
public sealed interface Shape {

    /** A straight line. */
    record Line(Point from, Point to, Stroke stroke) implements Shape {
    }

    /** A rectangle. */
    record Box(Area area, Stroke stroke, Fill fill) implements Shape {
    }

    /** An ellipse in its rectangle. */
    record Oval(Area area, Stroke stroke, Fill fill) implements Shape {
    }

    /** Straight lines from point to point, two or more; a polygon where it is closed and then filled. */
    record Path(List<Point> points, boolean isClosed, Stroke stroke, Fill fill) implements Shape {
        public Path {
            points = List.copyOf(points);
        }
    }

    /**
     * One line of text, in the middle of the height of its area.
     *
     * @param area holds the whole text in the widths of {@link org.loamlight.wording.TextWidth}
     * @param size of the font (mm)
     */
    record Text(Area area, String text, double size, boolean isBold) implements Shape {
    }

    /** A point on paper (mm). */
    record Point(double x, double y) {
    }

    /** A rectangle on paper (mm); width and height 0 or above. */
    record Area(double left, double top, double width, double height) {
        public double right() {
            return left + width;
        }

        public double bottom() {
            return top + height;
        }

        /** Whether the insides of both have a point in common. */
        public boolean overlaps(Area other) {
            return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
        }

        /** Whether the other one lies in this one, borders included. */
        public boolean holds(Area other) {
            return other.left >= left && other.top >= top && other.right() <= right() && other.bottom() <= bottom();
        }

        /** Its middle. */
        public Point middle() {
            return new Point(left + width / 2, top + height / 2);
        }
    }
}
