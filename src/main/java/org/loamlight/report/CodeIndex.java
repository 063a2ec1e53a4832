package org.loamlight.report;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodePoint;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Profile;
import org.loamlight.criterion.Standing;
import org.loamlight.wording.CodeWording;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/**
 * The generated page docs/codes.md: what codes are, which there are, how far each binds and was read, and how a wording that is
 * open to several readings is read.
 */
public final class CodeIndex {
    private static final String SOURCES = "criteria.md#";

    private final Knowledge knowledge;
    private final List<Code> codes;
    private final Wording wording;
    private final CodeWording words;
    private final Markdown page = new Markdown();

    private CodeIndex(Knowledge knowledge, List<Code> codes) {
        this.knowledge = knowledge;
        this.codes = codes;
        this.wording = new Wording(Units.METRIC, knowledge);
        this.words = new CodeWording(wording);
    }

    /** The page, lines ended by a line feed. */
    public static String markdown(Knowledge knowledge, List<Code> codes) {
        return new CodeIndex(knowledge, codes).written();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("index." + key, arguments);
    }

    private String written() {
        page.title(1, say("codes.title")).paragraph(say("generated.limits"));
        Stream.of("codes.intro", "codes.beside", "codes.grades", "codes.in-words", "codes.more").forEach(key -> page.paragraph(say(key)));
        page.paragraph("**" + words.whatDecides() + "**");
        page.title(2, say("codes.held.title")).header(say("codes.held.header"));
        codes.forEach(this::held);
        page.title(2, say("codes.species.title")).paragraph(say("codes.species.intro")).header(say("codes.species.header"));
        knowledge.profiles().values().forEach(this::species);
        page.title(2, say("codes.readings.title")).paragraph(say("codes.readings.intro"));
        codes.stream().filter(code -> !code.policies().isEmpty()).forEach(this::readings);
        return page.toString();
    }

    private void held(Code code) {
        page.row(named(code), Markdown.cell(code.title()), Markdown.cell(words.issued(code)), Markdown.cell(words.binding(code.binding())),
                Markdown.link(Markdown.cell(code.read()), SOURCES + code.source()), standings(code.points()), String.valueOf(code.clauses().size()));
    }

    private static String named(Code code) {
        return "`" + code.id() + "` " + Markdown.cell(code.name());
    }

    /** How many points, by how firmly they are known: "12 read, 3 secondary". */
    private String standings(List<CodePoint> points) {
        Map<Standing, Long> counts = points.stream().collect(Collectors.groupingBy(CodePoint::standing, TreeMap::new, Collectors.counting()));
        return counts.isEmpty() ? say("none") : counts.entrySet().stream().map(one -> say("codes.count", one.getValue(), wording.standing(one.getKey())))
                .collect(Collectors.joining(", "));
    }

    private void species(Profile profile) {
        Set<String> kept = Set.of(profile.species().id());
        String asking = codes.stream().filter(code -> code.points().stream().anyMatch(point -> point.isFor(kept)))
                .map(code -> say("codes.asking", code.id(), code.points().stream().filter(point -> point.isFor(kept)).count())).collect(Collectors.joining(", "));
        page.row(Markdown.link(Markdown.cell(profile.species().english()), "species/" + profile.species().id() + ".md"), asking);
    }

    private void readings(Code code) {
        page.title(3, named(code)).header(say("codes.readings.header"));
        code.policies().forEach((policy, text) -> page.row(policy, Markdown.cell(text), otherwise(code, policy)));
    }

    /** At how many points the reading not taken gives numbers of its own. */
    private String otherwise(Code code, String policy) {
        long points = code.points().stream().filter(point -> point.limits().stream().anyMatch(limit -> !limit.chosen() && limit.why().equals(policy))).count();
        return points == 0 ? say("none") : say("codes.otherwise", points);
    }
}
