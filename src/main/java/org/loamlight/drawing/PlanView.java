package org.loamlight.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loamlight.drawing.Shape.Area;
import org.loamlight.physics.Stretch;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Front;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Words;

/** The enclosure from above, its front below. */
final class PlanView {
    private static final double TOP = 2;
    private static final double BOTTOM = 8;

    private final Scene scene;
    private final Descriptions descriptions;

    PlanView(Scene scene) {
        this.scene = scene;
        this.descriptions = new Descriptions(scene);
    }

    /** Empty when nothing tells how deep the enclosure is. */
    Optional<Picture> picture() {
        return scene.depth().isEmpty() ? Optional.empty() : Optional.of(drawn(scene.depth().getAsDouble()));
    }

    private Picture drawn(double depth) {
        View view = new View(scene, TOP, depth, BOTTOM);
        boolean isTold = scene.setup().enclosure().depth().isKnown();
        String size = isTold ? scene.centimetres(depth) + scene.numbers().about(Topic.INSIDE_DEPTH) : scene.say("depth.untold");
        view.walls(depth, isTold);
        view.sizeAtLeft(depth, size);
        view.marks().fixed(View.LEFT, view.y(0) + 2.4, front());
        List<Placement> here = scene.placements().stream().filter(Placement::isInPlan).toList();
        scene.setup().heaters().forEach(heater -> patch(view, heater));
        here.stream().sorted(Comparator.comparingDouble((Placement one) -> -View.size(one, one.across())))
                .forEach(one -> view.draw(one, one.across().orElseThrow(), one.isInWords()));
        here.forEach(one -> view.mark(one, one.across().orElseThrow()));
        return view.picture(scene.say("plan.title", scene.scale().inWords()), descriptions.of("plan.described", size, here), BOTTOM);
    }

    private String front() {
        Front front = scene.setup().enclosure().front();
        return front == Front.UNKNOWN ? scene.say("front") : scene.say("front.of", Words.of(front));
    }

    /** The warm patch beneath or above a heater, where its place and its two widths are told: round, or as square as what lies beneath. */
    private void patch(View view, Heater heater) {
        if (!heater.warms().isKnown() || !heater.warmsAcross().isKnown()) {
            return;
        }
        scene.placements().stream().filter(one -> one.part().subject().equals(heater.subject()) && one.isInPlan()).forEach(one -> {
            Area patch = view.area(around(one.along(), heater.warms().value(), scene.length()),
                    around(one.across(), heater.warmsAcross().value(), scene.depth().orElseThrow()));
            view.add(heater.contact() == Stated.YES ? new Shape.Box(patch, Stroke.UNSURE, Fill.NONE) : new Shape.Oval(patch, Stroke.UNSURE, Fill.NONE));
        });
    }

    private static Stretch around(Optional<Stretch> middle, double width, double size) {
        double at = middle.orElseThrow().from();
        return new Stretch(Math.max(0, at - width / 2), Math.min(size, at + width / 2));
    }
}
