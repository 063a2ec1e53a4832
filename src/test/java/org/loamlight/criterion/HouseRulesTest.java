package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.Auditor;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.ranking.Conclusion;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Problem;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;

/** House rules and waivers: they tighten, they say what they loosen, and nothing of a faulty file is used. */
class HouseRulesTest {
    private static final String HEAD = "'format': 1, 'title': 'Club', 'issuer': 'committee', 'date': '2026-03-14'";
    private static final String LIMIT = "{'criterion': 'water.change', 'topic': 'water-change-interval', 'at-most': '12 h', 'source': 'minutes', 'why': 'so'}";
    private static final String SETUP = """
            {"format": 1, "on": "2026-11-02", "title": "Home of Sedge", "animals": [{"name": "Sedge", "species": "pantherophis-guttatus", "stage": "adult", "length": "120 cm"}],
             "enclosure": {"inside": {"length": "125 cm", "depth": "60 cm", "height": "70 cm"}}, "care": {"water-change": "daily"}}""";

    private static HouseRules house(String members) throws ProblemsFound {
        return HouseRulesReader.read("house.json", MadeUp.quoted("{" + HEAD + ", " + members + "}").getBytes(StandardCharsets.UTF_8), BuiltIn.KNOWLEDGE);
    }

    private static Audit audit(String house) throws ProblemsFound {
        Setup setup = BuiltIn.setup(SETUP);
        return new Auditor(BuiltIn.KNOWLEDGE.withHouse(house(house)), BuiltIn.RULES).audit(setup, BuiltIn.ON);
    }

    private static Finding finding(Audit audit, String criterion) {
        return audit.findings().stream().filter(one -> one.criterion().id().equals(criterion)).findFirst().orElseThrow();
    }

    @Test
    void a_stricter_limit_counts_beside_that_of_the_species() throws ProblemsFound {
        assertEquals(Result.CONFORMITY, finding(BuiltIn.audit(SETUP), "water.change").result());
        Finding stricter = finding(audit("'limits': [" + LIMIT + "]"), "water.change");
        assertEquals(Result.NONCONFORMITY, stricter.result());
        assertEquals(HouseRules.SOURCE, stricter.held().get(0).limit().citation().source());
    }

    @Test
    void a_looser_limit_loosens_nothing() throws ProblemsFound {
        String loose = "{'criterion': 'space.length', 'topic': 'inside-length', 'at-least': '10 cm', 'source': 'minutes', 'why': 'so'}";
        Finding before = finding(BuiltIn.audit(SETUP.replace("125 cm", "90 cm")), "space.length");
        Setup small = BuiltIn.setup(SETUP.replace("125 cm", "90 cm"));
        Finding after = finding(new Auditor(BuiltIn.KNOWLEDGE.withHouse(house("'limits': [" + loose + "]")), BuiltIn.RULES).audit(small, BuiltIn.ON), "space.length");
        assertEquals(Result.NONCONFORMITY, before.result());
        assertEquals(before.result(), after.result());
        assertEquals(before.grade(), after.grade());
    }

    @Test
    void a_limit_for_another_species_is_not_held() throws ProblemsFound {
        String other = LIMIT.replace("'topic'", "'species': ['python-regius'], 'topic'");
        assertEquals(Result.CONFORMITY, finding(audit("'limits': [" + other + "]"), "water.change").result());
    }

    @Test
    void a_point_of_the_house_is_judged_and_corrected_in_its_own_words() throws ProblemsFound {
        String point = "{'id': 'fresh-water', 'title': 'Water is fresh', 'need': 'diet', 'grade': 'major', 'topic': 'water-change-interval', 'at-most': '12 h',"
                + " 'source': 'minutes', 'why': 'so', 'correct': 'Change it daily.'}";
        Finding finding = finding(audit("'points': [" + point + "]"), "house.fresh-water");
        assertEquals(Result.NONCONFORMITY, finding.result());
        assertEquals(Grade.MAJOR, finding.grade());
        assertEquals("Change it daily.", finding.criterion().page().correctFor(""));
    }

