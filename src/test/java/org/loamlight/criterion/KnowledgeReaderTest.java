package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Problem;
import org.loamlight.setup.Measure;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Sex;
import org.loamlight.setup.Stage;
import org.loamlight.setup.Stated;
import org.loamlight.setup.SubstrateKind;
import org.loamlight.setup.SubjectKind;

class KnowledgeReaderTest {
    private static final String LIMIT = "species[0].limits[0]";
    private static final Citation CITATION = new Citation("judgement", "", Standing.JUDGEMENT);

    // ---- a good one comes back as it was written

    @Test
    void a_limit_with_every_member_comes_back_as_written() {
        String written = MadeUp.limit("inside-height", """
                'place': 'warm-end', 'where': 'somewhere', 'at-least': {'factor': '0.75', 'of': 'total length'}, 'at-most': '12.50 ft',
                'scope': {'stages': ['subadult', 'adult'], 'sexes': 'female', 'length': {'over': '0.5 m', 'up-to': '100 cm'},
                          'carapace': {'from': '6 cm', 'below': '12 cm'}, 'purposes': ['permanent', 'winter rest'], 'animals': {'from': 2, 'up-to': 4}},
                'per-further-animal': {'beyond': 2, 'share': '0.15', 'compounded': 'yes'}, 'cap': '2.0 m', 'grade': 'minor',
                'clause': 'table 3', 'chosen': 'no', 'why': 'Too old.'""");
        Scope scope = new Scope(Set.of(Stage.SUBADULT, Stage.ADULT), Set.of(Sex.FEMALE), new SizeClass(50, false, 100, true),
                new SizeClass(6, true, 12, false), AgeClass.ANY, Set.of(Purpose.PERMANENT, Purpose.WINTER_REST), TimeOfYear.ANY, 2, 4);
        Limit expected = new Limit(MadeUp.CRITERION, Topic.INSIDE_HEIGHT, Zone.WARM_END, Where.SOMEWHERE,
                Optional.of(new Bound.Factor(new BigDecimal("0.75"), BodyMeasure.TOTAL_LENGTH)),
                Optional.of(new Bound.Constant(new BigDecimal("12.50"), Unit.FOOT)), scope,
                new Increment(2, new BigDecimal("0.15"), true), Optional.of(new Bound.Constant(new BigDecimal("2.0"), Unit.METRE)),
                Optional.of(Grade.MINOR), new Citation("judgement", "table 3", Standing.JUDGEMENT), false, "Too old.");
        assertEquals(List.of(expected), limits(written));
    }

    @Test
    void what_a_limit_leaves_out_takes_the_widest_meaning() {
        Limit expected = new Limit(MadeUp.CRITERION, Topic.UV_INDEX, Zone.ENCLOSURE, Where.EVERYWHERE, Optional.empty(),
                Optional.of(new Bound.Constant(new BigDecimal("1.4"), Unit.UV_INDEX)), Scope.ALL, Increment.NONE, Optional.empty(),
                Optional.empty(), CITATION, true, "");
        assertEquals(List.of(expected), limits(MadeUp.limit("uv-index", "'at-most': '1.4'")));
    }

