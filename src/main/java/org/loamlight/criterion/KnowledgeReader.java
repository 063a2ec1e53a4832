package org.loamlight.criterion;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.Problems;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Section;
import org.loamlight.setup.Stated;
import org.loamlight.setup.SubjectKind;
import org.loamlight.setup.SubstrateKind;
import org.loamlight.setup.Words;

/** Reads the knowledge file that the build makes of rules/. */
public final class KnowledgeReader {
    /** Where the build puts it on the class path. */
    public static final String RESOURCE = "/org/loamlight/knowledge.json";
    /** Where the build puts its SHA-256: computing it would cost each cold start some 30 ms, most of them for the security providers. */
    public static final String HASH_RESOURCE = "/org/loamlight/knowledge.sha256";

    private KnowledgeReader() {
    }

    /**
     * The knowledge this program was built with.
     *
     * @throws IllegalStateException when it is absent or damaged; an empty model must never audit
     */
    public static Knowledge builtIn() {
        try {
            return read(resource(RESOURCE), new String(resource(HASH_RESOURCE), StandardCharsets.US_ASCII).strip());
        } catch (IOException | ProblemsFound e) {
            throw new IllegalStateException("The knowledge file " + RESOURCE + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream file = KnowledgeReader.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException("The file " + name + " is not in the program; build it with mvn package");
            }
            return file.readAllBytes();
        }
    }

    /**
     * Reads a knowledge file.
     *
     * @throws ProblemsFound with everything that is wrong in it
     */
    public static Knowledge read(byte[] bytes) throws ProblemsFound {
        return read(bytes, JsonFile.sha256(bytes));
    }

    private static Knowledge read(byte[] bytes, String sha256) throws ProblemsFound {
        Problems problems = new Problems("knowledge.json");
        Section document = Section.document(JsonFile.read(bytes, problems), problems, new HashMap<>());
        List<Limit> every = document.unnamed("every-reptile", LimitReader::limit);
        Knowledge knowledge = new Knowledge(document.requiredText("version", "the version of the tool"), sha256,
                byId(unique(document, "criteria", KnowledgeReader::criterion, Criterion::id), Criterion::id),
                byId(unique(document, "species", section -> profile(section, every), KnowledgeReader::id), KnowledgeReader::id),
                byId(unique(document, "sources", KnowledgeReader::source, Source::id), Source::id),
                unique(document, "cautions", KnowledgeReader::caution, Caution::id), document.texts("limit-rules"));
        document.reportUnasked();
        problems.throwIfAny();
        return knowledge;
    }

    private static String id(Profile profile) {
        return profile.species().id();
    }

