package org.loamlight.setup;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Answers that cannot all be true: things beyond the walls, a tube longer than the box, two solid pieces in one place. Each answer is good to its
 * limits ±a only, so an answer contradicts another when it is off by more than the limits of both together.
 */
final class Contradictions {
    private static final double ROOT_THREE = StrictMath.sqrt(3);
    private static final String BETWEEN_THE_WALLS = "it must lie between the walls; measure it again, or correct enclosure.inside";
    private static final String BELOW_THE_LID = "it must lie between floor and lid; measure it again, or correct enclosure.inside";

    private final Setup setup;
    private final JsonValue document;
    private final Problems problems;
    private final Span length;
    private final Span depth;
    private final Span height;

    /**
     * @param setup    as read from the document, whatever else was wrong with it
     * @param problems takes up what contradicts
     */
    Contradictions(Setup setup, JsonValue document, Problems problems) {
        this.setup = setup;
        this.document = document;
        this.problems = problems;
        this.length = span("length", setup.enclosure().length(), BETWEEN_THE_WALLS);
        this.depth = span("depth", setup.enclosure().depth(), BETWEEN_THE_WALLS);
        this.height = span("height", setup.enclosure().height(), BELOW_THE_LID);
    }

    /** Looks at everything that stands somewhere. */
    void report() {
        each("heaters", setup.heaters(), this::heater);
        each("lamps", setup.lamps(), this::lamp);
        setup.substrate().ifPresent(substrate -> within(height, substrate.depth(), new Part(document), "substrate", "depth"));
        each("furnishings", setup.furnishings(), this::furnishing);
        each("readings", setup.readings(), (reading, part) -> spot(reading.place(), part, true));
        new Overlaps(setup.furnishings()).each(this::overlap);
    }

    // ---- what is looked at

    /** What hangs outside may hang beside or above. */
    private void heater(Heater heater, Part part) {
        if (heater.mounted() != Mount.OUTSIDE) {
            spot(heater.place(), part, heater.mounted() == Mount.INSIDE);
        }
    }

    /** A lamp may lie on the lid; only one with nothing between it and the animal is surely inside. */
    private void lamp(Lamp lamp, Part part) {
        boolean inside = lamp.betweenTold() == Stated.YES && lamp.between().isEmpty();
        spot(lamp.place(), part, false);
        if (inside && lamp.arcLength().isKnown()) {
            tube(lamp, part);
        }
    }

    private void tube(Lamp lamp, Part part) {
        Span along = lamp.runs() == TubeRuns.ACROSS ? depth : length;
        Measure middle = lamp.runs() == TubeRuns.ACROSS ? lamp.place().across() : lamp.place().along();
        Measure longest = lamp.runs() == TubeRuns.UNKNOWN ? diagonal() : along.size;
        if (isBeyond(lamp.arcLength(), longest)) {
            problems.add(part.at("lit-length"), "found " + part.at("lit-length").quoted() + ", longer than the enclosure is inside",
                    "the tube must fit between the walls; measure the lit part again, or correct enclosure.inside, or say what lies between if it is outside");
        } else if (lamp.runs() != TubeRuns.UNKNOWN) {
            around(middle, lamp.arcLength(), along, part.at("lit-length"));
        }
    }

    private Measure diagonal() {
        return length.size.isKnown() && depth.size.isKnown()
                ? new Measure(StrictMath.hypot(length.size.value(), depth.size.value()), length.size.standardUncertainty(), length.size.unit())
                : Measure.UNKNOWN;
    }

    private void furnishing(Furnishing piece, Part part) {
        spot(piece.place(), part, true);
        within(length, piece.begins(), part, "from");
        within(length, piece.ends(), part, "to");
        within(depth, piece.nearEdge(), part, "from-front");
        within(depth, piece.farEdge(), part, "to-front");
        within(height, piece.bottom(), part, "bottom");
        within(height, piece.top(), part, "top");
        within(height, piece.restHeight(), part, "rest-height");
        if (!within(length, piece.extent(), part, "extent") && piece.extent().isKnown()) {
            around(piece.place().along(), piece.extent(), length, part.at("extent"));
        }
    }

