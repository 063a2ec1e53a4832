package org.loamlight.setup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A UV index read under a lamp at a distance.
 *
 * @param index    UV index
 * @param distance lamp to meter (cm)
 * @param through  whether it was taken through everything that lies between lamp and animal
 */
public record LampReading(Measure index, Measure distance, Stated through, Instrument instrument, Optional<LocalDate> on) {
    /** Whether a meter was held under the lamp at a known distance; the chart of its maker says nothing of this lamp. */
    public boolean isMeasured() {
        return instrument == Instrument.UV_METER && index.isKnown() && distance.isKnown();
    }
}
