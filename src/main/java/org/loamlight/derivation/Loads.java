package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** Volume and mass of substrate, and what the stand carries. */
final class Loads {
    Loads(Setup setup) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
