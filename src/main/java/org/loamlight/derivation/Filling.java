package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.physics.Bulk;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.DensityRange;
import org.loamlight.quantity.Step;
import org.loamlight.setup.Enclosure;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Substrate;
import org.loamlight.setup.SubstrateKind;

/** The substrate: its volume, the loose volume to buy for it, and its mass. */
final class Filling {
    /** How far the allowance for settling may be off (±, as a share of the layer): judgement. */
    static final double SETTLING_HALF_WIDTH = 0.1;

    private static final double LITRES_PER_CUBIC_METRE = 1000;

    private final Enclosure enclosure;
    private final Optional<Portion> volume;
    private final Optional<Portion> mass;

    Filling(Setup setup) {
        this.enclosure = setup.enclosure();
        this.volume = setup.substrate().map(Substrate::depth).filter(depth -> sizes(depth).allMatch(Measure::isKnown)).map(this::volume);
        this.mass = volume.flatMap(litres -> setup.substrate().filter(one -> one.kind().isKnown()).map(one -> mass(litres, one)));
    }

    /** Litres, as if it were as deep everywhere as where it is deepest: the most there can be. Empty when a size is not told. */
    Optional<Portion> volume() {
        return volume;
    }

    private Portion volume(Measure depth) {
        double[] metres = sizes(depth).mapToDouble(size -> Metres.fromCentimetres(size.value())).toArray();
        double litres = LITRES_PER_CUBIC_METRE * Bulk.layerCubicMetres(metres[0], metres[1], metres[2]);
        double[] shares = sizes(depth).mapToDouble(size -> size.value() == 0 ? 0 : size.standardUncertainty() / size.value()).toArray();
        return new Portion(new Uncertain(litres, litres * Conformance.combine(shares)), List.of(Step.of("as-deep-everywhere", depth.amount())));
    }

    private Stream<Measure> sizes(Measure depth) {
        return Stream.of(enclosure.length(), enclosure.depth(), depth);
    }

    /** Litres to buy, loose; empty when the volume is not known. */
    Optional<Portion> toBuy() {
        return volume.map(layer -> {
            double litres = Bulk.litresToBuy(layer.value() / LITRES_PER_CUBIC_METRE);
            double settling = Conformance.fromHalfWidth(SETTLING_HALF_WIDTH * layer.value());
            return new Portion(new Uncertain(litres, (1 + Bulk.SETTLING) * layer.uncertainty()).and(settling),
                    with(layer.trail(), Step.of("settling", Moisture.percentAmount(Bulk.SETTLING))));
        });
    }

    /** Kilograms, as moist as it is told to be; empty when volume or kind are not known. */
    Optional<Portion> mass() {
        return mass;
    }

    private static Portion mass(Portion volume, Substrate substrate) {
        DensityRange density = density(substrate);
        Uncertain kilogramsPerLitre = Uncertain.between(density.low(), density.high()).times(1 / LITRES_PER_CUBIC_METRE);
        Step step = Step.of("bulk-density", substrate.kind(), text(density.low()), text(density.high()));
        return new Portion(volume.amount().times(kilogramsPerLitre), with(volume.trail(), step));
    }

    private static String text(double kilogramsPerCubicMetre) {
        return String.valueOf(StrictMath.round(kilogramsPerCubicMetre));
    }

    /** Damp may be anything between dry and wet, and so may what nobody felt. */
    private static DensityRange density(Substrate substrate) {
        SubstrateKind kind = substrate.kind();
        DensityRange dry = new DensityRange(kind.dryLow(), kind.dryHigh());
        DensityRange wet = new DensityRange(kind.wetLow(), kind.wetHigh());
        return switch (substrate.moisture()) {
            case DRY -> dry;
            case WET -> wet;
            case DAMP, DAMP_BELOW, UNKNOWN -> dry.joined(wet);
        };
    }

    private static List<Step> with(List<Step> trail, Step last) {
        List<Step> longer = new ArrayList<>(trail);
        longer.add(last);
        return longer;
    }
}
