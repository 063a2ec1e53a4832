package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Setup;

/** The field of ultraviolet in the enclosure. */
final class Ultraviolet {
    Ultraviolet(Setup setup, Layout layout, Wanted wanted) {
    }

    List<Quantity> quantities() {
        return List.of();
    }
}
