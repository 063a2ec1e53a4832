package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.GoldenFile;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeReader;
import org.loamlight.criterion.Knowledge;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.report.FloorSteps.FloorStep;
import org.loamlight.setup.Setup;
import org.loamlight.wording.EveryLocale;

/** The floor each code asks for over the lengths an animal grows through: the generated page, and that room is not lost by growing. */
class CodeFloorsTest {
    private static final Path PAGE = Path.of("docs", "code-floors.md");
    private static final List<Code> CODES = CodeReader.builtIn(CodeReader.ids());
    private static final List<Growth> SPECIES = growth();

    private static List<Growth> growth() {
        try {
            return Growth.all();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Growth growth(String species) {
        return SPECIES.stream().filter(one -> one.species().equals(species)).findFirst().orElseThrow();
    }

    private static Code code(String id) {
        return CODES.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    private static double floor(String code, String species, Setup setup) {
        return RequiredFloor.byCode(BuiltIn.KNOWLEDGE.withCodes(CODES, Set.of(species)), code(code), setup).orElseThrow();
    }

    @Test
    void the_page_is_in_step_with_the_codes() {
        String page = FloorPage.markdown(BuiltIn.KNOWLEDGE, CODES, SPECIES);
        GoldenFile.assertMatches(PAGE, page);
        RuleIndexTest.requireEvenRows(page);
    }

    @Test
    void every_species_has_its_lengths() {
        assertEquals(BuiltIn.KNOWLEDGE.profiles().keySet(), SPECIES.stream().map(Growth::species).collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Only the German factors of the boa fall, as they are quoted; the code says so in words. */
    @Test
    void no_floor_falls_as_an_animal_grows_but_where_the_code_says_so() {
        Set<String> falling = new TreeSet<>();
        for (Growth growth : SPECIES) {
            Knowledge knowledge = BuiltIn.KNOWLEDGE.withCodes(CODES, Set.of(growth.species()));
            for (Map.Entry<String, List<Double>> floors : floors(knowledge, growth).entrySet()) {
                if (!floors.getValue().stream().sorted().toList().equals(floors.getValue())) {
                    falling.add(floors.getKey() + " " + growth.species());
                }
            }
        }
        assertEquals(Set.of("de-1997 boa-imperator"), falling);
        assertTrue(code("de-1997").policies().containsKey("falls-as-it-grows"));
    }

    /** By code, and under "species" for the points of the species, every centimetre. */
    private static Map<String, List<Double>> floors(Knowledge knowledge, Growth growth) {
        List<Setup> growing = Stream.iterate(growth.hatchling(), at -> at.compareTo(growth.longest()) <= 0, at -> at.add(BigDecimal.ONE))
                .map(length -> growth.setup(length, 1)).toList();
        Map<String, List<Double>> floors = new TreeMap<>();
        floors.put("species", growing.stream().map(setup -> RequiredFloor.bySpecies(knowledge, setup).orElse(0)).toList());
        CODES.forEach(code -> floors.put(code.id(), growing.stream().map(setup -> RequiredFloor.byCode(knowledge, code, setup).orElse(0)).toList()));
        return floors;
    }

    /** Worked case W16: 1.49 x 0.745 m and 1.1325 x 0.755 m, that is 1.125 and 0.844 m² at the border itself. */
    @Test
    void the_fall_of_the_german_boa_is_found_past_150_cm() {
        Growth boa = growth("boa-imperator");
        List<FloorStep> steps = FloorSteps.of(BuiltIn.KNOWLEDGE.withCodes(CODES, Set.of(boa.species())), code("de-1997"), boa);
        FloorStep fall = steps.get(0);
        assertEquals(1, steps.size());
        assertEquals("150", fall.at().toPlainString());
        assertTrue(fall.isFall() && !fall.included() && !fall.adult());
        assertEquals(1.125, fall.before(), 1e-9);
        assertEquals(0.84375, fall.after(), 1e-4);
    }

    @Test
    void a_border_in_austria_belongs_to_the_larger_class() {
        Growth corn = growth("pantherophis-guttatus");
        List<FloorStep> steps = FloorSteps.of(BuiltIn.KNOWLEDGE.withCodes(CODES, Set.of(corn.species())), code("at-2thvo"), corn);
        assertEquals(List.of("50", "90"), steps.stream().map(step -> step.at().toPlainString()).toList());
        assertEquals(List.of(false, true), steps.stream().map(FloorStep::adult).toList());
        assertTrue(steps.stream().allMatch(FloorStep::included));
    }

    /**
     * Floors of one animal, or of a pair where the code's figure is for a pair, printed side by side with the worked cases of the
     * codes; each is a figure of the code itself or the product of its factors. "about 0.09" and "about 0.10" for Florida are 36 x 24
     * and 39 x 26 cm.
     */
    @ParameterizedTest
    @CsvSource({"at-2thvo, pantherophis-guttatus, 120, adult, 1, 0.90", "de-1997, pantherophis-guttatus, 120, adult, 1, 0.72",
        "se-l80, pantherophis-guttatus, 120, adult, 1, 0.43", "eu-2010-63, pantherophis-guttatus, 120, adult, 1, 0.25",
        "us-fl-68a, pantherophis-guttatus, 120, adult, 1, 0.0864", "us-nasaherp, pantherophis-guttatus, 120, adult, 1, 0.324",
        "ch-sts, pantherophis-guttatus, 120, adult, 1, 0.90", "at-2thvo, python-regius, 130, adult, 1, 0.90", "de-1997, python-regius, 130, adult, 1, 0.845",
        "se-l80, python-regius, 130, adult, 1, 0.63", "eu-2010-63, python-regius, 130, adult, 1, 0.25", "us-fl-68a, python-regius, 130, adult, 1, 0.1014",
        "us-nasaherp, python-regius, 130, adult, 1, 0.4732", "de-bna, python-regius, 130, adult, 1, 0.91", "at-2thvo, boa-imperator, 160, subadult, 1, 1.50",
        "de-1997, boa-imperator, 160, subadult, 1, 0.96", "se-l80, boa-imperator, 160, subadult, 1, 1.00", "eu-2010-63, boa-imperator, 160, subadult, 1, 0.25",
        "us-nasaherp, boa-imperator, 160, adult, 1, 1.28", "at-2thvo, thamnophis-sirtalis, 60, adult, 1, 0.50", "se-l80, thamnophis-sirtalis, 60, adult, 1, 0.12",
        "eu-2010-63, thamnophis-sirtalis, 60, adult, 1, 0.12", "us-nasaherp, thamnophis-sirtalis, 60, adult, 1, 0.081",
        "at-2thvo, eublepharis-macularius, 22, adult, 1, 0.50", "de-1997, eublepharis-macularius, 22, adult, 1, 0.1728",
        "ch-tschv, eublepharis-macularius, 22, adult, 1, 0.1728", "se-l80, eublepharis-macularius, 22, adult, 1, 0.36",
        "de-tvt, eublepharis-macularius, 22, adult, 1, 0.32", "at-2thvo, pogona-vitticeps, 50, adult, 1, 1.00", "de-1997, pogona-vitticeps, 50, adult, 1, 1.25",
        "se-l80, pogona-vitticeps, 50, adult, 1, 0.90", "au-nsw-2013, pogona-vitticeps, 50, adult, 1, 0.375", "at-2thvo, testudo-hermanni, 20, adult, 2, 2.00",
        "de-1997, testudo-hermanni, 20, adult, 2, 1.28", "ch-tschv, testudo-hermanni, 20, adult, 2, 1.28", "de-tvt, testudo-hermanni, 20, adult, 2, 1.28"})
    void floors_in_print(String code, String species, BigDecimal length, String stage, int animals, double squareMetres) {
        assertEquals(squareMetres, floor(code, species, growth(species).setup(length, animals, stage, "2020-01-01")), 1e-6);
    }

    /** Florida: 10 in of width leave nothing of a perimeter of 50 cm, and 4.6 cm of length of one of 60 cm. */
    @Test
    void a_width_that_takes_the_whole_perimeter_leaves_no_floor() {
        Growth corn = growth("pantherophis-guttatus");
        Knowledge knowledge = BuiltIn.KNOWLEDGE.withCodes(CODES, Set.of(corn.species()));
        assertTrue(RequiredFloor.byCode(knowledge, code("us-fl-68a"), corn.setup(BigDecimal.valueOf(50), 1)).isEmpty());
        assertEquals(0.254 * 0.046, RequiredFloor.byCode(knowledge, code("us-fl-68a"), corn.setup(BigDecimal.valueOf(60), 1)).orElseThrow(), 1e-9);
    }

    @Test
    void the_page_does_not_change_with_the_default_locale() {
        List<Growth> one = List.of(growth("eublepharis-macularius"));
        assertEquals(1, EveryLocale.texts(() -> FloorPage.markdown(BuiltIn.KNOWLEDGE, CODES, one)).size());
    }
}
