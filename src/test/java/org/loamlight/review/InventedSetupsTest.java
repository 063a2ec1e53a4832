package org.loamlight.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loamlight.GoldenFile;
import org.loamlight.ranking.Conclusion;

/** The club and the round of the examples are what the generator makes, can all be judged, and are not all alike. */
class InventedSetupsTest {
    private static final Path CLUB = Path.of("examples", "club");
    private static final Path ROUND = Path.of("examples", "round", "homes.jsonl");
    private static final int MEMBERS = 24;
    private static final int HOMES = 8;

    private static String member(int number) {
        return new InventedSetup(number).json("Wending Vale Herpetological Club, member %02d: yearly review", true);
    }

    private static String home(int number) throws IOException {
        String json = new InventedSetup(40 + number).json("Marram Coast Reptile Rescue, foster home " + number + ": before placement", number % 3 == 0);
        return new ObjectMapper().readTree(json).toString();
    }

    @Test
    void the_club_is_what_the_generator_makes() throws IOException {
        for (int number = 1; number <= MEMBERS; number++) {
            GoldenFile.assertMatches(CLUB.resolve(String.format(Locale.ROOT, "member-%02d.json", number)), member(number));
        }
        try (Stream<Path> files = Files.list(CLUB)) {
            assertEquals(MEMBERS, files.count());
        }
    }

    @Test
    void the_round_is_what_the_generator_makes() throws IOException {
        List<String> homes = new ArrayList<>();
        for (int number = 1; number <= HOMES; number++) {
            homes.add(home(number));
        }
        GoldenFile.assertMatches(ROUND, String.join("\n", homes) + "\n");
    }

    @Test
    void all_can_be_judged_and_are_not_alike() throws IOException {
        List<Reviewed> all = new ArrayList<>();
        for (int number = 1; number <= MEMBERS; number++) {
            all.add(ReviewedJsonTest.reviewed("member " + number, member(number).getBytes(StandardCharsets.UTF_8)));
        }
        for (int number = 1; number <= HOMES; number++) {
            all.add(ReviewedJsonTest.reviewed("home " + number, home(number).getBytes(StandardCharsets.UTF_8)));
        }
        assertEquals(List.of(), all.stream().flatMap(one -> one.problems().stream()).toList());
        Set<Conclusion> conclusions = all.stream().map(one -> one.judged().orElseThrow().conclusion()).collect(Collectors.toSet());
        assertTrue(conclusions.containsAll(Set.of(Conclusion.NOT_READY, Conclusion.READY_ONCE_CORRECTED)), conclusions.toString());
        assertTrue(all.stream().flatMap(one -> one.judged().orElseThrow().animals().stream()).map(Kept::species).distinct().count() >= 10);
    }
}
