package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Stage;

/**
 * Every row of src/test/resources/published/codes.csv, with its document and clause, is in its code: figures as a limit of the
 * same species and size, words as a clause. The column {@code note} says whether the row was read in its text.
 */
class PublishedCodesTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final Set<Stage> GROWING = EnumSet.of(Stage.HATCHLING, Stage.JUVENILE, Stage.SUBADULT);
    private static final Map<String, Code> CODES = CodeReader.builtIn(CodeReader.ids()).stream().collect(Collectors.toMap(Code::id, code -> code));
    private static final Set<String> SPECIES = KnowledgeReader.builtIn().profiles().keySet();
    /** Names of groups of species that a row is for, and one species here that belongs to each. */
    private static final Map<String, String> GROUPS = Map.ofEntries(Map.entry("all snakes", "pantherophis-guttatus"),
            Map.entry("all lizards with pair sizes", "pogona-vitticeps"), Map.entry("reptiles at fairs", "pogona-vitticeps"),
            Map.entry("all reptiles", "boa-imperator"), Map.entry("chameleons", "chamaeleo-calyptratus"), Map.entry("chelonians", "testudo-hermanni"),
            Map.entry("terrestrial snakes", "python-regius"), Map.entry("lizards", "eublepharis-macularius"), Map.entry("snakes", "boa-imperator"),
            Map.entry("lizards and snakes", "pogona-vitticeps"), Map.entry("snakes (other than listed large constrictors)", "morelia-viridis"),
            Map.entry("pythons category C (jungle carpet python)", "python-regius"), Map.entry("ground-dwelling lizards", "tiliqua-scincoides"),
            Map.entry("tree and rock lizards", "correlophus-ciliatus"), Map.entry("ground-dwelling snakes", "heterodon-nasicus"),
            Map.entry("ground-dwelling snakes up to 2.5 m", "pantherophis-guttatus"), Map.entry("climbing snakes up to 2.5 m", "morelia-viridis"));

    private record Row(Map<String, String> cells) {
        String of(String column) {
            return cells.get(column);
        }

        Code code() {
            return Objects.requireNonNull(CODES.get(of("code_id").toLowerCase(Locale.ROOT)), () -> "no code " + of("code_id"));
        }

        String species() {
            String id = Stream.of(of("species_scientific").toLowerCase(Locale.ROOT).split(" ")).limit(2).collect(Collectors.joining("-"));
            return SPECIES.contains(id) ? id : GROUPS.getOrDefault(of("species_english"), "boa-imperator");
        }

        BigDecimal value() {
            return new BigDecimal(of("value").replaceAll("\\.$", ""));
        }

        List<BigDecimal> sizes() {
            return NUMBER.matcher(of("size_class")).results().map(MatchResult::group).map(BigDecimal::new).toList();
        }

        @Override
        public String toString() {
            return of("code_id") + ", " + of("code_section") + ", " + of("species_english") + ", " + of("item") + ", " + of("size_class") + ": " + of("value");
        }
    }

    @Test
    void every_row_is_in_its_code() {
        List<Row> rows = rows();
        List<String> lost = rows.stream().filter(row -> !isFound(row)).map(Row::toString).toList();
        assertEquals(List.of(), lost, lost.size() + " of " + rows.size());
        assertEquals(700, rows.size());
    }

    @Test
    void what_was_not_read_in_its_text_is_a_shortfall_at_most() {
        List<CodePoint> points = CODES.values().stream().flatMap(code -> code.points().stream()).toList();
        assertTrue(points.stream().anyMatch(point -> point.grade() == Grade.MAJOR));
        assertEquals(List.of(), points.stream().filter(point -> point.standing() != Standing.READ && point.grade().atLeast(Grade.MAJOR)).toList());
    }

    @Test
    void the_standing_of_a_point_is_that_of_its_rows() {
        List<String> wrong = rows().stream().filter(row -> !row.of("value").isEmpty() && !isInWords(row)).filter(row -> points(row, kinds(row.of("item"))).stream()
                .noneMatch(point -> point.standing() == standing(row))).filter(row -> !kinds(row.of("item")).isEmpty()).map(Row::toString).toList();
        // Page 25 of the German opinion and the Swiss notes were read; the rows of the species they are applied to were not.
        List<String> appliedToRowsNotRead = List.of("DE-1997, II.4 p. 25, ", "CH-TSchV, Annex 2, notes on reptiles, A, ");
        assertEquals(List.of(), wrong.stream().filter(row -> appliedToRowsNotRead.stream().noneMatch(row::startsWith)).toList());
    }

    private static Standing standing(Row row) {
        String note = row.of("note");
        return note.contains("inferred") ? Standing.INFERRED : note.startsWith("verified") ? Standing.READ : Standing.SECONDARY;
    }

    private static boolean isFound(Row row) {
        Set<Topic> kinds = kinds(row.of("item"));
        if (kinds.isEmpty() || row.of("value").isEmpty() || isInWords(row)) {
            return row.code().clauses().stream().anyMatch(clause -> clause.isFor(Set.of(row.species())) && sameClause(row, clause.clause()))
                    || row.of("item").equals("group_size") && isBaseOfSteps(row);
        }
        return points(row, kinds).stream().flatMap(point -> point.limits().stream()).filter(limit -> kinds.contains(limit.topic()))
                .anyMatch(limit -> says(row, limit));
    }

    /** Base numbers of animals stand in the steps that begin beyond them. */
    private static boolean isBaseOfSteps(Row row) {
        return row.code().points().stream().filter(point -> point.isFor(Set.of(row.species()))).flatMap(point -> point.limits().stream())
                .anyMatch(limit -> limit.increment().gains().stream().anyMatch(gain -> gain.beyond() == row.value().intValue())
                        || limit.scope().mostAnimals() == row.value().intValue());
    }

    private static boolean isInWords(Row row) {
        boolean otherSpecies = row.of("species_english").startsWith("pythons category C") || row.of("species_english").contains("up to 2.5 m")
                || row.of("species_english").contains("class") || row.of("species_english").equals("chelonians") || row.of("species_english").equals("all reptiles")
                || row.of("species_english").equals("chameleons") && row.of("code_id").equals("AT-2THVO");
        boolean noDayLength = row.of("species_english").startsWith("ball") && row.of("item").startsWith("winter_light");
        return otherSpecies || noDayLength || row.of("item").equals("group_size") && !row.of("value").equals("1");
    }

    private static boolean sameClause(Row row, String clause) {
        String section = row.of("code_section");
        return clause.contains(section) || section.contains(clause) || section.startsWith(clause.split(",")[0]) || clause.startsWith("leaflet") && section.startsWith("leaflet")
                || clause.equals("II.2 (lizards)") && section.equals("II.2 (lizards)") || section.startsWith("list of") && clause.contains("list of")
                || section.startsWith("Art.") && clause.startsWith("Art.") || clause.startsWith("Tables 1 and 2") && section.startsWith("Table 2");
    }

    private static List<CodePoint> points(Row row, Set<Topic> kinds) {
        return row.code().points().stream().filter(point -> point.isFor(Set.of(row.species())))
                .filter(point -> point.limits().stream().anyMatch(limit -> kinds.contains(limit.topic()))).toList();
    }

    private static Set<Topic> kinds(String item) {
        return switch (item) {
            case "floor_area_min_m2", "extra_animal_area_m2", "area_per_animal_in_group_m2", "area_per_mature_in_group_m2", "area_per_immature_in_group_m2",
                    "extra_animal_length_factor", "extra_animal_width_factor" -> EnumSet.of(Topic.FLOOR_AREA);
            case "extra_animal_pct" -> EnumSet.of(Topic.FLOOR_AREA, Topic.INSIDE_VOLUME, Topic.INSIDE_PERIMETER);
            case "height_min_m", "height_factor", "height_cap_m" -> EnumSet.of(Topic.INSIDE_HEIGHT);
            case "length_factor", "length_min_m" -> EnumSet.of(Topic.INSIDE_LENGTH);
            case "width_factor", "width_min_m", "width_cap_m" -> EnumSet.of(Topic.INSIDE_DEPTH);
            case "perimeter_factor" -> EnumSet.of(Topic.INSIDE_PERIMETER);
            case "shortest_side_factor" -> EnumSet.of(Topic.SHORTER_SIDE);
            case "temp_day_min_C", "temp_day_max_C", "temp_optimal_min_C", "temp_optimal_max_C" -> EnumSet.of(Topic.AIR_TEMPERATURE_BY_DAY);
            case "temp_night_min_C", "temp_night_max_C" -> EnumSet.of(Topic.AIR_TEMPERATURE_BY_NIGHT);
            case "winter_temp_reduction_min_C", "winter_temp_reduction_max_C" -> EnumSet.of(Topic.AIR_TEMPERATURE_BY_DAY, Topic.AIR_TEMPERATURE_BY_NIGHT);
            case "temp_hotspot_C", "temp_hotspot_min_C", "temp_hotspot_max_C" -> EnumSet.of(Topic.SURFACE_TEMPERATURE_BY_DAY);
            case "humidity_min_pct", "humidity_max_pct", "humidity_pct" -> EnumSet.of(Topic.RELATIVE_HUMIDITY);
            case "light_hours", "light_hours_min", "light_hours_max", "winter_light_hours_min", "winter_light_hours_max", "winter_light_reduction_min_h",
                    "winter_light_reduction_max_h" -> EnumSet.of(Topic.LIGHT_HOURS);
            case "winter_rest_temp_min_C", "winter_rest_temp_max_C" -> EnumSet.of(Topic.WINTER_TEMPERATURE);
            case "winter_rest_min_months", "winter_rest_max_months", "winter_phase_min_weeks", "winter_phase_max_weeks" -> EnumSet.of(Topic.WINTER_REST_LENGTH);
            case "night_drop_C", "night_drop_min_C", "night_drop_max_C" -> EnumSet.of(Topic.NIGHT_DROP);
            case "group_size" -> EnumSet.of(Topic.ANIMALS_TOGETHER);
            case "max_adult_males" -> EnumSet.of(Topic.ADULT_MALES_TOGETHER);
            case "substrate_depth_min_m" -> EnumSet.of(Topic.SUBSTRATE_DEPTH);
            case "uv_index_min", "uv_index_max" -> EnumSet.of(Topic.UV_INDEX);
            case "lamp_replacement_max_months" -> EnumSet.of(Topic.LAMP_AGE);
            default -> EnumSet.noneOf(Topic.class);
        };
    }

    private static boolean says(Row row, Limit limit) {
        String item = row.of("item");
        Topic topic = limit.topic();
        if (!fits(row, limit.scope())) {
            return false;
        }
        return switch (item) {
            case "extra_animal_area_m2" -> gains(limit).anyMatch(gain -> isAmount(gain.amount(), row.value(), topic, Unit.SQUARE_METRE));
            case "extra_animal_pct" -> gains(limit).anyMatch(gain -> same(gain.share().movePointRight(2), row.value()));
            case "extra_animal_length_factor", "extra_animal_width_factor" -> gains(limit).anyMatch(gain -> gain.amount()
                    .filter(Bound.Factor.class::isInstance).map(Bound.Factor.class::cast).filter(of -> of.power() == 2 && same(of.factor(), row.value().pow(2))).isPresent());
            case "height_cap_m", "width_cap_m" -> isAmount(limit.cap().map(Bound.class::cast), row.value(), topic, Unit.METRE);
            case "winter_temp_reduction_min_C", "winter_temp_reduction_max_C", "winter_light_reduction_min_h", "winter_light_reduction_max_h" ->
                    isReduced(row, limit, item.contains("_min_"));
            case "winter_rest_min_months" -> isAmount(limit.atLeast(), row.value().multiply(BigDecimal.valueOf(30)), topic, Unit.DAY);
            case "winter_rest_max_months" -> isAmount(limit.atMost(), row.value().multiply(BigDecimal.valueOf(31)), topic, Unit.DAY);
            case "lamp_replacement_max_months" -> row.value().intValue() == 12 && isAmount(limit.atMost(), BigDecimal.valueOf(365), topic, Unit.DAY);
            case "floor_area_min_m2" -> isAmount(limit.atLeast(), row.value(), topic, Unit.SQUARE_METRE) || isForSeveral(row, limit);
            default -> Stream.of(limit.atLeast(), limit.atMost()).anyMatch(end -> isAmount(end, row.value(), topic, unit(row)) || isFactor(end, row.value()));
        };
    }

    /** A row printed for a number of animals is the first figure with its gains. */
    private static boolean isForSeveral(Row row, Limit limit) {
        return row.of("size_class").matches("\\d animals") && limit.atLeast().filter(Bound.Constant.class::isInstance).map(Bound.Constant.class::cast)
                .filter(base -> same(base.value().multiply(limit.increment().factorFor(row.sizes().get(0).intValue())), row.value())).isPresent();
    }

    private static Stream<Increment.Gain> gains(Limit limit) {
        return limit.increment().gains().stream();
    }

    /** The winter figure of the same code and species is the active one less the reduction, the larger at the lower end. */
    private static boolean isReduced(Row row, Limit winter, boolean smaller) {
        if (winter.scope().season() != TimeOfYear.WINTER) {
            return false;
        }
        return points(row, Set.of(winter.topic())).stream().flatMap(point -> point.limits().stream())
                .filter(limit -> limit.topic() == winter.topic() && limit.scope().season() == TimeOfYear.ACTIVE)
                .anyMatch(active -> same(number(smaller ? active.atMost() : active.atLeast()).subtract(number(smaller ? winter.atMost() : winter.atLeast())), row.value()));
    }

    private static BigDecimal number(Optional<Bound> bound) {
        return ((Bound.Constant) bound.orElseThrow()).value();
    }

    private static Unit unit(Row row) {
        return switch (row.of("unit")) {
            case "m2" -> Unit.SQUARE_METRE;
            case "m" -> Unit.METRE;
            case "C" -> Unit.CELSIUS;
            case "K" -> Unit.KELVIN_STEP;
            case "%" -> Unit.PERCENT;
            case "h/d" -> Unit.HOUR;
            case "weeks" -> Unit.WEEK;
            case "UVI" -> Unit.UV_INDEX;
            default -> Unit.PIECE;
        };
    }

    private static boolean isAmount(Optional<Bound> bound, BigDecimal value, Topic topic, Unit unit) {
        return unit.dimension() == topic.unit().dimension() && bound.filter(Bound.Constant.class::isInstance).map(Bound.Constant.class::cast)
                .filter(end -> Math.abs(end.unit().convert(end.value(), topic.unit()) - unit.convert(value, topic.unit())) < 1e-9).isPresent();
    }

    private static boolean isFactor(Optional<Bound> bound, BigDecimal value) {
        return bound.filter(Bound.Factor.class::isInstance).map(Bound.Factor.class::cast).filter(of -> of.power() == 1 && same(of.factor(), value)).isPresent();
    }

    private static boolean same(BigDecimal one, BigDecimal other) {
        return one.compareTo(other) == 0;
    }

    /** Whether the class of a row, by its middle, lies in the class of a limit. */
    private static boolean fits(Row row, Scope scope) {
        String size = row.of("size_class");
        if (size.startsWith("adult") && !scope.stages().isEmpty()) {
            return scope.stages().contains(Stage.ADULT);
        }
        if (size.contains("months") || !size.contains("cm")) {
            return true;
        }
        List<BigDecimal> ends = row.sizes();
        double middle = ends.size() > 1 ? ends.get(0).add(ends.get(1)).doubleValue() / 2 : ends.get(0).doubleValue() * (size.contains(">") ? 1.5 : 0.9);
        SizeClass of = size.startsWith("carapace") ? scope.shell() : scope.size();
        boolean isGrowing = scope.stages().isEmpty() || scope.stages().equals(GROWING) || row.of("item").contains("_mature_");
        return isGrowing && of.holds(new Measure(middle, 1, Unit.CENTIMETRE));
    }

    private static List<Row> rows() {
        try (InputStream file = PublishedCodesTest.class.getResourceAsStream("/published/codes.csv")) {
            List<String> lines = new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8).lines().toList();
            List<String> header = WorkedCase.cells(lines.get(0));
            List<Row> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = WorkedCase.cells(line + ",");
                Map<String, String> row = new HashMap<>();
                for (int i = 0; i < header.size(); i++) {
                    row.put(header.get(i), cells.get(i));
                }
                rows.add(new Row(row));
            }
            return rows;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
