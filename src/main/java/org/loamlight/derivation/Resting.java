package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** Places against the resting animal: hides and warm patches. */
final class Resting {
    Resting(Setup setup) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
