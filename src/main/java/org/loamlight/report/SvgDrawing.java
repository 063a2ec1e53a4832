package org.loamlight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Part;
import org.loamlight.drawing.Picture;
import org.loamlight.wording.TextLines;
import org.loamlight.wording.Wording;

/** A drawing as SVG 1.1: one page as wide as A4 allows, in millimetres, in black on white, with its list and its notes below. */
public final class SvgDrawing {
    private static final double WIDTH = 190;
    private static final double MARGIN = 5;
    private static final double TITLE = 5;
    private static final double HEADING = 4;
    private static final double SMALL = 3.2;
    private static final double LINE = 4.4;
    private static final double GAP = 2;
    /** Left edges of the columns of the list (mm), and the right edge of the last. */
    private static final double[] COLUMNS = {5, 17, 72, 147, 166, 185};
    private static final int MOST_LINES = 4;

    private final Drawing drawing;
    private final Wording wording;
    private final SvgWriter svg = new SvgWriter();
    private double y = MARGIN;

    private SvgDrawing(Drawing drawing, Wording wording) {
        this.drawing = drawing;
        this.wording = wording;
    }

    /** The whole file, UTF-8; the same drawing gives the same text on every machine. */
    public static String of(Drawing drawing, Wording wording) {
        return new SvgDrawing(drawing, wording).written();
    }

    private String written() {
        heading(drawing.title(), TITLE);
        drawing.pictures().forEach(this::picture);
        list();
        y += GAP;
        drawing.notes().forEach(note -> y += paragraph(note, COLUMNS[0], WIDTH - 2 * MARGIN, Integer.MAX_VALUE));
        return svg.file(drawing.title(), described(), WIDTH, y + MARGIN);
    }

    private String described() {
        return drawing.pictures().isEmpty() ? String.join(" ", drawing.notes())
                : drawing.pictures().stream().map(Picture::description).collect(Collectors.joining(" "));
    }

    private void heading(String text, double size) {
        for (String line : TextLines.wrapped(text, size, WIDTH - 2 * MARGIN, 2)) {
            svg.text(MARGIN, y + size, line, size, true);
            y += size * 1.3;
        }
        y += GAP / 2;
    }

    private void picture(Picture picture) {
        svg.open(picture.title(), picture.description());
        heading(picture.title(), HEADING);
        svg.shapes(picture.shapes(), MARGIN, y);
        svg.close();
        y += picture.height() + GAP;
    }

    private void list() {
        y += GAP;
        heading(say("title"), HEADING);
        row(List.of(say("key"), say("what"), say("where"), say("to-do"), say("to-find-out")), true);
        svg.rule(MARGIN, y, WIDTH - MARGIN);
        if (drawing.rows().isEmpty()) {
            y += paragraph(say("none"), COLUMNS[0], WIDTH - 2 * MARGIN, 1);
        }
        drawing.rows().forEach(row -> {
            row(List.of(row.part().key(), row.what(), row.where(), Part.listed(row.part().toDo()), Part.listed(row.part().toFindOut())), false);
            svg.rule(MARGIN, y, WIDTH - MARGIN);
        });
    }

    private String say(String key) {
        return wording.sentence("drawing.list." + key);
    }

    private void row(List<String> texts, boolean isBold) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            cells.add(TextLines.wrapped(texts.get(i), SMALL, COLUMNS[i + 1] - COLUMNS[i] - GAP, MOST_LINES));
        }
        for (int i = 0; i < cells.size(); i++) {
            lines(cells.get(i), COLUMNS[i], isBold || i == 0);
        }
        y += cells.stream().mapToInt(List::size).max().orElse(1) * LINE;
    }

    private void lines(List<String> lines, double x, boolean isBold) {
        for (int i = 0; i < lines.size(); i++) {
            svg.text(x, y + i * LINE + SMALL, lines.get(i), SMALL, isBold);
        }
    }

    /** How high it is (mm). */
    private double paragraph(String text, double x, double width, int most) {
        List<String> lines = TextLines.wrapped(text, SMALL, width, most);
        lines(lines, x, false);
        return lines.size() * LINE;
    }
}
