package org.loamlight.review;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Waivers;
import org.loamlight.evaluation.RuleBase;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.wording.Units;

/**
 * What every setup of a review is judged with.
 *
 * @param knowledge with the rules of the house, and with the codes for the species that are kept
 * @param on        day of every audit; empty for the day each setup names
 * @param today     day for setups that name none
 * @param anonymous whether names are taken out first
 * @param documents reads the values of a description
 */
public record Judging(Basis basis, Function<Set<String>, Knowledge> knowledge, Supplier<RuleBase> rules, Waivers waivers, Optional<LocalDate> on, LocalDate today,
        Units units, boolean anonymous, Documents documents) {

    /** Reads a description in any of its shapes. */
    @FunctionalInterface
    public interface Documents {
        /** @throws ProblemsFound with what ends the reading; the rest goes to {@code problems} */
        JsonValue read(String name, byte[] bytes, Problems problems) throws ProblemsFound;
    }
}
