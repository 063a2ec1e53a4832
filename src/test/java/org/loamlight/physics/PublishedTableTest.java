package org.loamlight.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedTableTest {

    @ParameterizedTest
    @CsvSource({"light-keitz.csv, 13", "light-uvi-distance.csv, 4", "thermal-conformity.csv, 18"})
    void each_table_has_all_its_rows_and_a_source_in_each(String name, int rows) {
        PublishedTable table = PublishedTable.read(name);
        assertEquals(rows, table.rows().size());
        table.rows().forEach(row -> assertFalse(row.cell("source").isBlank(), () -> name + ": " + row.cells()));
    }

    @Test
    void a_quoted_cell_may_hold_a_comma_and_a_number_is_found_behind_its_label() {
        PublishedTable.Row row = PublishedTable.read("thermal-conformity.csv").row("id", "J6");
        assertEquals("Zener diode, upper limit", row.cell("case"));
        assertEquals(-5.47, row.numberAfter("inputs", "y"));
        assertEquals(0.919243, row.numberAfter("exact_recomputed", "pc"));
        assertThrows(IllegalStateException.class, () -> row.numberAfter("inputs", "T_L"));
    }

    @Test
    void a_line_that_does_not_fit_the_header_is_refused() {
        assertThrows(IllegalStateException.class, () -> new PublishedTable.Row(List.of("id", "value"), List.of("J6")));
    }
}
