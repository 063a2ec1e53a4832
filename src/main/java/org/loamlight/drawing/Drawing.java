package org.loamlight.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.evaluation.Audit;
import org.loamlight.wording.Wording;

/**
 * An enclosure drawn to scale, as far as it is told. Nothing is put where nobody said it stands: what has no place is named in the notes.
 *
 * @param title    what is drawn
 * @param pictures from the front, from above, along the length; those of which a size is known; empty without the length
 * @param notes    what signs mean, what is known roughly, what is not drawn and why
 * @param rows     every part, in the order of its mark
 */
public record Drawing(String title, List<Picture> pictures, List<String> notes, List<Row> rows) {
    public Drawing {
        pictures = List.copyOf(pictures);
        notes = List.copyOf(notes);
        rows = List.copyOf(rows);
    }

    /**
     * A part in the list below the pictures.
     *
     * @param what  its name and kind
     * @param where its place as far as it is told
     */
    public record Row(Part part, String what, String where) {
    }

    /**
     * Draws one audited enclosure.
     *
     * @param numbers those of the findings in what the drawing stands beside
     */
    public static Drawing of(Audit audit, Wording wording, Numbers numbers) {
        Scene scene = new Scene(audit, wording, numbers);
        List<Picture> pictures = scene.hasLength() ? Stream.of(new FrontView(scene).picture(), new PlanView(scene).picture(),
                Optional.of(new LengthStrip(scene).picture())).flatMap(Optional::stream).toList() : List.of();
        String name = Stream.of(audit.setup().enclosure().title(), audit.setup().title()).filter(text -> !text.isBlank()).findFirst()
                .orElse(scene.say("title.unnamed"));
        return new Drawing(scene.say("title", name, audit.on()), pictures, new Notes(scene, pictures).all(),
                scene.placements().stream().map(one -> row(scene, one)).toList());
    }

    private static Row row(Scene scene, Placement placed) {
        Part part = placed.part();
        boolean isSaid = part.kind().isEmpty() || part.subject().name().equalsIgnoreCase(part.kind());
        String what = isSaid ? part.subject().name() : scene.say("list.named", part.subject().name(), part.kind());
        return new Row(part, what, new Descriptions(scene).where(placed));
    }
}
