package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stage;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

class LimitResolverTest {
    private static final Subject BRACKEN = new Subject(SubjectKind.ANIMAL, "Bracken");
    private static final double ROUNDING = 1e-9;
    /** The codes that were worked print four decimals at most. */
    private static final double FOUR_DECIMALS = 5e-5;

    // ---- factors of a body measure

    /** Three sides as factors of the total length; W15 is also printed as an example in its source. */
    @ParameterizedTest
    @ValueSource(strings = {"W01", "W04", "W05", "W13", "W14", "W15", "W35"})
    void a_side_is_its_factor_times_the_length(String id) {
        WorkedCase worked = WorkedCase.of(id);
        List<MatchResult> sides = worked.all("arithmetic", "([\\d.]+)x([\\d.]+)");
        List<Double> expected = worked.numbers("expected");
        for (int side = 0; side < 3; side++) {
            String factor = sides.get(side).group(1);
            assertEquals(expected.get(side), sideFor(factor, sides.get(side).group(2) + " cm").low());
        }
    }

    /** In doubles 0.1 x 3 is 0.30000000000000004 and 0.7 x 1.5 is 1.0499999999999998: an enclosure cut to size would fail. */
    @ParameterizedTest
    @CsvSource({"0.1, 3 cm, 0.3", "0.7, 1.5 cm, 1.05", "0.0075, 92 cm, 0.69", "1.1, 1.1 cm, 1.21", "0.3333, 180 cm, 59.994"})
    void a_factor_is_multiplied_exactly(String factor, String length, double exact) {
        assertEquals(exact, sideFor(factor, length).low());
    }

    @Test
    void a_factor_is_turned_into_the_unit_of_its_topic() {
        ResolvedLimit gap = only(MadeUp.limit("opening-gap", "'at-most': {'factor': '0.0075', 'of': 'total length'}"), "'length': '90 cm'");
        assertEquals(6.75, gap.high());
        assertTrue(!gap.hasLow() && gap.hasHigh());
        ResolvedLimit mass = only(MadeUp.limit("furnishing-mass", "'at-most': {'factor': '0.5', 'of': 'body mass'}"), "'mass': '900 g'");
        assertEquals(0.45, mass.high());
    }

    /** JCGM 100:2008, 4.3.7: limits of ±a with nothing else known are a / sqrt(3). */
    @Test
    void the_uncertainty_of_a_factor_limit_is_that_of_the_body_measure_times_the_factor() {
        double ofLength = 5 / Math.sqrt(3);
        assertEquals(0.5 * ofLength, sideFor("0.5", "118 cm ± 5 cm").uncertainty(), ROUNDING);
        assertEquals(0.0075 * 10 * ofLength, only(MadeUp.limit("opening-gap", "'at-most': {'factor': '0.0075', 'of': 'total length'}"),
                "'length': '118 cm ± 5 cm'").uncertainty(), ROUNDING);
    }

    @Test
    void the_uncertainty_grows_with_the_increment() {
        Setup three = MadeUp.setup("'length': '100 cm ± 3 cm'", "'length': '90 cm'", "'length': '80 cm'");
        ResolvedLimit limit = resolve(MadeUp.knowing(MadeUp.limit("inside-length", factor("1.0") + gain(1, "0.25", "no"))), three).limits().get(0);
        assertEquals(150, limit.low());
        assertEquals(1.5 * 3 / Math.sqrt(3), limit.uncertainty(), ROUNDING);
    }

    @Test
    void a_constant_has_no_uncertainty_even_beside_a_length_of_poor_precision() {
        assertEquals(0, only(MadeUp.limit("inside-length", "'at-least': '90 cm'"), "'length': '118 cm ± 20 cm'").uncertainty());
    }

    // ---- caps

    /** W17: a height of 0.75 x 300 cm is capped at 200 cm, the sides without a cap are not. */
    @Test
    void a_cap_holds_the_lower_end_down() {
        WorkedCase worked = WorkedCase.of("W17");
        double cap = worked.all("arithmetic", "cap (\\d+)").stream().mapToDouble(found -> Double.parseDouble(found.group(1))).sum();
        String capped = factor("0.75") + ", 'cap': '" + (int) cap + " cm'";
        List<Double> expected = worked.numbers("expected");
        assertEquals(expected.get(0), sideFor("0.75", "300 cm").low());
        assertEquals(expected.get(1), sideFor("0.5", "300 cm").low());
        assertEquals(expected.get(2), only(MadeUp.limit("inside-height", capped), "'length': '300 cm'").low());
        assertEquals(150, only(MadeUp.limit("inside-height", capped), "'length': '200 cm'").low());
    }

