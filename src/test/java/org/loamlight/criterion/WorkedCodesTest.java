package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Subject;

/**
 * The worked cases of src/test/resources/published/codes-worked.csv through the whole engine: a setup goes in, what a code
 * requires comes out of a finding. The file names the document of each case, and what its expected value rests on.
 */
class WorkedCodesTest {
    /** The cases print four decimals at most. */
    private static final double FOUR_DECIMALS = 5e-5;
    private static final double EXACT = 1e-9;
    private static final double LITRES_PER_CUBIC_METRE = 1000;

    /** A setup in which a number of like animals live in a box of 1 m by 1 m by 1 m. */
    private static String setup(String species, String animal, int animals, String further) {
        String list = Stream.iterate(0, i -> i + 1).limit(animals).map(i -> "{\"name\": \"" + MadeUp.NAMES.get(i) + "\", \"species\": \"" + species + "\", "
                + MadeUp.quoted(animal) + "}").collect(Collectors.joining(", "));
        return "{\"format\": 1, \"on\": \"2026-11-02\", \"animals\": [" + list + "], " + MadeUp.quoted(further)
                + "\"enclosure\": {\"inside\": {\"length\": \"100 cm\", \"depth\": \"100 cm\", \"height\": \"100 cm\"}}}";
    }

    private static Audit audit(String json, Code... codes) {
        try {
            Setup setup = BuiltIn.setup(json);
            return new Auditor(BuiltIn.KNOWLEDGE.withCodes(List.of(codes), setup.species()), BuiltIn.RULES).audit(setup, BuiltIn.ON);
        } catch (ProblemsFound e) {
            throw new AssertionError(e);
        }
    }

    private static Audit audit(String json, String... codes) {
        return audit(json, CodeReader.builtIn(List.of(codes)).toArray(Code[]::new));
    }

    private static Finding finding(Audit audit, String criterion) {
        List<Finding> found = audit.findings().stream().filter(one -> one.criterion().id().equals("code." + criterion)).toList();
        assertEquals(1, found.size(), criterion);
        return found.get(0);
    }

    private static Stream<ResolvedLimit> limits(Audit audit, String criterion) {
        Finding finding = finding(audit, criterion);
        return Stream.concat(finding.held().stream().map(Held::limit), finding.wanted().stream());
    }

    /** The strictest lower end of a point, in the topic's unit. */
    private static double low(Audit audit, String criterion) {
        return limits(audit, criterion).mapToDouble(ResolvedLimit::low).max().orElseThrow(() -> new AssertionError("nothing is required by " + criterion));
    }

    private static double high(Audit audit, String criterion) {
        return limits(audit, criterion).mapToDouble(ResolvedLimit::high).min().orElseThrow();
    }

    /** The strictest lower end of another reading of a point. */
    private static double other(Audit audit, String criterion, String policy) {
        Criterion point = audit.knowledge().criterion("code." + criterion);
        return new LimitResolver(audit.setup(), audit.knowledge()).resolve(point, Subject.ENCLOSURE, limit -> !limit.chosen() && limit.why().equals(policy)).limits()
                .stream().mapToDouble(ResolvedLimit::low).max().orElseThrow(() -> new AssertionError("no other reading of " + criterion));
    }

    private static List<Double> squareMetres(String id) {
        return WorkedCase.of(id).all("expected", "([\\d.]+) m2").stream().map(found -> Double.valueOf(found.group(1))).toList();
    }

    private static void requireStanding(Audit audit, String id, String criterion) {
        Standing expected = switch (WorkedCase.of(id).cells().get("standing").split(" ")[0]) {
            case "text" -> Standing.READ;
            case "inferred" -> Standing.INFERRED;
            default -> Standing.SECONDARY;
        };
        assertEquals(expected, finding(audit, criterion).criterion().citations().get(0).standing(), id);
        limits(audit, criterion).forEach(limit -> assertEquals(expected, limit.citation().standing(), id));
    }

