package org.loamlight.workbook;

import java.util.List;
import org.loamlight.drawing.Fill;
import org.loamlight.drawing.Picture;
import org.loamlight.drawing.Shape;
import org.loamlight.drawing.Shape.Area;
import org.loamlight.drawing.Shape.Point;
import org.loamlight.drawing.Stroke;
import org.loamlight.drawing.XmlText;

/**
 * Pictures as the shapes of a sheet (ECMA-376-1, 20.5 and 20.1): one group for each picture, with its description for who cannot see it, in
 * its true size whatever the columns are wide.
 */
final class DrawingShapes {
    private static final String BEGIN = "<xdr:wsDr xmlns:xdr=\"http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing\""
            + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\">";
    private static final String INK = "<a:srgbClr val=\"000000\"/>";
    private static final String PAPER = "<a:srgbClr val=\"FFFFFF\"/>";
    private static final String CLEAR = "<a:srgbClr val=\"FFFFFF\"><a:alpha val=\"0\"/></a:srgbClr>";
    private static final double EMU_PER_MILLIMETRE = 36_000;
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    private final StringBuilder xml = new StringBuilder(BEGIN);
    private int id = 1;

    /** Adds a picture with its upper left corner in that of a row's first cell. */
    void add(Picture picture, int row) {
        xml.append("<xdr:oneCellAnchor><xdr:from><xdr:col>0</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>").append(row)
                .append("</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext").append(size(picture.width(), picture.height()))
                .append("/><xdr:grpSp><xdr:nvGrpSpPr><xdr:cNvPr id=\"").append(++id).append("\" name=\"").append(XmlText.escaped(picture.title()))
                .append("\" descr=\"").append(XmlText.escaped(picture.description())).append("\"/><xdr:cNvGrpSpPr/></xdr:nvGrpSpPr><xdr:grpSpPr><a:xfrm>")
                .append("<a:off x=\"0\" y=\"0\"/><a:ext").append(size(picture.width(), picture.height())).append("/><a:chOff x=\"0\" y=\"0\"/><a:chExt")
                .append(size(picture.width(), picture.height())).append("/></a:xfrm></xdr:grpSpPr>");
        picture.shapes().forEach(this::shape);
        xml.append("</xdr:grpSp><xdr:clientData/></xdr:oneCellAnchor>");
    }

    /** The whole part of the workbook that holds the pictures. */
    String part() {
        return xml + "</xdr:wsDr>";
    }

    private void shape(Shape shape) {
        if (shape instanceof Shape.Line line) {
            line(line);
        } else if (shape instanceof Shape.Box box) {
            figure(box.area(), preset("rect"), box.fill(), box.stroke());
        } else if (shape instanceof Shape.Oval oval) {
            figure(oval.area(), preset("ellipse"), oval.fill(), oval.stroke());
        } else if (shape instanceof Shape.Path path) {
            Area area = around(path.points());
            figure(area, outline(path, area), path.fill(), path.stroke());
        } else if (shape instanceof Shape.Text text) {
            text(text);
        }
    }

    private void line(Shape.Line line) {
        Area area = around(List.of(line.from(), line.to()));
        boolean rises = (line.to().x() - line.from().x()) * (line.to().y() - line.from().y()) < 0;
        xml.append("<xdr:cxnSp macro=\"\"><xdr:nvCxnSpPr>").append(name("line")).append("<xdr:cNvCxnSpPr/></xdr:nvCxnSpPr><xdr:spPr>")
                .append(place(area, rises)).append(preset("line")).append(stroke(line.stroke())).append("</xdr:spPr></xdr:cxnSp>");
    }

    private void figure(Area area, String geometry, Fill fill, Stroke stroke) {
        xml.append("<xdr:sp macro=\"\" textlink=\"\"><xdr:nvSpPr>").append(name("shape")).append("<xdr:cNvSpPr/></xdr:nvSpPr><xdr:spPr>")
                .append(place(area, false)).append(geometry).append(fill(fill)).append(stroke(stroke)).append("</xdr:spPr></xdr:sp>");
    }

