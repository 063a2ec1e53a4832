package org.loamlight.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loamlight.drawing.Shape.Area;
import org.loamlight.drawing.Shape.Point;
import org.loamlight.wording.TextWidth;

/** Texts of one picture, each put where it covers no other. */
final class Marks {
    /** Size of the smaller texts (mm): 9 points, still 6.4 points when A4 is printed on A5. */
    static final double SMALL = 3.2;
    static final double HEIGHT = 4.4;
    /** Screens and printers set letters up to about a tenth wider than the metrics say. */
    private static final double RESERVE = 1.12;
    private static final double AROUND = 1.2;
    private static final double STEP = 2.4;
    private static final int FARTHEST = 16;
    private static final int DIRECTIONS = 16;

    private final Area room;
    private final List<Area> taken = new ArrayList<>();
    private final List<Shape> leaders = new ArrayList<>();
    private final List<Shape> texts = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    /** @param room all texts stay in it */
    Marks(Area room) {
        this.room = room;
    }

    static double width(String text, double size) {
        return TextWidth.of(text, size) * RESERVE + AROUND;
    }

    /** A text in its own place; whoever asks has seen to it that there is room. */
    void fixed(double left, double top, String text) {
        put(new Area(left, top, width(text, SMALL), HEIGHT), text, false);
    }

    /** Keeps a place free of texts. */
    void reserve(Area area) {
        taken.add(area);
    }

    /** A text around a middle on the white of the paper, if nothing stands there yet; whether it was put. @param within it must stay there */
    boolean around(Point middle, String text, Area within) {
        Area area = area(middle, text);
        boolean isFree = within.holds(area) && isFree(area);
        if (isFree) {
            texts.add(new Shape.Box(area, Stroke.NONE, Fill.PAPER));
            put(area, text, false);
        }
        return isFree;
    }

    /** A framed text as near to its point as there is room, with a line to it where it stands aside; kept in {@link #leftOut} where there is none. */
    void framed(Point anchor, String text, boolean isUrgent) {
        Optional<Area> area = nearest(anchor, text);
        if (area.isEmpty()) {
            leftOut.add(text);
            return;
        }
        Point middle = area.get().middle();
        if (!area.get().holds(new Area(anchor.x(), anchor.y(), 0, 0))) {
            leaders.add(new Shape.Line(anchor, middle, Stroke.THIN));
        }
        texts.add(new Shape.Box(area.get(), isUrgent ? Stroke.HEAVY : Stroke.THIN, Fill.PAPER));
        put(area.get(), text, isUrgent);
    }

    private void put(Area area, String text, boolean isBold) {
        taken.add(area);
        texts.add(new Shape.Text(area, text, SMALL, isBold));
    }

    private Optional<Area> nearest(Point anchor, String text) {
        for (int ring = 0; ring <= FARTHEST; ring++) {
            for (int direction = 0; direction < (ring == 0 ? 1 : DIRECTIONS); direction++) {
                double angle = 2 * StrictMath.PI * direction / DIRECTIONS;
                Area area = area(new Point(anchor.x() + ring * STEP * StrictMath.cos(angle), anchor.y() - ring * STEP * StrictMath.sin(angle)), text);
                if (isFree(area)) {
                    return Optional.of(area);
                }
            }
        }
        return Optional.empty();
    }

    private static Area area(Point middle, String text) {
        double width = width(text, SMALL);
        return new Area(middle.x() - width / 2, middle.y() - HEIGHT / 2, width, HEIGHT);
    }

    private boolean isFree(Area area) {
        return room.holds(area) && taken.stream().noneMatch(area::overlaps);
    }

    /** Lines to the texts, then the texts. */
    List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>(leaders);
        shapes.addAll(texts);
        return shapes;
    }

    /** Framed texts for which there was no room, in order. */
    List<String> leftOut() {
        return leftOut;
    }
}
