package org.loamlight.report;

import java.util.Collection;
import java.util.stream.Stream;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.Profile;
import org.loamlight.criterion.Standing;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** The generated pages rules/README.md and docs/criteria.md, in Markdown. */
public final class RuleIndex {
    private final Knowledge knowledge;
    private final Wording wording;
    private final StringBuilder text = new StringBuilder();

    private RuleIndex(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.wording = new Wording(Units.METRIC, knowledge);
    }

    /** The index of the criteria by topic, for rules/README.md. */
    public static String markdown(Knowledge knowledge) {
        return new RuleIndex(knowledge).index();
    }

    /** The limits by species with their sources, for docs/criteria.md. */
    public static String criteria(Knowledge knowledge) {
        return new RuleIndex(knowledge).limits();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("index." + key, arguments);
    }

    private void paragraph(String prose) {
        text.append(prose).append("\n\n");
    }

    private String index() {
        Collection<Criterion> criteria = knowledge.criteria().values();
        paragraph("# " + say("title"));
        paragraph(say("generated"));
        long byLimit = criteria.stream().filter(Criterion::isLimit).count();
        paragraph(say("counts", criteria.size(), byLimit, criteria.size() - byLimit));
        Stream.of("simple", "guarded", "rules-and-limit", "rules", "informs").forEach(how -> bullet(wording.sentence("judged." + how + ".explained")));
        criteria.stream().map(Criterion::topic).distinct().forEach(this::topic);
        return text.toString();
    }

    private void bullet(String prose) {
        text.append("* ").append(prose).append('\n');
    }

    private void topic(String topic) {
        text.append("\n## ").append(topic).append('\n');
        header("header");
        knowledge.criteria().values().stream().filter(criterion -> criterion.topic().equals(topic)).forEach(this::criterion);
    }

    private void header(String key) {
        String header = say(key);
        long columns = header.chars().filter(sign -> sign == '|').count() - 1;
        text.append(header).append('\n').append('|').append("---|".repeat((int) columns)).append('\n');
    }

    private void criterion(Criterion criterion) {
        row("[" + criterion.id() + "](criteria/" + criterion.topic() + "/" + criterion.id() + "/criterion.md)", cell(criterion.title()),
                wording.need(criterion.need()), grades(criterion), wording.judged(criterion));
    }

    private String grades(Criterion criterion) {
        Stream<String> variants = criterion.grades().entrySet().stream().map(one -> cell(one.getKey()) + ": " + wording.grade(one.getValue()));
        return String.join("; ", Stream.concat(Stream.of(wording.grade(criterion.grade())), variants).toList());
    }

    private void row(String... cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    private static String cell(String prose) {
        return prose.replace("|", "\\|").replace("<", "&lt;").replace('\n', ' ');
    }

    private String limits() {
        paragraph("# " + say("limits.title"));
        paragraph(say("generated.limits"));
        paragraph(say("limits.intro"));
        knowledge.profiles().values().forEach(this::profile);
        standings();
        sources();
        return text.toString();
    }

    private void profile(Profile profile) {
        text.append("## ").append(cell(profile.species().english())).append(" (*").append(cell(profile.species().latin())).append("*)\n\n");
        Explanation.habits(profile.species()).forEach((key, habit) -> bullet(cell(wording.habit(key, habit)) + " - "
                + cited(profile.habits().get(key))));
        bullet(cell(Explanation.adult(wording, profile.species())) + " - " + cited(profile.habits().get("adult-length")));
        Explanation.grounds(wording, profile.species()).forEach((key, ground) -> bullet(cell(ground) + " - " + cited(profile.habits().get(key))));
        text.append('\n');
        header("limits.header");
        profile.limits().stream().map(Limit::criterion).distinct().sorted()
                .forEach(id -> profile.limits().stream().filter(limit -> limit.criterion().equals(id)).forEach(this::limit));
        text.append('\n');
        profile.notMeant().forEach(one -> bullet(wording.sentence("page.not-meant.line", one.criterion(), cell(one.reason()))));
        text.append(profile.notMeant().isEmpty() ? "" : "\n");
    }

    private void limit(Limit limit) {
        String applied = limit.chosen() ? say("yes") : limit.why().isEmpty() ? say("no") : say("no.why", cell(limit.why()));
        row(limit.criterion(), cell(wording.limit(limit)), link(limit.citation()), wording.standing(limit.citation().standing()), applied);
    }

    private String cited(Citation citation) {
        return link(citation) + " (" + wording.standing(citation.standing()) + ")";
    }

    private static String link(Citation citation) {
        String link = "[" + citation.source() + "](#" + citation.source() + ")";
        return citation.clause().isEmpty() ? link : link + ", " + cell(citation.clause());
    }

    private void standings() {
        paragraph("## " + say("standings.title"));
        Stream.of(Standing.values()).forEach(standing -> bullet(wording.standing(standing) + ": "
                + wording.standingExplained(standing)));
        text.append('\n');
    }

    private void sources() {
        text.append("## ").append(say("sources.title")).append("\n\n");
        header("sources.header");
        knowledge.sources().values().forEach(source -> row("<a id=\"" + source.id() + "\"></a>" + source.id(), cell(source.title()), cell(source.read())));
    }
}
