package org.loamlight.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;

/** Numbers with units for print: rounded as a keeper would, with a decimal point whatever the locale. */
final class Amounts {
    /** Expanded uncertainty in print is twice the standard uncertainty (JCGM 100:2008, 6.2.1; about 95 %). */
    private static final int COVERAGE_FACTOR = 2;
    private static final int MOST_DIGITS = 6;
    private static final int FEWEST_DIGITS = 2;
    private static final int MOST_DECIMALS = 6;
    /** Takes away the noise of doubles before a limit is rounded to its safe side. */
    private static final MathContext WITHOUT_NOISE = new MathContext(10, RoundingMode.HALF_EVEN);

    private final Units units;

    Amounts(Units units) {
        this.units = units;
    }

    /** To the nearest digit a keeper can use. */
    String amount(Amount amount) {
        Unit unit = shown(amount.unit());
        return text(rounded(converted(amount, unit), unit, RoundingMode.HALF_EVEN), unit);
    }

    /** In the unit it is printed in, without the noise of doubles. */
    double plain(Amount amount) {
        return converted(amount, shown(amount.unit())).round(WITHOUT_NOISE).doubleValue();
    }

    String symbol(Unit unit) {
        return shown(unit).symbol();
    }

    /** A lower limit, never rounded to less than it is: who keeps the printed number keeps the limit. */
    String atLeast(Amount amount) {
        Unit unit = shown(amount.unit());
        return text(rounded(converted(amount, unit), unit, RoundingMode.CEILING), unit);
    }

    /** An upper limit, never rounded to more than it is. */
    String atMost(Amount amount) {
        Unit unit = shown(amount.unit());
        return text(rounded(converted(amount, unit), unit, RoundingMode.FLOOR), unit);
    }

    /** A difference of two values of a topic, rounded up: through the factor of the unit, never through an offset. */
    String difference(Topic topic, double difference) {
        Unit unit = shown(topic);
        BigDecimal converted = BigDecimal.valueOf(topic.unit().convertDifference(difference, unit));
        return text(rounded(converted, unit, RoundingMode.CEILING), unit);
    }

    /** A value with its expanded uncertainty, both to the digit of the uncertainty; without ± when there is none. */
    String value(Quantity quantity) {
        return quantity.uncertainty() == 0 ? amount(quantity.amount()) : value(quantity, digit(quantity, shown(quantity.topic())));
    }

    /** How far a value may reach within its expanded uncertainty, to the digit of that. */
    String reach(Quantity quantity) {
        Unit unit = shown(quantity.topic());
        BigDecimal farthest = converted(quantity.amount(), unit).add(expanded(quantity, unit));
        return text(farthest.setScale(digit(quantity, unit), RoundingMode.HALF_EVEN), unit);
    }

    /** As {@link #value(Quantity)}, with at least as many digits as a limit beside it shows: for values close to the limit. */
    String valueToTheDigitOfLimits(Quantity quantity) {
        Unit unit = shown(quantity.topic());
        return quantity.uncertainty() == 0 ? amount(quantity.amount()) : value(quantity, Math.max(decimals(unit), digit(quantity, unit)));
    }

    private String value(Quantity quantity, int decimals) {
        Unit unit = shown(quantity.topic());
        BigDecimal value = converted(quantity.amount(), unit).setScale(decimals, RoundingMode.HALF_EVEN);
        BigDecimal expanded = expanded(quantity, unit).setScale(decimals, RoundingMode.HALF_EVEN);
        return text(value, unit) + " ± " + text(expanded, unit);
    }

    /** The value as {@link #value(Quantity)} prints it, back in the topic's unit. */
    double printed(Quantity quantity) {
        return shown(quantity.topic()).convert(shownValue(quantity), quantity.topic().unit());
    }

    private BigDecimal shownValue(Quantity quantity) {
        Unit unit = shown(quantity.topic());
        BigDecimal value = converted(quantity.amount(), unit);
        return quantity.uncertainty() == 0 ? rounded(value, unit, RoundingMode.HALF_EVEN)
                : value.setScale(digit(quantity, unit), RoundingMode.HALF_EVEN);
    }

    /** The digits of {@link #value(Quantity)} without its unit: "31 ± 2". */
    String number(Quantity quantity) {
        String value = shownValue(quantity).toPlainString();
        Unit unit = shown(quantity.topic());
        return quantity.uncertainty() == 0 ? value
                : value + " ± " + expanded(quantity, unit).setScale(digit(quantity, unit), RoundingMode.HALF_EVEN).toPlainString();
    }

