package org.loamlight.workbook;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.loamlight.drawing.Chart;
import org.loamlight.drawing.XmlText;

/**
 * A chart as its part of the workbook (ECMA-376-1, 21.2), over numbers that stand in the sheet. Series differ by mark, dash and pattern, all in
 * black. Written as text: the schema that comes with POI lacks several of the types its own calls for charts need.
 */
final class ChartXml {
    private static final String BEGIN = "<c:chartSpace xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\""
            + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\"><c:roundedCorners val=\"0\"/><c:chart>";
    private static final String INK = "<a:solidFill><a:srgbClr val=\"000000\"/></a:solidFill>";
    private static final String NO_LINE = "<a:ln><a:noFill/></a:ln>";
    private static final String HATCH = "<a:pattFill prst=\"wdUpDiag\"><a:fgClr><a:srgbClr val=\"000000\"/></a:fgClr><a:bgClr><a:srgbClr val=\"FFFFFF\"/></a:bgClr></a:pattFill>";
    private static final List<String> MARKS = List.of("dash", "diamond", "triangle", "x");
    private static final List<String> DASHES = List.of("solid", "dash", "sysDot", "dashDot");
    private static final int FIRST_AXIS = 1;
    private static final int SECOND_AXIS = 2;

    private final Chart chart;
    private final String sheet;
    private final int header;

    /**
     * @param sheet  the name of the sheet the numbers stand in
     * @param header the row of their header; labels in the first column, then a column for each series
     */
    ChartXml(Chart chart, String sheet, int header) {
        this.chart = chart;
        this.sheet = sheet;
        this.header = header;
    }

    String part() {
        return BEGIN + title(chart.title(), 1200) + "<c:autoTitleDeleted val=\"0\"/><c:plotArea><c:layout/>" + switch (chart.kind()) {
            case RANGES -> ranges();
            case STRETCHES -> stretches();
            case BY_HEIGHT -> byHeight();
        } + "</c:plotArea>" + (chart.kind() == Chart.Kind.STRETCHES ? "" : "<c:legend><c:legendPos val=\"b\"/><c:overlay val=\"0\"/></c:legend>")
                + "<c:plotVisOnly val=\"1\"/><c:dispBlanksAs val=\"gap\"/></c:chart></c:chartSpace>";
    }

    private String ranges() {
        StringBuilder series = new StringBuilder();
        for (int i = 0; i < chart.series().size(); i++) {
            series.append(begin(i)).append("<c:spPr>").append(NO_LINE).append("</c:spPr>").append(mark(i)).append(names()).append(values("val", i + 1))
                    .append("<c:smooth val=\"0\"/></c:ser>");
        }
        return "<c:lineChart><c:grouping val=\"standard\"/><c:varyColors val=\"0\"/>" + series + "<c:marker val=\"1\"/>" + axes() + "</c:lineChart>"
                + nameAxis("b", "minMax") + numberAxis(SECOND_AXIS, "l", chart.axis(), FIRST_AXIS, "");
    }

    private static String mark(int series) {
        return "<c:marker><c:symbol val=\"" + MARKS.get(series % MARKS.size()) + "\"/><c:size val=\"9\"/><c:spPr>" + INK + "<a:ln>" + INK
                + "</a:ln></c:spPr></c:marker>";
    }

    private String stretches() {
        StringBuilder series = new StringBuilder();
        for (int i = 0; i < chart.series().size(); i++) {
            series.append(begin(i)).append("<c:spPr>").append(i == 0 ? "<a:noFill/>" + NO_LINE : HATCH + "<a:ln>" + INK + "</a:ln>")
                    .append("</c:spPr><c:invertIfNegative val=\"0\"/>").append(names()).append(values("val", i + 1)).append("</c:ser>");
        }
        return "<c:barChart><c:barDir val=\"bar\"/><c:grouping val=\"stacked\"/><c:varyColors val=\"0\"/>" + series
                + "<c:gapWidth val=\"60\"/><c:overlap val=\"100\"/>" + axes() + "</c:barChart>"
                + nameAxis("l", "maxMin") + numberAxis(SECOND_AXIS, "b", chart.axis(), FIRST_AXIS, "<c:min val=\"0\"/>");
    }

