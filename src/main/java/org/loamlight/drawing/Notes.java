package org.loamlight.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.quantity.Place;
import org.loamlight.setup.Opening;
import org.loamlight.setup.Stated;

/** What stands below the pictures in words. */
final class Notes {
    private static final int THIRDS = 3;

    private final Scene scene;
    private final List<Picture> pictures;
    private final List<String> notes = new ArrayList<>();

    Notes(Scene scene, List<Picture> pictures) {
        this.scene = scene;
        this.pictures = pictures;
    }

    List<String> all() {
        notes.add(scene.say("note.keys"));
        notes.add(scene.say("note.numbers"));
        if (scene.hasLength()) {
            note(scene.height().isEmpty(), "note.no-front");
            note(scene.depth().isEmpty(), "note.no-plan");
            note(scene.alongAxis().cover().isEmpty(), "note.no-cover");
            light();
        } else {
            notes.add(scene.say("note.no-length"));
        }
        thirds();
        listed("note.not-in-front", scene.height().isEmpty() ? List.of() : marked(one -> one.isInPlan() && !one.isInFront()));
        listed("note.not-in-plan", scene.depth().isEmpty() ? List.of() : marked(one -> one.isInFront() && !one.isInPlan()));
        openings();
        listed("note.unplaced", marked(this::isNowhere));
        listed("note.crowded", pictures.stream().map(Picture::leftOut).flatMap(List::stream).distinct().toList());
        return notes;
    }

    private void note(boolean isSo, String key) {
        if (isSo) {
            notes.add(scene.say(key));
        }
    }

    private void light() {
        boolean isDrawn = scene.light().isPresent();
        boolean hasUvLamp = scene.setup().lamps().stream().anyMatch(lamp -> lamp.givesUv() != Stated.NO);
        note(isDrawn && scene.height().isPresent(), "note.uv");
        note(!isDrawn && hasUvLamp, "note.no-uv");
    }

    private void thirds() {
        for (int third = 0; third < THIRDS; third++) {
            int wanted = third;
            String marks = marks(scene.placements().stream().filter(one -> one.isInThirdOnly() && one.third().getAsInt() == wanted));
            if (!marks.isEmpty()) {
                notes.add(scene.say("note.third", scene.wording().place(Place.of(scene.lengthwise().zone(third))), marks));
            }
        }
    }

    private void openings() {
        Map<String, List<Placement>> bySide = new LinkedHashMap<>();
        List<Opening> told = scene.setup().enclosure().openings();
        List<Placement> openings = scene.placements().stream().filter(one -> one.form() == Placement.Form.OPENING).toList();
        for (int i = 0; i < told.size(); i++) {
            bySide.computeIfAbsent(side(told.get(i)), side -> new ArrayList<>()).add(openings.get(i));
        }
        bySide.forEach((side, here) -> notes.add(scene.say("note.openings", scene.say(side), marks(here.stream()))));
    }

    private static String side(Opening opening) {
        return switch (opening.kind()) {
            case DOOR -> "side.door";
            case LID -> "side.lid";
            case VENT -> switch (opening.level()) {
                case LOW -> "side.low";
                case HIGH -> "side.high";
                case UNKNOWN -> "side.other";
            };
            default -> "side.other";
        };
    }

    private boolean isNowhere(Placement placed) {
        boolean isInPicture = scene.hasLength() && (placed.isInPlan() || placed.isInFront());
        return placed.form() != Placement.Form.OPENING && !isInPicture && !placed.isInThirdOnly();
    }

    private List<String> marked(Predicate<Placement> which) {
        return scene.placements().stream().filter(which).map(one -> one.part().mark()).toList();
    }

    private void listed(String key, List<String> marks) {
        if (!marks.isEmpty()) {
            notes.add(scene.say(key, String.join(", ", marks)));
        }
    }

    private static String marks(Stream<Placement> placements) {
        return placements.map(one -> one.part().mark()).collect(Collectors.joining(", "));
    }
}
