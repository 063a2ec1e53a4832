package org.loamlight.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Source;
import org.loamlight.wording.Wording;

/** The sources the workbook cites, numbered in the order in which they come up. */
final class CitedSources {
    private final Knowledge knowledge;
    private final Wording wording;
    private final Map<String, Set<Citation>> bySource = new LinkedHashMap<>();

    CitedSources(Knowledge knowledge, Wording wording) {
        this.knowledge = knowledge;
        this.wording = wording;
    }

    void cite(List<Citation> citations) {
        citations.forEach(citation -> bySource.computeIfAbsent(citation.source(), source -> new LinkedHashSet<>()).add(citation));
    }

    /** "S2: clause 4 (read)". Only for a citation that was cited before. */
    String reference(Citation citation) {
        return number(citation.source()) + ": " + passage(citation);
    }

    private String number(String source) {
        return "S" + (List.copyOf(bySource.keySet()).indexOf(source) + 1);
    }

    private String passage(Citation citation) {
        String standing = wording.standing(citation.standing());
        return citation.clause().isEmpty() ? standing : citation.clause() + " (" + standing + ")";
    }

    Listing listing(String title) {
        List<List<String>> rows = new ArrayList<>();
        bySource.forEach((id, citations) -> {
            Source source = knowledge.source(id);
            rows.add(List.of(number(id), source.title(), source.read(),
                    String.join("\n", citations.stream().map(this::passage).distinct().toList())));
        });
        return new Listing("Sources", "Sources", title, List.of(Column.text("Number", 8), Column.text("Source", 44),
                Column.text("What of it was read", 22), Column.text("Passages cited and their standing", 26)), rows)
                .orSaying("No source is cited in this workbook.");
    }
}
