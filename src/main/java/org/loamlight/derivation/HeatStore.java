package org.loamlight.derivation;

import java.util.Optional;
import java.util.OptionalDouble;
import org.loamlight.derivation.HeatInputs.Of;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.HeatCapacity;
import org.loamlight.physics.HeatInput;
import org.loamlight.physics.NodeTemperatures;
import org.loamlight.physics.TwoNodes;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Moisture;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Substrate;
import org.loamlight.setup.SubstrateKind;
import org.loamlight.setup.Water;

/**
 * What stores heat in the enclosure: the air with half of its panes, whose mean is half as warm as their inside, and the mass of
 * substrate, water and furnishings. Water and furnishings count where they are told; without them it cools sooner.
 *
 * @param airJoulesPerKelvin  air and half of the panes (J/K)
 * @param massJoulesPerKelvin substrate, water and furnishings (J/K)
 * @param coupling            heat between the two for each kelvin between them (W/K)
 */
record HeatStore(double airJoulesPerKelvin, Uncertain massJoulesPerKelvin, Uncertain coupling) {
    /** Nobody is without power, or fails to notice, for longer than a week: judgement. What takes longer counts as this. */
    static final double LONGEST_HOURS = 168;

    private static final double SECONDS_PER_HOUR = 3600;
    /** Share of a time that two bodies leave open: judgement. */
    private static final double CRUDE = 0.1;
    /** Temperature the air is taken at (°C); 10 °C more or less make 3 %. */
    private static final double AIR_CELSIUS = 25;
    /** Specific heat of dry substrate and of furnishings (J/kgK): judgement, between sand of 1050 and wood of 1600 (ISO 10456). */
    private static final double DRY_SPECIFIC_HEAT = 1200;
    /** Bulk density, moisture and specific heat are known to two fifths: judgement. */
    private static final double SCATTER = 0.4;
    /** Resistance between air and the top of the substrate (m²K/W; ISO 6946, horizontal). */
    private static final double SURFACE_RESISTANCE = 0.13;
    /** Conductivity of substrate (W/mK): judgement, between dry fibre of 0.1 and moist soil of 1.5 (ISO 10456). */
    private static final double CONDUCTIVITY = 0.5;
    /** How well air and substrate exchange heat is known to a half: judgement. */
    private static final double COUPLING_SCATTER = 0.5;

    /** Empty when kind or depth of the substrate is not told, or it has no depth: it stores most. */
    static Optional<HeatStore> of(Setup setup, Shell shell) {
        return setup.substrate().filter(substrate -> substrate.kind().isKnown() && substrate.depth().isKnown() && substrate.depth().value() > 0)
                .map(substrate -> of(setup, shell, substrate));
    }

    private static HeatStore of(Setup setup, Shell shell, Substrate substrate) {
        double depth = Metres.fromCentimetres(substrate.depth().value());
        double stored = substrate(substrate, depth * shell.floorSquareMetres()) + water(setup) + furnishings(setup);
        double coupled = shell.floorSquareMetres() / (SURFACE_RESISTANCE + depth / 2 / CONDUCTIVITY);
        return new HeatStore(HeatCapacity.ofAir(shell.cubicMetres(), AIR_CELSIUS) + shell.paneJoulesPerKelvin() / 2,
                scattered(stored, SCATTER), scattered(coupled, COUPLING_SCATTER));
    }

    private static Uncertain scattered(double value, double share) {
        return new Uncertain(value, Conformance.fromHalfWidth(share * value));
    }

    private static double substrate(Substrate substrate, double cubicMetres) {
        SubstrateKind kind = substrate.kind();
        double dry = (kind.dryLow() + kind.dryHigh()) / 2;
        double water = ((kind.wetLow() + kind.wetHigh()) / 2 - dry) * wetShare(substrate.moisture());
        return HeatCapacity.ofSubstrate(dry * cubicMetres, DRY_SPECIFIC_HEAT, water * cubicMetres);
    }

    /** How much of the water it can hold is in it: judgement. */
    private static double wetShare(Moisture moisture) {
        return switch (moisture) {
            case DRY -> 0;
            case DAMP_BELOW, DAMP, UNKNOWN -> 0.5;
            case WET -> 1;
        };
    }

    private static double water(Setup setup) {
        return setup.water().map(Water::volume).filter(volume -> volume.isKnown())
                .map(volume -> HeatCapacity.ofWater(volume.value())).orElse(0.0);
    }

    private static double furnishings(Setup setup) {
        double kilograms = setup.furnishings().stream().map(Furnishing::mass).filter(mass -> mass.isKnown()).mapToDouble(mass -> mass.value()).sum();
        return HeatCapacity.ofMass(kilograms, DRY_SPECIFIC_HEAT);
    }

    /** The inputs with what this adds to them. */
    HeatInputs added(HeatInputs inputs) {
        return inputs.with(Of.MASS, massJoulesPerKelvin).with(Of.COUPLING, coupling);
    }

    /**
     * Hours until the air has a temperature (°C), {@link #LONGEST_HOURS} when that is farther off or never comes.
     *
     * @param in    inputs from {@link #added}
     * @param loss  heat lost for each kelvin (W/K)
     * @param start of air and mass alike (°C)
     * @param heat  what is given from then on, and the room
     */
    double hoursUntilAir(double celsius, HeatInputs in, double loss, double start, HeatInput heat) {
        TwoNodes nodes = new TwoNodes(airJoulesPerKelvin, in.of(Of.MASS), in.of(Of.COUPLING), loss);
        OptionalDouble seconds = nodes.secondsUntilAir(celsius, NodeTemperatures.both(start), heat);
        return StrictMath.min(LONGEST_HOURS, seconds.orElse(Double.MAX_VALUE) / SECONDS_PER_HOUR);
    }

    /** Hours with what two bodies, each of one temperature, cannot tell about a real enclosure. */
    static Uncertain crude(Uncertain hours) {
        return hours.and(CRUDE * hours.value());
    }

    /** As much as so many kilograms of water. */
    Step step() {
        return Step.of("stores-heat", new Amount(massJoulesPerKelvin.value() / HeatCapacity.ofWater(1), Unit.KILOGRAM));
    }
}
