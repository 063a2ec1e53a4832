package org.loamlight.drawing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.loamlight.derivation.Axis;
import org.loamlight.derivation.UvSlice;
import org.loamlight.derivation.Whereabouts;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.physics.Stretch;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Substrate;
import org.loamlight.wording.Wording;

/** What there is to draw, and how large. Lengths in centimetres. Only for an enclosure of known length. */
final class Scene {
    /** How much of the height is drawn above the lid for what lies on it. */
    static final double HEADROOM = 0.3;
    /** Lowest side drawn where a size is not told (cm). */
    private static final double LEAST = 15;

    private final Setup setup;
    private final Wording wording;
    private final Numbers numbers;
    private final Axis axis;
    private final Whereabouts lengthwise;
    private final List<Placement> placements;
    private final Scale scale;
    private final Optional<UvSlice> light;

    Scene(Audit audit, Wording wording, Numbers numbers) {
        this.setup = audit.setup();
        this.wording = wording;
        this.numbers = numbers;
        this.axis = Auditor.axis(setup, audit.knowledge());
        this.lengthwise = Whereabouts.of(setup, Axis.LENGTH);
        this.placements = new Placements(setup, lengthwise, numbers).all();
        this.light = UvSlice.of(setup);
        this.scale = Scale.fitting(hasLength() ? length() : LEAST, depth().orElse(0) + heightDrawn().orElse(0));
    }

    Setup setup() {
        return setup;
    }

    Wording wording() {
        return wording;
    }

    Numbers numbers() {
        return numbers;
    }

    Scale scale() {
        return scale;
    }

    List<Placement> placements() {
        return placements;
    }

    Whereabouts lengthwise() {
        return lengthwise;
    }

    /** Places along the height where the animals live in trees, else along the length. */
    Whereabouts alongAxis() {
        return Whereabouts.of(setup, axis);
    }

    boolean isUpright() {
        return axis == Axis.HEIGHT;
    }

    boolean hasLength() {
        return setup.enclosure().length().isKnown();
    }

    double length() {
        return setup.enclosure().length().value();
    }

    /** From front to back: as told, else as far as anything told reaches; empty when nothing tells of it. */
    OptionalDouble depth() {
        return size(setup.enclosure().depth(), Placement::across);
    }

    /** From the bare floor to the lid: as told, else as far as anything told reaches; empty when nothing tells of it. */
    OptionalDouble height() {
        OptionalDouble height = size(setup.enclosure().height(), Placement::above);
        return height.isEmpty() && substrate().isPresent() ? OptionalDouble.of(LEAST) : height;
    }

    /** The height with what lies on the lid. */
    OptionalDouble heightDrawn() {
        OptionalDouble height = height();
        return height.isEmpty() ? height : OptionalDouble.of(Math.max(height.getAsDouble(), farthest(Placement::above)));
    }

    private OptionalDouble size(Measure told, Function<Placement, Optional<Stretch>> reach) {
        if (told.isKnown()) {
            return OptionalDouble.of(told.value());
        }
        return placements.stream().anyMatch(one -> one.along().isPresent() && reach.apply(one).isPresent())
                ? OptionalDouble.of(Math.max(LEAST, farthest(reach))) : OptionalDouble.empty();
    }

    private double farthest(Function<Placement, Optional<Stretch>> reach) {
        return placements.stream().map(reach).flatMap(Optional::stream).mapToDouble(Stretch::to).max().orElse(0);
    }

    /** Depth of the substrate above 0; empty when not told. */
    Optional<Double> substrate() {
        return setup.substrate().map(Substrate::depth).filter(depth -> depth.isKnown() && depth.value() > 0).map(Measure::value);
    }

    /** The light of all UV lamps; empty while one of them is not known. */
    Optional<UvSlice> light() {
        return light;
    }

    String say(String key, Object... arguments) {
        return wording.sentence("drawing." + key, arguments);
    }

    String centimetres(double value) {
        return wording.amount(new Amount(value, Unit.CENTIMETRE));
    }
}
