package org.loamlight.derivation;

import java.util.List;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;

/**
 * A volume or a mass on its way to a quantity.
 *
 * @param amount L or kg
 * @param trail  how it came about
 */
record Portion(Uncertain amount, List<Step> trail) {

    double value() {
        return amount.value();
    }

    double uncertainty() {
        return amount.uncertainty();
    }

    Quantity of(Topic topic, String source) {
        return new Quantity(topic, Place.ANYWHERE, value(), uncertainty(), new Origin(Method.COMPUTED, source, ""), trail);
    }
}
