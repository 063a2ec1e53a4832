package org.loamlight.setup;

/**
 * Prey by kind, with the metabolisable energy of a gram as fed: Stahl & Donoghue, Small Animal Clinical Nutrition, 5th ed.,
 * Table 71-5 (kcal x 4.184). It is metabolisable energy: it is never multiplied by a share assimilated again.
 */
public enum PreyKind {
    NEWBORN_MOUSE(3.3), YOUNG_MOUSE(7.1), ADULT_MOUSE(7.1), ADULT_RAT(6.7), DAY_OLD_CHICK(5.4), YOUNG_RAT(0), FISH(0),
    CRICKETS(0), OTHER_INSECTS(0), EARTHWORMS(0), GREENS(0), FRUIT_MIX(0), OTHER(0), UNKNOWN(0);

    private final double kilojoulesPerGram;

    PreyKind(double kilojoulesPerGram) {
        this.kilojoulesPerGram = kilojoulesPerGram;
    }

    /** Metabolisable energy as fed (kJ/g); 0 when not known. */
    public double kilojoulesPerGram() {
        return kilojoulesPerGram;
    }

    /** Whether it is a whole mouse or rat of any age: a snake can live on those alone (common practice, no source). */
    public boolean isRodent() {
        return switch (this) {
            case NEWBORN_MOUSE, YOUNG_MOUSE, ADULT_MOUSE, YOUNG_RAT, ADULT_RAT -> true;
            default -> false;
        };
    }

    /** Whether its energy is known. */
    public boolean isKnown() {
        return kilojoulesPerGram > 0;
    }
}