    @Test
    void a_criterion_with_every_member_comes_back_as_written() {
        String written = """
                {'id': 'heat.guard', 'title': 'A guard', 'need': 'protection', 'grade': 'critical', 'grades': {'open': 'major'},
                 'subject': 'heater', 'applies-when': ['hot heater', 'climbs'], 'purposes': ['permanent', 'rearing'],
                 'needs': ['heaters[].kind'], 'reads': ['heaters[].kind', 'heaters[].guard'], 'topics': ['surface-temperature-by-day'],
                 'held-by-rule': 'yes', 'informs': 'yes', 'decision': 'guarded', 'sources': [{'source': 'judgement', 'clause': '2', 'standing': 'from memory'}],
                 'cautions': ['burn'], 'since': '0.1.0', 'rules': ['heat.guard', 'heat.guard open'],
                 'page': {'requirement': 'A guard.', 'why': 'Burns.', 'measure': 'Look.', 'correct': {'': 'Fit one.', 'open': 'Close it.'},
                          'exceptions': 'Mats.', 'found': {'': 'No guard.'}}}""";
        Criterion expected = new Criterion("heat.guard", "A guard", Need.PROTECTION, Grade.CRITICAL, Map.of("open", Grade.MAJOR),
                SubjectKind.HEATER, List.of(Condition.HOT_HEATER, Condition.CLIMBS), EnumSet.of(Purpose.PERMANENT, Purpose.REARING),
                List.of("heaters[].kind"), List.of("heaters[].kind", "heaters[].guard"), List.of(Topic.SURFACE_TEMPERATURE_BY_DAY), true, true,
                DecisionRule.GUARDED, List.of(new Citation("judgement", "2", Standing.FROM_MEMORY)), List.of("burn"), "0.1.0",
                new Page("A guard.", "Burns.", "Look.", Map.of("", "Fit one.", "open", "Close it."), "Mats.", Map.of("", "No guard.")),
                List.of("heat.guard", "heat.guard open"));
        assertEquals(expected, MadeUp.read(MadeUp.document(written, "", MadeUp.species())).criterion("heat.guard"));
    }

    @Test
    void a_criterion_that_names_no_purpose_holds_for_all() {
        Criterion plain = MadeUp.knowing().criterion(MadeUp.CRITERION);
        assertEquals(EnumSet.allOf(Purpose.class), plain.purposes());
        assertEquals(DecisionRule.SIMPLE, plain.decision());
        assertTrue(plain.isLimit() && !plain.heldByRule());
    }

    @Test
    void a_species_comes_back_with_habits_and_where_they_stand() {
        String written = MadeUp.species().replace("'limits': []", """
                'also': ['paper snake'], 'note': 'Made of paper.', 'not-meant': [{'criterion': 'heat.guard', 'reason': 'It burns.'}]""");
        Profile profile = MadeUp.read(MadeUp.document(written)).profile(MadeUp.SPECIES);
        assertEquals(new Species(MadeUp.SPECIES, "made-up snake", "Serpens ficta", Form.SNAKE, Lives.GROUND, Active.BY_DAY, Stated.YES, Stated.NO,
                Stated.NO, UvUse.PROFITS, Drinks.FROM_DISH, Stated.NO, Eats.WHOLE_PREY, Company.ALONE, Stated.YES, Stated.YES, Stated.NO, Stated.NO, Stated.NO,
                Stated.NO, new Measure(120, 0, Unit.CENTIMETRE), Set.of(), Set.of()), profile.species());
        assertEquals(List.of("form", "lives", "active", "digs", "climbs", "basks", "uv", "drinks", "soaks", "eats", "company", "eats-snakes", "lays-eggs",
                "rests-in-winter", "dangerous", "restricted", "specialist", "adult-length"), List.copyOf(profile.habits().keySet()));
        assertEquals(Set.of(CITATION), Set.copyOf(profile.habits().values()));
        assertEquals(List.of("paper snake"), profile.also());
        assertEquals("Made of paper.", profile.note());
        assertEquals(Optional.of("It burns."), profile.whyNotMeant("heat.guard"));
        assertEquals(Optional.empty(), profile.whyNotMeant("heat.control"));
    }

    @Test
    void substrates_that_are_wrong_for_a_species_come_back_as_kinds_with_where_they_stand() {
        String written = MadeUp.species().replaceFirst("'habits': \\{",
                "'habits': {'unsuited-ground': {'is': ['wood shavings', 'sand'], 'source': 'judgement', 'standing': 'judgement'}, ");
        Profile profile = MadeUp.read(MadeUp.document(written)).profile(MadeUp.SPECIES);
        assertEquals(Set.of(SubstrateKind.WOOD_SHAVINGS, SubstrateKind.SAND), profile.species().unsuitedGround());
        assertEquals(Set.of(), profile.species().harmfulGround());
        assertEquals(CITATION, profile.habits().get("unsuited-ground"));
    }

