package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmendedTest {
    private static final String SETUP = "{'room': {'sun': 'no'}, 'water': 'not looked', 'heaters': [{'name': 'a', 'guard': 'no'}, {'name': 'a].b', 'guard': 'no'}], "
            + "'lamps': [{'name': 'tube', 'readings': [{'index': '3'}]}], 'title': 'x'}";

    private static JsonValue.JsonObject read(String json) {
        try {
            return (JsonValue.JsonObject) JsonFile.read(json.replace('\'', '"').getBytes(StandardCharsets.UTF_8), new Problems(""));
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static String with(String path) {
        return Amended.with(read(SETUP), path, new JsonValue.JsonText(new JsonPlace(0, 0, ""), "NEW")).map(changed -> flat(JsonPrinter.print(changed))).orElse("none");
    }

    private static String flat(String json) {
        return json.replaceAll("\\s*\n\\s*", "").replace("\": ", "\":");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"title | 'title':'x' | 'title':'NEW'", "room.sun | 'sun':'no' | 'sun':'NEW'", "room.hottest | 'sun':'no' | 'sun':'no','hottest':'NEW'",
        "water.depth | 'water':'not looked' | 'water':{'depth':'NEW'}", "heaters[a].guard | {'name':'a','guard':'no'} | {'name':'a','guard':'NEW'}",
        "heaters[a].power | {'name':'a','guard':'no'} | {'name':'a','guard':'no','power':'NEW'}", "heaters[a].place.along | {'name':'a','guard':'no'} | {'name':'a','guard':'no','place':{'along':'NEW'}}",
        "heaters[a].b].guard | {'name':'a].b','guard':'no'} | {'name':'a].b','guard':'NEW'}", "lamps[tube].readings | 'readings':[{'index':'3'}] | 'readings':'NEW'"})
    void one_answer_changes_and_nothing_else(String path, String before, String after) {
        String whole = flat(JsonPrinter.print(read(SETUP)));
        assertEquals(whole.replace(before.replace('\'', '"'), after.replace('\'', '"')), with(path));
    }

    @ParameterizedTest
    @CsvSource({"heaters[b].guard", "furnishings[a].cover", "title.sub", "lamps[tube].readings[1].index"})
    void what_is_not_there_is_not_made_up(String path) {
        assertEquals("none", with(path));
    }

    @Test
    void an_element_is_put_behind_the_others_and_begins_a_list() {
        JsonValue element = new JsonValue.JsonText(new JsonPlace(0, 0, ""), "NEW");
        assertEquals("[{\"index\":\"3\"},\"NEW\"]", flat(JsonPrinter.print(Amended.at(Amended.withElement(read(SETUP), "lamps[tube].readings", element).orElseThrow(),
                "lamps[tube].readings").orElseThrow())).replace("}, \"", "},\""));
        assertEquals("[\"NEW\"]", flat(JsonPrinter.print(Amended.at(Amended.withElement(read(SETUP), "readings", element).orElseThrow(), "readings").orElseThrow())));
    }
}
