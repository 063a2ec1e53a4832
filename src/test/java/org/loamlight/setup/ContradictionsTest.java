package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers that cannot all be true, and answers that only look so. The wording is kept in bad-input/contradictions. */
class ContradictionsTest {
    private static final String BOX = "'enclosure': {'inside': {'length': '120 cm', 'depth': '60 cm', 'height': '50 cm'}}, ";

    private static List<String> paths(String members) {
        return Given.problems(BOX + members).stream().map(Problem::path).toList();
    }

    private static void fits(String members) throws ProblemsFound {
        assertEquals(120, Given.setup(BOX + members).enclosure().length().value());
    }

    private static String piece(String name, String kind, String edges) {
        String[] at = edges.split(" ");
        return "{'name': '" + name + "', 'kind': '" + kind + "', 'from': '" + at[0] + " cm', 'to': '" + at[1] + " cm', 'from-front': '" + at[2]
                + " cm', 'to-front': '" + at[3] + " cm', 'bottom': '" + at[4] + " cm', 'top': '" + at[5] + " cm'}";
    }

    private static String pieces(String... pieces) {
        return "'furnishings': [" + String.join(", ", pieces) + "]";
    }

    // ---- beyond the walls

    /** A position is good to ±2 cm, a size to ±0.5 cm: together 2.5 cm, which a position may be off without a word. */
    @ParameterizedTest
    @CsvSource({"furnishings, from, 120", "furnishings, to, 120", "furnishings, extent, 120", "furnishings, from-front, 60", "furnishings, to-front, 60",
        "furnishings, bottom, 50", "furnishings, top, 50", "furnishings, rest-height, 50"})
    void an_edge_beyond_a_wall_by_more_than_the_tape_may_be_off_is_told(String section, String key, double wall) throws ProblemsFound {
        fits("'" + section + "': [{'name': 'p', '" + key + "': '" + (wall + 2.49) + " cm'}]");
        assertEquals(List.of(section + "[0]." + key), paths("'" + section + "': [{'name': 'p', '" + key + "': '" + (wall + 2.51) + " cm'}]"));
    }

    @ParameterizedTest
    @CsvSource({"heaters, along, 120", "heaters, across, 60", "lamps, along, 120", "lamps, across, 60", "furnishings, along, 120", "furnishings, above, 50",
        "readings, along, 120", "readings, across, 60", "readings, above, 50"})
    void a_place_beyond_a_wall_is_told(String section, String key, double wall) throws ProblemsFound {
        String of = section.equals("readings") ? "'of': 'humidity', " : "";
        fits("'" + section + "': [{'name': 'p', " + of + "'place': {'" + key + "': '" + wall + " cm'}}]");
        assertEquals(List.of(section + "[0].place." + key),
                paths("'" + section + "': [{'name': 'p', " + of + "'place': {'" + key + "': '" + (wall + 3) + " cm'}}]"));
    }

    @Test
    void a_stated_uncertainty_counts_instead_of_the_usual_one() throws ProblemsFound {
        fits("'furnishings': [{'name': 'p', 'to': '128 cm ± 10 cm'}]");
        assertEquals(List.of("furnishings[0].to"), paths("'furnishings': [{'name': 'p', 'to': '121 cm ± 1 mm'}]"));
    }

    @Test
    void where_the_size_is_not_told_nothing_is_beyond_it() throws ProblemsFound {
        assertEquals(1, Given.setup("'furnishings': [{'name': 'p', 'to': '900 cm', 'top': '900 cm', 'place': {'along': '900 cm'}, 'extent': '900 cm'}]")
                .furnishings().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"'mounted': 'outside', 'place': {'along': '180 cm', 'above': '90 cm'}", "'place': {'above': '90 cm'}"})
    void a_heater_outside_or_said_to_be_nowhere_may_hang_above(String members) throws ProblemsFound {
        fits("'heaters': [{'name': 'h', " + members + "}]");
        assertEquals(List.of("heaters[0].place.above"), paths("'heaters': [{'name': 'h', 'mounted': 'inside', 'place': {'above': '90 cm'}}]"));
    }

    @Test
    void a_lamp_may_lie_on_the_lid() throws ProblemsFound {
        fits("'lamps': [{'name': 'l', 'between': [{'what': 'mesh'}], 'place': {'along': '60 cm', 'above': '56 cm'}}]");
    }

    @Test
    void a_piece_about_its_middle_may_not_reach_through_either_wall() throws ProblemsFound {
        fits("'furnishings': [{'name': 'p', 'place': {'along': '20 cm'}, 'extent': '40 cm'}]");
        fits("'furnishings': [{'name': 'p', 'place': 'warm end', 'extent': '40 cm'}]");
        assertEquals(List.of("furnishings[0].extent"), paths("'furnishings': [{'name': 'p', 'place': {'along': '15 cm'}, 'extent': '40 cm'}]"));
        assertEquals(List.of("furnishings[0].extent"), paths("'furnishings': [{'name': 'p', 'place': {'along': '105 cm'}, 'extent': '40 cm'}]"));
    }