    @Test
    void a_limit_at_its_cap_no_longer_depends_on_the_length_of_the_animal() {
        String capped = MadeUp.limit("inside-depth", factor("0.3") + ", 'cap': '3 ft'");
        ResolvedLimit large = only(capped, "'length': '400 cm ± 20 cm'");
        assertEquals(91.44, large.low());
        assertEquals(0, large.uncertainty());
        assertNotEquals(0, only(capped, "'length': '200 cm ± 20 cm'").uncertainty());
    }

    // ---- units

    /** International yard and pound, 1959: 1 in is 2.54 cm; the Fahrenheit scale has 32 °F at 0 °C and 212 °F at 100 °C. */
    @ParameterizedTest
    @CsvSource({"inside-depth, 10 in, 25.4", "inside-depth, 3 ft, 91.44", "opening-gap, 0.25 in, 6.35", "air-temperature-by-day, 68 °F, 20",
        "air-temperature-by-day, 95 F, 35", "furnishing-mass, 1 lb, 0.45359237", "water-change-interval, 1 wk, 7", "uv-index, 1.1, 1.1"})
    void a_limit_may_be_written_in_any_unit_of_its_topic(String topic, String written, double expected) {
        assertEquals(expected, only(MadeUp.limit(topic, "'at-most': '" + written + "'"), "").high());
    }

    @Test
    void a_length_told_in_feet_meets_a_class_told_in_inches() {
        String over = MadeUp.limit("inside-height", "'at-least': '40 cm', 'scope': {'length': {'over': '48 in'}}");
        assertTrue(resolution(over, "'length': '4 ft'").isEmpty());
        assertEquals(40, only(over, "'length': '4 ft 0.1 in'").low());
    }

    // ---- size classes

    @ParameterizedTest
    @CsvSource({"19.9999 cm, 1", "20 cm, 1", "20.0001 cm, 2", "50 cm, 2", "50.0001 cm, 3", "99.9999 cm, 3", "100 cm, 4", "1000 cm, 4"})
    void each_border_belongs_to_the_class_that_says_so(String length, double expected) {
        Knowledge classes = MadeUp.knowing(tall(1, "'up-to': '20 cm'"), tall(2, "'over': '20 cm', 'up-to': '50 cm'"),
                tall(3, "'over': '50 cm', 'below': '100 cm'"), tall(4, "'from': '100 cm'"));
        Resolution resolution = resolve(classes, MadeUp.setup("'length': '" + length + "'"));
        assertEquals(List.of(expected), resolution.limits().stream().map(ResolvedLimit::low).toList());
    }

    /** W31: a tortoise with a shell of 20 cm gets 2.00 m², one more than two animals 0.50 m² each. */
    @Test
    void a_class_of_shells_asks_for_the_shell_and_not_for_the_length() {
        List<Double> printed = WorkedCase.of("W31").all("expected", "([\\d.]+) m2").stream().map(found -> Double.valueOf(found.group(1))).toList();
        Knowledge shells = MadeUp.knowing(
                MadeUp.limit("floor-area", "'at-least': '1.00 m2', 'scope': {'carapace': {'over': '6 cm', 'up-to': '12 cm'}}" + gain(2, "0.4", "no")),
                MadeUp.limit("floor-area", "'at-least': '2.00 m2', 'scope': {'carapace': {'over': '12 cm'}}" + gain(2, "0.25", "no")));
        String shell = "'carapace': '20 cm'";
        assertEquals(printed.get(0), resolve(shells, MadeUp.setup(shell, shell)).limits().get(0).low());
        assertEquals(printed.get(1), resolve(shells, MadeUp.setup(shell, shell, shell, shell)).limits().get(0).low());
        assertEquals(1, resolve(shells, MadeUp.setup("'carapace': '12 cm'")).limits().get(0).low());
        assertEquals(Set.of("animals[Bracken].carapace"), resolve(shells, MadeUp.setup("'length': '20 cm'")).missing());
    }

