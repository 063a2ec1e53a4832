package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loamlight.derivation.HeatInputs.Of;
import org.loamlight.physics.AirExchange;
import org.loamlight.physics.HeatBalance;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Setup;

/**
 * The heat the enclosure loses to the room for each kelvin. Where air and room were read together and no thermostat held heat
 * back, the readings tell it, and with it how often the air is exchanged; else the exchange is what is usual for its lid.
 */
final class HeatLoss {
    /** Where nothing heats it does not matter what is lost. */
    static final HeatLoss UNASKED = new HeatLoss(HeatInputs.NONE.with(Of.SHELL, new Uncertain(1, 0)), 0, Exchange.USUAL, List.of());

    /** Changes of air (1/h) in a box with solid sides, vents and the gaps of its doors: judgement. */
    private static final double[] CLOSED = {0.5, 4};
    /** Changes of air (1/h) where a lid or front is mesh: judgement. */
    private static final double[] MESHED = {4, 20};
    /** So many standard uncertainties must air and room be apart to tell anything: judgement, about 95 %. */
    private static final double APART = 2;

    /** Where the exchange of air is taken from. */
    private enum Exchange {
        FITTED, USUAL
    }

    private final HeatInputs inputs;
    private final double cubicMetres;
    private final Exchange exchange;
    private final List<Step> trail;

    private HeatLoss(HeatInputs inputs, double cubicMetres, Exchange exchange, List<Step> trail) {
        this.inputs = inputs;
        this.cubicMetres = cubicMetres;
        this.exchange = exchange;
        this.trail = List.copyOf(trail);
    }

    static HeatLoss of(Setup setup, Shell shell, Optional<Powers> powers, Optional<Uncertain> dayAir) {
        double[] usual = shell.meshed() ? MESHED : CLOSED;
        HeatInputs inputs = HeatInputs.NONE.with(Of.SHELL, shell.wattsPerKelvin()).with(Of.AIR_CHANGES, Uncertain.between(usual[0], usual[1]));
        HeatLoss asUsual = new HeatLoss(inputs, shell.cubicMetres(), Exchange.USUAL, shell.trail())
                .with(Step.of("air-usual", new Amount(usual[0], Unit.PER_HOUR), new Amount(usual[1], Unit.PER_HOUR)));
        boolean heldBack = powers.isEmpty() || powers.get().governed().value() > 0 || powers.get().open().value() == 0;
        Optional<Uncertain> air = heldBack || !setup.room().whenRead().isKnown() ? Optional.empty() : dayAir;
        return air.map(mean -> asUsual.fitted(inputs.with(Of.OPEN_POWER, powers.get().open()).with(Of.AIR_READ, mean)
                .with(Of.ROOM_READ, Uncertain.of(setup.room().whenRead())), shell)).orElse(asUsual);
    }

    private HeatLoss with(Step step) {
        List<Step> more = new ArrayList<>(trail);
        more.add(step);
        return new HeatLoss(inputs, cubicMetres, exchange, more);
    }

    /** This one still where the readings tell nothing, or contradict walls and power. */
    private HeatLoss fitted(HeatInputs read, Shell shell) {
        if (!isAirApart(read)) {
            return with(Step.of("air-too-close"));
        }
        HeatBalance box = new HeatBalance(shell.wattsPerKelvin().value(), AirExchange.ofWarmAir(cubicMetres, 0));
        boolean explained = box.changesPerHour(read.of(Of.OPEN_POWER), read.of(Of.AIR_READ), read.of(Of.ROOM_READ)).isPresent();
        Step fit = Step.of("air-fitted", celsius(read.of(Of.AIR_READ)), celsius(read.of(Of.ROOM_READ)));
        return explained ? new HeatLoss(read, cubicMetres, Exchange.FITTED, List.of(fit)) : with(Step.of("air-disagrees"));
    }

    /** Whether the air was read so much warmer than the room that the difference tells something. */
    static boolean isAirApart(HeatInputs read) {
        Uncertain warmer = read.through(in -> in.of(Of.AIR_READ) - in.of(Of.ROOM_READ));
        return warmer.value() > APART * warmer.uncertainty();
    }

    private static Amount celsius(double value) {
        return new Amount(value, Unit.CELSIUS);
    }

    /** All that {@link #wattsPerKelvin} takes; to be added to. */
    HeatInputs inputs() {
        return inputs;
    }

    /** Heat lost (W/K) with inputs that began as {@link #inputs()}. */
    double wattsPerKelvin(HeatInputs in) {
        return switch (exchange) {
            case FITTED -> in.of(Of.OPEN_POWER) / (in.of(Of.AIR_READ) - in.of(Of.ROOM_READ));
            case USUAL -> in.of(Of.SHELL) + (cubicMetres == 0 ? 0 : AirExchange.ofWarmAir(cubicMetres, in.of(Of.AIR_CHANGES)).wattsPerKelvin());
        };
    }

    /** Changes of air (1/h) with inputs that began as {@link #inputs()}. */
    double changesPerHour(HeatInputs in) {
        return switch (exchange) {
            case FITTED -> (wattsPerKelvin(in) - in.of(Of.SHELL)) / AirExchange.ofWarmAir(cubicMetres, 1).wattsPerKelvin();
            case USUAL -> in.of(Of.AIR_CHANGES);
        };
    }

    /** With a reading behind it a value is computed, without one it is a model. */
    Method method() {
        return exchange == Exchange.FITTED ? Method.COMPUTED : Method.MODELLED;
    }

    List<Step> trail() {
        return trail;
    }
}
