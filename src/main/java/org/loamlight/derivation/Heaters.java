package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** Surfaces of heaters and their distance to the animal. */
final class Heaters {
    Heaters(Setup setup) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
