package org.loamlight.physics;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * Height of the sun by the low-precision equations of Meeus, Astronomical Algorithms, chapters 12 and 25, which are those
 * of the NOAA solar calculator (coefficients from memory; good to about 0.01 degrees): an oracle that shares nothing with
 * the library that is tested.
 */
record LowPrecisionSun(double latitudeDegrees, double longitudeDegrees) {

    private static final double SECONDS_PER_DAY = 86_400;
    private static final int SAMPLE_SECONDS = 30;
    /** 2000-01-01 12:00 UT, from which the equations count days. */
    private static final Instant EPOCH = Instant.parse("2000-01-01T12:00:00Z");

    /** Height of the centre of the sun (degrees), without refraction. */
    double heightDegrees(Instant at) {
        double days = (at.getEpochSecond() - EPOCH.getEpochSecond()) / SECONDS_PER_DAY;
        double centuries = days / 36_525;
        double anomaly = radians(357.52911 + 35_999.05029 * centuries);
        double centre = 1.914602 * StrictMath.sin(anomaly) + 0.019993 * StrictMath.sin(2 * anomaly)
                + 0.000289 * StrictMath.sin(3 * anomaly);
        double node = radians(125.04 - 1934.136 * centuries);
        double longitude = radians(280.46646 + 36_000.76983 * centuries + centre - 0.00569 - 0.00478 * StrictMath.sin(node));
        double obliquity = radians(23.439291 - 0.0130042 * centuries + 0.00256 * StrictMath.cos(node));
        double ascension = StrictMath.atan2(StrictMath.cos(obliquity) * StrictMath.sin(longitude), StrictMath.cos(longitude));
        double declination = StrictMath.asin(StrictMath.sin(obliquity) * StrictMath.sin(longitude));
        double hourAngle = radians(280.46061837 + 360.98564736629 * days + longitudeDegrees) - ascension;
        double latitude = StrictMath.toRadians(latitudeDegrees);
        return StrictMath.toDegrees(StrictMath.asin(StrictMath.sin(latitude) * StrictMath.sin(declination)
                + StrictMath.cos(latitude) * StrictMath.cos(declination) * StrictMath.cos(hourAngle)));
    }

    /** Hours (h) of the mean solar day in which the sun stands higher than that, in steps of half a minute. */
    double hoursAbove(double degrees, LocalDate on) {
        long midnight = on.atStartOfDay().toEpochSecond(ZoneOffset.UTC) - StrictMath.round(240 * longitudeDegrees);
        int above = 0;
        for (int second = SAMPLE_SECONDS / 2; second < SECONDS_PER_DAY; second += SAMPLE_SECONDS) {
            if (heightDegrees(Instant.ofEpochSecond(midnight + second)) > degrees) {
                above++;
            }
        }
        return above * SAMPLE_SECONDS / 3600.0;
    }

    private static double radians(double degrees) {
        return StrictMath.toRadians(degrees % 360);
    }
}
