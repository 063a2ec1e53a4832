package org.loamlight.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loamlight.evaluation.Audit;

class ChartsTest {
    private static Chart chart(Audit audit, Chart.Kind kind) {
        return Charts.of(audit, Drawn.METRIC).stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void there_is_none_without_numbers() {
        assertEquals(List.of(), Charts.of(Drawn.audit("{\"format\": 1, \"animals\": [{\"name\": \"Bracken\", \"species\": \"pantherophis-guttatus\"}]}"), Drawn.METRIC));
    }

    @Test
    void pieces_of_cover_reach_from_where_they_begin() {
        Chart chart = chart(Drawn.example("calibration"), Chart.Kind.STRETCHES);
        int cork = chart.labels().indexOf("cork along the back");
        assertEquals(26, chart.series().get(0).values().get(cork));
        assertEquals(44, chart.series().get(1).values().get(cork));
        assertTrue(chart.description().contains("cork along the back 26 cm to 70 cm"), chart.description());
    }

    @Test
    void temperatures_stand_between_what_is_asked_in_the_units_of_the_reader() {
        Chart chart = chart(Drawn.example("us-kingsnake"), Chart.Kind.RANGES);
        int found = chart.series().stream().map(Chart.Series::name).toList().indexOf("Found");
        assertEquals("°C", chart.axis());
        assertTrue(chart.series().get(found).values().stream().anyMatch(value -> Math.abs(value - (90 - 32) / 1.8) < 1e-6), chart.toString());
        Chart inUs = Charts.of(Drawn.example("us-kingsnake"), Drawn.US).stream().filter(one -> one.kind() == Chart.Kind.RANGES).findFirst().orElseThrow();
        assertEquals("°F", inUs.axis());
        assertTrue(inUs.series().get(found).values().stream().anyMatch(value -> Math.abs(value - 90) < 1e-6), inUs.toString());
    }

    /** The basking place of the foster home: at least 28 °C by one point, at most 35 °C by another; the chart shows both ends. */
    @Test
    void a_temperature_stands_between_the_strictest_ends_of_all_points() {
        Chart chart = chart(Drawn.example("foster-corn-snake"), Chart.Kind.RANGES);
        assertEquals(List.of("Lowest asked for", "Found", "Highest asked for"), chart.series().stream().map(Chart.Series::name).toList());
        int basking = chart.labels().indexOf("surface temperature by day at the basking place");
        assertEquals(List.of(28.0, 41.0, 35.0), chart.series().stream().map(series -> (double) Math.round(series.values().get(basking))).toList());
        assertTrue(chart.description().contains("asked for at least 28 °C, at most 35 °C"), chart.description());
    }

    /** Index 4 at 20 cm below a bulb is 4 (20/60)² = 4/9 on the floor, 60 cm below it. */
    @Test
    void index_falls_with_the_square_of_the_way_from_a_bulb() {
        Chart chart = chart(Drawn.audit("""
                {"format": 1, "animals": [{"name": "Bracken", "species": "pantherophis-guttatus"}], "enclosure": {"inside": {"length": "100 cm"}},
                 "lamps": [{"name": "bulb", "kind": "UV bulb", "shines": "from above", "between": [], "place": {"along": "50 cm", "across": "25 cm", "above": "60 cm"},
                   "readings": [{"index": "4", "distance": "20 cm", "instrument": "UV meter"}]}]}"""), Chart.Kind.BY_HEIGHT);
        assertEquals("0.0", chart.labels().get(0));
        assertEquals(4 / 9.0, chart.series().get(0).values().get(0), 1e-9);
        assertEquals("45.0", chart.labels().get(12));
        assertEquals(4 * 400 / 225.0, chart.series().get(0).values().get(12), 1e-9);
    }

    @Test
    void series_must_be_as_long_as_the_labels() {
        assertThrows(IllegalArgumentException.class, () -> new Chart(Chart.Kind.RANGES, "", "", "", "", List.of("a"), List.of(new Chart.Series("", List.of()))));
    }
}
