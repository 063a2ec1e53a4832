package org.loamlight.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Page;
import org.loamlight.criterion.Standing;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.ScreenKind;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;

/** Numbers and sentences one by one. Unit factors: NIST SP 811, appendix B.8, and UCUM essence 2.2. */
class WordingTest {
    private static final double OPEN_LOW = Double.NEGATIVE_INFINITY;
    private static final double OPEN_HIGH = Double.POSITIVE_INFINITY;

    private final Wording metric = new Wording(Units.METRIC, Made.knowledge());
    private final Wording us = new Wording(Units.US, Made.knowledge());

    @ParameterizedTest
    @CsvSource({"31, CELSIUS, 31 °C", "31.04, CELSIUS, 31 °C", "31.06, CELSIUS, 31.1 °C", "-3.25, CELSIUS, -3.2 °C", "0, CELSIUS, 0 °C",
            "117.96, CENTIMETRE, 118 cm", "0.034, CENTIMETRE, 0.034 cm", "540, GRAM, 540 g", "6.34, GRAM, 6.3 g", "1, DAY, 1 day",
            "2.5, DAY, 2.5 days", "3.14, UV_INDEX, 3.1", "0.63, UV_INDEX, 0.63", "54.6, PERCENT, 55 %", "3, PIECE, 3", "2.456, KILOGRAM, 2.46 kg",
            "1234567, GRAM, 1234570 g", "4, KELVIN_STEP, 4 °C", "10, INCH, 25.4 cm"})
    void amounts_are_rounded_to_what_a_keeper_can_use(double value, Unit unit, String expected) {
        assertEquals(expected, metric.amount(new Amount(value, unit)));
    }

    // 1 in = 2.54 cm, 1 oz = 28.349523125 g, 1 lb = 0.45359237 kg exactly; 21 °C = 69.8 °F, 35 °C = 95 °F (NIST SP 811, B.8).
    @ParameterizedTest
    @CsvSource({"10.4, CENTIMETRE, 4.1 in", "254, CENTIMETRE, 100 in", "6, MILLIMETRE, 0.24 in", "21, CELSIUS, 69.8 °F", "35, CELSIUS, 95 °F",
            "-40, CELSIUS, -40 °F", "540, GRAM, 19 oz", "28.349523125, GRAM, 1 oz", "1, KILOGRAM, 2.2 lb", "1, DAY, 1 day", "3.1, UV_INDEX, 3.1",
            "55, PERCENT, 55 %", "40, WATT, 40 W"})
    void amounts_are_told_in_us_units(double value, Unit unit, String expected) {
        assertEquals(expected, us.amount(new Amount(value, unit)));
    }

    // JCGM 100:2008, 6.2.1: U = k u; here k = 2. 7.2.6: the value is rounded to the digit of its uncertainty, which has two at most.
    @ParameterizedTest
    @CsvSource({"31, 1.1547, 31 °C ± 2 °C", "31.44, 0.57735, 31.4 °C ± 1.2 °C", "31.449, 0.05, 31.45 °C ± 0.10 °C", "31, 0, 31 °C",
            "31.6, 7.4, 32 °C ± 15 °C", "31.4, 0.43, 31.4 °C ± 0.9 °C"})
    void values_carry_twice_their_standard_uncertainty(double value, double uncertainty, String expected) {
        assertEquals(expected, metric.value(Made.air(value, uncertainty)));
    }

    // ±1 °C is ±1.8 °F (NIST SP 811, B.8: a temperature interval of 1 °C equals 1.8 °F); through the offset it would be ±33.8 °F.
    @Test
    void an_uncertainty_in_fahrenheit_goes_through_the_factor_never_through_the_offset() {
        assertEquals("77.0 °F ± 1.8 °F", us.value(Made.air(25, 0.5)));
    }

    @Test
    void a_difference_in_fahrenheit_goes_through_the_factor_never_through_the_offset() {
        Finding hot = Made.held(Made.air(32, 0.5), Made.airLimit(21, 27));
        assertEquals("5 °C too hot", metric.difference(hot));
        assertEquals("9 °F too hot", us.difference(hot));
    }

