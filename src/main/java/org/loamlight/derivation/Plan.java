package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** The floor seen from above: share covered, and the way to cover. */
final class Plan {
    Plan(Setup setup) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
