package org.loamlight.criterion;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Section;
import org.loamlight.setup.Words;

/** Reads house rules. Everything that is wrong is told at once, with its place, and nothing of a file with a problem is used. */
public final class HouseRulesReader {
    private static final int FORMAT = 1;

    private final Knowledge knowledge;
    private final Set<String> seen = new HashSet<>();

    private HouseRulesReader(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * Reads a JSON file.
     *
     * @param file      as the user named it
     * @param knowledge without codes; what the rules name must be in it
     * @throws ProblemsFound with everything that is wrong
     */
    public static HouseRules read(String file, byte[] bytes, Knowledge knowledge) throws ProblemsFound {
        Problems problems = new Problems(file);
        JsonValue document = JsonFile.read(bytes, problems);
        return read(document, problems, JsonFile.sha256(bytes), knowledge);
    }

    /**
     * Reads what was read as JSON or from a spreadsheet.
     *
     * @param problems of the reading so far; further ones are added
     * @throws ProblemsFound with everything that is wrong
     */
    public static HouseRules read(JsonValue document, Problems problems, String sha256, Knowledge knowledge) throws ProblemsFound {
        Section house = Section.document(document, problems, new HashMap<>());
        HouseRules rules = new HouseRulesReader(knowledge).house(house, sha256);
        house.reportUnasked();
        problems.throwIfAny();
        return rules;
    }

    private HouseRules house(Section house, String sha256) {
        house.member("$schema");
        requireFormat(house);
        HouseRules rules = new HouseRules(house.requiredText("title", "say what the house calls its rules"), house.requiredText("issuer", "say who gave them"),
                date(house, "date", "say since when they hold, as 2026-03-14"), sha256, house.unnamed("limits", this::limit), house.unnamed("grades", this::regraded),
                house.unnamed("left-out", this::leftOut), house.unnamed("points", this::point));
        if (rules.limits().isEmpty() && rules.regraded().isEmpty() && rules.left().isEmpty() && rules.points().isEmpty()) {
            house.problem("", "it holds no rule", "write \"limits\", \"grades\", \"left-out\" or \"points\"");
        }
        return rules;
    }

    static void requireFormat(Section document) {
        Optional<Integer> format = document.wholeNumber("format");
        if (format.isEmpty() && document.member("format").isEmpty()) {
            document.lacks("format", "write \"format\": " + FORMAT + " first");
        } else if (format.isPresent() && format.get() != FORMAT) {
            document.problem("format", "found format " + format.get(), "this version reads format " + FORMAT);
        }
    }

    /** A day that must be there; 1970-01-01 after a problem. */
    static LocalDate date(Section at, String key, String allowed) {
        if (!at.isAnswered(key)) {
            at.lacks(key, allowed);
        }
        return at.day(key).orElse(LocalDate.EPOCH);
    }

    private HouseRules.HouseLimit limit(Section limit) {
        String id = criterion(limit);
        Limit made = LimitReader.limit(limit, id, citation(limit));
        Set<String> species = species(limit);
        Criterion criterion = knowledge.criteria().get(id);
        if (criterion != null && Topic.named(limit.text("topic")).isPresent() && !criterion.quantities().contains(made.topic())) {
            limit.problem("topic", "\"" + id + "\" is not about " + made.topic().id(), criterion.quantities().isEmpty() ? "it is judged by its rules and takes no limit"
                    : "it is about " + String.join(", ", criterion.quantities().stream().map(topic -> topic.id()).toList()));
        }
        requireWhy(limit);
        requireOnce(limit, "criterion", String.join(" ", id, made.topic().id(), made.zone().id(), made.scope().toString(), species.toString(),
                made.atLeast().isPresent() + "" + made.atMost().isPresent()));
        return new HouseRules.HouseLimit(made, species);
    }

    private static Citation citation(Section at) {
        return new Citation(HouseRules.SOURCE, at.requiredText("source", "say where the house wrote it down"), Standing.READ);
    }

    private static String requireWhy(Section at) {
        return at.requiredText("why", "give the reason");
    }

    private HouseRules.Regraded regraded(Section one) {
        String id = criterion(one);
        requireOnce(one, "criterion", "grade " + id);
        return new HouseRules.Regraded(id, LimitReader.must(one, "grade", Grade.class, "say one of " + String.join(", ", Words.all(Grade.class))), requireWhy(one));
    }

    private HouseRules.LeftOut leftOut(Section one) {
        String id = criterion(one);
        requireOnce(one, "criterion", "left out " + id);
        return new HouseRules.LeftOut(id, requireWhy(one));
    }

    private HouseRules.HousePoint point(Section point) {
        String id = point.requiredText("id", "a key of small letters, digits and hyphens");
        if (!id.isEmpty() && !id.matches("[a-z0-9-]+")) {
            point.problem("id", "found \"" + id + "\"", "write small letters, digits and hyphens");
        }
        requireOnce(point, "id", "point " + id);
        Limit limit = LimitReader.limit(point, "house." + id, citation(point));
        if (knowledge.criteria().values().stream().noneMatch(one -> one.quantities().contains(limit.topic()))) {
            point.problem("topic", "no point looks at " + limit.topic().id(), "take a topic that some point of \"loamlight criteria\" is about");
        }
        return new HouseRules.HousePoint(id, point.requiredText("title", "say in one line what is asked"),
                LimitReader.must(point, "need", Need.class, "say one of " + String.join(", ", Words.all(Need.class))),
                LimitReader.must(point, "grade", Grade.class, "say one of " + String.join(", ", Words.all(Grade.class))), requireWhy(point),
                point.requiredText("correct", "say how to put it right"), limit, species(point));
    }

    private String criterion(Section at) {
        return criterion(at, knowledge);
    }

    /** The id of a criterion that is known; as written after a problem. */
    static String criterion(Section at, Knowledge knowledge) {
        String id = at.requiredText("criterion", "name the point, as \"loamlight criteria\" lists it");
        if (!id.isEmpty() && !knowledge.criteria().containsKey(id)) {
            at.problem("criterion", "the point \"" + id + "\" is not known", Words.hint(id, knowledge.criteria().keySet()) + "\"loamlight criteria\" lists all");
        }
        return id;
    }

    private Set<String> species(Section at) {
        Set<String> species = Set.copyOf(at.texts("species"));
        species.stream().filter(id -> !knowledge.profiles().containsKey(id)).forEach(id -> at.problem("species", "the species \"" + id + "\" is not known",
                Words.hint(id, knowledge.profiles().keySet()) + "\"loamlight species\" lists all"));
        return species;
    }

    private void requireOnce(Section at, String key, String what) {
        if (!seen.add(what)) {
            at.problem(key, "the same is said twice", "keep one of the two");
        }
    }
}
