package org.loamlight.report;

import java.util.Collection;
import java.util.stream.Stream;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Knowledge;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/** The generated index of the criteria by topic, rules/README.md: what is asked, how grave it is, how it is judged. */
public final class RuleIndex {
    private final Knowledge knowledge;
    private final Wording wording;
    private final Markdown page = new Markdown();

    private RuleIndex(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.wording = new Wording(Units.METRIC, knowledge);
    }

    /** The page, lines ended by a line feed. */
    public static String markdown(Knowledge knowledge) {
        return new RuleIndex(knowledge).index();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("index." + key, arguments);
    }

    private String index() {
        Collection<Criterion> criteria = knowledge.criteria().values();
        page.title(1, say("title")).paragraph(say("generated"));
        long byLimit = criteria.stream().filter(Criterion::isLimit).count();
        page.paragraph(say("counts", criteria.size(), byLimit, criteria.size() - byLimit));
        Stream.of("simple", "guarded", "rules-and-limit", "rules", "informs")
                .forEach(how -> page.bullet(wording.sentence("judged." + how + ".explained")));
        criteria.stream().map(Criterion::topic).distinct().forEach(this::topic);
        return page.toString();
    }

    private void topic(String topic) {
        page.title(2, topic).header(say("header"));
        knowledge.criteria().values().stream().filter(criterion -> criterion.topic().equals(topic)).forEach(this::criterion);
    }

    private void criterion(Criterion criterion) {
        page.row(Markdown.link(criterion.id(), Markdown.page(criterion)), Markdown.cell(criterion.title()), wording.need(criterion.need()),
                grades(criterion), wording.judged(criterion));
    }

    private String grades(Criterion criterion) {
        Stream<String> variants = criterion.grades().entrySet().stream().map(one -> Markdown.cell(one.getKey()) + ": " + wording.grade(one.getValue()));
        return String.join("; ", Stream.concat(Stream.of(wording.grade(criterion.grade())), variants).toList());
    }
}