    @Test
    void what_is_left_out_does_not_apply_and_a_guard_that_is_loosened_is_told() throws ProblemsFound {
        HouseRules house = house("'left-out': [{'criterion': 'heat.guard', 'why': 'so'}, {'criterion': 'electrical.cost', 'why': 'so'}], "
                + "'grades': [{'criterion': 'heat.outage', 'grade': 'critical', 'why': 'so'}, {'criterion': 'space.length', 'grade': 'minor', 'why': 'so'}]");
        assertEquals(List.of("heat.guard", "space.length"), house.loosened(BuiltIn.KNOWLEDGE).stream().map(HouseRules.Loosened::criterion).toList());
        Audit audit = new Auditor(BuiltIn.KNOWLEDGE.withHouse(house), BuiltIn.RULES).audit(BuiltIn.setup(SETUP), BuiltIn.ON);
        assertTrue(audit.findings().stream().filter(one -> one.criterion().id().equals("heat.guard")).allMatch(one -> one.result() == Result.NOT_APPLICABLE
                || one.subject().name().isEmpty()));
        assertEquals(Grade.CRITICAL, audit.knowledge().criterion("heat.outage").grade());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "'limits': [{'criterion': 'water.chnage', 'topic': 'water-change-interval', 'at-most': '1 d', 'source': 'a', 'why': 'b'}] | the point \"water.chnage\" is not known | did you mean \"water.change\"?",
        "'limits': [{'criterion': 'water.change', 'topic': 'water', 'at-most': '1 d', 'source': 'a', 'why': 'b'}] | the topic \"water\" is not known | known are ",
        "'limits': [{'criterion': 'water.change', 'topic': 'inside-length', 'at-most': '1 m', 'source': 'a', 'why': 'b'}] | is not about inside-length | it is about water-change-interval",
        "'limits': [{'criterion': 'heat.guard', 'topic': 'inside-length', 'at-most': '1 m', 'source': 'a', 'why': 'b'}] | is not about inside-length | takes no limit",
        "'limits': [{'criterion': 'water.change', 'topic': 'water-change-interval', 'at-most': '1 kg', 'source': 'a', 'why': 'b'}] | found \"1 kg\" | a number with a unit",
        "'limits': [{'criterion': 'water.change', 'topic': 'water-change-interval', 'at-least': '2 d', 'at-most': '1 d', 'source': 'a', 'why': 'b'}] | it lies below | under \"at-least\"",
        "'limits': [{'criterion': 'water.change', 'topic': 'water-change-interval', 'at-most': '1 d', 'why': 'b'}] | \"source\" is missing | where the house wrote it",
        "'limits': [{'criterion': 'water.change', 'topic': 'water-change-interval', 'at-most': '1 d', 'source': 'a'}] | \"why\" is missing | give the reason",
        "'limits': [{'criterion': 'water.change', 'species': ['python-regis'], 'topic': 'water-change-interval', 'at-most': '1 d', 'source': 'a', 'why': 'b'}] | the species \"python-regis\" | \"python-regius\"",
        "'grades': [{'criterion': 'water.change', 'grade': 'awful', 'why': 'b'}] | found \"awful\" | critical, major",
        "'grades': [{'criterion': 'water.change', 'grade': 'minor', 'why': 'b'}, {'criterion': 'water.change', 'grade': 'major', 'why': 'c'}] | the same is said twice | keep one",
        "'left-out': [{'criterion': 'water.change'}] | \"why\" is missing | give the reason",
        "'points': [{'id': 'A b', 'title': 't', 'need': 'diet', 'grade': 'minor', 'topic': 'water-volume', 'at-least': '1 L', 'source': 'a', 'why': 'b', 'correct': 'c'}] | found \"A b\" | small letters",
        "'points': [] | it holds no rule | write \"limits\"",
        "'limitz': [] , 'left-out': [{'criterion': 'water.change', 'why': 'b'}] | the key \"limitz\" is not known | did you mean \"limits\"?"})
    void a_faulty_file_is_told_with_its_place_and_not_used(String members, String found, String allowed) {
        ProblemsFound told = assertThrows(ProblemsFound.class, () -> house(members));
        assertOne(told, found, allowed);
    }

    private static void assertOne(ProblemsFound told, String found, String allowed) {
        List<Problem> problems = told.problems();
        assertTrue(problems.stream().anyMatch(one -> one.line() > 0 && one.found().contains(found) && one.allowed().contains(allowed)), problems.toString());
        assertEquals(1, problems.size(), problems.toString());
    }

    @Test
    void a_file_of_something_else_is_refused() {
        ProblemsFound told = assertThrows(ProblemsFound.class, () -> HouseRulesReader.read("x.json", SETUP.getBytes(StandardCharsets.UTF_8), BuiltIn.KNOWLEDGE));
        assertTrue(told.problems().size() > 2, told.problems().toString());
        assertThrows(ProblemsFound.class, () -> HouseRulesReader.read("x.json", new byte[0], BuiltIn.KNOWLEDGE));
    }

    // ---- waivers

    private static Waivers waivers(String members) throws ProblemsFound {
        return Waivers.read("waivers.json", MadeUp.quoted("{'format': 1, 'waivers': [" + members + "]}").getBytes(StandardCharsets.UTF_8), BuiltIn.KNOWLEDGE);
    }

    private static String waiver(String criterion, String whom, String until) {
        return "{'criterion': '" + criterion + "', " + whom + ", 'reason': 'so', 'granted-by': 'the committee', 'until': '" + until + "'}";
    }

    private static Audit small() throws ProblemsFound {
        return BuiltIn.audit(SETUP.replace("125 cm", "90 cm"));
    }

    @Test
    void a_waived_finding_counts_for_nothing_and_is_listed() throws ProblemsFound {
        Audit audit = small().with(waivers(waiver("space.length", "'animal': 'Sedge'", "2026-11-02")));
        Ranking ranking = Ranking.of(audit.findings(), audit.waived().inForce().keySet());
        assertEquals(List.of("space.length"), ranking.waived().stream().map(one -> one.criterion().id()).toList());
        assertTrue(ranking.open().stream().noneMatch(one -> one.criterion().id().equals("space.length")));
        assertTrue(ranking.toDo().size() < Ranking.of(audit.findings()).toDo().size());
    }

    @Test
    void a_waiver_that_ran_out_comes_back_with_a_note() throws ProblemsFound {
        Audit audit = small().with(waivers(waiver("space.length", "'setup': 'Home of Sedge'", "2026-11-01")));
        assertEquals(0, audit.waived().inForce().size());
        assertEquals(Optional.of("space.length"), audit.waived().expired().keySet().stream().map(pair -> pair.criterion()).findFirst());
        assertEquals(List.of(), audit.waived().unused());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"space.length | 'animal': 'Tansy'", "space.length | 'setup': 'Home of Tansy'", "water.change | 'animal': 'Sedge'",
        "space.length | 'animal': 'Sedge', 'subject': 'lamp'"})
    void a_waiver_that_matches_nothing_open_is_told(String criterion, String whom) throws ProblemsFound {
        Audit audit = small().with(waivers(waiver(criterion, whom, "2026-12-31")));
        assertEquals(1, audit.waived().unused().size());
        assertEquals(0, audit.waived().inForce().size());
    }

    @Test
    void all_dangers_waived_leave_no_danger_in_the_conclusion_and_still_stand_apart() throws ProblemsFound {
        Audit full = small();
        Ranking before = Ranking.of(full.findings());
        assertTrue(before.conclusion() != Conclusion.READY);
        Ranking after = Ranking.of(full.findings(), before.open().stream().map(Finding::pair).collect(Collectors.toSet()));
        assertEquals(Conclusion.READY, after.conclusion());
        assertEquals(before.open().size(), after.waived().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{'criterion': 'space.lenght', 'animal': 'Sedge', 'reason': 'a', 'granted-by': 'b', 'until': '2026-12-31'} | the point \"space.lenght\" is not known | \"space.length\"",
        "{'criterion': 'space.length', 'animal': 'Sedge', 'granted-by': 'b', 'until': '2026-12-31'} | \"reason\" is missing | say why",
        "{'criterion': 'space.length', 'animal': 'Sedge', 'reason': 'a', 'until': '2026-12-31'} | \"granted-by\" is missing | say who",
        "{'criterion': 'space.length', 'animal': 'Sedge', 'reason': 'a', 'granted-by': 'b'} | \"until\" is missing | until when",
        "{'criterion': 'space.length', 'animal': 'Sedge', 'reason': 'a', 'granted-by': 'b', 'until': 'soon'} | found \"soon\" | ",
        "{'criterion': 'space.length', 'reason': 'a', 'granted-by': 'b', 'until': '2026-12-31'} | \"setup\" is missing | name the title",
        "{'criterion': 'space.length', 'animal': 'S', 'reason': 'a', 'granted-by': 'b', 'until': '2026-12-31'}, {'criterion': 'space.length', 'animal': 'S', 'reason': 'c', 'granted-by': 'd', 'until': '2026-12-30'} | the same is waived twice | keep one"})
    void a_faulty_waiver_is_told_with_its_place(String members, String found, String allowed) {
        assertOne(assertThrows(ProblemsFound.class, () -> waivers(members)), found, allowed == null ? "" : allowed);
    }
}