    @Test
    void sources_cautions_and_rules_come_back_as_written() {
        Knowledge knowledge = MadeUp.knowing();
        assertEquals(Map.of("judgement", new Source("judgement", "Our own judgement, no source", "nothing to read")), knowledge.sources());
        assertEquals(List.of(new Caution("burn", "Let it cool.", false)), knowledge.cautions());
        assertEquals(List.of("limits held"), knowledge.limitRules());
        assertEquals("0.1.0", knowledge.version());
    }

    @Test
    void the_sum_kept_beside_the_built_in_knowledge_is_that_of_its_file() throws Exception {
        byte[] file = KnowledgeReader.class.getResourceAsStream(KnowledgeReader.RESOURCE).readAllBytes();
        assertEquals(KnowledgeReader.read(file).sha256(), KnowledgeReader.builtIn().sha256());
        assertEquals(KnowledgeReader.read(file), KnowledgeReader.builtIn());
    }

    /** The expected sum was made with sha256sum of GNU coreutils. */
    @Test
    void the_sum_of_the_file_is_its_sha_256() {
        String file = "{\"version\": \"0.1.0\", \"species\": [], \"criteria\": []}\n";
        assertEquals("338027c9a70918773d07bdd5cf3f523433feee16d64e5015f4505404033280ad", MadeUp.read(file).sha256());
        assertNotEquals(MadeUp.read(file).sha256(), MadeUp.read(file + " ").sha256());
    }

    // ---- limits for every reptile

    @Test
    void a_limit_for_every_reptile_holds_until_the_species_has_a_chosen_one_of_its_own() {
        String every = MadeUp.limit("inside-length", "'at-least': '1 m'");
        assertEquals(List.of("1 m"), chosen(every));
        assertEquals(List.of("2 m"), chosen(every, MadeUp.limit("inside-length", "'at-least': '2 m'")));
        assertEquals(List.of("1 m"), chosen(every, MadeUp.limit("inside-length", "'at-least': '2 m', 'chosen': 'no'")));
        assertEquals(List.of("1 m"), chosen(every, MadeUp.limit("inside-length", "'at-least': '2 m'").replace("space.length", "space.depth")));
    }

