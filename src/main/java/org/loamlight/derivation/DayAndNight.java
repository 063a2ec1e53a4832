package org.loamlight.derivation;

import java.time.LocalDate;
import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** Hours of light, as set and as the sun gives them. */
final class DayAndNight {
    DayAndNight(Setup setup, LocalDate on) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
