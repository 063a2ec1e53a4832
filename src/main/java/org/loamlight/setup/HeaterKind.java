package org.loamlight.setup;

/**
 * Kinds of heaters. The traits are common practice, no source: glowing heaters shine visibly, hot ones burn on touch,
 * contact heaters warm an animal that lies on them.
 */
public enum HeaterKind {
    BASKING_LAMP(true, true, false), HALOGEN_LAMP(true, true, false), RED_LAMP(true, true, false),
    MERCURY_VAPOUR_LAMP(true, true, false), CERAMIC_HEATER(false, true, false), RADIANT_PANEL(false, true, false),
    HEAT_MAT(false, false, true), HEAT_CABLE(false, false, true), HEATED_STONE(false, false, true),
    OTHER(false, false, false), UNKNOWN(false, false, false);

    private final boolean glows;
    private final boolean hot;
    private final boolean contact;

    HeaterKind(boolean glows, boolean hot, boolean contact) {
        this.glows = glows;
        this.hot = hot;
        this.contact = contact;
    }

    public Stated glows() {
        return trait(glows);
    }

    public Stated hot() {
        return trait(hot);
    }

    /** Whether it screws into a holder. */
    public Stated hasBulb() {
        return trait(glows || this == CERAMIC_HEATER);
    }

    public Stated contact() {
        return trait(contact);
    }

    /** Whether a timer does not do: it heats on unseen, or an animal rests on it. Heat lamps show that they burn. */
    public Stated wantsThermostat() {
        return trait(this != BASKING_LAMP && this != HALOGEN_LAMP && this != RED_LAMP);
    }

    private Stated trait(boolean value) {
        if (this == OTHER || this == UNKNOWN) {
            return Stated.UNKNOWN;
        }
        return value ? Stated.YES : Stated.NO;
    }
}
