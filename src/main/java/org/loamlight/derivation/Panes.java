package org.loamlight.derivation;

import java.util.List;
import java.util.Optional;
import org.loamlight.physics.HeatFlow;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Build;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Front;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Pane;
import org.loamlight.setup.PaneMaterial;

/**
 * The sides of an enclosure with what is told of them and what follows: the front is of what the way it opens
 * says and else like the walls, the floor is like the walls.
 */
final class Panes {
    private static final double MILLIMETRES_PER_METRE = 1000;

    private final Enclosure enclosure;

    Panes(Enclosure enclosure) {
        this.enclosure = enclosure;
    }

    /** @param heat which way heat goes out through it */
    record Side(Pane pane, HeatFlow heat) {
    }

    Pane walls() {
        return build().walls();
    }

    Pane top() {
        return build().top();
    }

    Pane base() {
        return build().base().isTold() ? build().base() : walls();
    }

    Pane front() {
        if (build().frontPane().isTold()) {
            return build().frontPane();
        }
        return madeOf(enclosure.front()).map(material -> new Pane(material, Measure.UNKNOWN)).orElseGet(this::walls);
    }

    private static Optional<PaneMaterial> madeOf(Front front) {
        return switch (front) {
            case GLASS_DOORS -> Optional.of(PaneMaterial.GLASS);
            case PLASTIC_DOOR -> Optional.of(PaneMaterial.ACRYLIC);
            case MESH -> Optional.of(PaneMaterial.MESH);
            case HINGED_DOOR, OPEN_TOP_LID, OTHER, UNKNOWN -> Optional.empty();
        };
    }

    /** Walls, front and lid where all of them are of a known make, mesh included; else empty. */
    Optional<List<Side>> upright() {
        List<Side> sides = List.of(new Side(walls(), HeatFlow.HORIZONTAL), new Side(front(), HeatFlow.HORIZONTAL),
                new Side(top(), HeatFlow.UP));
        return sides.stream().allMatch(side -> isKnownMake(side.pane)) ? Optional.of(sides) : Optional.empty();
    }

    /** Whether all sides, the floor too, are of a known make. */
    boolean areKnown() {
        return all().stream().allMatch(Panes::isKnownMake);
    }

    /** Walls, front, lid and floor. */
    List<Pane> all() {
        return List.of(walls(), front(), top(), base());
    }

    private static boolean isKnownMake(Pane pane) {
        return pane.of().isSheet() || pane.of() == PaneMaterial.MESH;
    }

    /** Thickness as measured, else as usual for the material. */
    static Amount thickness(Pane pane) {
        return pane.thickness().isKnown() ? pane.thickness().amount() : new Amount(pane.of().usualMillimetres(), Unit.MILLIMETRE);
    }

    /** The same (m). */
    static double metres(Pane pane) {
        return thickness(pane).value() / MILLIMETRES_PER_METRE;
    }

    private Build build() {
        return enclosure.build();
    }
}
