package org.loamlight.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loamlight.derivation.UvSlice;
import org.loamlight.drawing.Shape.Point;
import org.loamlight.physics.Isolines;
import org.loamlight.physics.Stretch;

/**
 * Lines of equal UV index in the front view, in the slice in which the lamps hang. One over the root of the index is looked at in
 * place of the index itself: below a bulb it grows evenly with the distance, so that little is lost between the points of the grid.
 */
final class UvLines {
    private static final double[] LEVELS = {0.5, 1, 2, 3, 4, 6, 8};
    private static final int COLUMNS = 48;
    private static final int ROWS = 32;
    /** Less than any line is drawn for, so that the root of its inverse stays finite. */
    private static final double LEAST = 1e-3;
    /** Shorter lines (mm) are lost among the lamp's own outline. */
    private static final double SHORTEST = 12;

    private final Scene scene;
    private final View view;
    private final List<Line> lines = new ArrayList<>();

    private record Line(double level, List<Point> points) {
        double length() {
            double length = 0;
            for (int i = 1; i < points.size(); i++) {
                length += StrictMath.hypot(points.get(i).x() - points.get(i - 1).x(), points.get(i).y() - points.get(i - 1).y());
            }
            return length;
        }
    }

    UvLines(Scene scene, View view, double height) {
        this.scene = scene;
        this.view = view;
        scene.light().ifPresent(light -> lines(light, height));
    }

    private void lines(UvSlice light, double height) {
        double highest = Math.min(height, light.lamps().stream().mapToDouble(light::above).max().orElseThrow());
        if (highest <= 0) {
            return;
        }
        Isolines field = new Isolines((along, above) -> inverseRoot(light.index(along, above)), scene.length(), highest, COLUMNS, ROWS);
        for (double level : LEVELS) {
            field.at(inverseRoot(level)).stream().map(line -> new Line(level, onPaper(line))).filter(line -> line.length() >= SHORTEST)
                    .forEach(lines::add);
        }
    }

    private static double inverseRoot(double index) {
        return 1 / StrictMath.sqrt(Math.max(LEAST, index));
    }

    private List<Point> onPaper(List<Isolines.Vertex> line) {
        return line.stream().map(vertex -> new Point(view.x(vertex.x()), view.y(vertex.y()))).toList();
    }

    void draw() {
        lines.forEach(line -> view.add(new Shape.Path(line.points(), false, Stroke.INDEX, Fill.NONE)));
    }

    /** Each with its index at the lowest of its points where no other text stands. */
    void label() {
        Shape.Area inside = view.area(new Stretch(0, scene.length()), new Stretch(0, scene.height().orElseThrow()));
        for (Line line : lines) {
            String text = scene.say("uv", number(line.level));
            Optional<Point> put = line.points().stream().sorted(Comparator.comparingDouble((Point point) -> -point.y()).thenComparing(Point::x))
                    .filter(point -> view.marks().around(point, text, inside)).findFirst();
            put.ifPresent(point -> view.marks().reserve(new Shape.Area(point.x(), point.y(), 0, 0)));
        }
    }

    private static String number(double level) {
        return level == Math.rint(level) ? String.valueOf((int) level) : String.valueOf(level);
    }

    /** For who cannot see them; empty when there are none. */
    String described() {
        String levels = lines.stream().map(Line::level).distinct().map(UvLines::number).collect(Collectors.joining(", "));
        return levels.isEmpty() ? "" : " " + scene.say("uv.described", levels);
    }
}
