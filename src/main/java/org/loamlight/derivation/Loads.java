package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Bulk;
import org.loamlight.physics.Conformance;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.FurnishingKind;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Pane;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;
import org.loamlight.setup.Water;

/**
 * Volume and mass of the substrate, and what stands on the stand: enclosure, substrate, furnishings and water. Animals, lamps and
 * heaters are left out. The whole load is computed only when each of its parts is told: a part left out would make it look safe.
 */
final class Loads {
    /** How far the mass of a pane may be off (±, relatively): boards of unknown make scatter by a fifth. */
    static final double DENSITY_HALF_WIDTH = 0.2;
    /** How far the thickness taken as usual may be off (±, relatively): judgement. */
    static final double USUAL_HALF_WIDTH = 0.5;

    private static final double SQUARE_CENTIMETRES_PER_SQUARE_METRE = 10_000;
    /** EN 1991-1-1, Annex A: water weighs 10 kN/m3, nominally. */
    private static final double KILOGRAMS_PER_LITRE = 1;

    private final Setup setup;
    private final Filling filling;

    Loads(Setup setup) {
        this.setup = setup;
        this.filling = new Filling(setup);
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        filling.volume().ifPresent(litres -> quantities.add(litres.of(Topic.SUBSTRATE_VOLUME, "substrate")));
        filling.toBuy().ifPresent(litres -> quantities.add(litres.of(Topic.SUBSTRATE_TO_BUY, "substrate")));
        filling.mass().ifPresent(kilograms -> quantities.add(kilograms.of(Topic.SUBSTRATE_MASS, "substrate")));
        total().ifPresent(kilograms -> quantities.add(kilograms.of(Topic.TOTAL_LOAD, Subject.ENCLOSURE.key())));
        return quantities;
    }

    private Optional<Portion> total() {
        List<Optional<Portion>> parts = List.of(enclosure(), substrate(), furnishings(), water());
        return parts.stream().allMatch(Optional::isPresent)
                ? Optional.of(onTheFloor(sum(parts.stream().flatMap(Optional::stream).toList()))) : Optional.empty();
    }

    /** What that is on the inside size as footprint: what the floor below must carry as well, which is told and not judged. */
    private Portion onTheFloor(Portion load) {
        double squareMetres = setup.enclosure().length().value() * setup.enclosure().depth().value() / SQUARE_CENTIMETRES_PER_SQUARE_METRE;
        double tenths = StrictMath.rint(Bulk.kilonewtonsPerSquareMetre(load.value(), squareMetres) * 10) / 10;
        return new Portion(load.amount(), Stream.concat(load.trail().stream(), Stream.of(Step.of("floor-load", String.valueOf(tenths)))).toList());
    }

    private static Portion sum(List<Portion> parts) {
        return new Portion(parts.stream().map(Portion::amount).reduce(Uncertain.NOTHING, Uncertain::plus),
                parts.stream().map(Portion::trail).flatMap(List::stream).toList());
    }

    private static Portion part(String step, Uncertain kilograms) {
        return new Portion(kilograms, List.of(Step.of(step, new Amount(kilograms.value(), Unit.KILOGRAM))));
    }

    private Optional<Portion> enclosure() {
        Measure mass = setup.enclosure().build().mass();
        return mass.isKnown() ? Optional.of(part("load-enclosure", Uncertain.of(mass))) : panes();
    }

    private Optional<Portion> panes() {
        Enclosure box = setup.enclosure();
        Panes panes = new Panes(box);
        boolean isTold = panes.areKnown() && Stream.of(box.length(), box.depth(), box.height()).allMatch(Measure::isKnown);
        return isTold ? Optional.of(panes(box, panes)) : Optional.empty();
    }

    /** Panes of one kind are off together, so their uncertainties add up. */
    private static Portion panes(Enclosure box, Panes panes) {
        double front = box.length().value() * box.height().value();
        double floor = box.length().value() * box.depth().value();
        double side = box.depth().value() * box.height().value();
        List<Uncertain> all = List.of(pane(panes.walls(), front + 2 * side), pane(panes.front(), front), pane(panes.top(), floor),
                pane(panes.base(), floor));
        return part("load-panes", new Uncertain(all.stream().mapToDouble(Uncertain::value).sum(),
                all.stream().mapToDouble(Uncertain::uncertainty).sum()));
    }

    private static Uncertain pane(Pane pane, double squareCentimetres) {
        double kilograms = squareCentimetres / SQUARE_CENTIMETRES_PER_SQUARE_METRE * Panes.metres(pane) * pane.of().density();
        Measure thickness = pane.thickness();
        double ofThickness = thickness.isKnown() ? thickness.standardUncertainty() / thickness.value()
                : Conformance.fromHalfWidth(USUAL_HALF_WIDTH);
        return new Uncertain(kilograms, kilograms * ofThickness).and(Conformance.fromHalfWidth(DENSITY_HALF_WIDTH * kilograms));
    }

    private Optional<Portion> substrate() {
        return filling.mass().map(mass -> new Portion(mass.amount(),
                Stream.concat(part("load-substrate", mass.amount()).trail().stream(), mass.trail().stream()).toList()));
    }

    /** Leaf litter nobody weighed counts as nothing. */
    private Optional<Portion> furnishings() {
        List<Furnishing> pieces = setup.furnishings().stream()
                .filter(piece -> piece.mass().isKnown() || piece.kind() != FurnishingKind.LEAF_LITTER).toList();
        boolean isTold = setup.told().has("furnishings", Subject.ENCLOSURE) && pieces.stream().allMatch(piece -> piece.mass().isKnown());
        return isTold ? Optional.of(part("load-furnishings", pieces.stream().map(piece -> Uncertain.of(piece.mass()))
                .reduce(Uncertain.NOTHING, Uncertain::plus))) : Optional.empty();
    }

    /** Where water comes as drops only, none stands in the enclosure. */
    private Optional<Portion> water() {
        return setup.water().filter(water -> water.volume().isKnown() || water.dish() == Stated.NO).map(Loads::water);
    }

    private static Portion water(Water water) {
        Measure litres = water.volume();
        return litres.isKnown() ? part("load-water", Uncertain.of(litres).times(KILOGRAMS_PER_LITRE))
                : new Portion(Uncertain.NOTHING, List.of());
    }
}