    /** Three sides as factors of the length: the German opinion, the Swiss ordinance, the American association. */
    @ParameterizedTest
    @CsvSource({"W01, de-1997.ii-4-corn, pantherophis-guttatus, 120", "W05, de-1997.ii-4-king, lampropeltis-californiae, 110",
        "W06, ch-tschv.table-5-king, lampropeltis-californiae, 110", "W13, de-1997.ii-4-royal, python-regius, 130",
        "W14, de-1997.ii-4-boa, boa-imperator, 140", "W15, de-1997.ii-4-boa, boa-imperator, 160", "W17, de-1997.ii-4-boa, boa-imperator, 300",
        "W35, us-nasaherp.tree-python, morelia-viridis, 150"})
    void three_sides(String id, String point, String species, int length) {
        Audit audit = audit(setup(species, "'stage': 'adult', 'length': '" + length + " cm'", 1, ""), point.split("\\.")[0]);
        List<Double> expected = WorkedCase.of(id).numbers("expected");
        assertEquals(expected.get(0), low(audit, point + "-length"), EXACT);
        assertEquals(expected.get(1), low(audit, point + "-depth"), EXACT);
        assertEquals(expected.get(2), low(audit, point + "-height"), EXACT);
        if (id.equals("W17")) {
            // The text of the cap was read, the factors it caps were not.
            assertEquals(Standing.SECONDARY, finding(audit, point + "-height").criterion().citations().get(0).standing());
        } else {
            requireStanding(audit, id, point + "-length");
        }
    }

    /** Lizards by the length from snout to vent. */
    @ParameterizedTest
    @CsvSource({"W20, de-1997.ii-2-gecko, eublepharis-macularius, 13", "W25, de-1997.ii-2-dragon, pogona-vitticeps, 25"})
    void three_sides_of_a_pair_of_lizards(String id, String point, String species, int length) {
        Audit audit = audit(setup(species, "'stage': 'adult', 'snout-vent-length': '" + length + " cm'", 2, ""), "de-1997");
        List<Double> expected = WorkedCase.of(id).numbers("expected");
        assertEquals(expected.get(0), low(audit, point + "-length"), EXACT);
        assertEquals(expected.get(1), low(audit, point + "-depth"), EXACT);
        assertEquals(expected.get(2), low(audit, point + "-height"), EXACT);
        assertEquals(expected.get(3), low(audit, point + "-floor"), EXACT);
        requireStanding(audit, id, point + "-floor");
    }

    /** A fifth of the volume for the third and the fourth corn snake. */
    @ParameterizedTest
    @CsvSource({"W02, 3, 0", "W03, 4, 0"})
    void further_corn_snakes_add_volume(String id, int animals, int number) {
        Audit audit = audit(setup("pantherophis-guttatus", "'stage': 'adult', 'length': '120 cm'", animals, ""), "de-1997");
        double cubicMetres = Double.parseDouble(WorkedCase.of(id).all("expected", "([\\d.]+) m3").get(number).group(1));
        assertEquals(cubicMetres * LITRES_PER_CUBIC_METRE, low(audit, "de-1997.ii-4-corn-volume"), EXACT);
        requireStanding(audit, id, "de-1997.ii-4-corn-volume");
    }

    @Test
    void a_tenth_less_is_another_reading_and_no_limit() {
        Audit audit = audit(setup("pantherophis-guttatus", "'stage': 'adult', 'length': '120 cm'", 2, ""), "de-1997");
        List<Double> tolerated = WorkedCase.of("W04").numbers("expected");
        assertEquals(tolerated.get(0), other(audit, "de-1997.ii-4-corn-length", "single-case"), EXACT);
        assertEquals(tolerated.get(1), other(audit, "de-1997.ii-4-corn-depth", "single-case"), EXACT);
        assertEquals(tolerated.get(2), other(audit, "de-1997.ii-4-corn-height", "single-case"), EXACT);
        assertEquals(120, low(audit, "de-1997.ii-4-corn-length"), EXACT);
    }

