package org.loamlight.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loamlight.drawing.Shape.Area;
import org.loamlight.physics.Stretch;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Hung;
import org.loamlight.setup.Lamp;

/** The enclosure from the front, its floor below, with lines of equal UV index where all UV lamps are known. */
final class FrontView {
    private static final double TOP = 6;
    private static final double BOTTOM = 8;
    /** How high the sides of a piece are drawn of which it is not told how high it is (mm). */
    private static final double STUB = 2.5;
    /** Between the level lines of the substrate (mm). */
    private static final double LAYER = 1.6;
    private static final double BAR = 4;
    private static final double GAP = 2;

    private final Scene scene;
    private final Descriptions descriptions;

    FrontView(Scene scene) {
        this.scene = scene;
        this.descriptions = new Descriptions(scene);
    }

    /** Empty when nothing tells how high the enclosure is. */
    Optional<Picture> picture() {
        return scene.height().isEmpty() ? Optional.empty() : Optional.of(drawn(scene.height().getAsDouble()));
    }

    private Picture drawn(double height) {
        View view = new View(scene, TOP, scene.heightDrawn().orElseThrow(), BOTTOM);
        boolean isTold = scene.setup().enclosure().height().isKnown();
        String size = isTold ? scene.centimetres(height) + scene.numbers().about(Topic.INSIDE_HEIGHT) : scene.say("height.untold");
        substrate(view);
        view.walls(height, isTold);
        view.sizeAtLeft(height, size);
        ends(view);
        if (scene.isUpright()) {
            cover(view, height);
        }
        List<Placement> here = scene.placements().stream().filter(Placement::isInFront).toList();
        scene.setup().lamps().forEach(lamp -> chain(view, lamp, height));
        here.stream().sorted(Comparator.comparingDouble((Placement one) -> -View.size(one, one.above()))).forEach(one -> draw(view, one));
        UvLines light = new UvLines(scene, view, height);
        light.draw();
        here.forEach(one -> view.mark(one, shown(view, one)));
        light.label();
        return view.picture(scene.say("front.title", scene.scale().inWords()), descriptions.of("front.described", size, here) + light.described(), BOTTOM);
    }

    private void substrate(View view) {
        scene.substrate().ifPresent(depth -> {
            Area ground = view.area(new Stretch(0, scene.length()), new Stretch(0, depth));
            view.add(new Shape.Box(ground, Stroke.THIN, Fill.NONE));
            // Lines of their own: as a fill some programs draw level lines as thick bars.
            for (double y = ground.bottom() - LAYER; y > ground.top(); y -= LAYER) {
                view.line(ground.left(), y, ground.right(), y, Stroke.THIN);
            }
            view.marks().fixed(View.LEFT, view.y(0) + 2.4,
                    scene.say("substrate", scene.centimetres(depth)) + scene.numbers().about(Topic.SUBSTRATE_DEPTH));
        });
    }

    /** What the ends are called, above them. */
    private void ends(View view) {
        String left = scene.wording().place(Place.of(scene.lengthwise().zone(0)));
        String right = scene.wording().place(Place.of(scene.lengthwise().zone(2)));
        double from = View.LEFT;
        double to = Math.max(view.x(scene.length()) - Marks.width(right, Marks.SMALL), from + Marks.width(left, Marks.SMALL) + 1);
        view.marks().fixed(from, 0, left);
        view.marks().fixed(to, 0, right);
    }

    private void draw(View view, Placement placed) {
        Stretch above = placed.above().orElseThrow();
        if (!placed.isOpenAbove()) {
            view.draw(placed, above, placed.isInWords() || placed.isHeightUnsure());
            return;
        }
        double floor = view.y(above.from());
        double left = view.x(placed.along().orElseThrow().from());
        double right = view.x(placed.along().orElseThrow().to());
        view.line(left, floor, right, floor, Stroke.HEAVY);
        view.line(left, floor, left, floor - STUB, Stroke.UNSURE);
        view.line(right, floor, right, floor - STUB, Stroke.UNSURE);
    }

    /** What a mark is put on: of a piece of unknown height the stub of its sides. */
    private Stretch shown(View view, Placement placed) {
        Stretch above = placed.above().orElseThrow();
        return placed.isOpenAbove() ? new Stretch(above.from(), above.from() + STUB * 2 * scene.scale().ratio() / 10) : above;
    }

    /** A hanging lamp on its chain. */
    private void chain(View view, Lamp lamp, double height) {
        scene.placements().stream().filter(one -> one.part().subject().equals(lamp.subject()) && one.isInFront())
                .filter(one -> lamp.fixing().hung() == Hung.CHAINED && one.above().orElseThrow().to() < height)
                .forEach(one -> {
                    double x = view.area(one.along().orElseThrow(), one.above().orElseThrow()).middle().x();
                    view.line(x, view.y(one.above().orElseThrow().to()), x, view.y(height), Stroke.THIN);
                });
    }

    /** For animals that live in trees cover is looked at along the height: a bar beside the right wall. */
    private void cover(View view, double height) {
        scene.alongAxis().cover().ifPresent(cover -> {
            double left = view.x(scene.length()) + GAP;
            view.add(new Shape.Box(new Area(left, view.y(height), BAR, scene.scale().paper(height)), Stroke.EDGE, Fill.PAPER));
            cover.covered().forEach(one -> view.add(new Shape.Box(new Area(left, view.y(one.to()), BAR, scene.scale().paper(one.width())),
                    Stroke.THIN, Fill.COVER)));
            cover.open().stream().filter(one -> scene.scale().paper(one.width()) >= Marks.HEIGHT).forEach(one -> {
                double longest = cover.longestOpen();
                view.marks().fixed(left + BAR + 1, view.y((one.from() + one.to()) / 2) - Marks.HEIGHT / 2, scene.say("open", scene.centimetres(one.width()))
                        + (one.width() == longest ? scene.numbers().about(Topic.LONGEST_OPEN_STRETCH) : ""));
            });
        });
    }
}
