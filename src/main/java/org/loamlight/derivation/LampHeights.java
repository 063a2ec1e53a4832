package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.loamlight.physics.HeightBand;
import org.loamlight.physics.LightField;
import org.loamlight.physics.Point;
import org.loamlight.physics.Stretch;
import org.loamlight.physics.UvLamp;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.LampKind;

/**
 * Between which heights above a resting place a lamp gives the index there that the animals want.
 *
 * @param own   the lamp
 * @param place where the animal lies
 * @param added index that other lamps add there
 */
record LampHeights(HungLamp own, Point place, double added) {
    /** Heights looked at (m): from a hand's breadth to the ceiling of a room. A judgement. */
    private static final Stretch HEIGHTS = new Stretch(0.05, 3);

    /**
     * The least height where an end of the range of index is wanted that keeps it from above, the greatest where one is that
     * keeps it from below; none for a lamp that nobody read or that gives nothing, and none that lies at either end of the
     * heights looked at.
     */
    List<Quantity> quantities(Wanted wanted) {
        boolean isKnown = own.output().method() != Method.ESTIMATED && own.output().strength() > 0;
        OptionalDouble low = wanted.atLeast(Topic.UV_INDEX);
        OptionalDouble high = wanted.atMost(Topic.UV_INDEX);
        if (!isKnown || low.isEmpty() && high.isEmpty() || low.orElse(0) > high.orElse(Double.MAX_VALUE)) {
            return List.of();
        }
        List<Quantity> quantities = new ArrayList<>();
        band(low.orElse(0), high.orElse(Double.MAX_VALUE)).ifPresent(band -> {
            if (high.isPresent() && band.from() > HEIGHTS.from()) {
                quantities.add(quantity(Topic.LAMP_HEIGHT_LEAST, band.from(), Step.of("for-index-at-most", index(high.getAsDouble()))));
            }
            if (low.isPresent() && band.to() < HEIGHTS.to()) {
                quantities.add(quantity(Topic.LAMP_HEIGHT_MOST, band.to(), Step.of("for-index-at-least", index(low.getAsDouble()))));
            }
        });
        return quantities;
    }

    private static Amount index(double value) {
        return new Amount(value, Unit.UV_INDEX);
    }

    private Optional<Stretch> band(double low, double high) {
        Point above = new Point(own.along().value(), own.across().orElse(Metres.ZERO).value(), own.above().value());
        UvLamp lamp = new UvLamp(own.source(above), own.output().strength(), 1);
        DoubleUnaryOperator index = height -> added + lamp.atHeight(place.z() + height).index(place, List.of());
        boolean isStraightBelow = place.x() == above.x() && place.y() == above.y();
        return isStraightBelow ? HeightBand.falling(index, HEIGHTS, low, high) : HeightBand.between(index, HEIGHTS, low, high);
    }

    /** An index that is uncertain by n times as much as a height makes the height uncertain by one n-th. */
    private Quantity quantity(Topic topic, double height, Step towards) {
        double exponent = own.lamp().kind() == LampKind.UV_TUBE ? LightField.localExponent(height, Metres.of(own.lamp().arcLength()).value())
                : LightField.POINT_EXPONENT;
        double uncertainty = height * own.output().uncertainty() / own.output().strength() / exponent;
        List<Step> trail = new ArrayList<>(own.output().readings());
        trail.add(towards);
        String source = own.lamp().subject().key();
        return new Quantity(topic, Place.at(source), Metres.inCentimetres(height), Metres.inCentimetres(uncertainty),
                new Origin(own.output().method(), source, own.output().on()), trail);
    }
}
