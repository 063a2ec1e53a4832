package org.loamlight.drawing;

import java.util.stream.DoubleStream;

/**
 * How much smaller a picture is than the enclosure.
 *
 * @param ratio millimetres of the enclosure on a millimetre of paper: 10 for 1:10
 */
record Scale(double ratio) {
    /** Widest view (mm): of 180 mm, the rest is room for sizes and names. */
    static final double WIDEST = 134;
    /** Most that both views together may be high (mm), so that they share an A4 page with the heading. */
    static final double HIGHEST = 135;
    private static final double MILLIMETRES = 10;
    private static final double[] RATIOS = {1, 2, 2.5, 4, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200};

    /** The largest of the usual scales at which both fit (cm); 1:200 for what is larger than any room. */
    static Scale fitting(double length, double stacked) {
        return new Scale(DoubleStream.of(RATIOS).filter(ratio -> length * MILLIMETRES / ratio <= WIDEST && stacked * MILLIMETRES / ratio <= HIGHEST)
                .findFirst().orElse(RATIOS[RATIOS.length - 1]));
    }

    /** Millimetres on paper of centimetres in the enclosure. */
    double paper(double centimetres) {
        return centimetres * MILLIMETRES / ratio;
    }

    /** "1:10", "1:7.5". */
    String inWords() {
        return "1:" + (ratio == Math.rint(ratio) ? String.valueOf((int) ratio) : String.valueOf(ratio));
    }
}
