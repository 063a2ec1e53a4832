package org.loamlight.cli;

import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** {@code --species}: an id, a scientific or a common name. */
final class SpeciesOption {
    @Option(names = "--species", paramLabel = "SPECIES", description = "Only for this species: its id, common or scientific name.")
    private String name;

    /** The species asked for; empty when none was. */
    Optional<String> name() {
        return Optional.ofNullable(name);
    }

    /** A page; a name that is not known becomes a complaint that says which are. */
    static String page(Supplier<String> page) throws Complaint {
        try {
            return page.get();
        } catch (NoSuchElementException e) {
            throw new Complaint(e.getMessage());
        }
    }
}
