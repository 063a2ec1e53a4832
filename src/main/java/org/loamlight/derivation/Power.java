package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** Watts, amperes, energy and cost. */
final class Power {
    Power(Setup setup) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
