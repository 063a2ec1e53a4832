package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.loamlight.setup.PaneMaterial;
import org.loamlight.setup.SubstrateKind;

/** The densities that loads are computed from, against published tables (thermal-bulk-density.csv). */
class BulkDensitiesTest {

    private static final Pattern RANGE = Pattern.compile("(\\d+)(?:-(\\d+))?");
    /** Handbooks give loose materials to the nearest 5 or 10 kg/m3 and differ by as much for one sample and the next. */
    private static final double SCATTER = 0.02;

    /** How a material of the table begins, and the kind it is here. */
    private static final Map<String, SubstrateKind> KINDS = Map.of("coir", SubstrateKind.COIR, 
            "sand", SubstrateKind.SAND, "earth", SubstrateKind.SOIL, "loam", SubstrateKind.SOIL, "bark", SubstrateKind.BARK,
            "pine bark", SubstrateKind.BARK, "mixed wood", SubstrateKind.BARK, "cork granules", SubstrateKind.CORK_GRANULES,
            "aspen or softwood", SubstrateKind.WOOD_SHAVINGS);

    static List<PublishedTable.Row> densities() {
        return PublishedTable.read("thermal-bulk-density.csv").rows();
    }

    static List<PublishedTable.Row> ofSubstrates() {
        return densities().stream().filter(row -> kind(row).isPresent()).toList();
    }

    @Test
    void the_table_is_whole_and_names_a_source_in_each_row() {
        assertEquals(38, densities().size());
        assertEquals(18, ofSubstrates().size());
        densities().forEach(row -> assertFalse(row.cell("source").isBlank(), () -> row.cells().toString()));
    }

    /** A published density lies in the range of the state it is given for, or, without one, between driest and wettest. */
    @ParameterizedTest
    @MethodSource("ofSubstrates")
    void each_published_density_lies_within_the_range_of_its_kind(PublishedTable.Row row) {
        DensityRange range = range(kind(row).orElseThrow(), row.cell("state"));
        Matcher published = RANGE.matcher(row.cell("kg_m3"));
        assertTrue(published.lookingAt());
        double low = Double.parseDouble(published.group(1));
        double high = published.group(2) == null ? low : Double.parseDouble(published.group(2));
        assertTrue(range.low() <= low * (1 + SCATTER) && high <= range.high() * (1 + SCATTER), () -> row.cells() + " in " + range);
    }

    /** EN 1991-1-1 gives panes as weights in whole kN/m3, which is good to 4 %. */
    @ParameterizedTest
    @CsvSource({"GLASS, glass sheet", "ACRYLIC, acrylic sheet", "WOOD, 'softwood (pine, fir), 15 % moisture'"})
    void panes_are_as_dense_as_the_tables_say(PaneMaterial pane, String material) {
        assertEquals(1, pane.density() / PublishedTable.read("thermal-bulk-density.csv").row("material", material).number("kg_m3"), 0.04);
    }

    @ParameterizedTest
    @EnumSource
    void wet_is_never_lighter_than_dry(SubstrateKind kind) {
        assertTrue(kind.dryLow() <= kind.dryHigh() && kind.wetLow() <= kind.wetHigh() && kind.dryLow() <= kind.wetLow()
                && kind.dryHigh() <= kind.wetHigh(), kind::name);
    }

    private static Optional<SubstrateKind> kind(PublishedTable.Row row) {
        return KINDS.entrySet().stream().filter(entry -> row.cell("material").matches(Pattern.quote(entry.getKey()) + "(?![a-z]).*"))
                .map(Map.Entry::getValue).findFirst();
    }

    private static DensityRange range(SubstrateKind kind, String state) {
        DensityRange dry = new DensityRange(kind.dryLow(), kind.dryHigh());
        DensityRange wet = new DensityRange(kind.wetLow(), kind.wetHigh());
        if (state.contains("wet") || state.contains("saturated")) {
            return wet;
        }
        return state.contains("dry") || state.contains("handled") ? dry : dry.joined(wet);
    }
}
