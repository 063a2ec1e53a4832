package org.loamlight.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loamlight.drawing.Shape.Area;
import org.loamlight.physics.Stretch;
import org.loamlight.physics.Stretches;
import org.loamlight.quantity.Topic;

/** The length of the enclosure with its thirds, and where along it there is cover. */
final class LengthStrip {
    private static final double LINE = 5.5;
    private static final double BAR_TOP = 7.5;
    private static final double BAR = 5;
    private static final double BOTTOM = 1.5;
    private static final int THIRDS = 3;

    private final Scene scene;
    /** Cover along the length; empty where it cannot be told, and for animals that live in trees. */
    private final Optional<Stretches> cover;

    LengthStrip(Scene scene) {
        this.scene = scene;
        this.cover = scene.isUpright() ? Optional.empty() : scene.alongAxis().cover();
    }

    Picture picture() {
        View view = new View(scene, cover.isPresent() ? BAR_TOP + BAR : LINE + 1, 0, BOTTOM);
        String size = scene.centimetres(scene.length()) + scene.numbers().about(Topic.INSIDE_LENGTH);
        double right = view.x(scene.length());
        view.line(View.LEFT, LINE, right, LINE, Stroke.THIN);
        for (int third = 0; third <= THIRDS; third++) {
            double x = view.x(scene.length() * third / THIRDS);
            view.line(x, LINE - 1, x, LINE + 1, third == 0 || third == THIRDS ? Stroke.EDGE : Stroke.THIN);
        }
        view.marks().fixed(Math.max(View.LEFT, (View.LEFT + right - Marks.width(size, Marks.SMALL)) / 2), 0, size);
        cover.ifPresent(known -> bar(view, known));
        return view.picture(scene.say("strip.title"), described(size), BOTTOM);
    }

    private void bar(View view, Stretches known) {
        view.add(new Shape.Box(bar(view, new Stretch(0, scene.length())), Stroke.EDGE, Fill.PAPER));
        known.covered().forEach(one -> view.add(new Shape.Box(bar(view, one), Stroke.THIN, Fill.COVER)));
        known.open().forEach(one -> {
            Area area = bar(view, one);
            String text = open(one, known);
            if (Marks.width(text, Marks.SMALL) <= area.width()) {
                view.marks().fixed(area.left() + (area.width() - Marks.width(text, Marks.SMALL)) / 2, area.top() + (BAR - Marks.HEIGHT) / 2, text);
            }
        });
    }

    private Area bar(View view, Stretch along) {
        return new Area(view.x(along.from()), BAR_TOP, scene.scale().paper(along.width()), BAR);
    }

    private String open(Stretch stretch, Stretches known) {
        return scene.say("open", scene.centimetres(stretch.width()))
                + (stretch.width() == known.longestOpen() ? scene.numbers().about(Topic.LONGEST_OPEN_STRETCH) : "");
    }

    private String described(String size) {
        List<Stretch> open = cover.map(Stretches::open).orElse(List.of());
        String stretches = open.stream().map(one -> scene.say("range", scene.centimetres(one.from()), scene.centimetres(one.to())))
                .collect(Collectors.joining("; "));
        String about = cover.isEmpty() ? "" : " " + (open.isEmpty() ? scene.say("covered-all") : scene.say("open.described", stretches));
        return scene.say("strip.described", size) + about;
    }
}