    private void text(Shape.Text text) {
        xml.append("<xdr:sp macro=\"\" textlink=\"\"><xdr:nvSpPr>").append(name("text")).append("<xdr:cNvSpPr txBox=\"1\"/></xdr:nvSpPr><xdr:spPr>")
                .append(place(text.area(), false)).append(preset("rect")).append("<a:noFill/><a:ln><a:noFill/></a:ln></xdr:spPr><xdr:txBody>")
                .append("<a:bodyPr wrap=\"none\" lIns=\"0\" tIns=\"0\" rIns=\"0\" bIns=\"0\" rtlCol=\"0\" anchor=\"ctr\"><a:noAutofit/></a:bodyPr><a:lstStyle/>")
                .append("<a:p><a:pPr algn=\"ctr\"/><a:r><a:rPr lang=\"en-GB\" sz=\"").append(Math.round(text.size() * POINTS_PER_MILLIMETRE * 100))
                .append(text.isBold() ? "\" b=\"1\">" : "\">").append("<a:solidFill>").append(INK).append("</a:solidFill><a:latin typeface=\"Arial\"/></a:rPr><a:t>")
                .append(XmlText.escaped(text.text())).append("</a:t></a:r></a:p></xdr:txBody></xdr:sp>");
    }

    private String name(String what) {
        id++;
        return "<xdr:cNvPr id=\"" + id + "\" name=\"" + what + " " + id + "\"/>";
    }

    private static Area around(List<Point> points) {
        double left = points.stream().mapToDouble(Point::x).min().orElseThrow();
        double top = points.stream().mapToDouble(Point::y).min().orElseThrow();
        return new Area(left, top, points.stream().mapToDouble(Point::x).max().orElseThrow() - left,
                points.stream().mapToDouble(Point::y).max().orElseThrow() - top);
    }

    private static String place(Area area, boolean isFlipped) {
        return "<a:xfrm" + (isFlipped ? " flipV=\"1\"" : "") + "><a:off x=\"" + emu(area.left()) + "\" y=\"" + emu(area.top()) + "\"/><a:ext"
                + size(area.width(), area.height()) + "/></a:xfrm>";
    }

    private static String size(double width, double height) {
        return " cx=\"" + emu(width) + "\" cy=\"" + emu(height) + "\"";
    }

    private static long emu(double millimetres) {
        return Math.round(millimetres * EMU_PER_MILLIMETRE);
    }

    private static String preset(String geometry) {
        return "<a:prstGeom prst=\"" + geometry + "\"><a:avLst/></a:prstGeom>";
    }

    private static String outline(Shape.Path path, Area area) {
        StringBuilder outline = new StringBuilder("<a:custGeom><a:avLst/><a:gdLst/><a:ahLst/><a:cxnLst/><a:rect l=\"0\" t=\"0\" r=\"r\" b=\"b\"/><a:pathLst><a:path w=\"")
                .append(emu(area.width())).append("\" h=\"").append(emu(area.height())).append('"').append(path.fill() == Fill.NONE ? " fill=\"none\">" : ">");
        for (int i = 0; i < path.points().size(); i++) {
            Point point = path.points().get(i);
            outline.append(i == 0 ? "<a:moveTo>" : "<a:lnTo>").append("<a:pt x=\"").append(emu(point.x() - area.left())).append("\" y=\"")
                    .append(emu(point.y() - area.top())).append("\"/>").append(i == 0 ? "</a:moveTo>" : "</a:lnTo>");
        }
        return outline.append(path.isClosed() ? "<a:close/>" : "").append("</a:path></a:pathLst></a:custGeom>").toString();
    }

    private static String fill(Fill fill) {
        return switch (fill) {
            case NONE -> "<a:noFill/>";
            case PAPER -> "<a:solidFill>" + PAPER + "</a:solidFill>";
            case INK -> "<a:solidFill>" + INK + "</a:solidFill>";
            case COVER -> pattern("ltUpDiag");
        };
    }

    /** On a clear ground, so that what lies below stays visible. */
    private static String pattern(String preset) {
        return "<a:pattFill prst=\"" + preset + "\"><a:fgClr>" + INK + "</a:fgClr><a:bgClr>" + CLEAR + "</a:bgClr></a:pattFill>";
    }

    private static String stroke(Stroke stroke) {
        if (stroke == Stroke.NONE) {
            return "<a:ln><a:noFill/></a:ln>";
        }
        return "<a:ln w=\"" + emu(stroke.millimetres()) + "\"><a:solidFill>" + INK + "</a:solidFill><a:prstDash val=\"" + switch (stroke.dash()) {
            case SOLID -> "solid";
            case DASHED -> "dash";
            case DOTTED -> "sysDot";
        } + "\"/></a:ln>";
    }
}
