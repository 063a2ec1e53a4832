package org.loamlight.finding;

import org.loamlight.quantity.Quantity;
import org.loamlight.setup.Reading;

/** A quantity and the reading it rests on, for rules about what instruments can tell. There is none for quantities that rest on no reading. */
public record FromReading(Reading reading, Quantity quantity) {
}
