package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** Moist air: dew point, condensation, humidity elsewhere. */
final class Moisture {
    Moisture(Setup setup, Layout layout, List<Quantity> read) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
