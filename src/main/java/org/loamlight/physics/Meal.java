package org.loamlight.physics;

import org.loamlight.physics.Energetics.Range;

/**
 * What whole prey is worth to the animal that eats it. Immutable.
 *
 * <p>The table value of prey is <em>metabolisable</em> energy: what is lost with droppings and urates is already taken
 * off, so an assimilation efficiency must not be taken off again. What is still to be paid is the work of digestion
 * (specific dynamic action, SDA), which was measured as a share of the energy <em>swallowed</em>, that is of the gross
 * energy.
 *
 * @param preyGrams                      mass of the prey eaten at one meal (g), above 0, finite
 * @param metabolisableKilojoulesPerGram of the prey as fed (kJ/g), above 0, finite
 */
public record Meal(double preyGrams, double metabolisableKilojoulesPerGram) {

    /**
     * Metabolisable over gross energy of whole rodents, 0.78: inferred from the adult mouse of Stahl &amp; Donoghue, Small
     * Animal Clinical Nutrition, 5th ed., Table 71-5 (7.1 kJ/g against about 9.1 kJ/g by heat of combustion). Close to
     * the 79.1 % that <em>Crotalus atrox</em> assimilates of mice (McCue 2007, J. Exp. Zool. 307A:568-577, abstract).
     */
    public static final double METABOLISABLE_OVER_GROSS = 0.78;

    /** SDA as a share of the energy swallowed, lower value: 26 %, <em>Crotalus atrox</em> on mice (McCue 2007, abstract). */
    public static final double LEAST_DIGESTION_SHARE = 0.26;

    /**
     * SDA as a share of the energy swallowed, upper value: 33 %, from 32.8 +- 4.4 % in a cottonmouth (McCue &amp; Lillywhite
     * 2002, abstract).
     */
    public static final double MOST_DIGESTION_SHARE = 0.33;

    /** Throws IllegalArgumentException if a component or the energy of the meal is not finite and above 0. */
    public Meal {
        Argument.positive("preyGrams", preyGrams);
        Argument.positive("metabolisableKilojoulesPerGram", metabolisableKilojoulesPerGram);
        Argument.positive("preyGrams * metabolisableKilojoulesPerGram", preyGrams * metabolisableKilojoulesPerGram);
    }

    /** The metabolisable energy of the meal (kJ), above 0. */
    public double metabolisableKilojoules() {
        return preyGrams * metabolisableKilojoulesPerGram;
    }

    /** The energy swallowed (kJ), above {@link #metabolisableKilojoules} by {@link #METABOLISABLE_OVER_GROSS}. */
    public double grossKilojoules() {
        return metabolisableKilojoules() / METABOLISABLE_OVER_GROSS;
    }

    /**
     * What is left to live on after digestion (kJ): the metabolisable energy less {@link #LEAST_DIGESTION_SHARE} to
     * {@link #MOST_DIGESTION_SHARE} of the gross energy, which is 0.58 to 0.67 of the metabolisable energy.
     */
    public Range netKilojoules() {
        return new Range(metabolisableKilojoules() - MOST_DIGESTION_SHARE * grossKilojoules(),
                metabolisableKilojoules() - LEAST_DIGESTION_SHARE * grossKilojoules());
    }

    /**
     * How long the meal lasts an animal that neither gains nor loses (d): net energy over daily need, from the low net
     * energy at the high need to the high one at the low need.
     *
     * @param needKilojoulesPerDay as {@link Energetics#maintenanceKilojoulesPerDay} gives it, low bound above 0
     * @throws IllegalArgumentException if the low bound is 0 or the quotient leaves the range of a double
     */
    public Range sustainableDays(Range needKilojoulesPerDay) {
        Argument.positive("needKilojoulesPerDay.low", needKilojoulesPerDay.low());
        Range net = netKilojoules();
        return new Range(net.low() / needKilojoulesPerDay.high(), net.high() / needKilojoulesPerDay.low());
    }

    /**
     * Intake over maintenance (no unit) if this meal is given every so many days: 1 holds the weight, 2 is double of
     * that. A range for the same reason as {@link #sustainableDays}.
     *
     * @param intervalDays         from one meal to the next (d), above 0, finite
     * @param needKilojoulesPerDay as {@link Energetics#maintenanceKilojoulesPerDay} gives it, low bound above 0
     * @throws IllegalArgumentException if an argument is outside its range or a quotient leaves that of a double
     */
    public Range intakeOverMaintenance(double intervalDays, Range needKilojoulesPerDay) {
        Argument.positive("intervalDays", intervalDays);
        Range lasts = sustainableDays(needKilojoulesPerDay);
        return new Range(lasts.low() / intervalDays, lasts.high() / intervalDays);
    }
}