    /** Floor and height of one or several animals by the Austrian entries. */
    @ParameterizedTest
    @CsvSource({"W08, 2-2-21, lampropeltis-californiae, 110, 1", "W10, 2-2-24, pantherophis-guttatus, 120, 2", "W12, 2-2-23, python-regius, 130, 3",
        "W19, 2-2-9, boa-imperator, 210, 3", "W34, 2-2-15, morelia-viridis, 150, 1", "W37, 2-2-32, thamnophis-sirtalis, 60, 1"})
    void floor_and_height_in_austria(String id, String entry, String species, int length, int animals) {
        Audit audit = audit(setup(species, "'stage': 'adult', 'length': '" + length + " cm'", animals, ""), "at-2thvo");
        WorkedCase worked = WorkedCase.of(id);
        double floor = Double.parseDouble(worked.all("expected", "([\\d.]+) m2").get(0).group(1));
        double height = Double.parseDouble(worked.all("expected", "(?:height |/)([\\d.]+) m").get(0).group(1));
        assertEquals(floor, low(audit, "at-2thvo." + entry + "-floor"), EXACT);
        assertEquals(height * 100, low(audit, "at-2thvo." + entry + "-height"), EXACT);
        requireStanding(audit, id, "at-2thvo." + entry + "-floor");
    }

    @Test
    void two_king_snakes_need_more_floor_and_may_not_be_together() {
        Audit audit = audit(setup("lampropeltis-californiae", "'stage': 'adult', 'length': '110 cm'", 2, ""), "at-2thvo");
        assertEquals(WorkedCase.of("W09").numbers("expected").get(0), low(audit, "at-2thvo.2-2-21-floor"), EXACT);
        assertEquals(Result.NONCONFORMITY, finding(audit, "at-2thvo.2-2-21-together").result());
        assertEquals(Grade.MAJOR, finding(audit, "at-2thvo.2-2-21-together").grade());
        requireStanding(audit, "W09", "at-2thvo.2-2-21-together");
        assertTrue(CodeReader.builtIn(List.of("at-2thvo")).get(0).policies().containsKey("alone-yet-more"));
    }

    @Test
    void the_german_floor_of_a_boa_falls_when_it_passes_150_cm() {
        List<Double> floors = WorkedCase.of("W16").all("arithmetic", "=([\\d.]+) m2").stream().map(found -> Double.valueOf(found.group(1))).toList();
        assertEquals(floors.get(0), boaFloor("149 cm"), 5e-6);
        assertEquals(floors.get(1), boaFloor("151 cm"), 5e-6);
        Audit border = audit(setup("boa-imperator", "'stage': 'subadult', 'length': '150 cm'", 1, ""), "de-1997");
        assertEquals(150, low(border, "de-1997.ii-4-boa-length"), EXACT);
        Audit past = audit(setup("boa-imperator", "'stage': 'subadult', 'length': '151 cm'", 1, ""), "de-1997");
        assertEquals(150, other(past, "de-1997.ii-4-boa-length", "falls-as-it-grows"), EXACT);
        requireStanding(past, "W16", "de-1997.ii-4-boa-length");
    }

    private static double boaFloor(String length) {
        Audit audit = audit(setup("boa-imperator", "'stage': 'subadult', 'length': '" + length + "'", 1, ""), "de-1997");
        return low(audit, "de-1997.ii-4-boa-length") * low(audit, "de-1997.ii-4-boa-depth") / 10_000;
    }

    @Test
    void a_third_gecko_adds_floor() {
        String gecko = "'stage': 'adult', 'snout-vent-length': '12 cm'";
        Audit swiss = audit(setup("eublepharis-macularius", gecko, 3, ""), "ch-tschv", "de-1997");
        assertEquals(WorkedCase.of("W21").numbers("expected").get(0), low(swiss, "ch-tschv.table-5-gecko-floor"), EXACT);
        assertEquals(24, low(swiss, "ch-tschv.table-5-gecko-height"), EXACT);
        assertEquals(WorkedCase.of("W22").numbers("expected").get(0), low(swiss, "de-1997.ii-2-gecko-floor"), EXACT);
        assertEquals(24, low(swiss, "de-1997.ii-2-gecko-height"), EXACT);
        requireStanding(swiss, "W21", "ch-tschv.table-5-gecko-floor");
        requireStanding(swiss, "W22", "de-1997.ii-2-gecko-floor");
    }

    @Test
    void five_geckos_by_the_leaflet_add_or_compound() {
        Audit audit = audit(setup("eublepharis-macularius", "'stage': 'adult', 'sex': 'female'", 5, ""), "de-tvt");
        List<Double> readings = squareMetres("W24");
        assertEquals(readings.get(0), low(audit, "de-tvt.gecko-floor"), EXACT);
        assertEquals(readings.get(1), other(audit, "de-tvt.gecko-floor", "added-or-compounded"), EXACT);
        requireStanding(audit, "W24", "de-tvt.gecko-floor");
    }

