package org.loamlight.report;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.loamlight.criterion.WorkedCase;
import org.loamlight.evaluation.BuiltIn;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;

/**
 * How a species grows, from src/test/resources/published/growth.csv: the lengths a table of floors runs over. Lengths are total
 * lengths (cm), for tortoises those of the shell.
 *
 * @param hatchling      length when hatched or born
 * @param adultFrom      length from which the table takes an animal for adult
 * @param longest        greatest length
 * @param snoutVentShare what head and body have of the total length; empty where no code goes by it
 * @param source         where the lengths are from, and how firmly they are known
 */
record Growth(String species, BigDecimal hatchling, BigDecimal adultFrom, BigDecimal longest, Optional<BigDecimal> snoutVentShare, String source) {
    private static final Path FILE = Path.of("src", "test", "resources", "published", "growth.csv");
    private static final List<Integer> STEPS = List.of(1, 2, 5, 10, 20, 50);
    private static final int MOST_ROWS = 14;
    private static final String LONG_AGO = "2020-01-01";
    private static final String TORTOISE = "testudo-hermanni";

    static List<Growth> all() throws IOException {
        return Files.readAllLines(FILE, StandardCharsets.UTF_8).stream().skip(1).map(line -> of(WorkedCase.cells(line))).toList();
    }

    private static Growth of(List<String> cells) {
        return new Growth(cells.get(0), new BigDecimal(cells.get(1)), new BigDecimal(cells.get(2)), new BigDecimal(cells.get(3)),
                Optional.of(cells.get(4)).filter(cell -> !cell.isEmpty()).map(BigDecimal::new), cells.get(5));
    }

    boolean isByShell() {
        return species.equals(TORTOISE);
    }

    boolean isAdultAt(BigDecimal length) {
        return length.compareTo(adultFrom) >= 0;
    }

    /** Hatchling, first adult, longest, and even steps between. */
    List<BigDecimal> lengths() {
        BigDecimal span = longest.subtract(hatchling);
        BigDecimal step = STEPS.stream().map(BigDecimal::valueOf).filter(one -> span.compareTo(one.multiply(BigDecimal.valueOf(MOST_ROWS))) <= 0)
                .findFirst().orElseThrow();
        TreeSet<BigDecimal> lengths = new TreeSet<>(List.of(hatchling, adultFrom, longest));
        Stream.iterate(step, at -> at.compareTo(longest) < 0, at -> at.add(step)).filter(at -> at.compareTo(hatchling) > 0).forEach(lengths::add);
        return new ArrayList<>(lengths);
    }

    /** A setup in which some of the species live, all of that length and older than a year. */
    Setup setup(BigDecimal length, int animals) {
        return setup(length, animals, isAdultAt(length) ? "adult" : "subadult", LONG_AGO);
    }

    /** A setup in which one of that length, older than a year, is still growing. */
    Setup growing(BigDecimal length) {
        return setup(length, 1, "subadult", LONG_AGO);
    }

    /** The same with their stage of life and the day they hatched. */
    Setup setup(BigDecimal length, int animals, String stage, String hatched) {
        List<String> list = new ArrayList<>();
        for (int i = 1; i <= animals; i++) {
            list.add("{\"name\": \"%d\", \"species\": \"%s\", \"stage\": \"%s\", \"hatched\": \"%s\", %s}".formatted(i, species, stage, hatched, measures(length)));
        }
        try {
            return BuiltIn.setup("{\"format\": 1, \"on\": \"" + BuiltIn.ON + "\", \"animals\": [" + String.join(", ", list) + "]}");
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private String measures(BigDecimal length) {
        String measure = "\"%s\": \"%s cm\"".formatted(isByShell() ? "carapace" : "length", length.toPlainString());
        return snoutVentShare.map(share -> measure + ", \"snout-vent-length\": \"%s cm\"".formatted(share.multiply(length).toPlainString())).orElse(measure);
    }
}
