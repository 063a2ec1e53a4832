package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.LightField;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.LampKind;
import org.loamlight.setup.Screen;
import org.loamlight.setup.Stated;

/**
 * How strong a UV tube may be of which nobody read anything: what tubes give, from the weakest to the strongest, wide enough to say
 * little. Of bulbs and compact lamps no range was found that would say anything.
 *
 * <p>The strongest: a 24 W tube with an aluminium reflector gave an index of up to 1.0 at 85 cm (Baines et al. 2016, Figure 3 text),
 * which by the law for a tube of 55 cm is 5.8 at 30 cm. The weakest: 26 times less, the spread among seven tubes of equal wattage at
 * one distance (a comparison of lamps by laboratory radiometer at 310 nm, 2001 and 2004; secondary).
 */
final class TypicalUv {
    private static final double AT_METRES = 0.30;
    private static final double STRONGEST = 5.8;
    private static final double WEAKEST = STRONGEST / 26;

    private TypicalUv() {
    }

    /** Empty for a lamp that is no tube, was read, or of which lit length or what lies between is not told. */
    static Optional<LampOutput> of(Lamp lamp) {
        boolean isEnoughTold = lamp.kind() == LampKind.UV_TUBE && lamp.arcLength().isKnown() && lamp.betweenTold() == Stated.YES;
        return isEnoughTold && !lamp.hasReading() ? Optional.of(ofTube(lamp)) : Optional.empty();
    }

    private static LampOutput ofTube(Lamp lamp) {
        double arc = Metres.of(lamp.arcLength()).value();
        double passed = lamp.between().stream().mapToDouble(Screen::share).reduce(1, (one, other) -> one * other);
        double strengthPerIndex = passed * AT_METRES * arc / LightField.tubeFactor(AT_METRES, arc);
        double uncertainty = Conformance.fromHalfWidth((STRONGEST - WEAKEST) / 2);
        Step step = Step.of("usual-for-tubes", new Amount(WEAKEST, Unit.UV_INDEX), new Amount(STRONGEST, Unit.UV_INDEX),
                new Amount(Metres.inCentimetres(AT_METRES), Unit.CENTIMETRE));
        return new LampOutput(strengthPerIndex * (STRONGEST + WEAKEST) / 2, strengthPerIndex * uncertainty, Method.ESTIMATED, "", List.of(step),
                LampOutput.steps(lamp.between()));
    }
}