    @Test
    void counts_are_plain_numbers() {
        Quantity hides = Made.quantity(Topic.HIDES, Place.of(Zone.WARM_END), 2, 0);
        assertEquals("2", metric.value(hides));
        assertEquals("2", us.value(hides));
    }

    @Test
    void a_printed_limit_is_rounded_to_its_safe_side_and_not_by_noise() {
        assertEquals("at least 118 cm", metric.limit(Made.limit(Topic.INSIDE_LENGTH, Place.ANYWHERE, 117.93, OPEN_HIGH)));
        assertEquals("at least 118 cm", metric.limit(Made.limit(Topic.INSIDE_LENGTH, Place.ANYWHERE, 118.00000000000001, OPEN_HIGH)));
        assertEquals("at most 8.8 mm", metric.limit(Made.limit(Topic.OPENING_GAP, Place.ANYWHERE, OPEN_LOW, 8.85)));
        assertEquals("at most 0.34 in", us.limit(Made.limit(Topic.OPENING_GAP, Place.ANYWHERE, OPEN_LOW, 8.85)));
        assertEquals("69.8 °F to 80.6 °F", us.limit(Made.airLimit(21, 27)));
        assertEquals("somewhere at least 25 °C", metric.limit(Made.somewhere(Made.airLimit(25, OPEN_HIGH))));
        assertEquals("exactly 25 °C", metric.limit(Made.airLimit(25, 25)));
    }

    @Test
    void a_value_beyond_its_limit_says_how_far_and_what_to_reach() {
        Finding hot = Made.held(Made.air(31, 1.1547), Made.airLimit(21, 27));
        assertEquals("air temperature by day at the cool end: 31 °C ± 2 °C (reading \"cool probe\" of 2026-10-30)", metric.found(hot));
        assertEquals("21 °C to 27 °C", metric.required(hot));
        assertEquals("4 °C too hot", metric.difference(hot));
        assertEquals("Bring the enclosure to 27 °C: 4 °C from now.", metric.correction(hot));
        Finding cold = Made.held(Made.air(18.5, 1.1547), Made.airLimit(21, 27));
        assertEquals("2.5 °C too cold", metric.difference(cold));
        assertEquals("Bring the enclosure to 21 °C: 2.5 °C from now.", metric.correction(cold));
        assertEquals("Hang it up.", metric.howToMeasure(cold));
    }

    @Test
    void a_value_within_its_limit_asks_for_nothing() {
        Finding good = Made.held(Made.air(24, 1), Made.airLimit(21, 27));
        assertEquals("", metric.difference(good));
        assertEquals("", metric.correction(good));
        assertEquals("", metric.reason(good));
    }

    @Test
    void a_value_that_rounding_would_put_within_its_limit_is_printed_with_more_digits() {
        Finding hot = Made.held(Made.air(27.4, 1.1547), Made.airLimit(21, 27));
        assertEquals("air temperature by day at the cool end: 27.4 °C ± 2.3 °C (reading \"cool probe\" of 2026-10-30)", metric.found(hot));
        assertEquals("0.4 °C too hot", metric.difference(hot));
    }

    @Test
    void behind_a_graver_limit_the_stricter_one_is_what_must_be_reached() {
        Quantity open = Made.quantity(Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE, 62, 0);
        Finding finding = Made.held(open, Made.limit(Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE, OPEN_LOW, 59),
                Made.graded(Made.limit(Topic.LONGEST_OPEN_STRETCH, Place.ANYWHERE, OPEN_LOW, 29.5), Grade.MINOR));
        assertEquals("at most 59 cm (harm); at most 29.5 cm (shortfall)", metric.required(finding));
        assertEquals("32.5 cm too long", metric.difference(finding));
        assertEquals("Bring the enclosure to 29.5 cm: 32.5 cm from now.", metric.correction(finding));
    }

