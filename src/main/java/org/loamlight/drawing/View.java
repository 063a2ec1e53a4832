package org.loamlight.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loamlight.drawing.Shape.Area;
import org.loamlight.drawing.Shape.Point;
import org.loamlight.physics.Stretch;

/**
 * One view being drawn: the enclosure from left to right, and up the paper either its depth or its height. Centimetres of the
 * enclosure become millimetres on paper here and nowhere else.
 */
final class View {
    static final double WIDTH = 180;
    static final double LEFT = 24;
    private static final double SYMBOL = 4;
    private static final double TUBE = 1.6;

    private final Scene scene;
    private final double top;
    private final double rise;
    private final Marks marks;
    private final List<Shape> shapes = new ArrayList<>();

    /**
     * @param top    room above it (mm)
     * @param rise   how far it reaches up the paper (cm)
     * @param bottom room below it (mm)
     */
    View(Scene scene, double top, double rise, double bottom) {
        this.scene = scene;
        this.top = top;
        this.rise = rise;
        this.marks = new Marks(new Area(0, 0, WIDTH, top + scene.scale().paper(rise) + bottom));
    }

    double x(double along) {
        return LEFT + scene.scale().paper(along);
    }

    /** @param up from the lower edge of the view (cm) */
    double y(double up) {
        return top + scene.scale().paper(rise - up);
    }

    Area area(Stretch along, Stretch up) {
        return new Area(x(along.from()), y(up.to()), scene.scale().paper(along.width()), scene.scale().paper(up.width()));
    }

    Marks marks() {
        return marks;
    }

    void add(Shape shape) {
        shapes.add(shape);
    }

    void line(double x1, double y1, double x2, double y2, Stroke stroke) {
        add(new Shape.Line(new Point(x1, y1), new Point(x2, y2), stroke));
    }

    /** The outline of the walls; the one at the far side dashed where its place is not told. */
    void walls(double height, boolean isFarSideTold) {
        double right = x(scene.length());
        line(x(0), y(0), right, y(0), Stroke.WALL);
        line(x(0), y(0), x(0), y(height), Stroke.WALL);
        line(right, y(0), right, y(height), Stroke.WALL);
        line(x(0), y(height), right, y(height), isFarSideTold ? Stroke.WALL : Stroke.UNTOLD_WALL);
    }

    /** A size beside the left wall, with a line as long as it. */
    void sizeAtLeft(double size, String text) {
        double x = LEFT - 2.5;
        line(x, y(0), x, y(size), Stroke.THIN);
        line(x - 1, y(0), x + 1, y(0), Stroke.THIN);
        line(x - 1, y(size), x + 1, y(size), Stroke.THIN);
        marks.fixed(Math.max(0, x - 1 - Marks.width(text, Marks.SMALL)), y(size / 2) - Marks.HEIGHT / 2, text);
    }

    /** A part as its form asks; what has no size here becomes a symbol about its point. */
    void draw(Placement placed, Stretch up, boolean isUnsure) {
        Stretch along = placed.along().orElseThrow();
        Stroke stroke = isUnsure ? Stroke.UNSURE : Stroke.EDGE;
        switch (placed.form()) {
            case TUBE -> tube(along, up, stroke);
            case HEATER -> heater(symbol(along, up));
            case BULB -> add(new Shape.Oval(symbol(along, up), Stroke.EDGE, Fill.PAPER));
            case READING -> reading(symbol(along, up));
            case PIECE, COVER, OPENING -> piece(placed, along, up, stroke);
        }
    }

    private void piece(Placement placed, Stretch along, Stretch up, Stroke stroke) {
        Fill fill = placed.form() == Placement.Form.COVER ? Fill.COVER : Fill.NONE;
        if (along.width() == 0 && up.width() == 0) {
            add(new Shape.Oval(symbol(along, up), Stroke.UNSURE, fill));
        } else if (along.width() == 0 || up.width() == 0) {
            add(new Shape.Line(new Point(x(along.from()), y(up.from())), new Point(x(along.to()), y(up.to())), stroke));
        } else {
            add(new Shape.Box(area(along, up), stroke, fill));
        }
    }

    private void tube(Stretch along, Stretch up, Stroke stroke) {
        Area axis = area(along, up);
        Area body = new Area(axis.left() - (axis.width() == 0 ? TUBE / 2 : 0), axis.top() - (axis.height() == 0 ? TUBE / 2 : 0),
                Math.max(TUBE, axis.width()), Math.max(TUBE, axis.height()));
        boolean isOnEnd = along.width() == 0 && up.width() == 0;
        add(isOnEnd ? new Shape.Oval(symbol(along, up), Stroke.EDGE, Fill.PAPER) : new Shape.Box(body, stroke, Fill.PAPER));
        marks.reserve(isOnEnd ? symbol(along, up) : body);
    }

    private void heater(Area symbol) {
        add(new Shape.Box(symbol, Stroke.EDGE, Fill.PAPER));
        line(symbol.left(), symbol.top(), symbol.right(), symbol.bottom(), Stroke.EDGE);
        line(symbol.left(), symbol.bottom(), symbol.right(), symbol.top(), Stroke.EDGE);
    }

    private void reading(Area symbol) {
        Point middle = symbol.middle();
        add(new Shape.Path(List.of(new Point(middle.x(), symbol.top()), new Point(symbol.right(), symbol.bottom()),
                new Point(symbol.left(), symbol.bottom())), true, Stroke.EDGE, Fill.PAPER));
    }

    private Area symbol(Stretch along, Stretch up) {
        Point middle = area(along, up).middle();
        Area symbol = new Area(middle.x() - SYMBOL / 2, middle.y() - SYMBOL / 2, SYMBOL, SYMBOL);
        marks.reserve(symbol);
        return symbol;
    }

    /** Its mark near the middle of where it was drawn. */
    void mark(Placement placed, Stretch up) {
        marks.framed(area(placed.along().orElseThrow(), up).middle(), placed.part().mark(), !placed.part().toDo().isEmpty());
    }

    /** Everything drawn, texts last. */
    Picture picture(String title, String description, double bottom) {
        List<Shape> all = new ArrayList<>(shapes);
        all.addAll(marks.shapes());
        return new Picture(title, description, WIDTH, y(0) + bottom, all, marks.leftOut());
    }

    /** The larger ones first, so that the smaller ones stay visible on them. */
    static double size(Placement placed, Optional<Stretch> up) {
        return placed.along().map(Stretch::width).orElse(0.0) * up.map(Stretch::width).orElse(0.0);
    }
}
