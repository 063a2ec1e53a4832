package org.loamlight.report;

import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.Profile;
import org.loamlight.criterion.Species;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** A generated page of docs/species/: habits of one species, its limits, and what does not hold for it, each with its source. */
public final class SpeciesPage {
    private static final String SOURCES = "../criteria.md";

    private final Knowledge knowledge;
    private final Wording wording;
    private final Profile profile;
    private final Markdown page = new Markdown();

    private SpeciesPage(Knowledge knowledge, Profile profile) {
        this.knowledge = knowledge;
        this.wording = new Wording(Units.METRIC, knowledge);
        this.profile = profile;
    }

    /** The page, lines ended by a line feed. */
    public static String markdown(Knowledge knowledge, Profile profile) {
        return new SpeciesPage(knowledge, profile).written();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("index." + key, arguments);
    }

    private String written() {
        head();
        habits();
        limits();
        notMeant();
        return page.toString();
    }

    private void head() {
        Species species = profile.species();
        page.title(1, Markdown.cell(species.english()) + " (*" + Markdown.cell(species.latin()) + "*)").paragraph(say("generated.limits"));
        if (!profile.also().isEmpty()) {
            page.paragraph(say("also", Markdown.cell(String.join(", ", profile.also()))));
        }
        if (!profile.note().isEmpty()) {
            page.paragraph(Markdown.cell(profile.note()));
        }
    }

    private void habits() {
        page.title(2, say("habits.title"));
        Explanation.habits(profile.species()).forEach((key, habit) -> habit(key, wording.habit(key, habit)));
        habit("adult-length", Explanation.adult(wording, profile.species()));
        Explanation.grounds(wording, profile.species()).forEach(this::habit);
    }

    private void habit(String key, String words) {
        page.bullet(Markdown.cell(words) + " - " + cited(profile.habits().get(key)));
    }

    private String cited(Citation citation) {
        return SourceIndex.cited(wording, citation, SOURCES);
    }

    private void limits() {
        page.title(2, say("limits.title")).paragraph(say("limits.intro")).header(say("limits.header"));
        profile.limits().stream().map(Limit::criterion).distinct().sorted()
                .forEach(id -> profile.limits().stream().filter(limit -> limit.criterion().equals(id)).forEach(this::limit));
    }

    private void limit(Limit limit) {
        String applied = say(limit.chosen() ? "yes" : "no");
        String why = limit.why().isEmpty() ? applied : say("with-reason", applied, Markdown.cell(limit.why()));
        page.row(point(limit.criterion()), Markdown.cell(wording.limit(limit)), cited(limit.citation()), why);
    }

    private String point(String id) {
        return Markdown.link(id, "../../rules/" + Markdown.page(knowledge.criterion(id)));
    }

    private void notMeant() {
        if (!profile.notMeant().isEmpty()) {
            page.title(2, say("not-meant.title"));
            profile.notMeant().forEach(one -> page.bullet(wording.sentence("page.not-meant.line", point(one.criterion()), Markdown.cell(one.reason()))));
        }
    }
}
