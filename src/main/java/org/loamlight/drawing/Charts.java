package org.loamlight.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Where;
import org.loamlight.derivation.Axis;
import org.loamlight.derivation.UvSlice;
import org.loamlight.derivation.Whereabouts;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Furnishing;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Stated;
import org.loamlight.wording.Wording;

/** What of an audit people would rather look at than read. Only what there are numbers for. */
public final class Charts {
    private static final Set<Topic> TEMPERATURES = EnumSet.of(Topic.AIR_TEMPERATURE_BY_DAY, Topic.AIR_TEMPERATURE_BY_NIGHT,
            Topic.SURFACE_TEMPERATURE_BY_DAY, Topic.SURFACE_TEMPERATURE_BY_NIGHT);
    private static final int HEIGHTS = 12;
    /** How near below a lamp the index is still shown (cm): nearer it only grows out of the chart. */
    private static final double NEAREST = 15;

    private final Audit audit;
    private final Wording wording;

    private Charts(Audit audit, Wording wording) {
        this.audit = audit;
        this.wording = wording;
    }

    /** The charts of one audit: temperatures, cover, ultraviolet; empty when nothing was told that gives one. */
    public static List<Chart> of(Audit audit, Wording wording) {
        Charts charts = new Charts(audit, wording);
        return Stream.of(charts.temperatures(), charts.cover(), charts.light()).flatMap(Optional::stream).toList();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("drawing.chart." + key, arguments);
    }

    private double plain(double value, Unit unit) {
        return Double.isInfinite(value) || Double.isNaN(value) ? Double.NaN : wording.plain(new Amount(value, unit));
    }

    /**
     * A value between the strictest ends of all limits that are asked of it.
     *
     * @param low  NaN where nothing is asked
     * @param high NaN where nothing is asked
     */
    private record Range(Quantity found, double low, double high) {
        static Range of(Quantity found, List<ResolvedLimit> limits) {
            return new Range(found, limits.stream().filter(ResolvedLimit::hasLow).mapToDouble(ResolvedLimit::low).max().orElse(Double.NaN),
                    limits.stream().filter(ResolvedLimit::hasHigh).mapToDouble(ResolvedLimit::high).min().orElse(Double.NaN));
        }
    }

    private List<Range> ranges() {
        Map<Quantity, List<ResolvedLimit>> limits = new LinkedHashMap<>();
        audit.findings().stream().filter(finding -> !finding.criterion().isOfCode()).flatMap(Charts::asked).filter(one -> TEMPERATURES.contains(one.quantity().topic()))
                .forEach(one -> limits.computeIfAbsent(one.quantity(), missing -> new ArrayList<>()).add(one.limit()));
        return limits.entrySet().stream().map(one -> Range.of(one.getKey(), one.getValue())).toList();
    }

    /** What need be so at one place of the enclosure only is asked of the place that decides, not of the others. */
    private static Stream<Held> asked(Finding finding) {
        return finding.held().stream().filter(one -> one.limit().where() != Where.SOMEWHERE || one.limit().place().zone() != Zone.ENCLOSURE
                || finding.deciding().filter(one::equals).isPresent());
    }

    private Optional<Chart> temperatures() {
        List<Range> ranges = ranges();
        if (ranges.isEmpty()) {
            return Optional.empty();
        }
        List<Chart.Series> series = Stream.of(series("lowest", ranges, Range::low), series("found", ranges, range -> range.found().value()),
                series("highest", ranges, Range::high)).filter(one -> !one.isEmpty()).toList();
        String described = ranges.stream().map(range -> say("temperature.described", named(range), wording.value(range.found()), asked(range)))
                .collect(Collectors.joining("; "));
        return Optional.of(new Chart(Chart.Kind.RANGES, say("temperatures"), say("temperatures.described", described), wording.unitOf(Unit.CELSIUS),
                say("reading"), ranges.stream().map(this::named).toList(), series));
    }

    private String named(Range range) {
        return wording.topicAt(range.found().topic(), range.found().place());
    }

