package org.loamlight.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Standing;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** The generated page docs/criteria.md: on what each criterion rests, where the limits stand, and what was read of each source. */
public final class SourceIndex {
    private final Knowledge knowledge;
    private final Wording wording;
    private final Markdown page = new Markdown();

    private SourceIndex(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.wording = new Wording(Units.METRIC, knowledge);
    }

    /** The page, lines ended by a line feed. */
    public static String markdown(Knowledge knowledge) {
        return new SourceIndex(knowledge).written();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("index." + key, arguments);
    }

    private String written() {
        page.title(1, say("criteria.title")).paragraph(say("generated.limits")).paragraph(say("criteria.intro"));
        page.title(2, say("species.title"));
        knowledge.profiles().values().stream().map(profile -> profile.species()).forEach(species -> page
                .bullet(Markdown.link(Markdown.cell(species.english()), "species/" + species.id() + ".md") + " (*" + Markdown.cell(species.latin()) + "*)"));
        page.title(2, say("points.title")).header(say("points.header"));
        knowledge.criteria().values().forEach(this::criterion);
        standings();
        sources();
        return page.toString();
    }

    private void criterion(Criterion criterion) {
        List<String> cited = criterion.citations().stream().map(citation -> cited(wording, citation, "")).toList();
        page.row(Markdown.link(criterion.id(), "../rules/" + Markdown.page(criterion)), String.join("; ", cited));
    }

    /**
     * A source with its clause and standing, linked to its row on this page.
     *
     * @param from path to this page; empty on the page itself
     */
    static String cited(Wording wording, Citation citation, String from) {
        return Stream.of(Markdown.link(citation.source(), from + "#" + citation.source()), Markdown.cell(citation.clause()))
                .filter(part -> !part.isEmpty()).collect(Collectors.joining(", ")) + " (" + wording.standing(citation.standing()) + ")";
    }

    private void standings() {
        page.title(2, say("standings.title"));
        Stream.of(Standing.values()).forEach(standing -> page.bullet(wording.standing(standing) + ": " + wording.standingExplained(standing)));
    }

    private void sources() {
        page.title(2, say("sources.title")).header(say("sources.header"));
        knowledge.sources().values().forEach(source -> page.row("<a id=\"" + source.id() + "\"></a>" + source.id(), Markdown.cell(source.title()),
                Markdown.cell(source.read())));
    }
}
