package org.loamlight.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.loamlight.drawing.Fill;
import org.loamlight.drawing.Shape;
import org.loamlight.drawing.Shape.Point;
import org.loamlight.drawing.Stroke;
import org.loamlight.drawing.XmlText;
import org.loamlight.wording.TextWidth;

/** Writes shapes as SVG. Every text and every attribute goes through {@link XmlText}. */
final class SvgWriter {
    private static final int DECIMALS = 2;
    /** Half of the height of capitals, over the font size. */
    private static final double HALF_CAPITAL = 0.36;
    private static final String PATTERNS = """
            <defs>
            <pattern id="cover" width="2" height="2" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="2" stroke="#000" stroke-width="0.25"/></pattern>
            </defs>
            """;

    private final StringBuilder body = new StringBuilder();

    /** The file around everything written so far; lengths in mm. */
    String file(String title, String description, double width, double height) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + number(width) + "mm\" height=\""
                + number(height) + "mm\" viewBox=\"0 0 " + number(width) + " " + number(height)
                + "\" role=\"img\" aria-labelledby=\"title desc\" font-family=\"Arial, Helvetica, sans-serif\">\n<title id=\"title\">" + XmlText.escaped(title)
                + "</title>\n<desc id=\"desc\">" + XmlText.escaped(description) + "</desc>\n" + PATTERNS + "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n"
                + body + "</svg>\n";
    }

    /** Begins a group with its own title and description. */
    void open(String title, String description) {
        body.append("<g role=\"img\">\n<title>").append(XmlText.escaped(title)).append("</title>\n<desc>").append(XmlText.escaped(description)).append("</desc>\n");
    }

    void close() {
        body.append("</g>\n");
    }

    /** A thin level line. */
    void rule(double from, double y, double to) {
        shape(new Shape.Line(new Point(from, y), new Point(to, y), Stroke.THIN));
    }

    /** @param y of the base line */
    void text(double x, double y, String text, double size, boolean isBold) {
        body.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y)).append("\" font-size=\"").append(number(size))
                .append(isBold ? "\" font-weight=\"bold\">" : "\">").append(XmlText.escaped(text)).append("</text>\n");
    }

    /** Shapes of a picture whose upper left corner is put there. */
    void shapes(List<Shape> shapes, double left, double top) {
        body.append("<g transform=\"translate(").append(number(left)).append(' ').append(number(top)).append(")\">\n");
        shapes.forEach(this::shape);
        body.append("</g>\n");
    }

    private void shape(Shape shape) {
        if (shape instanceof Shape.Line line) {
            body.append("<line").append(at("x1", line.from().x())).append(at("y1", line.from().y())).append(at("x2", line.to().x()))
                    .append(at("y2", line.to().y())).append(style(line.stroke(), Fill.NONE)).append("/>\n");
        } else if (shape instanceof Shape.Box box) {
            Shape.Area area = box.area();
            body.append("<rect").append(at("x", area.left())).append(at("y", area.top())).append(at("width", area.width()))
                    .append(at("height", area.height())).append(style(box.stroke(), box.fill())).append("/>\n");
        } else if (shape instanceof Shape.Oval oval) {
            Point middle = oval.area().middle();
            body.append("<ellipse").append(at("cx", middle.x())).append(at("cy", middle.y())).append(at("rx", oval.area().width() / 2))
                    .append(at("ry", oval.area().height() / 2)).append(style(oval.stroke(), oval.fill())).append("/>\n");
        } else if (shape instanceof Shape.Path path) {
            path(path);
        } else if (shape instanceof Shape.Text text) {
            double inset = (text.area().width() - TextWidth.of(text.text(), text.size())) / 2;
            text(text.area().left() + Math.max(0, inset), text.area().middle().y() + HALF_CAPITAL * text.size(), text.text(), text.size(), text.isBold());
        }
    }

    private void path(Shape.Path path) {
        body.append(path.isClosed() ? "<polygon points=\"" : "<polyline points=\"");
        for (int i = 0; i < path.points().size(); i++) {
            body.append(i == 0 ? "" : " ").append(number(path.points().get(i).x())).append(',').append(number(path.points().get(i).y()));
        }
        body.append('"').append(style(path.stroke(), path.fill())).append("/>\n");
    }

    private static String at(String name, double value) {
        return " " + name + "=\"" + number(value) + "\"";
    }

    private static String style(Stroke stroke, Fill fill) {
        String line = stroke == Stroke.NONE ? "" : " stroke=\"#000\"" + at("stroke-width", stroke.millimetres()) + switch (stroke.dash()) {
            case SOLID -> "";
            case DASHED -> " stroke-dasharray=\"1.6 1\"";
            case DOTTED -> " stroke-dasharray=\"0.3 0.7\"";
        };
        return line + switch (fill) {
            case NONE -> " fill=\"none\"";
            case PAPER -> " fill=\"#fff\"";
            case INK -> " fill=\"#000\"";
            case COVER -> " fill=\"url(#cover)\"";
        };
    }

    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