    private String byHeight() {
        StringBuilder series = new StringBuilder();
        for (int i = 0; i < chart.series().size(); i++) {
            series.append(begin(i)).append("<c:spPr><a:ln w=\"19050\">").append(INK).append("<a:prstDash val=\"").append(DASHES.get(i % DASHES.size()))
                    .append("\"/></a:ln></c:spPr><c:marker><c:symbol val=\"none\"/></c:marker>").append(values("xVal", i + 1)).append(values("yVal", 0))
                    .append("<c:smooth val=\"0\"/></c:ser>");
        }
        return "<c:scatterChart><c:scatterStyle val=\"lineMarker\"/><c:varyColors val=\"0\"/>" + series + axes() + "</c:scatterChart>"
                + numberAxis(FIRST_AXIS, "b", chart.axis(), SECOND_AXIS, "<c:min val=\"0\"/>")
                + numberAxis(SECOND_AXIS, "l", chart.label(), FIRST_AXIS, "<c:min val=\"0\"/>");
    }

    private static String axes() {
        return "<c:axId val=\"" + FIRST_AXIS + "\"/><c:axId val=\"" + SECOND_AXIS + "\"/>";
    }

    private static String nameAxis(String side, String order) {
        return "<c:catAx><c:axId val=\"" + FIRST_AXIS + "\"/><c:scaling><c:orientation val=\"" + order + "\"/></c:scaling><c:delete val=\"0\"/><c:axPos val=\""
                + side + "\"/><c:majorTickMark val=\"none\"/><c:minorTickMark val=\"none\"/><c:tickLblPos val=\"low\"/><c:crossAx val=\"" + SECOND_AXIS
                + "\"/><c:crosses val=\"autoZero\"/></c:catAx>";
    }

    private String numberAxis(int id, String side, String title, int crossing, String least) {
        boolean isBelowTurnedNames = chart.kind() == Chart.Kind.STRETCHES;
        return "<c:valAx><c:axId val=\"" + id + "\"/><c:scaling><c:orientation val=\"minMax\"/>" + least + "</c:scaling><c:delete val=\"0\"/><c:axPos val=\"" + side
                + "\"/><c:majorGridlines><c:spPr><a:ln w=\"3175\"><a:solidFill><a:srgbClr val=\"A6A6A6\"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>"
                + title(title, 1000) + "<c:numFmt formatCode=\"General\" sourceLinked=\"0\"/><c:majorTickMark val=\"out\"/><c:minorTickMark val=\"none\"/>"
                + "<c:tickLblPos val=\"nextTo\"/><c:crossAx val=\"" + crossing + "\"/><c:crosses val=\"" + (isBelowTurnedNames ? "max" : "autoZero") + "\"/></c:valAx>";
    }

    private static String title(String text, int size) {
        return "<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz=\"" + size + "\" b=\"0\"/></a:pPr><a:r><a:rPr lang=\"en-GB\" sz=\"" + size
                + "\" b=\"0\"/><a:t>" + XmlText.escaped(text) + "</a:t></a:r></a:p></c:rich></c:tx><c:overlay val=\"0\"/></c:title>";
    }

    private String begin(int series) {
        return "<c:ser><c:idx val=\"" + series + "\"/><c:order val=\"" + series + "\"/><c:tx><c:strRef><c:f>" + cells(header, header, series + 1)
                + "</c:f><c:strCache><c:ptCount val=\"1\"/><c:pt idx=\"0\"><c:v>" + XmlText.escaped(chart.series().get(series).name())
                + "</c:v></c:pt></c:strCache></c:strRef></c:tx>";
    }

    private String names() {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < chart.labels().size(); i++) {
            points.append("<c:pt idx=\"").append(i).append("\"><c:v>").append(XmlText.escaped(chart.labels().get(i))).append("</c:v></c:pt>");
        }
        return "<c:cat><c:strRef><c:f>" + column(0) + "</c:f><c:strCache><c:ptCount val=\"" + chart.labels().size() + "\"/>" + points
                + "</c:strCache></c:strRef></c:cat>";
    }

    /** @param column 0 for the labels, which are numbers then */
    private String values(String element, int column) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < chart.labels().size(); i++) {
            double value = column == 0 ? Double.parseDouble(chart.labels().get(i)) : ChartSheet.shown(chart.series().get(column - 1).values().get(i));
            if (!Double.isNaN(value)) {
                points.append("<c:pt idx=\"").append(i).append("\"><c:v>").append(value).append("</c:v></c:pt>");
            }
        }
        return "<c:" + element + "><c:numRef><c:f>" + column(column) + "</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val=\""
                + chart.labels().size() + "\"/>" + points + "</c:numCache></c:numRef></c:" + element + ">";
    }

    private String column(int column) {
        return cells(header + 1, header + chart.labels().size(), column);
    }

    private String cells(int from, int to, int column) {
        return new CellRangeAddress(from, to, column, column).formatAsString(sheet, true);
    }
}