    @Test
    void an_undecided_value_says_how_likely_it_is_within() {
        Finding decided = Made.held(Made.air(26, 1), Made.airLimit(OPEN_LOW, 27));
        Finding undecided = Made.finding(decided.criterion(), decided.subject(), Result.UNDECIDED, decided.held());
        // One standard uncertainty below a one-sided limit: 84.1 % of a normal distribution (JCGM 106:2012, 7.3; standard tables).
        assertEquals("air temperature by day at the cool end: 26 °C ± 2 °C (reading \"cool probe\" of 2026-10-30); 84 % likely to be within the "
                + "limit, too close to tell", metric.found(undecided));
        assertEquals("Bring the enclosure to 27 °C: a little from now.", metric.correction(undecided));
        assertEquals("air temperature by day at the cool end", metric.whatToFindOut(undecided));
    }

    @Test
    void a_range_that_is_undecided_is_told_as_a_range() {
        Finding decided = Made.held(Made.air(26, 1), Made.airLimit(21, 27));
        Finding undecided = Made.finding(decided.criterion(), decided.subject(), Result.UNDECIDED, decided.held());
        assertEquals("Bring the enclosure to 21 °C to 27 °C: a little from now.", metric.correction(undecided));
    }

    @Test
    void what_rules_found_is_said_once_for_each_variant_with_its_evidence() {
        Page page = new Page("", "", "", Map.of("", "Take {subject} out.", "on sand", "Put it on the floor."), "",
                Map.of("", "{subject} lies too high.", "on sand", "It stands on sand."));
        Quantity mass = new Quantity(Topic.FURNISHING_MASS, Place.at("furnishing:slate"), 6, 0,
                new Origin(Method.MEASURED, "furnishing:slate", ""), List.of());
        Finding finding = Made.faulty(new Subject(SubjectKind.FURNISHING, "slate"), page, List.of("", "on sand"), mass);
        assertEquals("The piece \"slate\" lies too high. It stands on sand. Mass at \"slate\": 6 kg.", metric.found(finding));
        assertEquals("Take the piece \"slate\" out. Put it on the floor.", metric.correction(finding));
        assertEquals("The title of air.made", metric.required(finding));
        assertEquals("", metric.difference(finding));
    }

    @Test
    void a_name_that_looks_like_a_slot_stays_a_name() {
        Page page = new Page("", "", "", Map.of("", "Move {subject}."), "", Map.of("", "Nothing holds {subject}."));
        Finding finding = Made.faulty(new Subject(SubjectKind.LAMP, "{limit} $1 \\ {0}"), page, List.of(""));
        assertEquals("Nothing holds the lamp \"{limit} $1 \\ {0}\".", metric.found(finding));
        assertEquals("Move the lamp \"{limit} $1 \\ {0}\".", metric.correction(finding));
    }

    @Test
    void where_only_a_reading_is_lacking_the_value_wanted_is_named() {
        Finding finding = Made.lacking(List.of("readings"), List.of(Made.airLimit(21, 27)), List.of());
        assertEquals("air temperature by day at the cool end", metric.whatToFindOut(finding));
        assertEquals("Not known: air temperature by day at the cool end.", metric.found(finding));
        assertEquals("21 °C to 27 °C", metric.required(finding));
        assertEquals("thermometer, its sensor in the shade", metric.instrument(finding));
        assertEquals("", metric.correction(finding));
    }

    @Test
    void unanswered_questions_are_asked_in_words_with_the_name_of_the_part() {
        Finding finding = Made.lacking(List.of("animals[Bracken].length", "heaters[basking [2].guard].guard"), List.of(), List.of());
        assertEquals("the total length of Bracken; whether a guard keeps the animal off \"basking [2].guard\"", metric.whatToFindOut(finding));
        assertEquals("tape measure; your eyes", metric.instrument(finding));
    }

    @ParameterizedTest
    @CsvSource({"lamps[UV tube].readings[].index, a UV index read under \"UV tube\"", "furnishings[].place, where each piece is",
            "enclosure.openings[cable hole].gap, the widest gap of \"cable hole\" when it is shut", "heaters, which heaters there are",
            "enclosure.inside.length, the inside length of the enclosure", "nowhere.known, nowhere.known"})
    void each_path_of_a_setup_has_its_question(String path, String question) {
        assertEquals(question, metric.whatToFindOut(Made.lacking(List.of(path), List.of(), List.of())));
    }