    private static <T> List<T> unique(Section document, String key, Function<Section, T> reader, Function<T, String> id) {
        Set<String> seen = new HashSet<>();
        return document.unnamed(key, section -> {
            T one = reader.apply(section);
            if (!id.apply(one).isEmpty() && !seen.add(id.apply(one))) {
                section.problem("id", "the id \"" + id.apply(one) + "\" is given twice", "give each an id of its own");
            }
            return one;
        });
    }

    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> sorted = new TreeMap<>();
        all.forEach(one -> sorted.put(id.apply(one), one));
        return sorted;
    }

    private static Source source(Section source) {
        return new Source(source.requiredText("id", "an id"), source.requiredText("title", "a title"),
                source.requiredText("read", "what of it was read"));
    }

    private static Caution caution(Section caution) {
        return new Caution(caution.requiredText("id", "an id"), caution.requiredText("text", "a text"),
                caution.stated("general") == Stated.YES);
    }

    private static Criterion criterion(Section criterion) {
        return new Criterion(dotted(criterion), criterion.requiredText("title", "a title"),
                must(criterion, "need", Need.class), must(criterion, "grade", Grade.class), grades(criterion),
                must(criterion, "subject", SubjectKind.class), List.copyOf(criterion.choices("applies-when", Condition.class)),
                purposes(criterion), criterion.texts("needs"), criterion.texts("reads"), topics(criterion),
                criterion.stated("held-by-rule") == Stated.YES, criterion.stated("informs") == Stated.YES,
                criterion.choice("decision", DecisionRule.class, DecisionRule.SIMPLE),
                criterion.unnamed("sources", LimitReader::citation), criterion.texts("cautions"),
                criterion.requiredText("since", "the version it came with"), criterion.section("page", KnowledgeReader::page),
                criterion.texts("rules"));
    }

    private static String dotted(Section criterion) {
        String id = criterion.requiredText("id", "an id");
        if (!id.isEmpty() && !id.matches("[a-z-]+\\.[a-z-]+")) {
            criterion.problem("id", "found \"" + id + "\"", "an id is a topic, a dot and a name in small letters: \"heat.guard\"");
        }
        return id;
    }

    private static <E extends Enum<E>> E must(Section section, String key, Class<E> type) {
        return LimitReader.must(section, key, type, "say one of " + String.join(", ", Words.all(type)));
    }

    private static Map<String, Grade> grades(Section criterion) {
        return criterion.section("grades", section -> {
            Map<String, Grade> grades = new LinkedHashMap<>();
            section.keys().forEach(variant -> grades.put(variant, must(section, variant, Grade.class)));
            return grades;
        });
    }

    private static Set<Purpose> purposes(Section criterion) {
        Set<Purpose> named = criterion.choices("purposes", Purpose.class);
        return named.isEmpty() ? EnumSet.allOf(Purpose.class) : named;
    }

    private static List<Topic> topics(Section criterion) {
        return criterion.texts("topics").stream().flatMap(id -> topic(criterion, id)).toList();
    }

    private static Stream<Topic> topic(Section criterion, String id) {
        Optional<Topic> topic = Topic.named(id);
        if (topic.isEmpty()) {
            criterion.problem("topics", "the topic \"" + id + "\" is not known", "see Topic for those that are");
        }
        return topic.stream();
    }

    static Page page(Section page) {
        return new Page(page.prose("requirement"), page.prose("why"), page.prose("measure"), page.textsByKey("correct"),
                page.prose("exceptions"), page.textsByKey("found"));
    }

    private static Profile profile(Section profile, List<Limit> every) {
        Map<String, Citation> habits = new LinkedHashMap<>();
        profile.member("format");
        String id = profile.requiredText("id", "the scientific name in lower case with a hyphen");
        String english = profile.requiredText("english", "the common name");
        String latin = profile.requiredText("latin", "the scientific name");
        if (profile.member("habits").isEmpty()) {
            profile.lacks("habits", "say how it lives, each with its source");
        }
        Species species = profile.section("habits", section -> new Species(id, english, latin,
                habit(section, "form", Form.class, habits), habit(section, "lives", Lives.class, habits),
                habit(section, "active", Active.class, habits), habit(section, "digs", Stated.class, habits),
                habit(section, "climbs", Stated.class, habits), habit(section, "basks", Stated.class, habits),
                habit(section, "uv", UvUse.class, habits), habit(section, "drinks", Drinks.class, habits),
                habit(section, "soaks", Stated.class, habits), habit(section, "eats", Eats.class, habits),
                habit(section, "company", Company.class, habits), habit(section, "eats-snakes", Stated.class, habits),
                habit(section, "lays-eggs", Stated.class, habits), habit(section, "rests-in-winter", Stated.class, habits),
                habit(section, "dangerous", Stated.class, habits), habit(section, "restricted", Stated.class, habits),
                habit(section, "specialist", Stated.class, habits), adultLength(section, habits),
                ground(section, "harmful-ground", habits), ground(section, "unsuited-ground", habits)));
        List<Limit> own = profile.unnamed("limits", LimitReader::limit);
        return new Profile(species, profile.texts("also"), profile.text("note"), habits, withShared(own, every),
                profile.unnamed("not-meant", one -> new NotMeant(one.requiredText("criterion", "a criterion"),
                        one.requiredText("reason", "a reason"))));
    }

    private static <E extends Enum<E>> E habit(Section habits, String key, Class<E> type, Map<String, Citation> cited) {
        if (habits.member(key).isEmpty()) {
            habits.lacks(key, "say {\"is\": ..., \"source\": ..., \"standing\": ...}");
        }
        return habits.section(key, habit -> {
            cited.put(key, LimitReader.citation(habit));
            return Optional.ofNullable(must(habit, "is", type));
        }).orElse(null);
    }

    /** Kinds of substrate; none where the profile says nothing of them. */
    private static Set<SubstrateKind> ground(Section habits, String key, Map<String, Citation> cited) {
        if (habits.member(key).isEmpty()) {
            return Set.of();
        }
        return habits.section(key, habit -> {
            cited.put(key, LimitReader.citation(habit));
            return habit.choices("is", SubstrateKind.class);
        });
    }

    /** A length as a limit writes one; unknown after a problem. */
    private static Measure adultLength(Section habits, Map<String, Citation> cited) {
        String key = "adult-length";
        if (habits.member(key).isEmpty()) {
            habits.lacks(key, "say {\"is\": \"120 cm\", \"source\": ..., \"standing\": ...}");
        }
        return habits.section(key, habit -> {
            cited.put(key, LimitReader.citation(habit));
            return LimitReader.constant(habit, "is", Unit.CENTIMETRE)
                    .map(one -> new Measure(one.unit().convert(one.value(), Unit.CENTIMETRE), 0, Unit.CENTIMETRE)).orElse(Measure.UNKNOWN);
        });
    }

    /** The limits for every reptile hold where the species has no chosen limit of its own for the same topic of that criterion. */
    private static List<Limit> withShared(List<Limit> own, List<Limit> every) {
        Stream<Limit> shared = every.stream().filter(limit -> own.stream()
                .noneMatch(mine -> mine.chosen() && mine.criterion().equals(limit.criterion()) && mine.topic() == limit.topic()));
        return Stream.concat(own.stream(), shared).toList();
    }
}