    /** W16: the floor asked for falls when the snake passes 150 cm, and nobody says what holds at exactly 150 cm. */
    @Test
    void a_border_that_no_class_owns_leaves_no_limit() {
        WorkedCase worked = WorkedCase.of("W16");
        List<MatchResult> floors = worked.all("arithmetic", "=([\\d.]+) m2");
        Knowledge printed = MadeUp.knowing(
                MadeUp.limit("inside-length", factor("1.0") + ", 'scope': {'length': {'below': '150 cm'}}"),
                MadeUp.limit("inside-length", factor("0.75") + ", 'scope': {'length': {'over': '150 cm'}}"),
                MadeUp.limit("inside-depth", factor("0.5")));
        assertEquals(Double.parseDouble(floors.get(0).group(1)), floor(printed, "149 cm"), 5e-6);
        assertEquals(Double.parseDouble(floors.get(1).group(1)), floor(printed, "151 cm"), 5e-6);
        assertEquals(List.of("inside-depth"), resolve(printed, MadeUp.setup("'length': '150 cm'")).limits().stream()
                .map(limit -> limit.topic().id()).toList());
    }

    /** W37: at 60 cm the class "over 50 up to 75 cm" of Directive 2010/63/EU asks for 0.20 m of height. */
    @ParameterizedTest
    @ValueSource(strings = {"pantherophis-guttatus", "lampropeltis-californiae"})
    void the_classes_of_the_european_directive_do_not_overlap(String species) {
        double printed = Double.parseDouble(WorkedCase.of("W37").all("expected", "EU [\\d.]+ m2/([\\d.]+) m").get(0).group(1));
        for (double length : new double[] {5, 30, 30.5, 40, 40.5, 50, 50.5, 60, 75, 75.5, 200}) {
            List<Limit> holding = KnowledgeReader.builtIn().profile(species).limits().stream()
                    .filter(limit -> limit.citation().source().equals("eu-2010-63"))
                    .filter(limit -> limit.scope().size().holds(new Measure(length, 1, Unit.CENTIMETRE))).toList();
            assertEquals(1, holding.size(), length + " cm");
            if (length == 60) {
                assertEquals(Optional.of(new Bound.Constant(BigDecimal.valueOf(printed * 100).stripTrailingZeros(), Unit.CENTIMETRE)),
                        holding.get(0).atLeast().map(bound -> (Bound.Constant) bound)
                                .map(bound -> new Bound.Constant(bound.value().stripTrailingZeros(), bound.unit())));
            }
        }
    }

    // ---- the Austrian heights of the corn snake: classes for the young, one figure for adults

    @ParameterizedTest
    @CsvSource({"hatchling, 20 cm, 20", "juvenile, 20.1 cm, 30", "juvenile, 50 cm, 30", "juvenile, 50.1 cm, 40", "subadult, 90 cm, 40",
        "subadult, 100 cm, 40", "subadult, 100.1 cm, 60", "adult, 90 cm, 60", "adult, 45 cm, 60"})
    void an_adult_of_90_cm_takes_the_adult_height_and_a_subadult_of_90_cm_its_class(String stage, String length, double height) {
        assertEquals(List.of(height), cornHeights("'stage': '" + stage + "', 'length': '" + length + "'").limits().stream()
                .map(ResolvedLimit::low).toList());
    }

    /** W08 and W10: 0.60 m for adults of both species; the corn snake has no class above 100 cm. */
    @Test
    void the_austrian_height_for_adults_is_the_printed_one() {
        double printed = Double.parseDouble(WorkedCase.of("W10").all("expected", "height ([\\d.]+) m").get(0).group(1));
        assertEquals(printed * 100, cornHeights("'stage': 'adult', 'length': '120 cm'").limits().get(0).low());
        assertEquals(WorkedCase.of("W08").cells().get("expected"), WorkedCase.of("W10").cells().get("expected"));
        Limit king = KnowledgeReader.builtIn().profile("lampropeltis-californiae").limits().stream()
                .filter(limit -> limit.criterion().equals("space.height") && limit.scope().stages().equals(Set.of(Stage.ADULT))
                        && limit.citation().source().equals("at-2thvo-2004")).findFirst().orElseThrow();
        assertEquals(Optional.of(new Bound.Constant(new BigDecimal("0.60"), Unit.METRE)), king.atLeast());
        assertTrue(!king.chosen() && !king.why().isEmpty());
    }

