package org.loamlight.criterion;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.Stage;

/**
 * A figure in print that a profile took over, from the files src/test/resources/published/profiles-*.csv.
 *
 * <p>The columns: {@code species}, {@code criterion}, {@code topic} and {@code place} as a profile writes them (no place:
 * the enclosure); {@code scope note} names the stages (none: all) and the class of length ("over 50 cm, up-to 100 cm"),
 * of the shell if the note begins with "shell";
 * {@code low} and {@code high} with their {@code unit}, which is "x total length" for a factor; {@code source}, the id
 * under which sources.json lists where the figure was read; {@code row text}, the figure as it stands there.
 */
record PublishedLimit(String file, int line, Map<String, String> cells) {
    private static final Path FOLDER = Path.of("src", "test", "resources", "published");
    private static final Pattern END_OF_CLASS = Pattern.compile("(from|over|up-to|below) (\\d+(?:\\.\\d+)?) cm");
    private static final String SHELL = "shell ";
    /** A factor such as a third is written with four decimals. */
    private static final double FOUR_DECIMALS = 5e-5;
    private static final double ROUNDING = 1e-9;

    /** Every row of every file, in the order of their names. */
    static List<PublishedLimit> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<PublishedLimit> rows = new ArrayList<>();
            for (Path file : files.filter(one -> one.getFileName().toString().matches("profiles-.+\\.csv")).sorted().toList()) {
                rows.addAll(rows(file));
            }
            return List.copyOf(rows);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<PublishedLimit> rows(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        List<String> header = WorkedCase.cells(lines.get(0));
        List<PublishedLimit> rows = new ArrayList<>();
        for (int line = 1; line < lines.size(); line++) {
            List<String> cells = WorkedCase.cells(lines.get(line));
            if (cells.size() != header.size()) {
                throw new IllegalStateException(file + " line " + (line + 1) + ": " + cells + " does not fit the header " + header);
            }
            Map<String, String> row = new HashMap<>();
            for (int column = 0; column < cells.size(); column++) {
                row.put(header.get(column), cells.get(column));
            }
            rows.add(new PublishedLimit(file.getFileName().toString(), line + 1, row));
        }
        return rows;
    }

    String cell(String column) {
        return Optional.ofNullable(cells.get(column)).orElseThrow(() -> new IllegalStateException(file + " has no column " + column));
    }

    /** Whether a limit says something about the same thing, at the same place, for the same animals, out of the same source. */
    boolean isAbout(Limit limit) {
        String place = cell("place").isEmpty() ? Zone.ENCLOSURE.id() : cell("place");
        return limit.topic().id().equals(cell("topic")) && limit.zone().id().equals(place)
                && limit.citation().source().equals(cell("source"))
                && isOfClass(limit.scope()) && isForStages(limit.scope().stages());
    }

    private boolean isOfClass(Scope scope) {
        boolean ofShell = cell("scope note").startsWith(SHELL);
        return scope.size().equals(ofShell ? SizeClass.ANY : size()) && (!ofShell || scope.shell().equals(size()));
    }

    /** Whether it holds at all the stages named; a row that names none is about all of them. */
    private boolean isForStages(Set<Stage> stages) {
        Set<String> named = new TreeSet<>(List.of(cell("scope note").split("[^a-z]+")));
        named.retainAll(Stream.of(Stage.values()).map(PublishedLimit::word).collect(Collectors.toSet()));
        Set<String> held = stages.stream().map(PublishedLimit::word).collect(Collectors.toSet());
        return held.isEmpty() || !named.isEmpty() && held.containsAll(named);
    }

    private static String word(Stage stage) {
        return stage.name().toLowerCase(Locale.ROOT);
    }

    private SizeClass size() {
        double smallest = Double.NEGATIVE_INFINITY;
        double largest = Double.POSITIVE_INFINITY;
        boolean smallestIncluded = false;
        boolean largestIncluded = false;
        Matcher ends = END_OF_CLASS.matcher(cell("scope note"));
        for (MatchResult end : ends.results().toList()) {
            double length = Double.parseDouble(end.group(2));
            if (end.group(1).equals("from") || end.group(1).equals("over")) {
                smallest = length;
                smallestIncluded = end.group(1).equals("from");
            } else {
                largest = length;
                largestIncluded = end.group(1).equals("up-to");
            }
        }
        return new SizeClass(smallest, smallestIncluded, largest, largestIncluded);
    }

    /** Whether an end of a limit is the figure in a column. */
    boolean isFigure(String column, Optional<Bound> bound, Unit unit) {
        BigDecimal figure = new BigDecimal(cell(column));
        return bound.map(end -> end instanceof Bound.Factor factor ? isFactor(figure, factor)
                : isConstant(figure, (Bound.Constant) end, unit)).orElse(false);
    }

    private boolean isFactor(BigDecimal figure, Bound.Factor factor) {
        return cell("unit").equals("x " + factor.of().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                && Math.abs(figure.subtract(factor.factor()).doubleValue()) <= FOUR_DECIMALS;
    }

    private boolean isConstant(BigDecimal figure, Bound.Constant constant, Unit unit) {
        Optional<Unit> printed = Unit.spelt(cell("unit"));
        return printed.isPresent() && printed.get().dimension() == unit.dimension()
                && Math.abs(printed.get().convert(figure, unit) - constant.unit().convert(constant.value(), unit)) <= ROUNDING;
    }

    @Override
    public String toString() {
        return file + " line " + line + ": " + cell("species") + " " + cell("criterion") + " " + cell("row text");
    }
}