    private String asked(Range range) {
        return Stream.of(Double.isNaN(range.low()) ? "" : say("no-less", amount(range.low())),
                Double.isNaN(range.high()) ? "" : say("no-more", amount(range.high()))).filter(text -> !text.isEmpty()).collect(Collectors.joining(", "));
    }

    private String amount(double celsius) {
        return wording.amount(new Amount(celsius, Unit.CELSIUS));
    }

    private Chart.Series series(String key, List<Range> ranges, Function<Range, Double> value) {
        return new Chart.Series(say(key), ranges.stream().map(range -> plain(value.apply(range), Unit.CELSIUS)).toList());
    }

    private Optional<Chart> cover() {
        Whereabouts along = Whereabouts.of(audit.setup(), Axis.LENGTH);
        List<Furnishing> pieces = audit.setup().furnishings().stream().filter(piece -> piece.cover() == Stated.YES && along.stretch(piece).isPresent()).toList();
        if (pieces.isEmpty() || !audit.setup().enclosure().length().isKnown()) {
            return Optional.empty();
        }
        List<Chart.Series> series = List.of(
                new Chart.Series(say("begins"), pieces.stream().map(piece -> plain(along.stretch(piece).orElseThrow().from(), Unit.CENTIMETRE)).toList()),
                new Chart.Series(say("reaches"), pieces.stream().map(piece -> plain(along.stretch(piece).orElseThrow().width(), Unit.CENTIMETRE)).toList()));
        String described = pieces.stream().map(piece -> piece.name() + " " + wording.sentence("drawing.range",
                centimetres(along.stretch(piece).orElseThrow().from()), centimetres(along.stretch(piece).orElseThrow().to()))).collect(Collectors.joining("; "));
        return Optional.of(new Chart(Chart.Kind.STRETCHES, say("cover"), say("cover.described", described),
                say("from-left", wording.unitOf(Unit.CENTIMETRE)), say("piece"), pieces.stream().map(Furnishing::name).toList(), series));
    }

    private String centimetres(double value) {
        return wording.amount(new Amount(value, Unit.CENTIMETRE));
    }

    private Optional<Chart> light() {
        return UvSlice.of(audit.setup()).filter(slice -> highest(slice) > NEAREST).map(this::light);
    }

    private static double highest(UvSlice slice) {
        return slice.lamps().stream().mapToDouble(slice::above).max().orElseThrow();
    }

    private Chart light(UvSlice slice) {
        double step = (highest(slice) - NEAREST) / HEIGHTS;
        List<Double> heights = IntStream.rangeClosed(0, HEIGHTS).mapToObj(i -> i * step).toList();
        List<Chart.Series> series = new ArrayList<>();
        slice.lamps().forEach(lamp -> series.add(new Chart.Series(say("below", lamp.name()), heights.stream()
                .map(height -> height <= slice.above(lamp) - NEAREST ? slice.index(slice.along(lamp), height) : Double.NaN).toList())));
        limits().ifPresent(limit -> {
            if (limit.limit().hasLow()) {
                series.add(Chart.Series.constant(say("lowest"), limit.limit().low(), heights.size()));
            }
            if (limit.limit().hasHigh()) {
                series.add(Chart.Series.constant(say("highest"), limit.limit().high(), heights.size()));
            }
        });
        String described = slice.lamps().stream().map(lamp -> below(slice, lamp, heights)).collect(Collectors.joining("; "));
        return new Chart(Chart.Kind.BY_HEIGHT, say("uv"), say("uv.described", described), say("index"), say("height", wording.unitOf(Unit.CENTIMETRE)),
                heights.stream().map(height -> String.valueOf(plain(Math.rint(height * 10) / 10, Unit.CENTIMETRE))).toList(), series);
    }

    /** The index on the floor and half-way up. */
    private String below(UvSlice slice, Lamp lamp, List<Double> heights) {
        double half = heights.get(HEIGHTS / 2);
        return say("uv.lamp", lamp.name(), wording.amount(new Amount(slice.index(slice.along(lamp), half), Unit.UV_INDEX)), centimetres(half));
    }

    private Optional<Held> limits() {
        return audit.findings().stream().flatMap(finding -> finding.held().stream()).filter(one -> one.quantity().topic() == Topic.UV_INDEX).findFirst();
    }
}