    @Test
    void fifteen_per_cent_for_a_third_dragon_is_of_the_floor_or_of_every_edge() {
        Audit audit = audit(setup("pogona-vitticeps", "'stage': 'adult', 'snout-vent-length': '25 cm'", 3, ""), "de-1997");
        List<Double> readings = squareMetres("W26");
        assertEquals(readings.get(0), low(audit, "de-1997.ii-2-dragon-floor"), EXACT);
        double edges = other(audit, "de-1997.ii-2-dragon-length", "percent-of-what") * other(audit, "de-1997.ii-2-dragon-depth", "percent-of-what") / 10_000;
        assertEquals(readings.get(1), edges, FOUR_DECIMALS);
        requireStanding(audit, "W26", "de-1997.ii-2-dragon-floor");
    }

    @Test
    void one_two_three_and_five_dragons_in_new_south_wales() {
        List<Double> floors = WorkedCase.of("W28").numbers("expected");
        int[] animals = {1, 2, 3, 5};
        for (int i = 0; i < animals.length; i++) {
            Audit audit = audit(setup("pogona-vitticeps", "'stage': 'adult'", animals[i], ""), "au-nsw-2013");
            assertEquals(floors.get(i), low(audit, "au-nsw-2013.table-1-dragon-floor"), EXACT);
            requireStanding(audit, "W28", "au-nsw-2013.table-1-dragon-floor");
        }
    }

    @Test
    void one_centimetre_doubles_the_swedish_floor_of_a_dragon() {
        WorkedCase worked = WorkedCase.of("W29");
        List<Double> floors = squareMetres("W29");
        List<Double> heights = worked.all("expected", "/([\\d.]+) m").stream().map(found -> Double.valueOf(found.group(1))).toList();
        for (int i = 0; i < 2; i++) {
            Audit audit = audit(setup("pogona-vitticeps", "'stage': 'adult', 'length': '" + (50 + i) + " cm'", 1, ""), "se-l80");
            assertEquals(floors.get(i), low(audit, "se-l80.ground-lizards-floor"), EXACT);
            assertEquals(heights.get(i) * 100, low(audit, "se-l80.ground-lizards-height"), EXACT);
            requireStanding(audit, "W29", "se-l80.ground-lizards-floor");
        }
        assertEquals(floors.get(1), low(audit(setup("pogona-vitticeps", "'stage': 'adult', 'length': '50.5 cm'", 1, ""), "se-l80"), "se-l80.ground-lizards-floor"));
    }

    @Test
    void two_tortoises_with_shells_of_20_cm() {
        List<Double> sides = WorkedCase.of("W30").numbers("expected");
        Audit audit = audit(setup("testudo-hermanni", "'stage': 'adult', 'carapace': '20 cm'", 2, ""), "de-1997", "ch-tschv");
        for (String code : List.of("de-1997.ii-tortoise", "ch-tschv.table-5-tortoise")) {
            assertEquals(sides.get(0), low(audit, code + "-length"), EXACT);
            assertEquals(sides.get(1), low(audit, code + "-depth"), EXACT);
            assertEquals(sides.get(2), low(audit, code + "-floor"), EXACT);
            requireStanding(audit, "W30", code + "-floor");
        }
    }

    @Test
    void two_and_four_tortoises_in_austria() {
        List<Double> floors = squareMetres("W31");
        for (int i = 0; i < 2; i++) {
            Audit audit = audit(setup("testudo-hermanni", "'stage': 'adult', 'carapace': '20 cm'", 2 * (i + 1), ""), "at-2thvo");
            assertEquals(floors.get(i), low(audit, "at-2thvo.1-2-14-floor"), EXACT);
            assertEquals(floors.get(i), low(audit, "at-2thvo.1-2-15-floor"), EXACT);
            requireStanding(audit, "W31", "at-2thvo.1-2-14-floor");
        }
    }

    @ParameterizedTest
    @CsvSource({"24, 1", "25, 0", "26, -1"})
    void austria_is_stricter_below_25_cm_of_shell_and_germany_above(String shell, int sign) {
        Audit audit = audit(setup("testudo-hermanni", "'stage': 'adult', 'carapace': '" + shell + " cm'", 2, ""), "de-1997", "at-2thvo");
        assertEquals(sign, Math.round(Math.signum(low(audit, "at-2thvo.1-2-14-floor") - low(audit, "de-1997.ii-tortoise-floor"))));
    }

