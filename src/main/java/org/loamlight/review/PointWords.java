package org.loamlight.review;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.loamlight.criterion.Citation;

/**
 * An open finding in words.
 *
 * @param title    what is asked
 * @param where    the part it is about
 * @param found    what was found; for what is not known, what is missing
 * @param required what is asked in figures; the title again where there are none
 * @param past     how far off it is; empty where nothing was measured
 * @param act      how to put it right, or how to find it out
 * @param by       by when, in words
 * @param due      that day; empty where no day can be said
 * @param citations where it stands what is asked
 * @param leave    until when it is waived; empty when it is not
 */
public record PointWords(String title, String where, String found, String required, String past, String act, String by, Optional<LocalDate> due,
        List<Citation> citations, Optional<LocalDate> leave) {
    public PointWords {
        citations = List.copyOf(citations);
    }
}