    /** The unit of {@link #value(Quantity)} as it stands behind its first number; empty for plain numbers. */
    String unit(Quantity quantity) {
        BigDecimal value = shownValue(quantity);
        return text(value, shown(quantity.topic())).substring(value.toPlainString().length()).strip();
    }

    private static BigDecimal expanded(Quantity quantity, Unit unit) {
        double expanded = quantity.topic().unit().convertDifference(quantity.uncertainty() * COVERAGE_FACTOR, unit);
        return new BigDecimal(expanded).round(WITHOUT_NOISE);
    }

    /** Decimals of the one digit of the uncertainty that is shown; two digits where the first is a 1 (JCGM 100:2008, 7.2.6: two suffice). */
    private static int digit(Quantity quantity, Unit unit) {
        BigDecimal expanded = expanded(quantity, unit).round(new MathContext(1, RoundingMode.FLOOR));
        int decimals = expanded.stripTrailingZeros().scale();
        boolean one = expanded.unscaledValue().intValue() == 1;
        return Math.min(MOST_DECIMALS, one ? decimals + 1 : decimals);
    }

    private static BigDecimal converted(Amount amount, Unit unit) {
        boolean step = amount.unit() == Unit.KELVIN_STEP;
        double value = step ? Unit.CELSIUS.convertDifference(amount.value(), unit) : amount.unit().convert(amount.value(), unit);
        return BigDecimal.valueOf(value);
    }

    private static BigDecimal rounded(BigDecimal value, Unit unit, RoundingMode mode) {
        BigDecimal exact = value.round(WITHOUT_NOISE);
        if (exact.signum() == 0) {
            return BigDecimal.ZERO;
        }
        int whole = exact.precision() - exact.scale();
        int scale = Math.min(MOST_DECIMALS, Math.max(decimals(unit), FEWEST_DIGITS - whole));
        return stripped(exact.setScale(Math.min(scale, MOST_DIGITS - whole), mode));
    }

    private static BigDecimal stripped(BigDecimal value) {
        return value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    }

    private static int decimals(Unit unit) {
        return switch (unit) {
            case PIECE, GRAM, MILLILITRE, MINUTE, WATT, PERCENT, SQUARE_CENTIMETRE -> 0;
            case METRE, FOOT, SQUARE_METRE, KILOGRAM, FRACTION -> 2;
            default -> 1;
        };
    }

    private static String text(BigDecimal value, Unit unit) {
        String number = value.toPlainString();
        return switch (unit) {
            case PIECE, FRACTION, UV_INDEX -> number;
            case DAY -> Sentences.of(number.equals("1") ? "unit.day" : "unit.days", number);
            default -> number + " " + unit.symbol();
        };
    }

    Unit shown(Topic topic) {
        return units == Units.US ? topic.unitInUs() : topic.unit();
    }

    /** The unit an amount is printed in; units that belong to no system stay. */
    private Unit shown(Unit unit) {
        return units == Units.US ? inUs(unit) : inMetric(unit);
    }

    private static Unit inUs(Unit unit) {
        return switch (unit) {
            case MILLIMETRE, CENTIMETRE -> Unit.INCH;
            case METRE -> Unit.FOOT;
            case SQUARE_METRE, SQUARE_CENTIMETRE -> Unit.SQUARE_FOOT;
            case LITRE -> Unit.US_GALLON;
            case MILLILITRE -> Unit.US_FLUID_OUNCE;
            case GRAM -> Unit.OUNCE;
            case KILOGRAM -> Unit.POUND;
            case CELSIUS, KELVIN_STEP -> Unit.FAHRENHEIT;
            default -> unit;
        };
    }

    private static Unit inMetric(Unit unit) {
        return switch (unit) {
            case INCH -> Unit.CENTIMETRE;
            case FOOT -> Unit.METRE;
            case SQUARE_FOOT -> Unit.SQUARE_METRE;
            case US_GALLON -> Unit.LITRE;
            case US_FLUID_OUNCE -> Unit.MILLILITRE;
            case OUNCE -> Unit.GRAM;
            case POUND -> Unit.KILOGRAM;
            case FAHRENHEIT, KELVIN_STEP -> Unit.CELSIUS;
            default -> unit;
        };
    }
}