    private void spot(Spot place, Part part, boolean belowTheLid) {
        within(length, place.along(), part, "place", "along");
        within(depth, place.across(), part, "place", "across");
        if (belowTheLid) {
            within(height, place.above(), part, "place", "above");
        }
    }

    private void overlap(Furnishing later, Furnishing earlier, int place) {
        problems.add(new Part(parts("furnishings").get(place)).at(),
                "found " + Quoted.of(earlier.name()) + " and " + Quoted.of(later.name()) + " through one another",
                "two solid pieces cannot be in one place; measure their edges again, and of a piece that stands over another give its underside as bottom");
    }

    // ---- what is compared

    /**
     * An inner size of the enclosure.
     *
     * @param name    as the setup calls it
     * @param written as the keeper wrote it; empty when not told
     * @param allowed what is asked of everything in it, for messages
     */
    private record Span(String name, Measure size, String written, String allowed) {
    }

    private Span span(String name, Measure size, String allowed) {
        return new Span(name, size, size.isKnown() ? new Part(document).at("enclosure", "inside", name).quoted() : "", allowed);
    }

    /** Whether a position was found beyond the far wall, and told. */
    private boolean within(Span span, Measure position, Part part, String... path) {
        boolean isBeyond = isBeyond(position, span.size);
        if (isBeyond) {
            JsonValue at = part.at(path);
            problems.add(at, "found " + at.quoted() + ", beyond the inside " + span.name + " of " + span.written, span.allowed);
        }
        return isBeyond;
    }

    /** A piece that is told by its middle and its extent must not reach through either wall. */
    private void around(Measure middle, Measure extent, Span span, JsonValue at) {
        if (!middle.isKnown() || !span.size.isKnown()) {
            return;
        }
        double reach = extent.value() / 2;
        double room = limits(middle) + limits(extent) / 2;
        boolean throughNear = reach - middle.value() > room;
        boolean throughFar = middle.value() + reach - span.size.value() > room + limits(span.size);
        if (throughNear || throughFar) {
            problems.add(at, "found " + at.quoted() + " about its place, which reaches through the wall", span.allowed + ", or its place");
        }
    }

    private static boolean isBeyond(Measure position, Measure size) {
        return position.isKnown() && size.isKnown() && position.value() - size.value() > limits(position) + limits(size);
    }

    /** The limits ±a behind a standard uncertainty (JCGM 100:2008, 4.3.7). */
    static double limits(Measure measure) {
        return measure.standardUncertainty() * ROOT_THREE;
    }

    // ---- where it stands

    private interface Look<T> {
        void at(T thing, Part part);
    }

    private <T> void each(String section, List<T> things, Look<T> look) {
        List<JsonValue> parts = parts(section);
        IntStream.range(0, things.size()).forEach(i -> look.at(things.get(i), new Part(parts.get(i))));
    }

    /** The elements that were read: what is no object was told of and left out. */
    private List<JsonValue> parts(String section) {
        return new Part(document).member(section).filter(JsonValue.JsonArray.class::isInstance).map(JsonValue.JsonArray.class::cast)
                .map(JsonValue.JsonArray::elements).orElse(List.of()).stream().filter(JsonValue.JsonObject.class::isInstance).toList();
    }

    /** A part of the document, to find the answers in. */
    private record Part(JsonValue at) {
        Optional<JsonValue> member(String key) {
            return at instanceof JsonValue.JsonObject object ? Optional.ofNullable(object.members().get(key)) : Optional.empty();
        }

        /** An answer in it; the part itself where there is none. */
        JsonValue at(String... path) {
            Part part = this;
            for (String key : path) {
                part = new Part(part.member(key).orElse(part.at));
            }
            return part.at;
        }
    }
}
