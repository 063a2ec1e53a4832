package org.loamlight.setup;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.quantity.Dimension;
import org.loamlight.quantity.Unit;

/**
 * Reads an answer as people write it: "120 cm", "4 ft 2 in", "78 °F ± 1 °F", "24 to 26 °C", "every 2 d", "3.1 ± 10 %".
 * A stated ± is taken as limits (u = a / sqrt(3), JCGM 100:2008, 4.3.7); so is half the width of a range.
 */
final class MeasureText {
    /** Longer than any way to write one value with its ±; what is longer is never put through a pattern. */
    private static final int LONGEST = 60;
    /** Powers of ten between which every size of an enclosure and its parts lies, in any unit. */
    private static final int LARGEST_POWER = 12;

    private static final String NUMBER = "[+-]?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d{1,3})?";
    private static final String UNIT = "[^\\d\\s.,+±-][^\\d.,+±-]*?";
    private static final Pattern ONE = Pattern.compile("(" + NUMBER + ")\\s*(" + UNIT + ")?");
    private static final Pattern COMPOUND = Pattern.compile("(\\d+)\\s*(" + UNIT + ")\\s*(\\d+(?:\\.\\d+)?)\\s*(" + UNIT + ")");
    private static final Pattern PLUS_MINUS = Pattern.compile("(.+?)\\s*(?:±|\\+/-)\\s*(.+)");
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\bto\\b|–|(?<!\\d[eE])-)\\s*(.+)");
    private static final Pattern SPACE = Pattern.compile("\\h");
    private static final Pattern SPACE_BEHIND_DEGREE = Pattern.compile("° +");
    /** Digits of a number that is read without the patterns; far below {@link #LARGEST_POWER}. */
    private static final int MOST_PLAIN_DIGITS = 9;
    private static final Pattern EVERY_WORD = Pattern.compile("^(?i:every)\\s+");
    /** What is never done is done at the longest interval there is. */
    private static final String NEVER = plain(Answer.INTERVAL.most()) + " d";
    private static final Map<String, String> EVERY = Map.of("daily", "1 d", "every day", "1 d", "once a day", "1 d", "twice a day", "0.5 d",
            "weekly", "7 d", "every week", "7 d", "once a week", "7 d", "twice a week", "3.5 d", "every other day", "2 d",
            "never", NEVER);

    /** A larger unit with the smaller one it is written with, and how many of those make one of it. */
    private record Pair(Unit large, Unit small, int times) {
    }

    private static final List<Pair> PAIRS = List.of(new Pair(Unit.FOOT, Unit.INCH, 12), new Pair(Unit.POUND, Unit.OUNCE, 16));

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

    /** Reads an answer as it stands in the file: a text, or a plain number where there is no unit to forget. */
    static Measure read(JsonValue value, Answer answer, Instrument instrument) throws NoMeasure {
        if (value instanceof JsonValue.JsonText text) {
            return read(text.text(), answer, instrument);
        }
        if (value instanceof JsonValue.JsonNumber number && answer == Answer.UV_INDEX) {
            return read(number.literal(), answer, instrument);
        }
        throw new NoMeasure("found " + value.quoted(), "a text with number and unit is allowed, such as " + example(answer) + ", or \"not looked\"");
    }

    /**
     * Reads one answer.
     *
     * @param instrument what it was read with, for the ± of an answer that states none
     */
    static Measure read(String text, Answer answer, Instrument instrument) throws NoMeasure {
        MeasureText reader = new MeasureText(answer, instrument);
        if (text.length() > LONGEST) {
            throw reader.noMeasure(text);
        }
        return reader.whole(typed(text));
    }

    /** Whether an interval is the answer "never". */
    static boolean isNever(Measure interval) {
        return interval.isKnown() && interval.value() >= Answer.INTERVAL.most();
    }

    /** How such an answer looks, in quotes. */
    static String example(Answer answer) {
        return answer.unit() == Unit.UV_INDEX ? "\"3.1\"" : "\"12 " + answer.unit().symbol() + "\"";
    }

    /** One spelling for what word processors and telephones put in place of plain characters. */
    private static String typed(String text) {
        if (isTypedPlainly(text)) {
            return text.strip();
        }
        String spaced = SPACE.matcher(text).replaceAll(" ");
        String plain = spaced.replace('\u2212', '-').replace('\u2019', '\'').replace('\u201D', '"').replace('\u00BA', '°')
                .replace("\u2103", "°C").replace("\u2109", "°F");
        return SPACE_BEHIND_DEGREE.matcher(plain).replaceAll("°").strip();
    }

    /** Whether there is nothing to replace: only printable ASCII, ± and a degree sign right before its letter. */
    private static boolean isTypedPlainly(String text) {
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            boolean isPlain = c >= ' ' && c <= '~' || c == '±' || c == '°' && !text.startsWith(" ", at + 1);
            if (!isPlain) {
                return false;
            }
        }
        return true;
    }

    private Measure whole(String text) throws NoMeasure {
        String plain = answer == Answer.INTERVAL ? interval(text) : text;
        double one = plainValue(plain);
        if (!Double.isNaN(one)) {
            return single(one);
        }
        Matcher plusMinus = PLUS_MINUS.matcher(plain);
        if (plusMinus.matches()) {
            double value = value(withUnit(plusMinus.group(1), plusMinus.group(2)));
            return measure(value, halfWidth(plusMinus.group(2), value));
        }
        Matcher range = RANGE.matcher(plain);
        return range.matches() ? range(range.group(1), range.group(2), text) : single(value(plain));
    }

    /**
     * The value of a text as nearly all are written, "120 cm" or "24.5 °C", in the unit of the answer. NaN for every other, also for
     * one that cannot be: that is left to the patterns, which read the same and say what is wrong.
     */
    private double plainValue(String text) {
        int end = endOfNumber(text);
        if (end == 0 || end > MOST_PLAIN_DIGITS) {
            return Double.NaN;
        }
        Optional<Unit> unit = end == text.length() && answer.unit() == Unit.UV_INDEX ? Optional.of(Unit.UV_INDEX)
                : unit(text.substring(end));
        if (unit.isEmpty()) {
            return Double.NaN;
        }
        double value = unit.get().convert(new BigDecimal(text.substring(0, end)), answer.unit());
        return isInRange(value) ? value : Double.NaN;
    }

    /** Where the number ends that a text begins with, digits with or without a decimal point between them; 0 when there is none. */
    private static int endOfNumber(String text) {
        int whole = endOfDigits(text, 0);
        boolean hasPoint = whole > 0 && whole < text.length() && text.charAt(whole) == '.';
        int end = hasPoint ? endOfDigits(text, whole + 1) : whole;
        return hasPoint && end == whole + 1 ? 0 : end;
    }

    private static int endOfDigits(String text, int start) {
        int end = start;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    private static String interval(String text) {
        String often = EVERY.get(text.toLowerCase(Locale.ROOT));
        if (often != null) {
            return often;
        }
        return EVERY_WORD.matcher(text).replaceFirst("");
    }

    private Measure single(double value) {
        return measure(value, answer.halfWidthAt(value, instrument));
    }

    private Measure range(String from, String to, String text) throws NoMeasure {
        double high = value(to);
        double low = value(withUnit(from, to));
        if (low > high) {
            throw new NoMeasure(Quoted.of(text) + " runs from high to low", "write the lower value first");
        }
        return low == high ? single(high) : measure((low + high) / 2, (high - low) / 2);
    }

    private Measure measure(double value, double halfWidth) {
        return new Measure(value, halfWidth / StrictMath.sqrt(3), answer.unit());
    }

    /** "78 ± 1 °F" and "24 to 26 °C" say their unit once. */
    private String withUnit(String text, String saysIt) {
        Matcher bare = ONE.matcher(text);
        Matcher full = ONE.matcher(saysIt);
        boolean isShared = bare.matches() && bare.group(2) == null && full.matches() && full.group(2) != null
                && unit(full.group(2)).isPresent();
        return isShared ? text + " " + full.group(2) : text;
    }

    private double value(String text) throws NoMeasure {
        Matcher compound = COMPOUND.matcher(text);
        if (!ONE.matcher(text).matches() && compound.matches()) {
            return inRange(compound(compound, text), text);
        }
        Matcher one = one(text);
        return inRange(requiredUnit(one, text).convert(number(one.group(1), text), answer.unit()), text);
    }

    private double compound(Matcher parts, String text) throws NoMeasure {
        Optional<Unit> large = unit(parts.group(2));
        Optional<Unit> small = unit(parts.group(4));
        Pair pair = PAIRS.stream().filter(one -> large.equals(Optional.of(one.large)) && small.equals(Optional.of(one.small))).findFirst()
                .orElseThrow(() -> noMeasure(text));
        BigDecimal rest = number(parts.group(3), text);
        if (rest.compareTo(BigDecimal.valueOf(pair.times)) >= 0) {
            throw new NoMeasure(Quoted.of(text) + " has " + rest.toPlainString() + " " + pair.small.symbol(),
                    "write less than " + pair.times + " " + pair.small.symbol() + " beside " + pair.large.symbol());
        }
        BigDecimal whole = number(parts.group(1), text).multiply(BigDecimal.valueOf(pair.times)).add(rest);
        return pair.small.convert(whole, answer.unit());
    }

    /** The ±a behind the sign, in the unit of the answer. */
    private double halfWidth(String text, double value) throws NoMeasure {
        Matcher one = one(text);
        BigDecimal size = number(one.group(1), text);
        if (size.signum() <= 0) {
            throw new NoMeasure("\"± " + Quoted.plain(text) + "\" is no uncertainty",
                    "no instrument is exact; write how far it may be off, or leave out the ±");
        }
        double halfWidth = isShareOfValue(one) ? Math.abs(value) * size.doubleValue() / 100
                : differenceUnit(one, text).convertDifference(size.doubleValue(), answer.unit());
        if (halfWidth > answer.most() - answer.least()) {
            throw new NoMeasure("\"± " + Quoted.plain(text) + "\" is wider than everything possible", "check the number behind the ±");
        }
        return halfWidth;
    }

    private boolean isShareOfValue(Matcher one) throws NoMeasure {
        boolean isPercent = one.group(2) != null && Unit.spelt(one.group(2).strip()).equals(Optional.of(Unit.PERCENT));
        if (isPercent && answer.unit().dimension() == Dimension.TEMPERATURE) {
            throw new NoMeasure("\"± " + Quoted.plain(one.group()) + "\" of a temperature says nothing", "write it in °C or °F, such as \"± 1 °C\"");
        }
        return isPercent && answer.unit().dimension() != Dimension.FRACTION;
    }

    private Unit differenceUnit(Matcher one, String text) throws NoMeasure {
        boolean isKelvin = one.group(2) != null && Unit.spelt(one.group(2).strip()).equals(Optional.of(Unit.KELVIN_STEP))
                && answer.unit().dimension() == Dimension.TEMPERATURE;
        return isKelvin ? Unit.CELSIUS : requiredUnit(one, text);
    }

    private Matcher one(String text) throws NoMeasure {
        Matcher one = ONE.matcher(text.strip());
        if (!one.matches()) {
            throw noMeasure(text);
        }
        return one;
    }

    private NoMeasure noMeasure(String text) {
        String whole = answer.unit() == Unit.UV_INDEX ? "write a number" : "write a number and its unit";
        String hint = text.contains(",") ? "write a decimal point, not a comma" : whole;
        return new NoMeasure(Quoted.of(text) + " is no measured value", hint + ", such as " + example(answer) + ", or \"not looked\"");
    }

    /** The unit so spelt, if it is one for this answer. */
    private Optional<Unit> unit(String spelt) {
        return Unit.spelt(spelt.strip()).filter(known -> known.dimension() == answer.unit().dimension());
    }

    private Unit requiredUnit(Matcher one, String text) throws NoMeasure {
        String spelt = one.group(2);
        if (spelt != null && !spelt.isBlank()) {
            return unit(spelt).orElseThrow(() -> wrongUnit(spelt.strip()));
        }
        if (answer.unit() == Unit.UV_INDEX) {
            return Unit.UV_INDEX;
        }
        throw new NoMeasure(Quoted.of(text) + " has no unit", "add one of " + symbols());
    }

    private NoMeasure wrongUnit(String spelt) {
        String meant = units().flatMap(unit -> unit.spellings().stream()).filter(spelt::equalsIgnoreCase).findFirst()
                .map(spelling -> "did you mean \"" + spelling + "\"? ").orElse("");
        return new NoMeasure("the unit " + Quoted.of(spelt) + " is not one for this", meant + "use one of " + symbols());
    }

    private static BigDecimal number(String literal, String text) throws NoMeasure {
        BigDecimal number = new BigDecimal(literal);
        if (number.signum() != 0 && Math.abs(number.precision() - number.scale()) > LARGEST_POWER) {
            throw new NoMeasure(Quoted.of(text) + " is no possible size", "check the number");
        }
        return number;
    }

    private double inRange(double value, String text) throws NoMeasure {
        if (isInRange(value)) {
            return value;
        }
        throw new NoMeasure(Quoted.of(text) + " cannot be",
                "it must lie between " + plain(answer.least()) + " and " + plain(answer.most()) + " " + answer.unit().symbol());
    }

    private boolean isInRange(double value) {
        return value >= answer.least() && value <= answer.most();
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private Stream<Unit> units() {
        return Arrays.stream(Unit.values()).filter(unit -> unit.dimension() == answer.unit().dimension() && !unit.symbol().isEmpty());
    }

    private String symbols() {
        return units().map(Unit::symbol).collect(Collectors.joining(", "));
    }
}
