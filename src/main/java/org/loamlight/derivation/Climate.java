package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** What the air of the enclosure does in the coldest and hottest room, and when control or power fails. */
final class Climate {
    Climate(Setup setup, Wanted wanted, List<Quantity> read) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
