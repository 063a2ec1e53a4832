package org.loamlight.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    private static final Origin PROBE = new Origin(Method.MEASURED, "reading:cool end probe", "2026-11-02");

    private static Quantity hides(double value, double uncertainty) {
        return new Quantity(Topic.HIDES, Place.of(Zone.COOL_END), value, uncertainty, PROBE, List.of());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void value_and_uncertainty_are_finite(double wrong) {
        String message = assertThrows(IllegalArgumentException.class, () -> hides(wrong, 0)).getMessage();
        assertTrue(message.contains("HIDES") && message.contains(String.valueOf(wrong)), message);
        assertThrows(IllegalArgumentException.class, () -> hides(1, wrong));
        assertThrows(IllegalArgumentException.class, () -> new Amount(wrong, Unit.CENTIMETRE));
    }

    @Test
    void the_uncertainty_is_never_negative_and_may_be_zero_for_counts() {
        assertThrows(IllegalArgumentException.class, () -> hides(1, -1e-300));
        assertEquals(0, hides(2, 0).uncertainty());
    }

    @Test
    void none_of_it_is_zero_of_either_sign_and_nothing_else() {
        assertTrue(hides(0, 0).isZero());
        assertTrue(hides(-0.0, 0).isZero());
        assertFalse(hides(Double.MIN_VALUE, 0).isZero());
    }

    private static Quantity of(Topic topic, double value, double uncertainty) {
        return new Quantity(topic, Place.ANYWHERE, value, uncertainty, PROBE, List.of());
    }

    /** Of a normal distribution 15.9 %, about one in six, lie more than one standard deviation below the middle. */
    @Test
    void doubt_swallows_what_may_as_well_be_none() {
        assertTrue(of(Topic.OUTAGE_HOURS, 0.9, 85).isSwallowed());
        assertTrue(of(Topic.OUTAGE_HOURS, 5, 5).isSwallowed());
        assertFalse(of(Topic.OUTAGE_HOURS, 5, 4.99).isSwallowed());
        assertFalse(of(Topic.OUTAGE_HOURS, 0, 0).isSwallowed());
        assertFalse(of(Topic.RUNAWAY_AIR, 1, 2).isSwallowed());
    }

    @Test
    void it_says_what_it_rests_on_and_how_much_it_is() {
        Quantity humidity = new Quantity(Topic.RELATIVE_HUMIDITY, Place.ANYWHERE, 55, 2.9, PROBE, List.of());
        assertEquals("reading:cool end probe", humidity.source());
        assertEquals(new Amount(55, Unit.PERCENT), humidity.amount());
    }

    @Test
    void the_trail_cannot_be_changed_afterwards() {
        List<Step> steps = new ArrayList<>(List.of(Step.of("inverse-square", new Amount(30, Unit.CENTIMETRE), "UV tube")));
        Quantity index = new Quantity(Topic.UV_INDEX, Place.at("lamp:UV tube"), 0.8, 0.2, PROBE, steps);
        steps.clear();
        assertEquals(1, index.trail().size());
        assertThrows(UnsupportedOperationException.class, () -> index.trail().clear());
        assertThrows(UnsupportedOperationException.class, () -> index.trail().get(0).arguments().clear());
    }

    @Test
    void nothing_in_it_is_null() {
        assertThrows(NullPointerException.class, () -> new Quantity(null, Place.ANYWHERE, 1, 0, PROBE, List.of()));
        assertThrows(NullPointerException.class, () -> new Quantity(Topic.HIDES, null, 1, 0, PROBE, List.of()));
        assertThrows(NullPointerException.class, () -> new Quantity(Topic.HIDES, Place.ANYWHERE, 1, 0, null, List.of()));
        assertThrows(NullPointerException.class, () -> new Origin(Method.SEEN, "care", null));
        assertThrows(NullPointerException.class, () -> new Amount(1, null));
    }

    @Test
    void a_statement_never_comes_before_a_measurement() {
        assertEquals(List.of("measured", "computed", "seen", "stated", "modelled", "estimated"), Arrays.stream(Method.values()).map(Method::id).toList());
    }
}
