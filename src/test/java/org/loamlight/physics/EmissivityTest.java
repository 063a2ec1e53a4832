package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class EmissivityTest {

    /** Rows of the published table by the kind they belong to; M rows, from memory, are left out. */
    private static final Map<String, Emissivity> KINDS = Map.ofEntries(
            Map.entry("wood, planed oak", Emissivity.WOOD), Map.entry("timber", Emissivity.WOOD), Map.entry("wood", Emissivity.WOOD),
            Map.entry("chipboard, untreated", Emissivity.WOOD), Map.entry("slate", Emissivity.STONE),
            Map.entry("granite, rough", Emissivity.STONE), Map.entry("basalt", Emissivity.STONE), Map.entry("marble", Emissivity.STONE),
            Map.entry("glass", Emissivity.GLASS), Map.entry("glass, float uncoated", Emissivity.GLASS),
            Map.entry("plastic", Emissivity.PLASTIC), Map.entry("plastic, opaque over 0.5 mm", Emissivity.PLASTIC),
            Map.entry("ceramic", Emissivity.CERAMIC), Map.entry("porcelain", Emissivity.CERAMIC),
            Map.entry("earthenware glazed", Emissivity.CERAMIC), Map.entry("clay brick, red", Emissivity.CERAMIC),
            Map.entry("paint, oil", Emissivity.COATED_METAL), Map.entry("aluminium, as received", Emissivity.BARE_METAL),
            Map.entry("aluminium, polished", Emissivity.BARE_METAL), Map.entry("stainless steel", Emissivity.BARE_METAL));

    static List<PublishedTable.Row> rows() {
        return PublishedTable.read("thermal-emissivity.csv").rows().stream()
                .filter(row -> KINDS.containsKey(row.cell("material"))).toList();
    }

    @Test
    void every_row_that_was_meant_is_in_the_table() {
        assertEquals(KINDS.size(), rows().size());
    }

    /** Manuals of infrared thermometers and thermal cameras; a range must hold every figure they print for its kind. */
    @ParameterizedTest
    @MethodSource("rows")
    void each_range_holds_what_the_manuals_print(PublishedTable.Row row) {
        Emissivity kind = KINDS.get(row.cell("material"));
        double[] printed = Stream.of(row.cell("emissivity").split("-")).mapToDouble(Double::parseDouble).toArray();
        assertTrue(kind.least() <= printed[0] && printed[printed.length - 1] <= kind.most(), row.cells()::toString);
    }

    @ParameterizedTest
    @EnumSource(Emissivity.class)
    void ranges_are_shares_and_bare_metal_is_the_only_one_that_is_not_dull(Emissivity kind) {
        assertTrue(kind.least() > 0 && kind.least() < kind.most() && kind.most() <= 1);
        boolean dull = kind.least() >= Emissivity.DULL.least() && kind.most() <= Emissivity.DULL.most();
        assertEquals(kind != Emissivity.BARE_METAL, dull);
    }
}