    @Test
    void a_value_that_is_worked_out_names_the_answers_it_lacks() {
        Finding finding = Made.lacking(List.of("lamps[UV tube].nearest-rest"),
                List.of(Made.limit(Topic.UV_INDEX, Place.at("lamp:UV tube"), OPEN_LOW, 1.4)), List.of());
        assertEquals("UV index at \"UV tube\", for which these are not known: how far \"UV tube\" is from the closest place where the animal can lie",
                metric.whatToFindOut(finding));
    }

    @Test
    void where_one_place_does_not_suffice_other_places_are_asked_for() {
        Finding held = Made.held(Made.air(24, 1.1547), Made.airLimit(21, 27));
        Finding lacking = new Finding(held.criterion(), held.subject(), Result.NO_EVIDENCE, Grade.MAJOR, List.of(), held.held(), List.of(),
                List.of("readings"), List.of(), List.of(), "", List.of(), List.of());
        assertEquals("Not known: air temperature by day, at other places too. Known so far: air temperature by day at the cool end: 24 °C ± 2 °C "
                + "(reading \"cool probe\" of 2026-10-30).", metric.found(lacking));
    }

    @Test
    void a_reading_that_does_not_count_is_named_with_the_point_that_took_it_out() {
        Finding finding = Made.lacking(List.of("readings"), List.of(Made.airLimit(21, 27)),
                List.of(new Voided(Made.air(31, 1.1547), "air.shade beam")));
        assertEquals("Not known: air temperature by day at the cool end. The reading \"cool probe\" (31 °C ± 2 °C) does not count: "
                + "see \"The title of air.shade\".", metric.found(finding));
    }

    @Test
    void how_a_quantity_came_about_is_told_step_by_step_in_the_units_asked_for() {
        Quantity index = Made.quantity(Topic.UV_INDEX, Place.at("lamp:UV tube"), 0.9, 0.1,
                Step.of("from-lamp-reading", new Amount(3.1, Unit.UV_INDEX), new Amount(15.24, Unit.CENTIMETRE)),
                Step.of("inverse-square", new Amount(30.48, Unit.CENTIMETRE)), Step.of("through-screen", ScreenKind.MESH, new Amount(60, Unit.PERCENT)));
        assertEquals("from your reading of 3.1 at 15.2 cm, by the inverse square of the distance to 30.5 cm, through mesh, which passes about 60 %",
                metric.howItCameAbout(index));
        assertEquals("from your reading of 3.1 at 6 in, by the inverse square of the distance to 12 in, through mesh, which passes about 60 %",
                us.howItCameAbout(index));
        assertEquals("", metric.howItCameAbout(Made.air(25, 1)));
        assertEquals(3, metric.steps(index).size());
    }

    @Test
    void subjects_and_places_are_named() {
        assertEquals("UV tube (lamp)", metric.subject(Made.LAMP));
        assertEquals("Bracken", metric.subject(new Subject(SubjectKind.ANIMAL, "Bracken")));
        assertEquals("enclosure", metric.subject(Subject.ENCLOSURE));
        assertEquals("heaters", metric.subject(new Subject(SubjectKind.HEATER, "")));
        assertEquals("cool end", metric.place(Place.of(Zone.COOL_END)));
        assertEquals("a: b", metric.place(Place.at("lamp:a: b")));
    }

    @Test
    void sources_stand_in_full_with_clause_and_standing() {
        assertEquals("Sedge, A. Field notes from the Marram coast, 2019, table 2 (secondary)", metric.source(Made.BOOK));
        assertEquals("Our own judgement, no source", metric.source(Made.JUDGEMENT));
        assertEquals("Sedge, A. Field notes from the Marram coast, 2019 (read)", metric.source(new Citation("field-notes", "2019", Standing.READ)));
        assertEquals(List.of("Our own judgement, no source"), metric.sources(Made.held(Made.air(31, 1), Made.airLimit(21, 27))));
        assertEquals(List.of("Sedge, A. Field notes from the Marram coast, 2019, table 2 (secondary)"),
                metric.sources(Made.lacking(List.of("heaters"), List.of(), List.of())));
    }

