package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loamlight.quantity.Zone;

class EnclosureTest {
    /** The same end has two names: its side, and its warmth once the warm end is told. */
    @ParameterizedTest
    @CsvSource({
        "left, LEFT_THIRD, WARM_END, YES", "left, LEFT_THIRD, COOL_END, NO", "left, RIGHT_THIRD, COOL_END, YES", "left, RIGHT_THIRD, WARM_END, NO",
        "right, LEFT_THIRD, COOL_END, YES", "right, LEFT_THIRD, WARM_END, NO", "right, RIGHT_THIRD, WARM_END, YES", "right, RIGHT_THIRD, COOL_END, NO",
        "not looked, LEFT_THIRD, WARM_END, UNKNOWN", "not looked, RIGHT_THIRD, COOL_END, UNKNOWN",
        "not looked, LEFT_THIRD, LEFT_THIRD, YES", "not looked, LEFT_THIRD, RIGHT_THIRD, NO", "not looked, WARM_END, COOL_END, NO",
        "not looked, MIDDLE_THIRD, WARM_END, NO", "not looked, MIDDLE_THIRD, MIDDLE_THIRD, YES", "left, BASKING_PLACE, WARM_END, NO",
        "left, ENCLOSURE, ENCLOSURE, NO", "not looked, ENCLOSURE, WARM_END, NO", "not looked, LEFT_THIRD, ENCLOSURE, NO"})
    void two_words_for_one_end(String warmEnd, Zone one, Zone other, Stated expected) throws ProblemsFound {
        Enclosure enclosure = enclosure(warmEnd);
        assertEquals(expected, enclosure.sameEnd(one, other));
        assertEquals(expected, enclosure.sameEnd(other, one));
    }

    private static Enclosure enclosure(String warmEnd) throws ProblemsFound {
        String json = "{\"format\": 1, \"animals\": [{\"name\": \"Sedge\", \"species\": \"pantherophis-guttatus\"}], \"enclosure\": {\"warm-end\": \""
                + warmEnd + "\"}}";
        return SetupReader.read("setup.json", json.getBytes(StandardCharsets.UTF_8), Set.of("pantherophis-guttatus")).enclosure();
    }
}
