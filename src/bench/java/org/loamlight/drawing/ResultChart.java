package org.loamlight.drawing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Draws the measured table {@code docs/performance.csv} as bars and writes it as a table into {@code docs/performance.md}, between two marks, so that both say
 * the same. A row is {@code chart,bar,median,least,most}; rows of one chart follow each other, a chart's name tells the unit and which way is better.
 */
public final class ResultChart {
    private static final Path TABLE = Path.of("docs", "performance.csv");
    private static final Path PICTURE = Path.of("docs", "performance.svg");
    private static final Path PAGE = Path.of("docs", "performance.md");
    private static final String HEADER = "chart,bar,median,least,most";
    private static final String BEGIN = "<!-- from performance.csv -->\n";
    private static final String END = "<!-- end of performance.csv -->\n";

    private static final int WIDTH = 760;
    private static final int LABELS = 270;
    private static final int BARS = 340;
    private static final int HEADING = 34;
    private static final int ROW = 26;
    private static final int BAR = 16;
    private static final int MARGIN = 16;

    private ResultChart() {
    }

    /** Numbers as they are written in the table; they are printed so, too. */
    private record Bar(String name, String median, String least, String most) {
        double of(String number) {
            return Double.parseDouble(number);
        }
    }

    /** @param arguments "--check" to write nothing and fail where picture or page are not those of the table */
    public static void main(String[] arguments) {
        try {
            deliver(arguments);
        } catch (IOException e) {
            System.err.println(e.getMessage());
            System.exit(1);
        }
    }

    private static void deliver(String... arguments) throws IOException {
        Map<String, List<Bar>> charts = read(Files.readAllLines(TABLE));
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN);
        int end = page.indexOf(END);
        if (begin < 0 || end < begin) {
            throw new IOException(PAGE + " has no place for the table; write the lines " + BEGIN.strip() + " and " + END.strip() + " where it shall stand");
        }
        deliver(PAGE, page.substring(0, begin) + BEGIN + "\n" + table(charts) + "\n" + page.substring(end), arguments);
        deliver(PICTURE, picture(charts), arguments);
    }

    private static void deliver(Path file, String text, String... arguments) throws IOException {
        if (!List.of(arguments).contains("--check")) {
            Files.writeString(file, text);
        } else if (!Files.exists(file) || !Files.readString(file).equals(text)) {
            throw new IOException(file + " does not say what " + TABLE + " says; run src/bench/chart");
        }
    }

    private static Map<String, List<Bar>> read(List<String> lines) throws IOException {
        Map<String, List<Bar>> charts = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            String[] cells = lines.get(i).split(",", -1);
            if (cells.length != HEADER.split(",").length || (i == 0) != lines.get(i).equals(HEADER)) {
                throw new IOException(TABLE + ":" + (i + 1) + ": \"" + lines.get(i) + "\" is no row of " + HEADER);
            }
            if (i > 0) {
                charts.computeIfAbsent(cells[0], name -> new ArrayList<>()).add(bar(cells, i + 1));
            }
        }
        return charts;
    }

    private static Bar bar(String[] cells, int line) throws IOException {
        try {
            Bar bar = new Bar(cells[1], cells[2], cells[3], cells[4]);
            if (bar.of(bar.least) > 0 && bar.of(bar.least) <= bar.of(bar.median) && bar.of(bar.median) <= bar.of(bar.most)) {
                return bar;
            }
        } catch (NumberFormatException e) {
            // Told below, with the line it stands in.
        }
        throw new IOException(TABLE + ":" + line + ": median, least and most are numbers above 0, the median between the others");
    }

    private static String table(Map<String, List<Bar>> charts) {
        return charts.entrySet().stream().map(chart -> "| " + chart.getKey() + " | median | least to most |\n|---|---|---|\n"
                + chart.getValue().stream().map(bar -> "| " + bar.name + " | " + bar.median + " | " + bar.least + " to " + bar.most + " |\n")
                .collect(Collectors.joining())).collect(Collectors.joining("\n"));
    }

    private static String picture(Map<String, List<Bar>> charts) {
        int rows = charts.values().stream().mapToInt(List::size).sum();
        int height = 2 * MARGIN + charts.size() * HEADING + rows * ROW;
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %1$d %2$d" role="img" aria-labelledby="title desc" font-family="sans-serif" font-size="13">
                <title id="title">How fast Loamlight audits</title>
                <desc id="desc">%s</desc>
                <rect width="100%%" height="100%%" fill="#fbfaf6"/>
                """, WIDTH, height, escaped(description(charts))));
        int top = MARGIN;
        for (Map.Entry<String, List<Bar>> chart : charts.entrySet()) {
            svg.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\" font-weight=\"bold\" fill=\"#33302a\">%s</text>%n", MARGIN, top + 20, escaped(chart.getKey())));
            top += HEADING;
            double most = chart.getValue().stream().mapToDouble(bar -> bar.of(bar.most)).max().orElseThrow();
            for (Bar bar : chart.getValue()) {
                svg.append(drawn(bar, BARS / most, top));
                top += ROW;
            }
        }
        return svg.append("</svg>\n").toString();
    }

    /** The bar is the median; the line across its end runs from the least to the most. */
    private static String drawn(Bar bar, double scale, int top) {
        double middle = top + BAR / 2.0;
        return String.format(Locale.ROOT, """
                <text x="%d" y="%.1f" text-anchor="end" fill="#33302a">%s</text>
                <rect x="%d" y="%d" width="%.1f" height="%d" fill="#7d8f5a"/>
                <path d="M%.1f %.1fH%.1f" stroke="#33302a" stroke-width="2"/>
                <text x="%d" y="%.1f" fill="#33302a">%s</text>
                """, LABELS - 8, middle + 4.5, escaped(bar.name), LABELS, top, scale * bar.of(bar.median), BAR, LABELS + scale * bar.of(bar.least), middle,
                LABELS + scale * bar.of(bar.most), LABELS + BARS + 8, middle + 4.5, escaped(bar.median));
    }

    private static String description(Map<String, List<Bar>> charts) {
        return charts.entrySet().stream().map(chart -> chart.getKey() + ": " + chart.getValue().stream()
                .map(bar -> bar.name + " " + bar.median + ", from " + bar.least + " to " + bar.most).collect(Collectors.joining("; ")) + ".").collect(Collectors.joining(" "));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
