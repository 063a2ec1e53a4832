package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.GoldenFile;
import org.loamlight.drawing.Drawing;
import org.loamlight.drawing.Drawn;
import org.loamlight.drawing.XmlText;
import org.loamlight.wording.EveryLocale;
import org.loamlight.wording.TextLines;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgDrawingTest {
    private static String svg(Drawing drawing) {
        return SvgDrawing.of(drawing, Drawn.METRIC);
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    static List<String> examples() {
        return Drawn.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_picture_of_every_example_has_a_title_and_a_description(String example) throws Exception {
        Drawing drawing = Drawn.of(Drawn.example(example), Drawn.METRIC);
        Document document = parsed(svg(drawing));
        assertEquals(1 + drawing.pictures().size(), document.getElementsByTagName("title").getLength());
        NodeList descriptions = document.getElementsByTagName("desc");
        assertEquals(1 + drawing.pictures().size(), descriptions.getLength());
        for (int i = 0; i < descriptions.getLength(); i++) {
            assertFalse(descriptions.item(i).getTextContent().isBlank());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"calibration", "foster-corn-snake"})
    void two_examples_are_drawn_as_kept(String example) {
        String made = EveryLocale.texts(() -> svg(Drawn.of(Drawn.example(example), Drawn.METRIC))).stream().reduce((one, other) -> one + "DIFFERS BY LOCALE" + other)
                .orElseThrow();
        GoldenFile.assertMatches(Path.of("src", "test", "resources", "golden", example + ".svg"), made);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "A & B \\\"quoted\\\" 'too'", "\u202Eback to front\u2066", "a ]]> b -->", "=1+1", "\uD83E\uDD8E gecko"})
    void names_stay_text(String name) throws Exception {
        Document document = parsed(svg(Drawn.of(setup(name))));
        assertEquals(Set.of("svg", "title", "desc", "defs", "pattern", "line", "rect", "g", "text", "ellipse"), Set.copyOf(names(document)));
        String shown = document.getDocumentElement().getTextContent();
        assertTrue(shown.contains(XmlText.escaped(name.replace("\\\"", "\"")).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&")
                .replace("&quot;", "\"").replace("&#39;", "'")), shown);
        assertFalse(shown.contains("\u202E") || shown.contains("\u2066"));
    }

    private static String setup(String name) {
        return """
                "enclosure": {"title": "%1$s", "inside": {"length": "100 cm", "depth": "50 cm", "height": "40 cm"}},
                "heaters": [{"name": "%1$s", "kind": "basking lamp", "warms": "20 cm", "warms-across": "20 cm",
                  "place": {"along": "30 cm", "across": "25 cm", "above": "36 cm"}}]""".formatted(name);
    }

    private static List<String> names(Document document) {
        NodeList all = document.getElementsByTagName("*");
        return java.util.stream.IntStream.range(0, all.getLength()).mapToObj(i -> ((Element) all.item(i)).getTagName()).distinct().toList();
    }

    @Test
    void a_name_of_250_letters_is_broken_into_lines_and_cut_in_the_end() throws Exception {
        String name = "W".repeat(250);
        Document document = parsed(svg(Drawn.of(setup(name))));
        NodeList texts = document.getElementsByTagName("text");
        double widest = 0;
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            double left = Double.parseDouble(text.getAttribute("x"));
            widest = Math.max(widest, left + org.loamlight.wording.TextWidth.of(text.getTextContent(), Double.parseDouble(text.getAttribute("font-size"))));
        }
        assertTrue(widest <= 190, "texts reach to " + widest + " mm of 190");
        assertTrue(document.getElementsByTagName("desc").item(0).getTextContent().contains(name), "the description has it whole");
    }

    @Test
    void lines_break_between_words_and_are_cut_in_the_end() {
        // Helvetica: i 222, space 278, full stop 278 thousandths, all times 1.1.
        assertEquals(List.of("ii ii", "ii"), TextLines.wrapped("ii\n ii  ii", 1, 1.4, 9));
        assertEquals(List.of("iiii", "ii"), TextLines.wrapped("iiiiii", 1, 1.0, 9));
        assertEquals(List.of("i..."), TextLines.wrapped("iiiiii", 1, 1.3, 1));
        assertEquals(List.of(""), TextLines.wrapped(" ", 1, 1, 3));
    }

    @Test
    void colour_is_never_used() throws Exception {
        String svg = svg(Drawn.of(Drawn.example("home-bearded-dragon"), Drawn.METRIC));
        java.util.regex.Pattern.compile("(?:fill|stroke)=\"([^\"]*)\"").matcher(svg).results().map(found -> found.group(1))
                .forEach(ink -> assertTrue(Set.of("none", "#fff", "#000", "url(#cover)").contains(ink), ink));
    }
}
