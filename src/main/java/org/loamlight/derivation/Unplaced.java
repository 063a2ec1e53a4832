package org.loamlight.derivation;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loamlight.quantity.Lacking;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * What is lacking to tell whether there is cover in each third of the axis, and a hide at either end. Nothing is where each of them has
 * a piece already, whatever else stands there; nor where the keeper's own words name one for each, whichever side is the warm one.
 */
final class Unplaced {
    private static final List<Set<Zone>> ENDS = List.of(EnumSet.of(Zone.WARM_END, Zone.BASKING_PLACE), EnumSet.of(Zone.COOL_END));
    private static final List<Set<Zone>> THIRDS = List.of(ENDS.get(0), EnumSet.of(Zone.MIDDLE_THIRD), ENDS.get(1));

    private final Setup setup;
    private final Layout layout;

    Unplaced(Setup setup, Layout layout) {
        this.setup = setup;
        this.layout = layout;
    }

    /** Nothing while nobody told what is in it: that is asked first. */
    List<Lacking> lacking() {
        Set<Lacking> lacking = new LinkedHashSet<>();
        if (setup.told().has("furnishings", Subject.ENCLOSURE)) {
            cover().forEach(path -> lacking.add(new Lacking(Topic.COVER_PIECES, Place.ANYWHERE, path)));
            hides().forEach(path -> lacking.add(new Lacking(Topic.HIDES, Place.ANYWHERE, path)));
        }
        return List.copyOf(lacking);
    }

    private Set<String> cover() {
        boolean isTold = reach(Furnishing::cover, List.of(0, 1, 2)) || areNamedFor(Furnishing::cover, THIRDS);
        return isTold ? Set.of() : questions("cover", Furnishing::cover);
    }

    private Set<String> hides() {
        if (areNamedFor(Furnishing::hide, ENDS) || layout.isWarmEndKnown() && reach(Furnishing::hide, List.of(0, 2))) {
            return Set.of();
        }
        Set<String> questions = questions("hide", Furnishing::hide);
        if (!layout.isWarmEndKnown() && pieces(Furnishing::hide).stream().anyMatch(this::isPlaced)) {
            questions.add("enclosure.warm-end");
        }
        return questions;
    }

    private boolean reach(Function<Furnishing, Stated> counts, List<Integer> thirds) {
        Set<Integer> reached = pieces(counts).stream().flatMap(piece -> layout.thirds(piece).stream()).collect(Collectors.toSet());
        return reached.containsAll(thirds);
    }

    private boolean areNamedFor(Function<Furnishing, Stated> counts, List<Set<Zone>> words) {
        return words.stream().allMatch(zones -> pieces(counts).stream().anyMatch(piece -> zones.contains(piece.place().zone())));
    }

    private List<Furnishing> pieces(Function<Furnishing, Stated> counts) {
        return setup.furnishings().stream().filter(piece -> counts.apply(piece) == Stated.YES).toList();
    }

    /** Of each piece that counts or may count: whether it does, and where it stands. */
    private Set<String> questions(String question, Function<Furnishing, Stated> counts) {
        Set<String> questions = new LinkedHashSet<>();
        for (Furnishing piece : setup.furnishings()) {
            if (counts.apply(piece) == Stated.UNKNOWN) {
                questions.add(piece.subject().path(question));
            }
            if (counts.apply(piece) != Stated.NO && layout.thirds(piece).isEmpty()) {
                questions.add(whereItStands(piece));
            }
        }
        return questions;
    }

    private boolean isPlaced(Furnishing piece) {
        return layout.isMeasured(piece) || layout.isInWords(piece);
    }

    /** A piece that seems told, and is beyond the wall or of no width, reaches no third: then something about the pieces is wrong. */
    private String whereItStands(Furnishing piece) {
        if (!isPlaced(piece)) {
            return piece.subject().path("place");
        }
        if (!layout.isMeasured(piece)) {
            return "enclosure.warm-end";
        }
        return layout.length().isKnown() ? "furnishings" : layout.axis() == Axis.LENGTH ? "enclosure.inside.length" : "enclosure.inside.height";
    }
}