    @Test
    void substrate_is_not_deeper_than_the_enclosure_is_high() throws ProblemsFound {
        fits("'substrate': {'depth': '50 cm'}");
        assertEquals(List.of("substrate.depth"), paths("'substrate': {'depth': '55 cm'}"));
    }

    // ---- tubes

    @ParameterizedTest
    @CsvSource({"along, 120", "across, 60", "not looked, 134.1"})
    void a_tube_inside_is_no_longer_than_the_way_it_lies(String runs, double room) throws ProblemsFound {
        String tube = "'lamps': [{'name': 't', 'kind': 'UV tube', 'between': [], 'runs': '" + runs + "', 'lit-length': '";
        fits(tube + room + " cm'}]");
        assertEquals(List.of("lamps[0].lit-length"), paths(tube + (room + 2) + " cm'}]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "'between': [{'what': 'mesh'}], ", "'between': 'not looked', "})
    void a_tube_that_may_lie_outside_may_be_of_any_length(String between) throws ProblemsFound {
        fits("'lamps': [{'name': 't', 'kind': 'UV tube', " + between + "'lit-length': '200 cm'}]");
    }

    @Test
    void a_tube_does_not_reach_through_the_wall() throws ProblemsFound {
        String tube = "'lamps': [{'name': 't', 'kind': 'UV tube', 'between': [], 'runs': 'along', 'lit-length': '60 cm', 'place': {'along': '";
        fits(tube + "30 cm'}}]");
        assertEquals(List.of("lamps[0].lit-length"), paths(tube + "20 cm'}}]"));
        assertEquals(List.of("lamps[0].lit-length"), paths(tube + "100 cm'}}]"));
    }

    // ---- pieces through one another

    @Test
    void two_solid_pieces_in_one_place_are_told_at_the_later_one() {
        List<Problem> problems = Given.problems(BOX + pieces(piece("cave", "hide", "0 30 0 30 0 15"), piece("slate", "stone", "20 50 10 40 5 30")));
        assertEquals(List.of("furnishings[1]"), problems.stream().map(Problem::path).toList());
        assertTrue(problems.get(0).found().contains("\"cave\"") && problems.get(0).found().contains("\"slate\""), problems.get(0).text());
    }

    /** Each edge is good to ±2 cm: pieces that overlap by no more than 4 cm in one direction may just touch. */
    @ParameterizedTest
    @ValueSource(strings = {"26.1 50 0 30 0 15", "0 30 26.1 55 0 15", "0 30 0 30 11.1 30", "60 90 0 30 0 15"})
    void pieces_side_by_side_or_one_upon_the_other_are_not_in_one_place(String edges) throws ProblemsFound {
        fits(pieces(piece("cave", "hide", "0 30 0 30 0 15"), piece("slate", "stone", edges)));
    }

    @Test
    void an_overlap_a_little_past_the_tape_is_one() {
        assertEquals(List.of("furnishings[1]"), paths(pieces(piece("cave", "hide", "0 30 0 30 0 15"), piece("slate", "stone", "25.9 50 0 30 0 15"))));
    }

    @Test
    void what_lies_wholly_in_a_hide_lies_in_it_and_what_lies_wholly_in_a_stone_does_not() throws ProblemsFound {
        fits(pieces(piece("cave", "hide", "0 40 0 40 0 20"), piece("dish", "water dish", "10 30 10 30 0 8")));
        assertEquals(List.of("furnishings[1]"), paths(pieces(piece("rock", "stone", "0 40 0 40 0 20"), piece("dish", "water dish", "10 30 10 30 0 8"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"leaf litter", "plant", "branch", "cork", "bark", "background", "other"})
    void what_does_not_fill_its_box_may_be_where_others_are(String kind) throws ProblemsFound {
        fits(pieces(piece("cave", "hide", "0 30 0 30 0 15"), piece("p", kind, "0 60 0 50 0 30")));
    }

    @Test
    void edges_may_be_given_from_either_side() {
        assertEquals(List.of("furnishings[1]"), paths(pieces(piece("cave", "hide", "30 0 30 0 15 0"), piece("slate", "stone", "50 20 40 10 30 5"))));
    }

    @Test
    void pieces_told_in_two_directions_only_may_lie_one_over_the_other() throws ProblemsFound {
        fits("'furnishings': [{'name': 'a', 'kind': 'hide', 'from': '0 cm', 'to': '30 cm', 'from-front': '0 cm', 'to-front': '30 cm'}, "
                + "{'name': 'b', 'kind': 'stone', 'from': '0 cm', 'to': '30 cm', 'from-front': '0 cm', 'to-front': '30 cm'}]");
    }

    // ---- all at once

    @Test
    void what_is_no_part_is_left_out_and_the_others_keep_their_places() {
        assertEquals(List.of("furnishings[0]", "furnishings[1].to"), paths("'furnishings': ['cave', {'name': 'slate', 'to': '200 cm'}]"));
    }
}
