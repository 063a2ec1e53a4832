package org.loamlight.setup;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.Arrays;
import org.loamlight.quantity.Dimension;
import org.loamlight.quantity.Unit;

/**
 * Reads an answer as people write it: "120 cm", "4 ft 2 in", "78 °F ± 1 °F", "24 to 26 °C", "every 2 d", "3.1 ± 10 %".
 * A stated ± is taken as limits (u = a / sqrt(3), JCGM 100:2008, 4.3.7); so is half the width of a range.
 */
final class MeasureText {
    private static final String NUMBER = "[+-]?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?";
    private static final Pattern ONE = Pattern.compile("(" + NUMBER + ")\\s*([^\\d\\s.,+±-][^\\d.,+±-]*?)?");
    private static final Pattern FEET_INCHES = Pattern.compile("(\\d+)\\s*(ft|feet|foot|'|′)\\s*(\\d+(?:\\.\\d+)?)\\s*(in|inch|inches|\"|″)");
    private static final Pattern PLUS_MINUS = Pattern.compile("(.+?)\\s*(?:±|\\+/-)\\s*(.+)");
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\bto\\b|–|(?<=[\\d\\p{L}%°])\\s*-\\s*(?=\\d))\\s*(.+)");
    private static final Map<String, String> EVERY = Map.of("daily", "1 d", "every day", "1 d", "weekly", "7 d", "every week", "7 d",
            "every other day", "2 d");

    private final Answer answer;
    private final Instrument instrument;

    private MeasureText(Answer answer, Instrument instrument) {
        this.answer = answer;
        this.instrument = instrument;
    }

    /** Thrown for a text that is no measure; carries what was found and what is allowed. */
    static final class NoMeasure extends Exception {
        private final String allowed;

        NoMeasure(String found, String allowed) {
            super(found);
            this.allowed = allowed;
        }

        String allowed() {
            return allowed;
        }
    }

    static Measure read(String text, Answer answer, Instrument instrument) throws NoMeasure {
        return new MeasureText(answer, instrument).whole(text.strip());
    }

    private Measure whole(String text) throws NoMeasure {
        String plain = answer == Answer.INTERVAL ? EVERY.getOrDefault(text, text.replaceFirst("^every\\s+", "")) : text;
        Matcher plusMinus = PLUS_MINUS.matcher(plain);
        if (plusMinus.matches()) {
            double value = value(plusMinus.group(1));
            return measure(value, halfWidth(plusMinus.group(2), value, text));
        }
        Matcher range = RANGE.matcher(plain);
        return range.matches() ? range(range.group(1), range.group(2), text) : single(plain);
    }

    private Measure single(String text) throws NoMeasure {
        double value = value(text);
        return measure(value, answer.halfWidthAt(value, instrument));
    }

    private Measure range(String from, String to, String text) throws NoMeasure {
        double high = value(to);
        double low = value(carriesUnit(from) ? from : from + " " + unitOf(to));
        if (low > high) {
            throw new NoMeasure("\"" + text + "\" runs from high to low", "write the lower value first");
        }
        return measure((low + high) / 2, (high - low) / 2);
    }

    private Measure measure(double value, double halfWidth) {
        return new Measure(value, halfWidth / StrictMath.sqrt(3), answer.unit());
    }

    private double value(String text) throws NoMeasure {
        Matcher feetInches = FEET_INCHES.matcher(text);
        if (feetInches.matches() && answer.unit().dimension() == Dimension.LENGTH) {
            return inRange(Unit.FOOT.convert(new BigDecimal(feetInches.group(1)), answer.unit())
                    + Unit.INCH.convert(new BigDecimal(feetInches.group(3)), answer.unit()), text);
        }
        Matcher one = one(text);
        return inRange(unit(one, text).convert(number(one.group(1), text), answer.unit()), text);
    }

    private double halfWidth(String text, double value, String whole) throws NoMeasure {
        Matcher one = one(text);
        double size = number(one.group(1), whole).abs().doubleValue();
        boolean percentOfValue = "%".equals(one.group(2)) && answer.unit().dimension() != Dimension.FRACTION;
        return percentOfValue ? Math.abs(value) * size / 100 : differenceUnit(one, whole).convertDifference(size, answer.unit());
    }

    private Unit differenceUnit(Matcher one, String whole) throws NoMeasure {
        boolean kelvin = "K".equals(one.group(2)) && answer.unit().dimension() == Dimension.TEMPERATURE;
        return kelvin ? Unit.CELSIUS : unit(one, whole);
    }

    private Matcher one(String text) throws NoMeasure {
        Matcher one = ONE.matcher(text.strip());
        if (!one.matches()) {
            String hint = text.contains(",") ? "write a decimal point, not a comma, such as " + example() : "write a number and its unit, such as " + example();
            throw new NoMeasure("\"" + shortened(text) + "\" is no measured value", hint + ", or \"not looked\"");
        }
        return one;
    }

    private Unit unit(Matcher one, String text) throws NoMeasure {
        String spelt = one.group(2);
        if (spelt == null || spelt.isBlank()) {
            if (answer.unit() == Unit.UV_INDEX) {
                return Unit.UV_INDEX;
            }
            throw new NoMeasure("\"" + shortened(text) + "\" has no unit", "add one of " + units());
        }
        Optional<Unit> unit = Unit.spelt(spelt.strip()).filter(known -> known.dimension() == answer.unit().dimension());
        return unit.orElseThrow(() -> new NoMeasure("the unit \"" + shortened(spelt.strip()) + "\" is not one for this", "use one of " + units()));
    }

    private static BigDecimal number(String literal, String text) throws NoMeasure {
        BigDecimal number = new BigDecimal(literal);
        if (Math.abs((long) number.precision() - number.scale()) > 12) {
            throw new NoMeasure("\"" + shortened(text) + "\" is no possible size", "check the number");
        }
        return number;
    }

    private double inRange(double value, String text) throws NoMeasure {
        if (!(value >= answer.least() && value <= answer.most())) {
            throw new NoMeasure("\"" + shortened(text) + "\" cannot be",
                    "it must lie between " + plain(answer.least()) + " and " + plain(answer.most()) + " " + answer.unit().symbol());
        }
        return value;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private boolean carriesUnit(String text) {
        Matcher one = ONE.matcher(text.strip());
        return !one.matches() || one.group(2) != null;
    }

    private static String unitOf(String text) {
        Matcher one = ONE.matcher(text.strip());
        return one.matches() && one.group(2) != null ? one.group(2) : "";
    }

    private String units() {
        return Arrays.stream(Unit.values()).filter(unit -> unit.dimension() == answer.unit().dimension() && !unit.symbol().isEmpty())
                .map(Unit::symbol).collect(Collectors.joining(", "));
    }

    private String example() {
        return answer.unit() == Unit.UV_INDEX ? "\"3.1\"" : "\"12 " + answer.unit().symbol() + "\"";
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }
}
