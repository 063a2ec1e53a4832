package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.HeatCapacity;
import org.loamlight.physics.HeatFlow;
import org.loamlight.physics.Layer;
import org.loamlight.physics.ShellPart;
import org.loamlight.physics.Transmittance;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Pane;
import org.loamlight.setup.PaneMaterial;
import org.loamlight.setup.Setup;

/**
 * What the enclosure is made of, as heat sees it.
 *
 * @param wattsPerKelvin      sum of U A (W/K)
 * @param cubicMetres         air inside (m³)
 * @param floorSquareMetres   floor (m²)
 * @param paneJoulesPerKelvin heat stored by the panes (J/K)
 * @param meshed              whether a side is mesh, so that air passes all over it
 * @param trail               what had to be taken as usual
 */
record Shell(Uncertain wattsPerKelvin, double cubicMetres, double floorSquareMetres, double paneJoulesPerKelvin, boolean meshed,
        List<Step> trail) {
    /** Boards of unknown make scatter by a fifth in conductivity, and still air at the surfaces does no better: judgement. */
    private static final double SCATTER = 0.2;

    /** One side, of a sheet or of mesh. */
    private record Part(Pane pane, double squareMetres, HeatFlow flow) {
        List<Layer> layers() {
            return pane.of().isSheet() ? List.of(new Layer(Panes.metres(pane), pane.of().conductivity())) : List.of();
        }

        double wattsPerKelvin() {
            return new ShellPart(squareMetres, Transmittance.betweenRooms(flow, layers())).wattsPerKelvin();
        }

        double joulesPerKelvin() {
            return pane.of().isSheet() ? HeatCapacity.ofPane(squareMetres * Panes.metres(pane), pane.of().density(), pane.of().specificHeat()) : 0;
        }
    }

    /** Empty when an inside size is not told, or a side is of nothing that can be computed with. */
    static Optional<Shell> of(Setup setup) {
        Enclosure enclosure = setup.enclosure();
        boolean sized = Stream.of(enclosure.length(), enclosure.depth(), enclosure.height()).allMatch(Measure::isKnown);
        Panes panes = new Panes(enclosure);
        return sized && panes.areKnown() ? Optional.of(of(enclosure, panes)) : Optional.empty();
    }

    private static Shell of(Enclosure enclosure, Panes panes) {
        double length = Metres.fromCentimetres(enclosure.length().value());
        double depth = Metres.fromCentimetres(enclosure.depth().value());
        double height = Metres.fromCentimetres(enclosure.height().value());
        List<Part> free = List.of(new Part(panes.walls(), (length + 2 * depth) * height, HeatFlow.HORIZONTAL),
                new Part(panes.front(), length * height, HeatFlow.HORIZONTAL), new Part(panes.top(), length * depth, HeatFlow.UP));
        Part base = new Part(panes.base(), length * depth, HeatFlow.DOWN);
        double stored = Stream.concat(free.stream(), Stream.of(base)).mapToDouble(Part::joulesPerKelvin).sum();
        return new Shell(loss(free).plus(loss(base)), length * depth * height, length * depth, stored,
                panes.all().stream().anyMatch(pane -> pane.of() == PaneMaterial.MESH), trail(panes));
    }

    private static Uncertain loss(List<Part> free) {
        double loss = free.stream().mapToDouble(Part::wattsPerKelvin).sum();
        return new Uncertain(loss, Conformance.fromHalfWidth(SCATTER * loss));
    }

    /** What the enclosure stands on takes up anything from nothing to all that a base without a lower surface lets through. */
    private static Uncertain loss(Part base) {
        return Uncertain.between(0, base.squareMetres * Transmittance.onFurniture(base.layers()));
    }

    private static List<Step> trail(Panes panes) {
        List<Step> trail = new ArrayList<>();
        panes.all().stream().filter(pane -> pane.of().isSheet() && !pane.thickness().isKnown()).map(Pane::of).distinct()
                .forEach(material -> trail.add(Step.of("thickness-usual", material, new Amount(material.usualMillimetres(), Unit.MILLIMETRE))));
        return trail;
    }
}