    // ---- what is not known

    @Test
    void an_unknown_stage_is_missing_where_it_decides() {
        Resolution resolution = cornHeights("'length': '90 cm'");
        assertEquals(Set.of("animals[Bracken].stage"), resolution.missing());
        assertEquals(List.of(), resolution.limits());
        assertTrue(!resolution.isEmpty());
    }

    @Test
    void an_adult_need_not_be_measured_for_a_height_that_all_adults_get() {
        Resolution adult = cornHeights("'stage': 'adult'");
        assertEquals(List.of(60.0), adult.limits().stream().map(ResolvedLimit::low).toList());
        assertEquals(Set.of(), adult.missing());
        assertEquals(Set.of("animals[Bracken].length"), cornHeights("'stage': 'juvenile'").missing());
        assertEquals(Set.of("animals[Bracken].length", "animals[Bracken].stage"), cornHeights("").missing());
    }

    @ParameterizedTest
    @CsvSource({"inside-length, total length, length", "furnishing-mass, body mass, mass", "inside-length, head width, head-width",
        "inside-length, snout vent length, snout-vent-length"})
    void a_factor_of_an_unknown_measure_names_the_question(String topic, String measure, String member) {
        Resolution resolution = resolution(MadeUp.limit(topic, "'at-least': {'factor': '1', 'of': '" + measure + "'}"), "");
        assertEquals(Set.of("animals[Bracken]." + member), resolution.missing());
        assertEquals(List.of(), resolution.limits());
    }

    @Test
    void not_looked_is_as_unknown_as_left_out() {
        assertEquals(Set.of("animals[Bracken].length"),
                resolution(MadeUp.limit("inside-length", factor("1")), "'length': 'not looked'").missing());
    }

    @Test
    void what_is_excluded_anyway_does_not_ask_for_more() {
        String males = MadeUp.limit("inside-length", factor("1") + ", 'scope': {'stages': ['adult'], 'sexes': ['male']}");
        assertTrue(resolution(males, "'stage': 'juvenile'").isEmpty());
        assertTrue(resolution(males, "'sex': 'female'").isEmpty());
        assertEquals(Set.of("animals[Bracken].length", "animals[Bracken].sex"), resolution(males, "'stage': 'adult'").missing());
    }

    @Test
    void the_lamps_own_minimum_distance_is_asked_of_that_lamp() {
        Knowledge knowledge = MadeUp.knowing(MadeUp.limit("lamp-distance",
                "'place': 'item', 'at-least': {'factor': '1', 'of': 'lamp minimum distance'}"));
        Setup setup = MadeUp.setupWith("'lamps': [{'name': 'tube', 'kind': 'UV_TUBE'}, {'name': 'bulb', 'kind': 'UV_BULB', "
                + "'minimum-distance': '12 in'}], ", "");
        LimitResolver resolver = new LimitResolver(setup, knowledge);
        Resolution tube = resolver.resolve(knowledge.criterion(MadeUp.CRITERION), new Subject(SubjectKind.LAMP, "tube"));
        Resolution bulb = resolver.resolve(knowledge.criterion(MadeUp.CRITERION), new Subject(SubjectKind.LAMP, "bulb"));
        assertEquals(Set.of("lamps[tube].minimum-distance"), tube.missing());
        assertEquals(30.48, bulb.limits().get(0).low(), ROUNDING);
        assertEquals(Place.at("lamp:bulb"), bulb.limits().get(0).place());
    }

    // ---- increments

