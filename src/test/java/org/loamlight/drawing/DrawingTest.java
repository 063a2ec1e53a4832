package org.loamlight.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.drawing.Shape.Area;
import org.loamlight.drawing.Shape.Point;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.ranking.Ranking;
import org.loamlight.wording.TextWidth;
import org.loamlight.wording.Wording;

class DrawingTest {
    private static final double HAIR = 1e-9;
    private static final String BOX = "\"enclosure\": {\"inside\": {\"length\": \"100 cm\", \"depth\": \"50 cm\", \"height\": \"40 cm\"}, \"warm-end\": \"left\"}";

    private static <S extends Shape> List<S> shapes(Picture picture, Class<S> kind) {
        return picture.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static Picture picture(Drawing drawing, String title) {
        return drawing.pictures().stream().filter(one -> one.title().startsWith(title)).findFirst().orElseThrow();
    }

    private static boolean hasBox(Picture picture, Area expected, Stroke stroke, Fill fill) {
        return shapes(picture, Shape.Box.class).stream().anyMatch(box -> isNear(box.area(), expected) && box.stroke() == stroke && box.fill() == fill);
    }

    private static boolean isNear(Area one, Area other) {
        return Stream.of(one.left() - other.left(), one.top() - other.top(), one.width() - other.width(), one.height() - other.height())
                .allMatch(difference -> Math.abs(difference) < HAIR);
    }

    private static List<String> texts(Picture picture) {
        return shapes(picture, Shape.Text.class).stream().map(Shape.Text::text).toList();
    }

    /** 100 cm take 133.3 mm of the 134 at 1:7.5, and the views of 50 cm and 40 cm 120 mm of 135: 4/3 mm on paper for each centimetre. */
    @Test
    void a_piece_is_drawn_where_its_edges_are_told() {
        Drawing drawing = Drawn.of(BOX + """
                , "furnishings": [{"name": "cave", "kind": "hide", "from": "20 cm", "to": "50 cm", "from-front": "10 cm", "to-front": "30 cm",
                  "bottom": "0 cm", "top": "15 cm"}]""");
        assertEquals("From above, 1:7.5", drawing.pictures().get(1).title());
        assertTrue(hasBox(picture(drawing, "From above"), new Area(24 + 20 * 4 / 3.0, 2 + (50 - 30) * 4 / 3.0, 40, 20 * 4 / 3.0), Stroke.EDGE, Fill.COVER));
        assertTrue(hasBox(picture(drawing, "From the front"), new Area(24 + 20 * 4 / 3.0, 6 + (40 - 15) * 4 / 3.0, 40, 20), Stroke.EDGE, Fill.COVER));
        assertTrue(hasBox(picture(drawing, "Along"), new Area(24 + 20 * 4 / 3.0, 7.5, 40, 5), Stroke.THIN, Fill.COVER));
        assertTrue(texts(picture(drawing, "Along")).stream().anyMatch(text -> text.startsWith("open 50 cm")), texts(picture(drawing, "Along")).toString());
        assertEquals("20 cm to 50 cm from the left, 10 cm to 30 cm from the front, 0 cm to 15 cm above the floor", drawing.rows().get(0).where());
    }

    @Test
    void tubes_lie_as_told_and_bulbs_and_heaters_sit_on_their_point() {
        Drawing drawing = Drawn.of(BOX + """
                , "heaters": [{"name": "spot", "kind": "basking lamp", "place": {"along": "30 cm", "across": "25 cm", "above": "36 cm"}}],
                "lamps": [{"name": "tube", "kind": "UV tube", "lit-length": "60 cm", "runs": "along", "place": {"along": "60 cm", "across": "15 cm", "above": "37 cm"}},
                  {"name": "short tube", "kind": "UV tube", "lit-length": "30 cm", "runs": "across", "place": {"along": "90 cm", "across": "25 cm"}},
                  {"name": "bulb", "kind": "UV bulb", "place": {"along": "75 cm", "across": "45 cm", "above": "30 cm"}}]""");
        Picture plan = picture(drawing, "From above");
        assertTrue(hasBox(plan, new Area(24 + 40, 2 + 35 * 4 / 3.0 - 0.8, 80, 1.6), Stroke.EDGE, Fill.PAPER), "the tube along");
        assertTrue(hasBox(plan, new Area(24 + 120 - 0.8, 2 + 10 * 4 / 3.0, 1.6, 40), Stroke.EDGE, Fill.PAPER), "the tube across");
        assertTrue(hasBox(plan, new Area(24 + 40 - 2, 2 + 25 * 4 / 3.0 - 2, 4, 4), Stroke.EDGE, Fill.PAPER), "the heater");
        assertTrue(shapes(plan, Shape.Oval.class).stream().anyMatch(one -> isNear(one.area(), new Area(24 + 100 - 2, 2 + 5 * 4 / 3.0 - 2, 4, 4))), "the bulb");
        Picture front = picture(drawing, "From the front");
        assertTrue(shapes(front, Shape.Oval.class).stream().anyMatch(one -> isNear(one.area(), new Area(24 + 100 - 2, 6 + 10 * 4 / 3.0 - 2, 4, 4))));
        assertTrue(drawing.notes().stream().anyMatch(note -> note.startsWith("Not in the view from the front") && note.contains("L2")), drawing.notes().toString());
    }

    @Test
    void the_substrate_is_as_deep_as_told_and_a_piece_on_it_stands_on_it() {
        Drawing drawing = Drawn.of(BOX + """
                , "substrate": {"material": "soil", "depth": "9 cm"},
                "furnishings": [{"name": "cork", "kind": "cork", "from": "10 cm", "to": "40 cm", "stands-on": "substrate"}]""");
        Picture front = picture(drawing, "From the front");
        assertTrue(hasBox(front, new Area(24, 6 + 31 * 4 / 3.0, 400 / 3.0, 12), Stroke.THIN, Fill.NONE));
        double floor = 6 + 31 * 4 / 3.0;
        assertTrue(shapes(front, Shape.Line.class).stream().anyMatch(line -> line.stroke() == Stroke.HEAVY
                && Math.abs(line.from().y() - floor) < HAIR && Math.abs(line.from().x() - 24 - 40 / 3.0) < HAIR && Math.abs(line.to().x() - 24 - 160 / 3.0) < HAIR));
        assertTrue(texts(front).stream().anyMatch(text -> text.startsWith("substrate 9 cm")));
    }

    @Test
    void a_place_in_words_is_said_and_never_drawn() {
        Drawing drawing = Drawn.of(BOX + """
                , "furnishings": [{"name": "cave", "kind": "hide", "place": "cool end"}, {"name": "dish", "kind": "water dish"}],
                "readings": [{"name": "probe", "of": "air temperature", "place": "warm end", "time": "day", "value": "30 °C"}]""");
        Drawing bare = Drawn.of(BOX);
        assertEquals(shapes(picture(bare, "From above"), Shape.Box.class).size(), shapes(picture(drawing, "From above"), Shape.Box.class).size());
        assertTrue(drawing.notes().stream().anyMatch(note -> note.startsWith("Somewhere in the cool end: F1")), drawing.notes().toString());
        assertTrue(drawing.notes().stream().anyMatch(note -> note.startsWith("Somewhere in the warm end: R1")));
        assertTrue(drawing.notes().stream().anyMatch(note -> note.startsWith("Not drawn, because no place") && note.contains("F2")));
        assertEquals("place not told", drawing.rows().get(1).where());
    }

    @Test
    void a_piece_known_to_its_third_only_is_dashed() {
        Drawing drawing = Drawn.of(BOX + """
                , "furnishings": [{"name": "cave", "kind": "hide", "place": "warm end", "extent": "20 cm", "from-front": "10 cm", "to-front": "25 cm"}]""");
        double middle = 24 + 100 / 6.0 * 4 / 3;
        assertTrue(hasBox(picture(drawing, "From above"), new Area(middle - 40 / 3.0, 2 + 25 * 4 / 3.0, 80 / 3.0, 20), Stroke.UNSURE, Fill.COVER));
    }

    @Test
    void nothing_but_the_length_gives_the_length_and_says_what_is_missing() {
        Drawing drawing = Drawn.of("\"enclosure\": {\"inside\": {\"length\": \"80 cm\"}}");
        assertEquals(List.of("Along the length"), drawing.pictures().stream().map(Picture::title).toList());
        assertTrue(drawing.notes().contains("No view from above: nothing tells of the depth."), drawing.notes().toString());
        assertTrue(drawing.notes().contains("No view from the front: nothing tells of the height."));
    }

    @Test
    void nothing_at_all_gives_no_picture_and_says_why() {
        Drawing drawing = Drawn.of("");
        assertEquals(List.of(), drawing.pictures());
        assertTrue(drawing.notes().contains("Nothing is drawn to scale: the inside length is not told."), drawing.notes().toString());
        assertEquals(List.of(), drawing.rows());
    }

    @Test
    void a_wall_whose_place_is_not_told_is_dashed_behind_what_is() {
        Drawing drawing = Drawn.of("""
                "enclosure": {"inside": {"length": "100 cm"}}, "heaters": [{"name": "spot", "kind": "basking lamp", "place": {"along": "30 cm", "above": "60 cm"}}]""");
        Picture front = picture(drawing, "From the front");
        assertTrue(shapes(front, Shape.Line.class).stream().anyMatch(line -> line.stroke() == Stroke.UNTOLD_WALL));
        assertTrue(texts(front).contains("not told"));
    }

    /** A bulb of index 4 at 20 cm gives 1 at 40 cm straight below: the inverse square. */
    @Test
    void the_line_of_index_1_lies_where_the_inverse_square_puts_it() {
        Drawing drawing = Drawn.of("""
                "enclosure": {"inside": {"length": "100 cm", "depth": "50 cm", "height": "60 cm"}},
                "lamps": [{"name": "bulb", "kind": "UV bulb", "shines": "from above", "between": [], "place": {"along": "50 cm", "across": "25 cm", "above": "60 cm"},
                  "readings": [{"index": "4", "distance": "20 cm", "instrument": "UV meter"}]}]""");
        Picture front = picture(drawing, "From the front");
        assertEquals("From the front, 1:10", front.title());
        double expected = 6 + 40;
        List<Point> below = shapes(front, Shape.Path.class).stream().filter(path -> path.stroke() == Stroke.INDEX)
                .map(path -> path.points().stream().max(Comparator.comparingDouble(Point::y)).orElseThrow()).toList();
        assertTrue(below.stream().anyMatch(point -> Math.abs(point.x() - 24 - 50) < 1.7 && Math.abs(point.y() - expected) < 0.3), below.toString());
        assertTrue(texts(front).contains("UV 1") && texts(front).contains("UV 4"), texts(front).toString());
    }

    @Test
    void for_animals_of_the_trees_cover_stands_beside_the_height() {
        Drawing drawing = Drawn.of(Drawn.example("club-chameleon-dish"), Drawn.METRIC);
        assertTrue(texts(picture(drawing, "From the front")).stream().anyMatch(text -> text.startsWith("open ")));
        assertTrue(texts(picture(drawing, "Along")).stream().noneMatch(text -> text.startsWith("open ")));
    }

    static List<String> examples() {
        return Drawn.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void no_text_covers_another_or_leaves_its_picture(String example) {
        Audit audit = Drawn.example(example);
        for (Wording wording : List.of(Drawn.METRIC, Drawn.US)) {
            Drawing drawing = Drawn.of(audit, wording);
            drawing.pictures().forEach(picture -> assertEquals(List.of(), faults(picture), picture.title()));
            assertFalse(drawing.pictures().isEmpty());
            assertTrue(drawing.pictures().stream().allMatch(picture -> picture.leftOut().isEmpty()), "every mark finds room");
        }
    }

    private static List<String> faults(Picture picture) {
        List<Shape.Text> texts = shapes(picture, Shape.Text.class);
        Area page = new Area(0, 0, picture.width(), picture.height());
        List<String> faults = new ArrayList<>();
        IntStream.range(0, texts.size()).forEach(i -> IntStream.range(0, i).filter(j -> texts.get(i).area().overlaps(texts.get(j).area()))
                .forEach(j -> faults.add(texts.get(i) + " covers " + texts.get(j))));
        texts.stream().filter(text -> !page.holds(text.area())).forEach(text -> faults.add(text + " leaves the picture"));
        texts.stream().filter(text -> TextWidth.of(text.text(), text.size()) > text.area().width()).forEach(text -> faults.add(text + " is wider than its room"));
        return faults;
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_part_has_a_row_and_is_drawn_or_named_below(String example) {
        Drawing drawing = Drawn.of(Drawn.example(example), Drawn.METRIC);
        String shown = Stream.concat(drawing.notes().stream(), drawing.pictures().stream().flatMap(picture -> texts(picture).stream()))
                .collect(Collectors.joining(" ", " ", " "));
        drawing.rows().forEach(row -> assertTrue(shown.matches("(?s).*[ :]" + row.part().key() + "[ ,.].*"), row.part().key() + " in " + shown));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void numbers_are_those_of_the_report(String example) {
        Audit audit = Drawn.example(example);
        List<Finding> open = Ranking.of(audit.findings()).open();
        for (Drawing.Row row : Drawn.of(audit, Drawn.METRIC).rows()) {
            Stream.of(row.part().toDo(), row.part().toFindOut()).flatMap(List::stream).map(number -> open.get(number - 1)).forEach(finding ->
                    assertTrue(finding.subject().equals(row.part().subject()) || finding.deciding().map(Held::quantity).filter(value ->
                            value.source().equals(row.part().subject().key()) || value.place().item().equals(row.part().subject().key())).isPresent()));
            long about = open.stream().filter(finding -> finding.subject().equals(row.part().subject())).count();
            assertTrue(row.part().toDo().size() + row.part().toFindOut().size() >= about, row.what());
        }
    }

    @Test
    void numbers_of_the_workbook_begin_with_1_on_each_sheet() {
        Audit audit = Drawn.example("foster-corn-snake");
        Ranking ranking = Ranking.of(audit.findings());
        Drawing drawing = Drawing.of(audit, Drawn.METRIC, Numbers.ofWorkbook(ranking));
        int first = ranking.toDo().size();
        Drawing report = Drawn.of(audit, Drawn.METRIC);
        for (int i = 0; i < report.rows().size(); i++) {
            assertEquals(report.rows().get(i).part().toDo(), drawing.rows().get(i).part().toDo());
            assertEquals(report.rows().get(i).part().toFindOut().stream().map(number -> number - first).toList(), drawing.rows().get(i).part().toFindOut());
        }
        assertTrue(drawing.rows().stream().anyMatch(row -> !row.part().toFindOut().isEmpty()));
    }

    @Test
    void a_crowd_is_drawn_with_as_many_marks_as_there_is_room_for() {
        String pieces = IntStream.range(0, 300).mapToObj(i -> "{\"name\": \"p" + i + "\", \"kind\": \"plant\", \"from\": \"10 cm\", \"to\": \"20 cm\","
                + " \"from-front\": \"10 cm\", \"to-front\": \"20 cm\"}").collect(Collectors.joining(", "));
        Drawing drawing = Drawn.of(BOX + ", \"furnishings\": [" + pieces + "]");
        drawing.pictures().forEach(picture -> assertEquals(List.of(), faults(picture)));
        assertEquals(300, drawing.rows().size());
        assertTrue(drawing.notes().stream().anyMatch(note -> note.startsWith("Drawn without their marks")));
    }
}