    @Test
    void five_tortoises_add_or_compound() {
        List<Double> readings = squareMetres("W33");
        Audit audit = audit(setup("testudo-hermanni", "'stage': 'adult', 'carapace': '20 cm'", 5, ""), "de-1997");
        assertEquals(readings.get(0), low(audit, "de-1997.ii-tortoise-floor"), EXACT);
        assertEquals(readings.get(1), other(audit, "de-1997.ii-tortoise-floor", "added-or-compounded"), FOUR_DECIMALS);
        requireStanding(audit, "W33", "de-1997.ii-tortoise-floor");
    }

    @Test
    void a_garter_snake_of_60_cm_in_three_codes() {
        Audit audit = audit(setup("thamnophis-sirtalis", "'stage': 'adult', 'length': '60 cm'", 1, ""), "at-2thvo", "eu-2010-63", "se-l80");
        WorkedCase worked = WorkedCase.of("W37");
        String[] points = {"at-2thvo.2-2-32", "eu-2010-63.10-2", "se-l80.ground-snakes"};
        for (int i = 0; i < points.length; i++) {
            assertEquals(Double.parseDouble(worked.all("expected", "([\\d.]+) m2").get(i).group(1)), low(audit, points[i] + "-floor"), EXACT);
            assertEquals(Double.parseDouble(worked.all("expected", "/([\\d.]+) m").get(i).group(1)) * 100, low(audit, points[i] + "-height"), EXACT);
        }
        assertEquals(Standing.SECONDARY, finding(audit, "se-l80.ground-snakes-floor").criterion().citations().get(0).standing());
    }

    /** The longest side is what is left of half the perimeter once the width is taken. */
    @Test
    void a_colubrid_of_120_cm_in_florida_by_both_readings() {
        Audit audit = audit(setup("pantherophis-guttatus", "'stage': 'adult', 'length': '120 cm'", 2, ""), "us-fl-68a");
        List<Double> expected = WorkedCase.of("W38").numbers("expected");
        double half = low(audit, "us-fl-68a.snakes-perimeter") / 2;
        double width = low(audit, "us-fl-68a.snakes-width");
        double narrower = other(audit, "us-fl-68a.snakes-width", "width-of-what");
        assertEquals(expected.get(0), half - width, EXACT);
        assertEquals(expected.get(1), width, EXACT);
        assertEquals(expected.get(4), half - narrower, 1e-6);
        assertEquals(expected.get(5), narrower, EXACT);
        requireStanding(audit, "W38", "us-fl-68a.snakes-perimeter");
    }

    @Test
    void two_corn_snakes_by_the_swiss_leaflet() {
        Audit audit = audit(setup("pantherophis-guttatus", "'stage': 'adult', 'length': '120 cm'", 2, ""), "ch-sts");
        List<Double> sides = WorkedCase.of("W40").numbers("expected");
        assertEquals(sides.subList(0, 3), List.of(low(audit, "ch-sts.corn-length"), low(audit, "ch-sts.corn-depth"), low(audit, "ch-sts.corn-height")));
        requireStanding(audit, "W40", "ch-sts.corn-length");
    }