    /** W26: where +15 % is read as applying to every edge, the floor of three dragons gains it twice. */
    @Test
    void an_increment_raises_the_limit_of_every_side_it_stands_at() {
        Knowledge edges = MadeUp.knowing(MadeUp.limit("inside-length", factor("5") + gain(2, "0.15", "no")),
                MadeUp.limit("inside-depth", factor("4") + gain(2, "0.15", "no")));
        String dragon = "'length': '25 cm'";
        List<Double> readings = WorkedCase.of("W26").numbers("expected");
        assertEquals(1.25, product(resolve(edges, MadeUp.setup(dragon, dragon))), ROUNDING);
        assertEquals(readings.get(2), product(resolve(edges, MadeUp.setup(dragon, dragon, dragon))), FOUR_DECIMALS);
    }

    @Test
    void a_compounded_increment_of_a_constant_is_exact() {
        Setup four = MadeUp.setup("", "", "", "");
        assertEquals(66.55, resolve(MadeUp.knowing(MadeUp.limit("inside-length", "'at-least': '50 cm'" + gain(1, "0.1", "yes"))), four)
                .limits().get(0).low());
        assertEquals(65, resolve(MadeUp.knowing(MadeUp.limit("inside-length", "'at-least': '50 cm'" + gain(1, "0.1", "no"))), four)
                .limits().get(0).low());
    }

    // ---- several animals