    @Test
    void a_sentence_that_does_not_exist_or_lacks_an_argument_is_a_defect() {
        assertThrows(IllegalArgumentException.class, () -> metric.sentence("no.such.sentence"));
        assertThrows(IllegalArgumentException.class, () -> metric.sentence("unit.days"));
        assertEquals("{0} days", metric.sentence("unit.days", "{0}"));
    }

    @Test
    void numbers_and_sentences_do_not_change_with_the_default_locale() {
        assertEquals(Set.of("31.4 °C ± 1.2 °C"), EveryLocale.texts(() -> metric.value(Made.air(31.44, 0.57735))));
        assertEquals(1, EveryLocale.texts(() -> us.found(Made.held(Made.air(31, 1.1547), Made.airLimit(21, 27)))).size());
        assertEquals(Set.of("air temperature by night shortfall could be better not applicable, no"), EveryLocale.texts(() ->
                metric.topic(Topic.AIR_TEMPERATURE_BY_NIGHT) + " " + metric.grade(Grade.MINOR) + " " + metric.grade(Grade.IMPROVEMENT)
                        + " not applicable, " + metric.sentence("index.no")));
    }

    private static Audit audit(String since) throws ProblemsFound {
        return BuiltIn.audit("""
                {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"%s}], "heaters": [
                  {"name": "basking lamp", "kind": "basking lamp", "reachable": "yes", "guard": "no"}]}""".formatted(since));
    }

    private static Finding graded(Grade grade) {
        Finding finding = Made.held(Made.air(31, 1), Made.airLimit(21, 27));
        return new Finding(finding.criterion(), finding.subject(), finding.result(), grade, List.of(), finding.held(), List.of(), List.of(), List.of(),
                List.of(), "", List.of(), List.of());
    }

    @Test
    void an_animal_that_lives_there_sets_days_by_which_to_act() throws ProblemsFound {
        Audit audit = audit(", \"since\": \"2026-11-02\"");
        assertEquals(LocalDate.parse("2026-11-02"), audit.on());
        assertEquals("2026-11-02 (today)", metric.dueBy(graded(Grade.CRITICAL), audit));
        assertEquals("2026-11-09", metric.dueBy(graded(Grade.MAJOR), audit));
        assertEquals("2026-11-30", metric.dueBy(graded(Grade.MINOR), audit));
        assertEquals("when you next change something", metric.dueBy(graded(Grade.IMPROVEMENT), audit));
        assertEquals("change now", metric.conclusion(Ranking.of(audit.findings()), audit));
    }

    @Test
    void an_animal_that_is_not_there_yet_waits() throws ProblemsFound {
        Audit audit = audit(", \"since\": \"2026-11-03\"");
        assertEquals("before it moves in", metric.dueBy(graded(Grade.CRITICAL), audit));
        assertEquals("before it moves in", metric.dueBy(graded(Grade.MAJOR), audit));
        assertEquals("within 28 days of moving in", metric.dueBy(graded(Grade.MINOR), audit));
        assertEquals("when you next change something", metric.dueBy(graded(Grade.IMPROVEMENT), audit));
        assertEquals("not ready", metric.conclusion(Ranking.of(audit.findings()), audit));
    }

    @Test
    void cautions_are_the_general_ones_and_those_of_open_findings_in_the_order_of_the_knowledge() throws ProblemsFound {
        Audit audit = audit("");
        Wording wording = new Wording(Units.METRIC, BuiltIn.KNOWLEDGE);
        List<String> cautions = wording.cautions(Ranking.of(audit.findings()), audit);
        List<String> all = BuiltIn.KNOWLEDGE.cautions().stream().map(caution -> caution.text()).toList();
        assertEquals(all.stream().filter(cautions::contains).toList(), cautions);
        assertTrue(cautions.contains(all.get(0)), "heat.guard names the caution about burns, which is the first");
        Ranking nothingOpen = Ranking.of(List.of());
        assertEquals(BuiltIn.KNOWLEDGE.cautions().stream().filter(caution -> caution.general()).map(caution -> caution.text()).toList(),
                wording.cautions(nothingOpen, audit));
    }
}
