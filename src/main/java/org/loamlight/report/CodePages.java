package org.loamlight.report;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeClause;
import org.loamlight.criterion.CodePoint;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.Source;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Words;
import org.loamlight.wording.CodeWording;
import org.loamlight.wording.Wording;

/** Pages of text, at most 80 columns, that say what codes ask, as they are written and before they are held against anything. */
public final class CodePages {
    /** What the ids of codes and of everything in them begin with. */
    private static final String CODE = "code.";
    private static final int INDENT = 2;
    private static final int MOST_HINTS = 3;

    private final Knowledge knowledge;
    private final Wording wording;
    private final CodeWording words;

    public CodePages(Knowledge knowledge, Wording wording) {
        this.knowledge = knowledge;
        this.wording = wording;
        this.words = new CodeWording(wording);
    }

    /** Whether a name means a code or something in it: "code.at-2thvo", "code.at-2thvo.2-2-24". */
    public static boolean isMeant(String name) {
        return name.startsWith(CODE);
    }

    /** The id of the code in such a name: "at-2thvo". */
    public static String code(String name) {
        return name.substring(CODE.length()).split("\\.", 2)[0];
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("page." + key, arguments);
    }

    /** Every code: who gave it and when, how far it binds, how much of it was read. */
    public String list(List<Code> codes) {
        Lines lines = new Lines();
        lines.paragraph(0, wording.sentence("list.codes", codes.size())).rule('=').paragraph(0, words.whatDecides());
        codes.forEach(code -> {
            lines.gap().hanging(code.id() + "  ", code.title());
            about(lines, code);
            lines.labelled(INDENT, say("code.holds"), say("code.counts", code.points().size(), code.clauses().size()));
        });
        return lines.toString();
    }

    private void about(Lines lines, Code code) {
        lines.labelled(INDENT, say("code.name"), code.name());
        lines.labelled(INDENT, say("code.issued"), words.issued(code));
        lines.labelled(INDENT, say("code.binding"), words.binding(code.binding()));
        lines.labelled(INDENT, say("code.read"), code.read());
    }

    /** What to say of a code that is not there, with those that are like it. */
    public String unknown(String name, List<String> ids) {
        return say("unknown-code", name) + " " + near(name, ids.stream().map(CODE::concat).toList());
    }

    private String near(String name, List<String> known) {
        List<String> near = Words.nearest(name, known, MOST_HINTS);
        return near.isEmpty() ? say("unknown.codes") : say("unknown.near", String.join(", ", near));
    }

    /**
     * The page of a code, or of everything in it under one clause.
     *
     * @param name    "code.at-2thvo" for all of it; "code.at-2thvo.2-2-24" for what stands in that clause, "code.at-2thvo.2-2-24-floor"
     *                for that point
     * @param code    the code the name means
     * @param species id of the species to leave out what is for others only; empty for everything
     * @throws NoSuchElementException saying what is known, when nothing in the code is called so or is for the species
     */
    public String of(String name, Code code, Optional<String> species) {
        Predicate<String> named = named(name, code);
        List<CodePoint> points = code.points().stream().filter(point -> named.test(point.id()) && isFor(point.species(), species)).toList();
        List<CodeClause> clauses = code.clauses().stream().filter(clause -> named.test(clause.id()) && isFor(clause.species(), species)).toList();
        if (points.isEmpty() && clauses.isEmpty() && (species.isPresent() || !isWhole(name, code))) {
            throw new NoSuchElementException(say(species.isPresent() ? "unknown-part.species" : "unknown-part", name) + " " + near(name, alike(name, code)));
        }
        return page(code, points, clauses);
    }

    private static boolean isWhole(String name, Code code) {
        return name.equals(CODE + code.id());
    }

    /** A whole id, or the beginning of one up to a hyphen. */
    private static Predicate<String> named(String name, Code code) {
        return id -> isWhole(name, code) || code.criterion(id).equals(name) || code.criterion(id).startsWith(name + "-");
    }

