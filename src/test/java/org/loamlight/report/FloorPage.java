package org.loamlight.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodePoint;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Standing;
import org.loamlight.report.FloorSteps.FloorStep;
import org.loamlight.setup.Words;

/** The generated page docs/code-floors.md: the floor each code asks for one animal, over the lengths it grows through. */
final class FloorPage {
    private static final String NOTHING = "-";
    private static final MathContext THREE_FIGURES = new MathContext(3, RoundingMode.HALF_UP);
    /** Hatched so many months before the day of the audit, in the middle of each class of age in print. */
    private static final List<String> HATCHED = List.of("2026-08-02", "2026-02-02", "2024-11-02");

    private final Knowledge plain;
    private final List<Code> codes;
    private final Markdown page = new Markdown();

    private FloorPage(Knowledge plain, List<Code> codes) {
        this.plain = plain;
        this.codes = codes;
    }

    /** The page, lines ended by a line feed. */
    static String markdown(Knowledge plain, List<Code> codes, List<Growth> species) {
        return new FloorPage(plain, codes).written(species);
    }

    private String written(List<Growth> species) {
        page.title(1, "Floor asked for while an animal grows")
                .paragraph("Generated from rules/codes and src/test/resources/published/growth.csv; a test keeps it in step. Accept a change with"
                        + " `mvn test -Dgolden=accept`. What the codes are and how their wording is read stands in [codes.md](codes.md).");
        Stream.of("Each table is for one animal alone in a permanent enclosure and gives square metres of floor, rounded to three figures.",
                "Where a code gives sides, the floor is length times depth. Florida gives a perimeter and a width: the length is what the width leaves of"
                        + " half the perimeter, and where it leaves nothing no floor is asked for.",
                "The animal counts as growing up to the length marked *adult*, and as adult from there on. That length, like those of the hatchling"
                        + " and of the longest animals, only chooses the rows; where they are from stands above each table.",
                "*species* is what the points of the species ask, which a code never replaces.",
                "A `+` marks a row before which the floor jumped, **fell** one before which it fell; where exactly is told beneath. `" + NOTHING
                        + "` stands where the code asks for no floor at that length.",
                "A figure that a code prints without a size stands in every row, also where it was hardly meant for the young.",
                "A code that was not read in its own text says so in the head of its column.").forEach(page::bullet);
        species.forEach(this::species);
        byAge(species);
        return page.toString();
    }

    private void species(Growth growth) {
        Knowledge knowledge = plain.withCodes(codes, Set.of(growth.species()));
        List<Code> asking = codes.stream().filter(code -> !points(code, growth).isEmpty() && !isByAge(code, growth)).toList();
        page.title(2, capitalised(plain.profile(growth.species()).species().english())).paragraph("Lengths: " + Markdown.cell(growth.source()) + ".");
        if (asking.isEmpty()) {
            page.paragraph("No code read gives a floor by length.");
            return;
        }
        Map<Code, List<FloorStep>> steps = new HashMap<>();
        asking.forEach(code -> steps.put(code, FloorSteps.of(knowledge, code, growth)));
        table(knowledge, growth, asking, steps);
        page.title(3, "Where it jumps or falls");
        asking.forEach(code -> steps(code, steps.get(code)));
    }

    private static String capitalised(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private void table(Knowledge knowledge, Growth growth, List<Code> asking, Map<Code, List<FloorStep>> steps) {
        String heads = asking.stream().map(code -> head(code, growth)).collect(Collectors.joining(" | "));
        page.header("| " + (growth.isByShell() ? "shell" : "total length") + " | stage | species | " + heads + " |");
        BigDecimal before = BigDecimal.ZERO;
        for (BigDecimal length : growth.lengths()) {
            List<String> cells = new ArrayList<>(List.of(length.stripTrailingZeros().toPlainString() + " cm", growth.isAdultAt(length) ? "adult" : "growing",
                    inPrint(RequiredFloor.bySpecies(knowledge, growth.setup(length, 1)))));
            for (Code code : asking) {
                cells.add(inPrint(RequiredFloor.byCode(knowledge, code, growth.setup(length, 1))) + mark(steps.get(code), before, length));
            }
            page.row(cells.toArray(String[]::new));
            before = length;
        }
    }

    private static List<CodePoint> points(Code code, Growth growth) {
        return RequiredFloor.points(code, Set.of(growth.species()));
    }

    private static String head(Code code, Growth growth) {
        String standings = points(code, growth).stream().map(CodePoint::standing).filter(standing -> standing != Standing.READ).distinct().sorted()
                .map(Words::of).collect(Collectors.joining(", "));
        return "`" + code.id() + "`" + (standings.isEmpty() ? "" : " (" + standings + ")");
    }

    private static String mark(List<FloorStep> steps, BigDecimal before, BigDecimal length) {
        List<FloorStep> passed = steps.stream().filter(step -> before.signum() > 0 && step.isPassedAt(length) && !step.isPassedAt(before)).toList();
        if (passed.stream().anyMatch(FloorStep::isFall)) {
            return " **fell**";
        }
        return passed.isEmpty() ? "" : " +";
    }

    private void steps(Code code, List<FloorStep> steps) {
        if (!steps.isEmpty()) {
            page.bullet("`" + code.id() + "`: " + steps.stream().map(FloorPage::inWords).collect(Collectors.joining("; ")) + ".");
        }
    }

    private static String inWords(FloorStep step) {
        String where = (step.included() ? "from " : "past ") + step.at().toPlainString() + " cm" + (step.included() ? " on" : "")
                + (step.adult() ? ", as adult" : "");
        String floors = step.before() == 0 ? "none to " + inPrint(step.after()) : inPrint(step.before()) + " to " + inPrint(step.after());
        return step.isFall() ? "**falls** " + floors + " " + where : floors + " " + where;
    }

    private static String inPrint(OptionalDouble squareMetres) {
        return squareMetres.isPresent() ? inPrint(squareMetres.getAsDouble()) : NOTHING;
    }

    private static String inPrint(double squareMetres) {
        return new BigDecimal(squareMetres).round(MathContext.DECIMAL32).round(THREE_FIGURES).stripTrailingZeros().toPlainString();
    }

    private static boolean isByAge(Code code, Growth growth) {
        return points(code, growth).stream().flatMap(point -> point.limits().stream()).anyMatch(limit -> !limit.scope().age().isAny());
    }

    private void byAge(List<Growth> species) {
        page.title(2, "By age").paragraph("One animal alone, floor in square metres. Older animals than those with a figure go by a category that was not seen.")
                .header("| species | code | under 6 months | 6 to 12 months | over a year |");
        for (Code code : codes) {
            species.stream().filter(growth -> isByAge(code, growth)).forEach(growth -> byAge(code, growth));
        }
    }

    private void byAge(Code code, Growth growth) {
        Knowledge knowledge = plain.withCodes(List.of(code), Set.of(growth.species()));
        List<String> cells = new ArrayList<>(List.of(plain.profile(growth.species()).species().english(), head(code, growth)));
        HATCHED.forEach(hatched -> cells.add(inPrint(RequiredFloor.byCode(knowledge, code, growth.setup(growth.adultFrom(), 1, "subadult", hatched)))));
        page.row(cells.toArray(String[]::new));
    }
}
