package org.loamlight.cli;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeReader;
import picocli.CommandLine.Option;

/** Which codes are held beside the needs of the species. */
final class CodesOption {
    private static final String ALL = "all";

    @Option(names = "--codes", paramLabel = "CODE", split = ",",
            description = "Laws and association codes to hold beside what the species needs, with commas between, or \"all\"; \"loamlight codes\" lists them.")
    private List<String> ids;

    /** The codes that were chosen, else those of these ids; what they ask of these species at least. */
    List<Code> chosenOr(List<String> others, Set<String> species) throws Complaint {
        return ids == null && others.isEmpty() ? List.of() : named(ids == null ? others : ids, species);
    }

    /** The chosen codes in the order given, each once; empty when none was asked for. */
    List<Code> chosen() throws Complaint {
        return chosen(Set.of());
    }

    /**
     * The chosen codes with what they ask of these species at least.
     *
     * @param species ids of species that are known; empty for all
     */
    List<Code> chosen(Set<String> species) throws Complaint {
        return chosenOr(List.of(), species);
    }

    private static List<Code> named(List<String> ids, Set<String> species) throws Complaint {
        try {
            List<String> wanted = ids.stream().map(String::strip).filter(id -> !id.isEmpty()).toList();
            if (wanted.isEmpty()) {
                throw new Complaint("--codes: no code is named; \"loamlight codes\" lists them");
            }
            return CodeReader.builtIn(wanted.contains(ALL) ? CodeReader.ids() : wanted, species);
        } catch (NoSuchElementException e) {
            throw new Complaint("--codes: " + e.getMessage());
        }
    }
}
