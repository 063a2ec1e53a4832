package org.loamlight.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * The units keepers use, with exact factors into the SI unit of their {@link Dimension}.
 *
 * <p>Factors: international yard and pound agreement of 1959 and the US gallon of 231 cubic inches, as fixed in the UCUM
 * essence 2.2. Celsius and Fahrenheit are scales with an offset; a temperature <em>difference</em> or an uncertainty goes
 * through {@link #convertDifference}, never through the offset.
 */
public enum Unit {
    MILLIMETRE(Dimension.LENGTH, "0.001", "mm", "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    CENTIMETRE(Dimension.LENGTH, "0.01", "cm", "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    METRE(Dimension.LENGTH, "1", "m", "m", "metre", "metres", "meter", "meters"),
    INCH(Dimension.LENGTH, "0.0254", "in", "[in_i]", "inch", "inches", "\"", "″"),
    FOOT(Dimension.LENGTH, "0.3048", "ft", "[ft_i]", "foot", "feet", "'", "′"),
    SQUARE_METRE(Dimension.AREA, "1", "m²", "m2", "m2"),
    SQUARE_CENTIMETRE(Dimension.AREA, "0.0001", "cm²", "cm2", "cm2"),
    SQUARE_FOOT(Dimension.AREA, "0.09290304", "ft²", "[sft_i]", "ft2", "sq ft"),
    LITRE(Dimension.VOLUME, "0.001", "L", "L", "l", "litre", "litres", "liter", "liters"),
    MILLILITRE(Dimension.VOLUME, "0.000001", "mL", "mL", "ml"),
    US_GALLON(Dimension.VOLUME, "0.003785411784", "gal", "[gal_us]", "gallon", "gallons"),
    US_FLUID_OUNCE(Dimension.VOLUME, "0.0000295735295625", "fl oz", "[foz_us]"),
    GRAM(Dimension.MASS, "0.001", "g", "g", "gram", "grams"),
    KILOGRAM(Dimension.MASS, "1", "kg", "kg", "kilogram", "kilograms"),
    OUNCE(Dimension.MASS, "0.028349523125", "oz", "[oz_av]", "ounce", "ounces"),
    POUND(Dimension.MASS, "0.45359237", "lb", "[lb_av]", "lbs", "pound", "pounds"),
    CELSIUS(Dimension.TEMPERATURE, "1", "°C", "Cel", "C", "degC", "deg C"),
    FAHRENHEIT(Dimension.TEMPERATURE, "5/9", "°F", "[degF]", "F", "degF", "deg F"),
    KELVIN_STEP(Dimension.TEMPERATURE_DIFFERENCE, "1", "K", "K"),
    MINUTE(Dimension.DURATION, "60", "min", "min", "minute", "minutes"),
    HOUR(Dimension.DURATION, "3600", "h", "h", "hour", "hours"),
    DAY(Dimension.DURATION, "86400", "d", "d", "day", "days"),
    WEEK(Dimension.DURATION, "604800", "wk", "wk", "week", "weeks"),
    VOLT(Dimension.VOLTAGE, "1", "V", "V", "volt", "volts"),
    AMPERE(Dimension.CURRENT, "1", "A", "A", "amp", "amps", "ampere", "amperes"),
    KILOWATT_HOUR(Dimension.ENERGY, "1", "kWh", "kW.h"),
    KILOJOULE(Dimension.ENERGY, "1/3600", "kJ", "kJ"),
    PER_KILOWATT_HOUR(Dimension.PRICE, "1", "per kWh", "1/(kW.h)", "/kWh", "a kWh"),
    /** Money, in whatever currency the tariff is told in. */
    MONEY(Dimension.MONEY, "1", "", "1"),
    DEGREE(Dimension.ANGLE, "1", "°", "deg", "deg", "degree", "degrees"),
    PER_HOUR(Dimension.RATE, "1", "per h", "1/h"),
    WATT(Dimension.POWER, "1", "W", "W", "watt", "watts"),
    PERCENT(Dimension.FRACTION, "0.01", "%", "%", "percent"),
    FRACTION(Dimension.FRACTION, "1", "", "1"),
    UV_INDEX(Dimension.UV_INDEX, "1", "UVI", "1", "index"),
    PIECE(Dimension.COUNT, "1", "", "1");

    private static final BigDecimal FREEZING_POINT_FAHRENHEIT = BigDecimal.valueOf(32);
    private static final MathContext DIGITS = MathContext.DECIMAL128;

    /** The first unit of each spelling in the order of declaration. */
    private static final Map<String, Unit> BY_SPELLING = bySpelling();

    private final Dimension dimension;
    private final BigDecimal numerator;
    private final BigDecimal denominator;
    private final String symbol;
    private final String ucum;
    private final List<String> spellings;

    /** Decimal factors into the units asked for so far: to multiply by one gives the same digits as to divide, and sooner. */
    private final Map<Unit, Optional<BigDecimal>> factors = new ConcurrentHashMap<>();

    Unit(Dimension dimension, String factor, String symbol, String ucum, String... spellings) {
        String[] parts = factor.split("/");
        this.dimension = dimension;
        this.numerator = new BigDecimal(parts[0]);
        this.denominator = parts.length == 1 ? BigDecimal.ONE : new BigDecimal(parts[1]);
        this.symbol = symbol;
        this.ucum = ucum;
        this.spellings = symbol.isEmpty() ? List.of(spellings) : Stream.concat(Stream.of(symbol), Stream.of(spellings)).distinct().toList();
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The symbol in print, for example {@code °C}; empty for plain numbers. */
    public String symbol() {
        return symbol;
    }

    /** The code of this unit in the Unified Code for Units of Measure. */
    public String ucum() {
        return ucum;
    }

    /** Every way this unit may be written in a setup, the symbol first; empty for plain numbers. */
    public List<String> spellings() {
        return spellings;
    }

    private static Map<String, Unit> bySpelling() {
        Map<String, Unit> units = new HashMap<>();
        for (Unit unit : values()) {
            unit.spellings().forEach(spelling -> units.putIfAbsent(spelling, unit));
        }
        return units;
    }

    /** Finds the unit a keeper wrote; empty when no unit is spelt like that. Upper and lower case are told apart. */
    public static Optional<Unit> spelt(String text) {
        return Optional.ofNullable(BY_SPELLING.get(text));
    }

    /** Converts a value of this unit, temperatures through their offset. Exact but for the final rounding to a double. */
    public double convert(BigDecimal value, Unit target) {
        requireSame(target);
        BigDecimal shifted = this == FAHRENHEIT ? value.subtract(FREEZING_POINT_FAHRENHEIT) : value;
        BigDecimal scaled = scale(shifted, target);
        return (target == FAHRENHEIT ? scaled.add(FREEZING_POINT_FAHRENHEIT) : scaled).doubleValue();
    }

    /** As {@link #convert(BigDecimal, Unit)} for a value that is already a double. */
    public double convert(double value, Unit target) {
        return this == target ? value : convert(BigDecimal.valueOf(value), target);
    }

    /** Converts a difference or an uncertainty: 1 °F is 5/9 K, whatever the offset of the scale. */
    public double convertDifference(double difference, Unit target) {
        requireSame(target);
        return this == target ? difference : scale(BigDecimal.valueOf(difference), target).doubleValue();
    }

    private BigDecimal scale(BigDecimal value, Unit target) {
        if (this == target) {
            return value;
        }
        Optional<BigDecimal> factor = factors.computeIfAbsent(target, this::factor);
        return factor.isPresent() ? value.multiply(factor.get(), DIGITS) : divided(value, target);
    }

    /** As {@link #scale}, by the factor as it is written. */
    BigDecimal divided(BigDecimal value, Unit target) {
        return value.multiply(numerator).multiply(target.denominator)
                .divide(denominator.multiply(target.numerator), DIGITS);
    }

    /** Empty where the factor is no decimal number, as that of Fahrenheit is not and those of inches and litres are. */
    private Optional<BigDecimal> factor(Unit target) {
        BigDecimal factor = divided(BigDecimal.ONE, target);
        boolean isDecimal = factor.multiply(denominator).multiply(target.numerator).compareTo(numerator.multiply(target.denominator)) == 0;
        return isDecimal ? Optional.of(factor) : Optional.empty();
    }

    private void requireSame(Unit target) {
        if (dimension != target.dimension) {
            throw new IllegalArgumentException("Cannot convert " + this + " (" + dimension + ") into " + target + " ("
                    + target.dimension + ")");
        }
    }
}