    @Test
    void an_animal_gets_its_own_limit_and_the_enclosure_those_of_all() {
        Knowledge knowledge = MadeUp.knowing(MadeUp.limit("inside-length", factor("1.0")));
        LimitResolver resolver = new LimitResolver(MadeUp.setup("'length': '60 cm'", "'length': '120 cm'", ""), knowledge);
        Criterion criterion = knowledge.criterion(MadeUp.CRITERION);
        assertEquals(List.of("Bracken 60.0"), told(resolver.resolve(criterion, BRACKEN)));
        assertEquals(List.of("Sedge 120.0"), told(resolver.resolve(criterion, new Subject(SubjectKind.ANIMAL, "Sedge"))));
        Resolution enclosure = resolver.resolve(criterion, Subject.ENCLOSURE);
        assertEquals(List.of("Bracken 60.0", "Sedge 120.0"), told(enclosure));
        assertEquals(Set.of("animals[Tansy].length"), enclosure.missing());
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 2", "4, 3", "5, 3"})
    void a_limit_holds_for_the_numbers_of_animals_it_is_meant_for(int animals, double expected) {
        Knowledge knowledge = MadeUp.knowing(tallFor(1, "'up-to': 2"), tallFor(2, "'from': 3, 'up-to': 3"), tallFor(3, "'from': 4"));
        String[] nothing = new String[animals];
        Arrays.fill(nothing, "");
        assertEquals(List.of(expected), resolve(knowledge, MadeUp.setup(nothing)).limits().stream().map(ResolvedLimit::low).toList());
    }

    @Test
    void a_limit_for_one_purpose_holds_for_that_purpose_only() {
        Knowledge knowledge = MadeUp.knowing(MadeUp.limit("inside-length", factor("0.5") + ", 'scope': {'purposes': ['quarantine', 'hospital']}"));
        String animal = "'length': '80 cm'";
        assertTrue(resolve(knowledge, MadeUp.setup(animal)).isEmpty());
        assertEquals(40, resolve(knowledge, MadeUp.setupWith("'purpose': 'hospital', ", animal)).limits().get(0).low());
    }

    // ---- what is taken over

    @Test
    void grade_and_citation_come_from_the_limit_and_the_usual_grade_from_the_criterion() {
        ResolvedLimit usual = only(MadeUp.limit("inside-length", "'at-least': '1 m'"), "");
        ResolvedLimit own = only(MadeUp.limit("inside-length", "'at-least': '1 m', 'grade': 'critical', 'clause': '2.1'"), "");
        assertEquals(Grade.MAJOR, usual.grade());
        assertEquals(Grade.CRITICAL, own.grade());
        assertEquals(new Citation("judgement", "2.1", Standing.JUDGEMENT), own.citation());
        assertEquals("Bracken", own.animal());
        assertEquals(Place.ANYWHERE, own.place());
    }

    @Test
    void a_limit_that_was_not_chosen_is_never_applied() {
        assertTrue(resolution(MadeUp.limit("inside-length", factor("1") + ", 'chosen': 'no', 'why': 'a test'"), "").isEmpty());
    }

    @Test
    void a_limit_without_an_upper_end_is_open_upwards() {
        ResolvedLimit low = only(MadeUp.limit("inside-length", "'at-least': '1 m'"), "");
        assertTrue(low.hasLow() && !low.hasHigh());
        ResolvedLimit both = only(MadeUp.limit("air-temperature-by-day", "'place': 'cool-end', 'at-least': '21 °C', 'at-most': '27 °C'"), "");
        assertEquals(List.of(21.0, 27.0), List.of(both.low(), both.high()));
        assertEquals("cool-end", both.place().key());
    }

    private static ResolvedLimit sideFor(String factor, String length) {
        return only(MadeUp.limit("inside-length", factor(factor)), "'length': '" + length + "'");
    }

    private static String factor(String factor) {
        return "'at-least': {'factor': '" + factor + "', 'of': 'total length'}";
    }

    private static String gain(int beyond, String share, String compounded) {
        return ", 'per-further-animal': {'beyond': " + beyond + ", 'share': '" + share + "', 'compounded': '" + compounded + "'}";
    }

    private static String tall(int height, String size) {
        return MadeUp.limit("inside-height", "'at-least': '" + height + " cm', 'scope': {'length': {" + size + "}}");
    }

    private static String tallFor(int height, String animals) {
        return MadeUp.limit("inside-height", "'at-least': '" + height + " cm', 'scope': {'animals': {" + animals + "}}");
    }

    @Test
    void limits_that_were_not_chosen_are_resolved_when_they_are_asked_for() {
        Knowledge knowledge = MadeUp.knowing(MadeUp.limit("inside-length", "'at-least': '100 cm', 'chosen': 'no'"),
                MadeUp.limit("inside-length", "'at-least': {'factor': '1.5', 'of': 'total length'}"));
        LimitResolver resolver = new LimitResolver(MadeUp.setup("'length': '90 cm'"), knowledge);
        Criterion criterion = knowledge.criterion(MadeUp.CRITERION);
        assertEquals(List.of(100.0), resolver.resolve(criterion, BRACKEN, limit -> !limit.chosen()).limits().stream().map(ResolvedLimit::low).toList());
        assertEquals(List.of(135.0), resolver.resolve(criterion, BRACKEN).limits().stream().map(ResolvedLimit::low).toList());
        assertTrue(resolver.resolve(criterion, BRACKEN, limit -> limit.zone() == Zone.ITEM).isEmpty());
    }

    private static ResolvedLimit only(String limit, String animal) {
        Resolution resolution = resolution(limit, animal);
        assertEquals(Set.of(), resolution.missing());
        assertEquals(1, resolution.limits().size());
        return resolution.limits().get(0);
    }

    private static Resolution resolution(String limit, String animal) {
        return resolve(MadeUp.knowing(limit), MadeUp.setup(animal));
    }

    private static Resolution resolve(Knowledge knowledge, Setup setup) {
        return new LimitResolver(setup, knowledge).resolve(knowledge.criterion(MadeUp.CRITERION), BRACKEN);
    }

    /** The heights the corn snake of the shipped profile is given. */
    private static Resolution cornHeights(String animal) {
        Profile corn = KnowledgeReader.builtIn().profile("pantherophis-guttatus");
        Knowledge frame = MadeUp.read(MadeUp.document(MadeUp.criterion("").replace(MadeUp.CRITERION, "space.height"), "", MadeUp.species()));
        Knowledge knowledge = new Knowledge(frame.version(), frame.sha256(), frame.criteria(), Map.of(MadeUp.SPECIES, corn),
                frame.sources(), frame.cautions(), frame.limitRules());
        return new LimitResolver(MadeUp.setup(animal), knowledge).resolve(knowledge.criterion("space.height"), BRACKEN);
    }

    /** Floor (m²) of the first two limits (cm). */
    private static double product(Resolution sides) {
        return sides.limits().get(0).low() * sides.limits().get(1).low() / 1e4;
    }

    private static double floor(Knowledge knowledge, String length) {
        return product(resolve(knowledge, MadeUp.setup("'length': '" + length + "'")));
    }

    private static List<String> told(Resolution resolution) {
        return resolution.limits().stream().map(limit -> limit.animal() + " " + limit.low()).toList();
    }
}
