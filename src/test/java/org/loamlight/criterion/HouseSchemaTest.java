package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Words;

/** docs/house.schema.json and docs/waivers.schema.json against their readers, both ways. */
class HouseSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String HOUSE = "house";
    private static final String WAIVERS = "waivers";

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static JsonNode tree(String name) throws IOException {
        return JSON.readTree(text(Path.of("docs", name + ".schema.json")));
    }

    private static ObjectNode example(String name) throws IOException {
        return (ObjectNode) JSON.readTree(text(Path.of("examples/house", name.equals(HOUSE) ? "wending-vale.json" : "wending-vale-waivers.json")));
    }

    private static boolean keepsToSchema(String name, JsonNode document) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(text(Path.of("docs", name + ".schema.json")), InputFormat.JSON);
        return schema.validate(document.toString(), InputFormat.JSON).isEmpty();
    }

    private static void read(String name, JsonNode document) throws ProblemsFound {
        byte[] bytes = document.toString().getBytes(StandardCharsets.UTF_8);
        if (name.equals(HOUSE)) {
            HouseRulesReader.read(name, bytes, BuiltIn.KNOWLEDGE);
        } else {
            Waivers.read(name, bytes, BuiltIn.KNOWLEDGE);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {HOUSE, WAIVERS})
    void the_example_keeps_to_both(String name) throws IOException, ProblemsFound {
        assertTrue(keepsToSchema(name, example(name)));
        read(name, example(name));
    }

    record Removed(String name, String list, String key) {
        @Override
        public String toString() {
            return name + " " + list + " without " + key;
        }
    }

    /** Each member of the first element of each list of an example. */
    static List<Removed> members() throws IOException {
        List<Removed> all = new ArrayList<>();
        for (String name : List.of(HOUSE, WAIVERS)) {
            for (String list : name.equals(HOUSE) ? List.of("limits", "grades", "left-out", "points") : List.of("waivers")) {
                example(name).get(list).get(0).fieldNames().forEachRemaining(key -> all.add(new Removed(name, list, key)));
            }
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("members")
    void schema_and_reader_agree_on_what_must_be_there(Removed removed) throws IOException {
        ObjectNode without = example(removed.name);
        ((ObjectNode) without.get(removed.list).get(0)).remove(removed.key);
        boolean isRead = true;
        try {
            read(removed.name, without);
        } catch (ProblemsFound e) {
            isRead = false;
        }
        assertEquals(keepsToSchema(removed.name, without), isRead);
    }

    @ParameterizedTest
    @MethodSource("members")
    void neither_knows_a_key_that_is_misspelt(Removed misspelt) throws IOException {
        ObjectNode wrong = example(misspelt.name);
        ((ObjectNode) wrong.get(misspelt.list).get(0)).put(misspelt.key + "x", "1");
        assertFalse(keepsToSchema(misspelt.name, wrong));
        assertThrows(ProblemsFound.class, () -> read(misspelt.name, wrong));
    }

    @Test
    void the_words_of_the_schema_are_those_of_the_reader() throws IOException {
        JsonNode point = tree(HOUSE).at("/properties/points/items/properties");
        assertEquals(Words.all(Grade.class), words(point.at("/grade/enum")));
        assertEquals(Words.all(Need.class).stream().sorted().toList(), words(point.at("/need/enum")).stream().sorted().toList());
        assertEquals(Words.all(BodyMeasure.class), words(point.at("/at-least/anyOf/1/properties/of/enum")));
        assertEquals(Words.all(Where.class), words(point.at("/where/enum")));
        assertEquals(Stream.of(Zone.values()).map(zone -> zone.id()).sorted().toList(), words(point.at("/place/enum")).stream().sorted().toList());
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        ((ArrayNode) list).forEach(word -> words.add(word.textValue()));
        return words;
    }
}
