package org.loamlight.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.criterion.Binding;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Need;
import org.loamlight.criterion.Standing;
import org.loamlight.criterion.Where;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.MadeUpCodes;
import org.loamlight.evaluation.SideBySide;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Topic;
import org.loamlight.ranking.Conclusion;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Words;
import org.loamlight.wording.EveryLocale;

/** The results as JSON, held against their own schema (JSON Schema 2020-12). */
class JsonReportTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path FILE = Path.of("docs", "results.schema.json");
    private static final String SCHEMA_TEXT = read();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(SCHEMA_TEXT, InputFormat.JSON);

    private static final Audit WITH_CODES = MadeUpCodes.audit(MadeUpCodes.BOX, MadeUpCodes.LAW, MadeUpCodes.CLUB);

    private static String read() {
        try {
            return Files.readString(FILE, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static Stream<Audit> audits() {
        Stream<Audit> nasty = TextReportTest.nastyNames().stream().map(name -> Audited.named(name, name + "."));
        return Stream.of(Stream.of(Audited.bare(), Audited.only(Audited.bare(), List.of()), WITH_CODES), Audited.examples().stream(), nasty).flatMap(part -> part);
    }

    @ParameterizedTest
    @MethodSource("audits")
    void the_results_keep_to_their_schema(Audit audit) {
        assertEquals(List.of(), SCHEMA.validate(Audited.json(audit), InputFormat.JSON));
    }

    @Test
    void codes_stand_in_it_only_when_chosen_with_their_points_beside_the_species() throws IOException {
        assertFalse(JSON.readTree(Audited.json(MadeUpCodes.audit(MadeUpCodes.BOX))).has("codes"));
        JsonNode codes = JSON.readTree(Audited.json(WITH_CODES)).get("codes");
        assertEquals(List.of("marram-1", "wending-2"), List.of(codes.at("/0/id").textValue(), codes.at("/1/id").textValue()));
        assertEquals(MadeUpCodes.code(MadeUpCodes.LAW).sha256(), codes.at("/0/sha256").textValue());
        JsonNode floor = point(codes.get(0), "code.marram-1.1-floor");
        assertEquals("[{\"low\":0.7,\"unit\":\"m2\",\"place\":\"enclosure\",\"where\":\"everywhere\"}]", floor.get("limits").toString());
        assertEquals("nonconformity", floor.get("result").textValue());
        assertEquals(0.6, floor.at("/found/value").doubleValue());
        assertEquals("different", floor.get("agreement").textValue());
        assertEquals("whole-group", floor.at("/otherwise/0/policy").textValue());
        assertEquals(1.65, floor.at("/otherwise/0/limits/0/low").doubleValue());
        assertEquals("space.floor-area", floor.at("/species/0/criterion").textValue());
        assertEquals("[\"animals[Sedge].snout-vent-length\"]", point(codes.get(0), "code.marram-1.5-vent").get("missing").toString());
        assertEquals("no evidence", codes.at("/0/clauses/0/result").textValue());
        assertFalse(codes.at("/0/clauses/1").has("result"));
    }

    private static JsonNode point(JsonNode code, String criterion) {
        for (JsonNode point : code.get("points")) {
            if (point.get("criterion").textValue().equals(criterion)) {
                return point;
            }
        }
        throw new AssertionError("There is no point " + criterion);
    }

    static List<Consumer<ObjectNode>> damagesOfCodes() {
        return List.of(root -> code(root).put("binding", "wish"), root -> code(root).remove("sha256"), root -> code(root).put("id", "A B"),
                root -> ((ObjectNode) code(root).get("points").get(0)).put("agreement", "fine"),
                root -> ((ObjectNode) code(root).get("points").get(0)).put("further", 1),
                root -> ((ObjectNode) code(root).get("points").get(0)).remove("result"),
                root -> ((ObjectNode) code(root).get("clauses").get(0)).remove("judgedBy"), root -> root.putArray("codes"));
    }

    private static ObjectNode code(ObjectNode root) {
        return (ObjectNode) root.get("codes").get(0);
    }

    @ParameterizedTest
    @MethodSource("damagesOfCodes")
    void damaged_codes_do_not_keep_to_the_schema(Consumer<ObjectNode> damage) throws IOException {
        ObjectNode root = (ObjectNode) JSON.readTree(Audited.json(WITH_CODES));
        damage.accept(root);
        assertFalse(SCHEMA.validate(root.toString(), InputFormat.JSON).isEmpty());
    }

    static List<Consumer<ObjectNode>> damages() {
        return List.of(root -> root.put("further", 1), root -> root.remove("input"), root -> root.put("format", 2), root -> root.put("conclusion", "fine"),
                root -> root.put("on", "2 November"), root -> finding(root).put("result", "bad"), root -> finding(root).put("score", 3),
                root -> finding(root).remove("correct"), root -> finding(root).put("reason", "none"), root -> finding(root).put("subject", "basking lamp"),
                root -> finding(root).put("result", "not applicable"), root -> quantity(root).put("unit", "inch"),
                root -> quantity(root).put("further", 1), root -> quantity(root).put("value", "100"), root -> quantity(root).put("uncertainty", -1),
                root -> ((ObjectNode) root.get("input")).put("sha256", "ABC"), root -> ((ObjectNode) root.get("knowledge")).remove("version"));
    }

    private static ObjectNode finding(ObjectNode root) {
        return (ObjectNode) root.get("findings").get(0);
    }

    private static ObjectNode quantity(ObjectNode root) {
        return (ObjectNode) root.get("quantities").get(0);
    }

    @ParameterizedTest
    @MethodSource("damages")
    void damaged_results_do_not(Consumer<ObjectNode> damage) throws IOException {
        ObjectNode root = (ObjectNode) JSON.readTree(Audited.json(Audited.bare()));
        assertEquals(Words.of(Result.NONCONFORMITY), finding(root).get("result").textValue());
        damage.accept(root);
        assertFalse(SCHEMA.validate(root.toString(), InputFormat.JSON).isEmpty());
    }

    @Test
    void the_schema_knows_every_word_the_program_can_write() throws IOException {
        JsonNode schema = JSON.readTree(SCHEMA_TEXT);
        assertEquals(words(Conclusion.values()), texts(schema.at("/properties/conclusion/enum")));
        assertEquals(words(Method.values()), texts(schema.at("/properties/quantities/items/properties/method/enum")));
        assertEquals(words(Result.values()), texts(schema.at("/$defs/result/enum")));
        assertEquals(words(Grade.values()), texts(schema.at("/$defs/finding/properties/grade/enum")));
        assertEquals(words(Need.values()), texts(schema.at("/$defs/finding/properties/need/enum")));
        assertEquals(words(Binding.values()).stream().sorted().toList(), texts(schema.at("/$defs/code/properties/binding/enum")).stream().sorted().toList());
        assertEquals(words(SideBySide.Agreement.values()), texts(schema.at("/$defs/code/properties/points/items/properties/agreement/enum")));
        assertEquals(words(Where.values()), texts(schema.at("/$defs/limits/items/properties/where/enum")));
        assertEquals(words(Standing.values()), texts(schema.at("/$defs/standing/enum")));
        assertEquals(Arrays.stream(Topic.values()).map(Topic::id).toList(), texts(schema.at("/$defs/topic/enum")));
        assertEquals(Arrays.stream(Topic.values()).map(topic -> topic.unit().ucum()).collect(Collectors.toCollection(TreeSet::new)),
                new TreeSet<>(texts(schema.at("/$defs/unit/enum"))));
    }

    private static List<String> words(Enum<?>... constants) {
        return Arrays.stream(constants).map(Words::of).toList();
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.textValue()));
        return texts;
    }

    @ParameterizedTest
    @MethodSource("audits")
    void every_finding_and_every_quantity_is_in_it_in_the_order_of_the_ranking(Audit audit) throws IOException {
        JsonNode root = JSON.readTree(Audited.json(audit));
        Ranking ranking = Ranking.of(audit.findings());
        List<String> ranked = Stream.of(ranking.toDo(), ranking.toFindOut(), ranking.right(), ranking.notApplicable()).flatMap(List::stream)
                .map(finding -> finding.pair().key()).toList();
        List<String> written = new ArrayList<>();
        root.get("findings").forEach(one -> written.add(one.get("criterion").textValue() + " " + one.get("subject").textValue()));
        assertEquals(ranked, written);
        assertEquals(audit.findings().size(), written.size());
        assertEquals(audit.quantities().size(), root.get("quantities").size());
    }

    @Test
    void the_header_says_what_was_audited_with_what() throws IOException {
        JsonNode root = JSON.readTree(Audited.json(Audited.bare()));
        assertEquals("2026-11-02", root.get("on").textValue());
        assertEquals("not ready", root.get("conclusion").textValue());
        assertEquals(Audited.bare().knowledge().sha256(), root.at("/knowledge/sha256").textValue());
        assertEquals(Audited.SHA, root.at("/input/sha256").textValue());
        List<String> keys = new ArrayList<>();
        root.fieldNames().forEachRemaining(keys::add);
        assertEquals(List.of("format", "on", "conclusion", "knowledge", "input", "findings", "quantities"), keys);
    }

    @Test
    void a_finding_on_a_limit_carries_value_limit_and_probability_in_the_unit_of_the_topic() throws IOException {
        Audit bare = Audited.bare();
        Finding length = Audited.finding(bare, "space.length", "animal:Bracken");
        JsonNode finding = JSON.readTree(Audited.json(Audited.only(bare, List.of(length)))).at("/findings/0");
        // ±5 mm as limits: u = 0.5 cm / sqrt(3) = 0.288675 cm (JCGM 100:2008, 4.3.7).
        assertEquals("""
                {"topic":"inside-length","place":"enclosure","value":100,"unit":"cm","uncertainty":0.288675,"origin":"enclosure"}""",
                finding.get("found").toString());
        assertEquals("118", finding.at("/limit/low").toString());
        assertFalse(finding.get("limit").has("high"));
        assertEquals("0", finding.get("probability").toString());
        assertEquals("[]", finding.get("missing").toString());
        assertTrue(finding.get("correct").textValue().contains("18 cm"), finding.toString());
    }

    @Test
    void missing_answers_are_named_by_their_path() throws IOException {
        Audit bare = Audited.bare();
        Finding guard = Audited.finding(bare, "heat.guard", "heater:basking lamp too");
        JsonNode finding = JSON.readTree(Audited.json(Audited.only(bare, List.of(guard)))).at("/findings/0");
        assertEquals("[\"heaters[basking lamp too].guard\"]", finding.get("missing").toString());
        assertEquals("no evidence", finding.get("result").textValue());
        assertFalse(finding.has("correct"));
    }

    @ParameterizedTest
    @MethodSource("audits")
    void numbers_have_six_significant_digits_at_most(Audit audit) throws IOException {
        ObjectMapper exact = new ObjectMapper().enable(com.fasterxml.jackson.databind.DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
        exact.readTree(Audited.json(audit)).findValues("value").forEach(value -> assertDigits(value.decimalValue()));
        exact.readTree(Audited.json(audit)).findValues("uncertainty").forEach(value -> assertDigits(value.decimalValue()));
        exact.readTree(Audited.json(audit)).findValues("probability").forEach(value -> assertTrue(value.decimalValue().scale() <= 4, value.toString()));
    }

    private static void assertDigits(BigDecimal value) {
        assertTrue(value.signum() == 0 || value.stripTrailingZeros().precision() <= 6, value.toPlainString());
    }

    @Test
    void the_same_audit_gives_the_same_bytes_with_line_feeds_only_in_every_locale() {
        Set<String> texts = EveryLocale.texts(() -> Audited.json(Audited.bare()));
        assertEquals(1, texts.size());
        String json = texts.iterator().next();
        assertEquals(json, Audited.json(Audited.bare()));
        assertFalse(json.contains("\r") || json.contains("\t"));
        assertTrue(json.startsWith("{\n  \"format\": 1,\n") && json.endsWith("}\n"), json);
    }
}