    // ---- each malformed limit is a located problem

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "'at-least': '20 kg' | .at-least | found \"20 kg\" | a number with a unit of LENGTH",
        "'at-least': '20' | .at-least | found \"20\" | a number with a unit of LENGTH",
        "'at-least': 20 | .at-least | found the number 20 | a text of printable characters",
        "'at-least': 'about 20 cm' | .at-least | found \"about 20 cm\" | a number with a unit",
        "'at-least': '2,5 cm' | .at-least | found \"2,5 cm\" | a number with a unit",
        "'at-least': {'factor': '1'} | .at-least | \"of\" is missing | say what it is a factor of",
        "'at-least': {'of': 'total length'} | .at-least | \"factor\" is missing | an exact decimal number",
        "'at-least': {'factor': '1/3', 'of': 'total length'} | .at-least.factor | found \"1/3\" | an exact decimal number such as",
        "'at-least': {'factor': 1, 'of': 'total length'} | .at-least.factor | found the number 1 | text",
        "'at-least': {'factor': '-1', 'of': 'total length'} | .at-least.factor | found \"-1\" | an exact decimal number",
        "'at-least': {'factor': '1', 'of': 'tail length'} | .at-least.of | found \"tail length\" | did you mean \"total length\"?",
        "'at-least': {'factor': '1', 'of': 'body mass'} | .at-least | this factor is no LENGTH | take a measure of that kind",
        "'at-least': {'factor': '1', 'of': 'total length', 'power': 2} | .at-least | this factor is no LENGTH | take a measure of that kind",
        "'at-least': {'factor': '1', 'of': 'total length', 'power': 4} | .at-least | this factor is no LENGTH | take a measure of that kind",
        "'at-most': '1 m', 'scope': {'season': 'spring'} | .scope.season | found \"spring\" | any, active, winter",
        "'at-most': '1 m', 'scope': {'age': {'from-months': 12, 'below-months': 6}} | .scope.age | from 12 to below 6 months | the smaller number",
        "'at-most': '1 m', 'per-further-animal': {'beyond': 2, 'amount': '1 m2'} | .per-further-animal.amount | found \"1 m2\" | a unit of LENGTH",
        "'at-least': {'factor': '1', 'of': 'not looked'} | .at-least | \"of\" is missing | say what it is a factor of",
        "'at-least': 'not looked' | `` | \"at-least\" is missing | give \"at-least\", \"at-most\" or both",
        "'at-least': {'factor': '1', 'of': 'total length', 'cap': '1'} | .at-least.cap | the key \"cap\" is not known | known here are",
        "'why': 'no ends' | `` | \"at-least\" is missing | give \"at-least\", \"at-most\" or both",
        "'at-most': '1 m', 'place': 'attic' | .place | the place \"attic\" is not known | known are enclosure, ",
        "'at-most': '1 m', 'where': 'nowhere' | .where | found \"nowhere\" | everywhere, somewhere",
        "'at-most': '1 m', 'grade': 'grave' | .grade | found \"grave\" | critical, major, minor, improvement",
        "'at-most': '1 m', 'chosen': 'perhaps' | .chosen | found \"perhaps\" | yes, no",
        "'at-most': '1 m', 'cap': '2 K' | .cap | found \"2 K\" | a number with a unit of LENGTH",
        "'at-most': '1 m', 'at-laest': '1 m' | .at-laest | the key \"at-laest\" is not known | did you mean \"at-least\"?",
        "'at-most': '1 m', 'scope': [] | .scope | found a list | an object",
        "'at-most': '1 m', 'scope': {'stages': ['baby']} | .scope.stages[0] | found \"baby\" | hatchling, juvenile, subadult, adult",
        "'at-most': '1 m', 'scope': {'sexes': 'queen'} | .scope.sexes | found \"queen\" | female, male",
        "'at-most': '1 m', 'scope': {'purposes': ['party']} | .scope.purposes[0] | found \"party\" | permanent, quarantine",
        "'at-most': '1 m', 'scope': {'length': {'over': '20'}} | .scope.length.over | found \"20\" | a number with a unit of LENGTH",
        "'at-most': '1 m', 'scope': {'length': {'over': '50 cm', 'up-to': '20 cm'}} | .scope.length | between 50.0 cm and 20.0 cm | the smaller length",
        "'at-most': '1 m', 'scope': {'length': {'over': '20 cm', 'from': '20 cm'}} | .scope.length | an end is given twice | keep one of",
        "'at-most': '1 m', 'scope': {'animals': {'from': 3, 'up-to': 2}} | .scope.animals | from 3 up to 2 | the smaller number",
        "'at-most': '1 m', 'scope': {'animals': {'from': 'two'}} | .scope.animals.from | found \"two\" | a whole number",
        "'at-most': '1 m', 'per-further-animal': {'beyond': 2} | .per-further-animal | \"share\" is missing | an exact decimal number",
        "'at-most': '1 m', 'per-further-animal': {'share': '0.1'} | .per-further-animal | for is not told | 1 or more",
        "'at-most': '1 m', 'per-further-animal': {'beyond': 0, 'share': '0.1'} | .per-further-animal.beyond | for is not told | 1 or more",
        "'at-most': '1 m', 'per-further-animal': {'beyond': 2, 'share': '15 %'} | .per-further-animal.share | found \"15 %\" | exact decimal",
        "'at-least': '2 m', 'at-most': '1 m' | .at-most | it lies below \"at-least\" | the lower end under",
        "'at-least': '51 in', 'at-most': '1.295 m' | .at-most | it lies below \"at-least\" | the lower end under",
        "'at-least': {'factor': '1', 'of': 'total length'}, 'at-most': {'factor': '0.9', 'of': 'total length'} | .at-most | it lies below | under"})
    void a_malformed_limit_is_told_with_its_place(String members, String path, String found, String allowed) {
        assertOnly(MadeUp.document(MadeUp.species(MadeUp.limit("inside-length", members))), LIMIT + path, found, allowed);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "'criterion': 'space.length', | `` | \"criterion\" is missing | name the criterion",
        "'topic': 'inside-length', | `` | \"topic\" is missing | name what is limited",
        "'source': 'judgement', | `` | \"source\" is missing | cite a source",
        ", 'standing': 'judgement' | `` | \"standing\" is missing | say how it is known"})
    void a_limit_must_say_what_it_limits_and_where_it_stands(String left, String path, String found, String allowed) {
        String limit = MadeUp.limit("inside-length", "'at-most': '1 m'");
        assertTrue(limit.contains(left), left);
        assertOnly(MadeUp.document(MadeUp.species(limit.replace(left, ""))), LIMIT + path, found, allowed);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"'topic': 'inside-length'|'topic': 'inside-width'|.topic|the topic \"inside-width\" is not known",
        "'standing': 'judgement'|'standing': 'hearsay'|.standing|found \"hearsay\""})
    void unknown_words_of_a_limit_are_told(String written, String instead, String path, String found) {
        String limit = MadeUp.limit("inside-length", "'at-most': '1 m'").replace(written, instead);
        assertOnly(MadeUp.document(MadeUp.species(limit)), LIMIT + path, found, "");
    }

    @Test
    void a_limit_of_an_unknown_topic_is_one_problem_whatever_its_numbers() {
        String limit = MadeUp.limit("lid-weight", "'at-least': '2 kg', 'at-most': {'factor': '1', 'of': 'nothing'}, 'cap': '1 m', 'place': 'attic'");
        assertOnly(MadeUp.document(MadeUp.species(limit)), LIMIT + ".topic", "the topic \"lid-weight\" is not known", "a new one is written in Java");
    }

    @Test
    void a_limit_for_every_reptile_is_read_as_strictly() {
        String bad = MadeUp.limit("inside-length", "'at-most': '1 kg'");
        assertOnly(MadeUp.document(MadeUp.criterion(""), bad, MadeUp.species()), "every-reptile[0].at-most", "found \"1 kg\"", "LENGTH");
    }

    // ---- each malformed habit is a located problem

    @ParameterizedTest
    @ValueSource(strings = {"lives", "digs", "climbs", "uv", "drinks", "company", "eats-snakes"})
    void every_habit_must_be_told(String habit) {
        String without = MadeUp.species().replaceFirst("'" + habit + "': \\{[^}]*\\},? ?", "").replace("}, }", "}}");
        assertOnly(MadeUp.document(without), "species[0].habits", "\"" + habit + "\" is missing", "say {\"is\": ...");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"'is': 'ground'|'is': 'caves'|.lives.is|found \"caves\"|ground, trees",
        "'is': 'profits'|'is': 'loves'|.uv.is|found \"loves\"|needs, profits, without",
        "'is': 'from dish'|'is': 'bottle'|.drinks.is|found \"bottle\"|from dish, from drops",
        "'is': 'alone'|'is': 'lonely'|.company.is|found \"lonely\"|alone, one male, tolerated",
        "'is': 'ground'|'was': 'ground'|.lives|\"is\" is missing|ground, trees"})
    void a_malformed_habit_is_told_with_its_place(String written, String instead, String path, String found, String allowed) {
        assertFirst(MadeUp.document(MadeUp.species().replaceFirst(written, instead)), "species[0].habits" + path, found, allowed);
    }

    @Test
    void a_species_without_habits_is_no_species() {
        String bare = MadeUp.species().replaceFirst("'habits': \\{.*?}}, ", "");
        assertOnly(MadeUp.document(bare), "species[0]", "\"habits\" is missing", "say how it lives");
    }

    @Test
    void a_habit_must_say_where_it_stands() {
        String uncited = MadeUp.species().replaceFirst("'is': 'ground', 'source': 'judgement', 'standing': 'judgement'", "'is': 'ground'");
        assertEquals(List.of("\"standing\" is missing", "\"source\" is missing"),
                problems(MadeUp.document(uncited)).stream().map(Problem::found).toList());
    }

    // ---- each malformed criterion is a located problem

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "'need': 'behaviour'|'need': 'luxury'|.need|found \"luxury\"|protection, environment, diet, company, behaviour",
        "'id': 'space.length'|'id': 'length'|.id|found \"length\"|a topic, a dot and a name",
        "'need': 'behaviour'|'need': 'not looked'|!|\"need\" is missing|say one of",
        "'need': 'behaviour',| |!|\"need\" is missing|say one of",
        "'grade': 'major'|'grade': 'dire'|.grade|found \"dire\"|critical, major",
        "'subject': 'animal'|'subject': 'keeper'|.subject|found \"keeper\"|animal, enclosure, heater",
        "'subject': 'animal',| |!|\"subject\" is missing|say one of",
        "'topics': ['inside-length']|'topics': ['inside-width']|.topics|the topic \"inside-width\" is not known|did you mean \"inside-depth\"? a new one is written in Java; known are adult-males-together, ",
        "'since': '0.1.0'|'since': '0.1.0', 'applies-when': ['flies']|.applies-when[0]|found \"flies\"|digs, climbs, uses uv",
        "'since': '0.1.0'|'since': '0.1.0', 'purposes': ['party']|.purposes[0]|found \"party\"|permanent, quarantine",
        "'since': '0.1.0'|'since': '0.1.0', 'decision': 'lenient'|.decision|found \"lenient\"|simple, guarded",
        "'since': '0.1.0'|'since': '0.1.0', 'grades': {'open': 'dire'}|.grades.open|found \"dire\"|critical, major",
        "'since': '0.1.0'|'since': '0.1.0', 'caution': []|.caution|the key \"caution\" is not known|did you mean \"cautions\"?",
        "'since': '0.1.0'|'since': '0.1.0', 'sources': [{'source': 'judgement'}]|.sources[0]|\"standing\" is missing|say how it is known",
        "'since': '0.1.0'|'since': '0.1.0', 'needs': [1]|.needs[0]|found the number 1|a text in quotes",
        "'since': '0.1.0',| |!|\"since\" is missing|the version it came with",
        "'title': 'It is long enough',| |!|\"title\" is missing|a title",
        "'requirement': 'Long enough.'|'requirement': 7|.page.requirement|found the number 7|a text in quotes",
        "'requirement': 'Long enough.'|'requirements': 'x'|.page.requirements|the key \"requirements\" is not known|did you mean \"requirement\"?"})
    void a_malformed_criterion_is_told_with_its_place(String written, String instead, String path, String found, String allowed) {
        assertTrue(MadeUp.criterion("").contains(written), written);
        String criterion = MadeUp.criterion("").replace(written, instead == null ? "" : instead);
        assertOnly(MadeUp.document(criterion, "", MadeUp.species()), "criteria[0]" + path.replace("!", ""), found, allowed);
    }

    // ---- the file as a whole

    @Test
    void all_problems_of_a_file_are_told_at_once_in_the_order_of_their_place() {
        String criterion = MadeUp.criterion("").replace("'behaviour'", "'luxury'");
        String every = MadeUp.limit("inside-length", "'at-most': '1 kg'");
        String species = MadeUp.species(MadeUp.limit("inside-height", "'at-least': '1 s'"), MadeUp.limit("inside-height", "'where': 'x'"))
                .replace("'is': 'ground'", "'is': 'caves'");
        List<Problem> problems = problems(MadeUp.document(criterion, every, species));
        assertEquals(List.of("criteria[0].need", "every-reptile[0].at-most", "species[0].habits.lives.is", LIMIT + ".at-least",
                "species[0].limits[1]", "species[0].limits[1].where"), problems.stream().map(Problem::path).toList());
        assertTrue(problems.stream().allMatch(problem -> problem.line() > 0 && problem.column() > 0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"sources|{'id': 'judgement', 'title': 'Another', 'read': 'nothing'}",
        "criteria|CRITERION", "species|SPECIES", "cautions|{'id': 'burn', 'text': 'Again.', 'general': 'no'}"})
    void an_id_given_twice_is_a_problem(String list, String again) {
        String twice = again.replace("CRITERION", MadeUp.criterion("")).replace("SPECIES", MadeUp.species());
        String document = MadeUp.document(MadeUp.species()).replace("\"" + list + "\": [", "\"" + list + "\": [" + MadeUp.quoted(twice) + ", ");
        List<Problem> problems = problems(document);
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).found().contains("is given twice"), problems.toString());
    }

    @Test
    void a_file_without_version_names_what_is_missing() {
        List<Problem> problems = problems("{}");
        assertEquals(List.of("\"version\" is missing"), problems.stream().map(Problem::found).toList());
    }

    @Test
    void what_is_not_known_by_that_id_is_named() {
        Knowledge knowledge = MadeUp.knowing();
        for (Runnable asked : List.<Runnable>of(() -> knowledge.criterion("no.such"), () -> knowledge.profile("no.such"),
                () -> knowledge.source("no.such"))) {
            assertTrue(assertThrows(NoSuchElementException.class, asked::run).getMessage().endsWith("no.such"));
        }
    }

    // ---- the knowledge that is shipped

    @Test
    void both_snakes_are_shipped_and_species_stand_in_the_order_of_their_ids() {
        Knowledge shipped = KnowledgeReader.builtIn();
        List<String> ids = List.copyOf(shipped.profiles().keySet());
        assertTrue(ids.containsAll(List.of("lampropeltis-californiae", "pantherophis-guttatus")), ids.toString());
        assertEquals(ids.stream().sorted().toList(), ids);
    }

    private static List<Limit> limits(String limit) {
        return MadeUp.knowing(limit).profile(MadeUp.SPECIES).limits();
    }

    /** Lower ends of the limits applied, as written. */
    private static List<String> chosen(String every, String... own) {
        return MadeUp.read(MadeUp.document(MadeUp.criterion(""), every, MadeUp.species(own))).profile(MadeUp.SPECIES)
                .chosen(MadeUp.CRITERION).map(limit -> (Bound.Constant) limit.atLeast().orElseThrow())
                .map(bound -> bound.value() + " " + bound.unit().symbol()).toList();
    }

    private static List<Problem> problems(String document) {
        return assertThrows(ProblemsFound.class, () -> KnowledgeReader.read(document.getBytes(StandardCharsets.UTF_8))).problems();
    }

    private static void assertOnly(String document, String path, String found, String allowed) {
        List<Problem> problems = problems(document);
        assertEquals(1, problems.size(), problems.toString());
        assertTold(problems.get(0), path, found, allowed);
    }

    private static void assertFirst(String document, String path, String found, String allowed) {
        assertTold(problems(document).get(0), path, found, allowed);
    }

    private static void assertTold(Problem problem, String path, String found, String allowed) {
        assertEquals(path, problem.path());
        assertTrue(problem.found().contains(found), problem.text());
        assertTrue(problem.allowed().contains(allowed), problem.text());
        assertTrue(problem.line() > 0 && problem.column() > 0, problem.text());
    }
}