    /** The row is made up; the Swiss note on height is not. */
    @Test
    void what_a_cap_takes_from_the_height_is_added_to_the_floor() throws ProblemsFound {
        String file = """
                {'format': 1, 'id': 'made-up', 'name': 'Made up', 'title': 'Made up', 'issuer': 'nobody', 'date': 'never', 'binding': 'law', 'source': 'ch-tschv-2008',
                 'read': 'nothing', 'points': [
                  {'id': 'height', 'clause': 'a', 'asks': 'height', 'beside': 'space.height', 'species': ['boa-imperator'], 'grade': 'minor', 'standing': 'read',
                   'limits': [{'topic': 'inside-height', 'at-least': {'factor': '0.5', 'of': 'total length'}, 'cap': '2.2 m'}]},
                  {'id': 'floor', 'clause': 'a', 'asks': 'floor', 'beside': 'space.floor-area', 'species': ['boa-imperator'], 'grade': 'minor', 'standing': 'read',
                   'limits': [{'topic': 'floor-area', 'at-least': {'factor': '0.5', 'of': 'total length', 'power': 2}},
                    {'topic': 'floor-area', 'at-least': {'factor': '0.25', 'of': 'total length', 'power': 3, 'divided-by': '2.2 m'}}]}]}""";
        Code code = CodeReader.read("made-up.json", MadeUp.quoted(file).getBytes(StandardCharsets.UTF_8));
        List<Double> expected = WorkedCase.of("W41").numbers("expected");
        Audit large = audit(setup("boa-imperator", "'stage': 'adult', 'length': '500 cm'", 1, ""), code);
        assertEquals(expected.get(0) * 100, low(large, "made-up.height"), EXACT);
        assertEquals(expected.get(1), low(large, "made-up.floor"), FOUR_DECIMALS);
        Audit small = audit(setup("boa-imperator", "'stage': 'adult', 'length': '200 cm'", 1, ""), code);
        assertEquals(2.0, low(small, "made-up.floor"), EXACT);
    }

    /** A reduction in winter is taken from day and night alike, in its widest span. */
    @ParameterizedTest
    @CsvSource({"W42, 2-2-23, python-regius", "W43, 2-2-9, boa-imperator", "W44, 4-2-6, chamaeleo-calyptratus"})
    void winter_in_austria(String id, String entry, String species) {
        String winter = "'season': {'winter-rest': 'running'}, ";
        Audit audit = audit(setup(species, "'stage': 'adult'", 1, winter), "at-2thvo");
        WorkedCase worked = WorkedCase.of(id);
        assertEquals(span(worked, "day (\\d+)-(\\d+)"), List.of(low(audit, "at-2thvo." + entry + "-day-air"), high(audit, "at-2thvo." + entry + "-day-air")));
        if (!id.equals("W44")) {
            assertEquals(span(worked, "night (\\d+)-(\\d+)"), List.of(low(audit, "at-2thvo." + entry + "-night-air"), high(audit, "at-2thvo." + entry + "-night-air")));
        }
        if (!id.equals("W42")) {
            assertEquals(span(worked, "light (\\d+)-(\\d+)"), List.of(low(audit, "at-2thvo." + entry + "-light"), high(audit, "at-2thvo." + entry + "-light")));
        }
        Audit active = audit(setup(species, "'stage': 'adult'", 1, ""), "at-2thvo");
        assertNotEquals(low(audit, "at-2thvo." + entry + "-day-air"), low(active, "at-2thvo." + entry + "-day-air"));
        requireStanding(audit, id, "at-2thvo." + entry + "-day-air");
    }

    private static List<Double> span(WorkedCase worked, String pattern) {
        return worked.all("expected", pattern).stream().limit(1).flatMap(found -> Stream.of(found.group(1), found.group(2))).map(Double::valueOf).toList();
    }

    @Test
    void a_single_figure_of_humidity_cannot_be_decided() {
        String reading = "'readings': [{'name': 'gauge', 'of': 'humidity', 'place': 'middle', 'time': 'day', 'value': '85 %', 'instrument': 'digital hygrometer'}], ";
        Audit audit = audit(setup("morelia-viridis", "'stage': 'adult', 'length': '150 cm'", 1, reading), "at-2thvo");
        assertTrue(WorkedCase.of("W46").cells().get("expected").startsWith("undecidable"));
        Finding finding = finding(audit, "at-2thvo.2-2-15-humidity");
        assertEquals(Result.UNDECIDED, finding.result());
        assertEquals(List.of(Topic.RELATIVE_HUMIDITY), finding.held().stream().map(held -> held.quantity().topic()).toList());
        requireStanding(audit, "W46", "at-2thvo.2-2-15-humidity");
    }

    @Test
    void no_case_is_left_out() {
        List<String> here = Stream.of("W01 W02 W03 W04 W05 W06 W08 W09 W10 W12 W13 W14 W15 W16 W17 W19 W20 W21 W22 W24 W25 W26 W28 W29 W30 W31 W32 W33 W34 W35 W37 W38 W40 W41"
                + " W42 W43 W44 W46").flatMap(all -> Arrays.stream(all.split(" "))).sorted().toList();
        assertEquals(WorkedCase.ids(), here);
        assertEquals(38, here.size());
    }
}
