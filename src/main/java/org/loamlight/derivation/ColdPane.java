package org.loamlight.derivation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Layer;
import org.loamlight.physics.Transmittance;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Pane;

/**
 * The inside of the coldest of walls, front and lid: between air and room it keeps the share U Rsi of the way from the air (ISO
 * 6946: the fall of temperature over a layer is in proportion to its resistance). The floor is left out, as substrate lies on
 * it, and so is mesh, which has no inside; where all is mesh nothing is colder than the air itself.
 *
 * @param pane  what it is of
 * @param share U Rsi, the share of the way from air to room that lies before the inside surface: below 1, and 0 for mesh
 */
record ColdPane(Pane pane, double share) {

    /**
     * How far the share may be off, relatively (±): judgement. Corners and what stands behind furnishings are colder, moving air
     * makes warmer, thickness and conductivity are known to a fifth.
     */
    static final double SHARE_HALF_WIDTH = 0.25;

    /** Empty when walls or lid are not told, or one of the sides is of something that cannot be computed with. */
    static Optional<ColdPane> of(Panes panes) {
        return panes.upright().stream().flatMap(List::stream).map(ColdPane::of).max(Comparator.comparingDouble(ColdPane::share));
    }

    private static ColdPane of(Panes.Side side) {
        if (!side.pane().of().isSheet()) {
            return new ColdPane(side.pane(), 0);
        }
        Layer layer = new Layer(Panes.metres(side.pane()), side.pane().of().conductivity());
        return new ColdPane(side.pane(), Transmittance.betweenRooms(side.heat(), List.of(layer)) * side.heat().innerSurfaceResistance());
    }

    /** Temperature of its inside (°C). */
    double celsius(Measure air, Measure room) {
        return air.value() - share * (air.value() - room.value());
    }

    /** Standard uncertainty of {@link #celsius} (K), by the law of propagation (JCGM 100:2008, 5.1.2). */
    double kelvin(Measure air, Measure room) {
        double ofShare = Conformance.fromHalfWidth(SHARE_HALF_WIDTH * share) * Math.abs(air.value() - room.value());
        return Conformance.combine((1 - share) * air.standardUncertainty(), share * room.standardUncertainty(), ofShare);
    }

    List<Step> steps(Measure air, Measure room) {
        if (share == 0) {
            return List.of(Step.of("mesh-all-round"));
        }
        return List.of(Step.of("coldest-pane", pane.of(), Panes.thickness(pane), new Amount(celsius(air, room), Unit.CELSIUS)),
                Step.of("between-air-and-room", air.amount(), room.amount()));
    }
}
