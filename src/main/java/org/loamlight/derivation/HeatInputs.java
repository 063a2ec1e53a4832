package org.loamlight.derivation;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.loamlight.physics.Conformance;

/** The values a formula of the heat balance takes, each with its uncertainty, independent of one another. Immutable. */
final class HeatInputs {
    /** What goes in. */
    enum Of {
        /** Sum of U A (W/K). */
        SHELL,
        /** What is usual (1/h). */
        AIR_CHANGES,
        /** Power by day that no thermostat holds back (W). */
        OPEN_POWER,
        /** Power by day that a thermostat may hold back, full on (W). */
        GOVERNED_POWER,
        /** Power by night, full on (W). */
        NIGHT_POWER,
        /** Mean air of the enclosure as read by day (°C). */
        AIR_READ,
        /** The room while it was read (°C). */
        ROOM_READ,
        /** A surface as read by day (°C). */
        SURFACE_READ, COLDEST_ROOM, HOTTEST_ROOM,
        /** Heat stored by substrate, water and furnishings (J/K). */
        MASS,
        /** Heat between these and the air (W/K). */
        COUPLING;

        /** Key of the step that names what to find out where most of the doubt is of this. */
        String doubt() {
            return switch (this) {
                case SHELL -> "doubt-walls";
                case AIR_CHANGES -> "doubt-air-changes";
                case OPEN_POWER, GOVERNED_POWER, NIGHT_POWER -> "doubt-power";
                case AIR_READ, SURFACE_READ -> "doubt-reading";
                case ROOM_READ, COLDEST_ROOM, HOTTEST_ROOM -> "doubt-room";
                case MASS, COUPLING -> "doubt-stores";
            };
        }

        private boolean isTemperature() {
            return TEMPERATURES.contains(this);
        }
    }

    private static final Set<Of> TEMPERATURES = EnumSet.of(Of.AIR_READ, Of.ROOM_READ, Of.SURFACE_READ, Of.COLDEST_ROOM, Of.HOTTEST_ROOM);
    /** What cannot be negative is moved down to this share of itself at most, however doubtful it is. */
    private static final double LEAST = 0.05;

    static final HeatInputs NONE = new HeatInputs(new EnumMap<>(Of.class));

    private final Map<Of, Uncertain> inputs;

    private HeatInputs(Map<Of, Uncertain> inputs) {
        this.inputs = inputs;
    }

    HeatInputs with(Of input, Uncertain value) {
        Map<Of, Uncertain> more = new EnumMap<>(Of.class);
        more.putAll(inputs);
        more.put(input, value);
        return new HeatInputs(more);
    }

    /** An input that is there, with its uncertainty. */
    Uncertain uncertain(Of input) {
        return inputs.get(input);
    }

    /** An input that is there. */
    double of(Of input) {
        return inputs.get(input).value();
    }

    /**
     * What a formula makes of the inputs. Its uncertainty is that of finite differences: each input is moved up and down by its
     * own uncertainty, half of what the result moves is one contribution (JCGM 100:2008, 5.1.3, note 2).
     */
    Uncertain through(ToDoubleFunction<HeatInputs> formula) {
        double[] contributions = inputs.entrySet().stream().filter(input -> input.getValue().uncertainty() > 0)
                .mapToDouble(input -> contribution(input.getKey(), input.getValue(), formula)).toArray();
        return new Uncertain(formula.applyAsDouble(this), Conformance.combine(contributions));
    }

    /** The input most of the doubt of a result comes from; empty when none is doubtful or the result does not move. */
    Optional<Of> mostDoubtful(ToDoubleFunction<HeatInputs> formula) {
        return inputs.keySet().stream().filter(input -> contribution(input, inputs.get(input), formula) > 0)
                .max(Comparator.comparingDouble(input -> contribution(input, inputs.get(input), formula)));
    }

    private double contribution(Of input, Uncertain value, ToDoubleFunction<HeatInputs> formula) {
        double up = formula.applyAsDouble(with(input, new Uncertain(value.value() + value.uncertainty(), 0)));
        double least = input.isTemperature() ? Double.NEGATIVE_INFINITY : LEAST * value.value();
        double down = formula.applyAsDouble(with(input, new Uncertain(Math.max(least, value.value() - value.uncertainty()), 0)));
        return Math.abs(up - down) / 2;
    }
}
