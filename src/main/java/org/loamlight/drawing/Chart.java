package org.loamlight.drawing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Numbers to be drawn as a chart beside their table.
 *
 * @param description the same in words, for who cannot see it
 * @param axis        what is counted along the axis of the numbers
 * @param labels      header of the first column, then what stands in it: names, or for {@link Kind#BY_HEIGHT} the heights
 * @param series      one or more
 */
public record Chart(Kind kind, String title, String description, String axis, String label, List<String> labels, List<Series> series) {
    public Chart {
        labels = List.copyOf(labels);
        series = List.copyOf(series);
        int rows = labels.size();
        if (series.isEmpty() || series.stream().anyMatch(one -> one.values().size() != rows)) {
            throw new IllegalArgumentException("A chart of " + rows + " labels needs series of as many values");
        }
    }

    /** How the numbers are drawn. */
    public enum Kind {
        /** Points over names: a range and what was found. */
        RANGES,
        /** Bars from where something begins, as far as it reaches. */
        STRETCHES,
        /** Lines of a number over the height, which goes up the paper. */
        BY_HEIGHT
    }

    /** A column of numbers; NaN where there is none. */
    public record Series(String name, List<Double> values) {
        public Series {
            values = List.copyOf(values);
        }

        /** The same number all along. */
        static Series constant(String name, double value, int rows) {
            return new Series(name, IntStream.range(0, rows).mapToObj(i -> value).toList());
        }

        public boolean isEmpty() {
            return values.stream().allMatch(value -> value.isNaN());
        }
    }
}
