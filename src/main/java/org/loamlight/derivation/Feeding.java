package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** Meals against body mass, interval and energy. */
final class Feeding {
    Feeding(Setup setup, List<Quantity> read) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
