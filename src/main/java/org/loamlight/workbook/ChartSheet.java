package org.loamlight.workbook;

import java.util.List;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlOptions;
import org.loamlight.drawing.Chart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTChartSpace;

/** The sheet of charts: each below its heading, its numbers in a table below it. */
final class ChartSheet {
    static final String NAME = "Charts";
    private static final int FIRST_WIDTH = 44;
    private static final int WIDTH = 14;
    private static final int MOST_SERIES = 4;
    private static final int UNITS_PER_DIGIT = 256;
    private static final int ROWS = 17;
    /** Two lines. */
    private static final float POINTS_OF_HEADER = 30;

    private final XSSFSheet sheet;
    private final Look look;
    private int next;

    private ChartSheet(XSSFWorkbook book, Look look) {
        this.sheet = book.createSheet(NAME);
        this.look = look;
    }

    /** @param none what is said where there is no chart */
    static void write(String title, List<Chart> charts, String none, XSSFWorkbook book, Look look) {
        ChartSheet writer = new ChartSheet(book, look);
        writer.sheet.setColumnWidth(0, FIRST_WIDTH * UNITS_PER_DIGIT);
        for (int i = 1; i <= MOST_SERIES; i++) {
            writer.sheet.setColumnWidth(i, WIDTH * UNITS_PER_DIGIT);
        }
        writer.text(title).setCellStyle(look.ofTitle());
        charts.forEach(writer::chart);
        if (charts.isEmpty()) {
            writer.text(none);
        }
        writer.sheet.setDisplayGridlines(false);
        writer.sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
        writer.sheet.getPrintSetup().setFitHeight((short) 0);
        writer.sheet.setFitToPage(true);
        SheetFrame.keepTitle(writer.sheet);
        writer.sheet.getFooter().setLeft("&A");
        writer.sheet.getFooter().setRight("Page &P of &N");
    }

    private XSSFCell text(String text) {
        XSSFCell cell = sheet.createRow(next++).createCell(0);
        cell.setCellValue(CellText.of(text));
        return cell;
    }

    private void chart(Chart chart) {
        if (next > 1) {
            sheet.setRowBreak(next - 1);
        }
        text(chart.title()).setCellStyle(look.ofHeading());
        int top = next;
        int header = top + ROWS + 1;
        next = header;
        numbers(chart);
        XSSFChart drawn = sheet.createDrawingPatriarch().createChart(new XSSFClientAnchor(0, 0, 0, 0, 0, top, MOST_SERIES, top + ROWS));
        drawn.getGraphicFrame().setName(CellText.of(chart.title()));
        drawn.getGraphicFrame().getCTGraphicalObjectFrame().getNvGraphicFramePr().getCNvPr().setDescr(CellText.of(chart.description()));
        drawn.getCTChartSpace().set(parsed(new ChartXml(chart, NAME, header).part()));
        next++;
    }

    private static CTChartSpace parsed(String part) {
        try {
            return CTChartSpace.Factory.parse(part, new XmlOptions().setLoadReplaceDocumentElement(null));
        } catch (XmlException e) {
            throw new IllegalStateException("The chart is no XML: " + e.getMessage(), e);
        }
    }

    /** To two decimals: more says nothing in a chart; NaN stays. */
    static double shown(double value) {
        return Math.rint(value * 100) / 100;
    }

    private void numbers(Chart chart) {
        XSSFRow header = sheet.createRow(next++);
        cell(header, 0, chart.label());
        for (int i = 0; i < chart.series().size(); i++) {
            cell(header, i + 1, chart.series().get(i).name());
        }
        header.forEach(cell -> cell.setCellStyle(look.ofHeader()));
        header.setHeightInPoints(POINTS_OF_HEADER);
        for (int row = 0; row < chart.labels().size(); row++) {
            XSSFRow cells = sheet.createRow(next++);
            if (chart.kind() == Chart.Kind.BY_HEIGHT) {
                cells.createCell(0).setCellValue(Double.parseDouble(chart.labels().get(row)));
            } else {
                cell(cells, 0, chart.labels().get(row));
            }
            for (int i = 0; i < chart.series().size(); i++) {
                double value = chart.series().get(i).values().get(row);
                XSSFCell cell = cells.createCell(i + 1);
                if (!Double.isNaN(value)) {
                    cell.setCellValue(shown(value));
                }
            }
            cells.forEach(cell -> cell.setCellStyle(look.of(Column.Kind.TEXT)));
            quote(cells.getCell(0), chart.labels().get(row));
        }
    }

    private static void cell(XSSFRow row, int column, String text) {
        row.createCell(column).setCellValue(CellText.of(text));
    }

    private void quote(XSSFCell cell, String text) {
        if (CellText.looksLikeFormula(text)) {
            cell.setCellStyle(look.ofQuoted(Column.Kind.TEXT));
        }
    }
}
