package org.loamlight.quantity;

import java.util.Locale;

/** How evidence was got, the strongest first; a statement never outweighs a measurement. */
public enum Method {
    /** Read off an instrument. */
    MEASURED,
    /** Computed from measured values by a published formula. */
    COMPUTED,
    /** Seen with the eyes, counted. */
    SEEN,
    /** Said by somebody, printed on a package. */
    STATED,
    /** A model without a reading behind it. */
    MODELLED,
    /** What is usual for things of its kind, nothing about this one: never enough for a conformity. */
    ESTIMATED;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