    private static boolean isFor(Set<String> ids, Optional<String> species) {
        return ids.isEmpty() || species.map(ids::contains).orElse(true);
    }

    private static List<String> ids(Code code) {
        return Stream.concat(code.points().stream().map(CodePoint::id), code.clauses().stream().map(CodeClause::id)).map(code::criterion).toList();
    }

    /** Clauses are counted from the left: those that begin alike are likelier meant than those with few letters changed. */
    private static List<String> alike(String name, Code code) {
        List<String> all = ids(code);
        int longest = all.stream().mapToInt(id -> alike(name, id)).max().orElse(0);
        return longest > code.criterion("").length() ? all.stream().filter(id -> alike(name, id) == longest).toList() : all;
    }

    private static int alike(String one, String other) {
        int same = 0;
        while (same < Math.min(one.length(), other.length()) && one.charAt(same) == other.charAt(same)) {
            same++;
        }
        return same;
    }

    private String page(Code code, List<CodePoint> points, List<CodeClause> clauses) {
        Lines lines = new Lines();
        lines.hanging(CODE + code.id() + "  ", code.title()).rule('=');
        about(lines, code);
        lines.labelled(INDENT, say("code.sha256"), code.sha256());
        lines.gap().paragraph(0, words.whatDecides());
        if (!points.isEmpty()) {
            lines.heading(say("code.figures"));
        }
        points.forEach(point -> point(lines, code, point));
        if (!clauses.isEmpty()) {
            lines.heading(say("code.words"));
        }
        clauses.forEach(clause -> clause(lines, code, clause));
        source(lines, code);
        return lines.toString();
    }

    private void point(Lines lines, Code code, CodePoint point) {
        lines.gap().hanging("* ", say("code.part", code.criterion(point.id()), point.asks()));
        lines.labelled(INDENT, say("code.clause"), words.passage(new Citation(code.source(), point.clause(), point.standing())));
        lines.labelled(INDENT, say("code.for"), species(point.species()));
        lines.labelled(INDENT, say("code.housing"), purposes(point.purposes()));
        lines.labelled(INDENT, say("grade"), wording.grade(point.grade()));
        lines.labelled(INDENT, say("judged"), wording.sentence("judged." + Words.of(point.decision())));
        lines.labelled(INDENT, say("code.beside"), point.beside().orElse(""));
        point.limits().stream().filter(Limit::chosen).forEach(limit -> lines.labelled(INDENT, say("code.limit"), wording.limit(limit)));
        point.limits().stream().filter(limit -> !limit.chosen()).forEach(limit -> {
            lines.labelled(INDENT, say("code.otherwise"), wording.limit(limit));
            lines.labelled(INDENT, say("code.policy"), say("because", limit.why(), code.policies().get(limit.why())));
        });
    }

    private void clause(Lines lines, Code code, CodeClause clause) {
        lines.gap().hanging("* ", say("code.part", code.criterion(clause.id()), clause.says()));
        lines.labelled(INDENT, say("code.clause"), words.passage(new Citation(code.source(), clause.clause(), clause.standing())));
        lines.labelled(INDENT, say("code.for"), species(clause.species()));
        lines.labelled(INDENT, say("judged"), clause.judgedBy().isEmpty() ? say("code.not-judged") : String.join(", ", clause.judgedBy()));
    }

    private String species(Set<String> ids) {
        return ids.isEmpty() || ids.size() == knowledge.profiles().size() ? say("code.every-species")
                : ids.stream().sorted().map(id -> knowledge.profile(id).species().english()).collect(Collectors.joining(", "));
    }

    private static String purposes(Set<Purpose> purposes) {
        return purposes.size() == Purpose.values().length ? "" : purposes.stream().sorted().map(Words::of).collect(Collectors.joining(", "));
    }

    private void source(Lines lines, Code code) {
        Source source = knowledge.source(code.source());
        lines.heading(say("sources")).hanging("* ", source.title()).paragraph(INDENT, say("read", source.read()));
    }
}
