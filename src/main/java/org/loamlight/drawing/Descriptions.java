package org.loamlight.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.physics.Stretch;
import org.loamlight.quantity.Place;

/** What is drawn, in words. */
final class Descriptions {
    private final Scene scene;

    Descriptions(Scene scene) {
        this.scene = scene;
    }

    /** A view with everything in it: its keys, names and places. */
    String of(String key, String size, List<Placement> here) {
        String ends = scene.say("ends", scene.wording().place(zone(0)), scene.wording().place(zone(2)));
        String parts = here.stream().map(one -> scene.say("part", one.part().key(), one.part().subject().name(), where(one)))
                .collect(Collectors.joining("; "));
        return scene.say(key, size, ends, parts.isEmpty() ? scene.say("nothing") : parts);
    }

    private Place zone(int third) {
        return Place.of(scene.lengthwise().zone(third));
    }

    /** Where a part stands as far as it is told. */
    String where(Placement placed) {
        String told = Stream.of(along(placed), placed.across().map(one -> scene.say("across", range(one))), above(placed)).flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return told.isEmpty() ? scene.say("untold") : told;
    }

    private Optional<String> along(Placement placed) {
        Optional<String> third = placed.third().isPresent() ? Optional.of(scene.wording().place(zone(placed.third().getAsInt()))) : Optional.empty();
        boolean isRough = placed.isInWords() && placed.form() != Placement.Form.TUBE;
        return placed.along().isEmpty() ? third.map(one -> scene.say("somewhere", one))
                : placed.along().map(one -> isRough ? scene.say("about", range(one), third.orElse("")) : scene.say("along", range(one)));
    }

    private Optional<String> above(Placement placed) {
        return placed.above().map(one -> placed.isOpenAbove() ? scene.say("on", scene.centimetres(one.from())) : scene.say("above", range(one)));
    }

    private String range(Stretch stretch) {
        String from = scene.centimetres(stretch.from());
        return stretch.width() == 0 ? from : scene.say("range", from, scene.centimetres(stretch.to()));
    }
}
