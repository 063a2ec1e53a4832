package org.loamlight.criterion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The chosen limits of the profiles are the figures in print they are said to be. */
class PublishedProfilesTest {
    private static final Knowledge KNOWLEDGE = KnowledgeReader.builtIn();
    private static final int FIGURES_PER_SPECIES = 5;

    static List<PublishedLimit> rows() {
        return PublishedLimit.all();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_chosen_limit_is_the_figure_in_print(PublishedLimit row) {
        List<Limit> meant = KNOWLEDGE.profile(row.cell("species")).chosen(row.cell("criterion")).filter(row::isAbout).toList();
        assertFalse(meant.isEmpty(), "No chosen limit is about the same, for the same animals, from the same source");
        if (!row.cell("low").isEmpty()) {
            assertTrue(meant.stream().anyMatch(limit -> row.isFigure("low", limit.atLeast(), limit.topic().unit())), () -> "low of " + meant);
        }
        if (!row.cell("high").isEmpty()) {
            assertTrue(meant.stream().anyMatch(limit -> row.isFigure("high", limit.atMost(), limit.topic().unit())), () -> "high of " + meant);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_row_gives_a_figure_and_says_how_it_is_printed(PublishedLimit row) {
        assertFalse(row.cell("low").isEmpty() && row.cell("high").isEmpty(), "neither low nor high");
        assertFalse(row.cell("row text").isBlank(), "row text");
        assertTrue(KNOWLEDGE.sources().containsKey(row.cell("source")), row.cell("source"));
    }

    /** Areas are what people quote most: those the ordinance prints stand beside their clause, none left out. */
    @Test
    void each_floor_area_out_of_the_ordinance_has_its_row() {
        for (Profile profile : KNOWLEDGE.profiles().values()) {
            List<Limit> printed = profile.chosen("space.floor-area").filter(limit -> limit.citation().source().equals("at-2thvo-2004")).toList();
            List<Limit> alone = printed.stream().filter(limit -> rows().stream().noneMatch(row -> row.cell("species").equals(profile.species().id())
                    && row.cell("criterion").equals("space.floor-area") && row.isAbout(limit)
                    && row.isFigure("low", limit.atLeast(), limit.topic().unit()))).toList();
            assertEquals(List.of(), alone, profile.species().id());
        }
        assertTrue(rows().stream().filter(row -> row.cell("criterion").equals("space.floor-area")).count() > 30);
    }

    @Test
    void each_species_has_figures_in_print_to_stand_on() {
        Map<String, Long> rows = rows().stream().collect(Collectors.groupingBy(row -> row.cell("species"), Collectors.counting()));
        for (String species : KNOWLEDGE.profiles().keySet()) {
            assertTrue(rows.getOrDefault(species, 0L) >= FIGURES_PER_SPECIES, () -> species + " has " + rows.getOrDefault(species, 0L)
                    + " rows in src/test/resources/published/profiles-*.csv; it needs " + FIGURES_PER_SPECIES
                    + ", each a figure in print that is a chosen limit");
        }
    }
}
