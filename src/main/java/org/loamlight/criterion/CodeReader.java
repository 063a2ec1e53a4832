package org.loamlight.criterion;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Section;
import org.loamlight.setup.Words;

/** Reads the codes that the build makes of rules/codes, each from a file of its own when it is chosen. */
public final class CodeReader {
    /** Folder of the built codes on the class path. */
    public static final String FOLDER = "/org/loamlight/codes/";
    /** List of the built codes: for each a line of its id, a space and its SHA-256. */
    public static final String LIST = FOLDER + "list";
    /** File in rules/codes with the sentences all codes share. */
    public static final String SHARED = "every-code";

    private CodeReader() {
    }

    /** Ids of all built codes in their order. */
    public static List<String> ids() {
        return List.copyOf(list().keySet());
    }

    /**
     * Built codes in the order asked for, each once.
     *
     * @throws NoSuchElementException saying which are known, when one is not
     * @throws IllegalStateException  when a file is absent or damaged
     */
    public static List<Code> builtIn(List<String> ids) {
        return builtIn(ids, "");
    }

    /**
     * The same codes with what they ask of some species at least; for a single species nothing else is read.
     *
     * @param species ids of species that are known
     * @throws NoSuchElementException saying which are known, when one is not
     * @throws IllegalStateException  when a file is absent or damaged
     */
    public static List<Code> builtIn(List<String> ids, Set<String> species) {
        return builtIn(ids, species.size() == 1 ? species.iterator().next() + "/" : "");
    }

    /** @param part folder of the codes cut to one species; empty for the whole codes */
    private static List<Code> builtIn(List<String> ids, String part) {
        Map<String, String> known = list();
        List<String> unknown = ids.stream().filter(id -> !known.containsKey(id)).distinct().toList();
        if (!unknown.isEmpty()) {
            throw new NoSuchElementException("The code " + unknown.stream().map(id -> "\"" + id + "\"").collect(Collectors.joining(", ")) + " is not known; "
                    + Words.hint(unknown.get(0), known.keySet()) + "Known are " + String.join(", ", known.keySet()));
        }
        return ids.stream().distinct().map(id -> builtIn(part + id, known.get(id))).toList();
    }

    private static Code builtIn(String id, String sha256) {
        try {
            return read(id + ".json", resource(FOLDER + id + ".json"), sha256);
        } catch (ProblemsFound e) {
            throw new IllegalStateException("The code " + id + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static Map<String, String> list() {
        return new String(resource(LIST), StandardCharsets.UTF_8).lines().map(line -> line.split(" "))
                .collect(Collectors.toMap(parts -> parts[0], parts -> parts[1], (one, other) -> one, LinkedHashMap::new));
    }

    private static byte[] resource(String name) {
        try (InputStream file = CodeReader.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException("The file " + name + " is not in the program; build it with mvn package");
            }
            return file.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("The file " + name + " cannot be read: " + e.getMessage(), e);
        }
    }

    /**
     * Reads the file of one code.
     *
     * @param name what to call the file in problems
     * @throws ProblemsFound with everything that is wrong in it
     */
    public static Code read(String name, byte[] bytes) throws ProblemsFound {
        return read(name, bytes, JsonFile.sha256(bytes));
    }

    private static Code read(String name, byte[] bytes, String sha256) throws ProblemsFound {
        Problems problems = new Problems(name);
        Section document = Section.document(JsonFile.read(bytes, problems), problems, new HashMap<>());
        document.member("format");
        String source = document.requiredText("source", "cite a source of sources.json");
        Map<String, String> policies = document.textsByKey("policies");
        Set<String> ids = new HashSet<>();
        Code code = new Code(document.requiredText("id", "an id"), document.requiredText("name", "a short name"),
                document.requiredText("title", "its full title"), document.requiredText("issuer", "who gave it"),
                document.requiredText("date", "when it was given"), must(document, "binding", Binding.class), source,
                document.requiredText("read", "how much of it was read"), policies,
                document.unnamed("points", point -> point(point, source, policies, ids)), document.unnamed("clauses", clause -> clause(clause, ids)),
                document.section(SHARED, CriterionReader::page), sha256);
        document.reportUnasked();
        problems.throwIfAny();
        return code;
    }

    private static <E extends Enum<E>> E must(Section section, String key, Class<E> type) {
        return LimitReader.must(section, key, type, "say one of " + String.join(", ", Words.all(type)));
    }

    private static CodePoint point(Section point, String source, Map<String, String> policies, Set<String> ids) {
        String id = id(point, ids);
        String clause = point.requiredText("clause", "where it stands");
        Standing standing = must(point, "standing", Standing.class);
        String own = point.isAnswered("source") ? point.text("source") : source;
        Citation citation = new Citation(own, clause, standing);
        Set<Purpose> purposes = point.choices("purposes", Purpose.class);
        Optional<String> beside = Optional.of(point.text("beside")).filter(text -> !text.isEmpty());
        List<String> reads = point.texts("reads");
        if (beside.isEmpty() && reads.isEmpty()) {
            point.lacks("reads", "name the criterion that looks at the same under \"beside\", or the questions it reads");
        }
        List<Limit> limits = new ArrayList<>(point.unnamed("limits", limit -> LimitReader.limit(limit, id, citation)));
        limits.addAll(point.unnamed("other-readings", limit -> other(limit, id, citation, policies)));
        return new CodePoint(id, clause, point.requiredText("asks", "what it is about"), beside, reads, species(point),
                purposes.isEmpty() ? EnumSet.allOf(Purpose.class) : purposes, grade(point, standing),
                point.choice("decision", DecisionRule.class, DecisionRule.SIMPLE), standing, own, limits);
    }

    /** What was not read in its own text never weighs more than a shortfall. */
    private static Grade grade(Section point, Standing standing) {
        Grade grade = must(point, "grade", Grade.class);
        if (standing != Standing.READ && grade != null && grade.compareTo(Grade.MINOR) < 0) {
            point.problem("grade", "found \"" + Words.of(grade) + "\" for what was not read in its own text", "write \"minor\" or \"improvement\"");
        }
        return grade;
    }

    private static Limit other(Section limit, String criterion, Citation citation, Map<String, String> policies) {
        String policy = limit.requiredText("policy", "name the policy that decides between the readings");
        if (!policy.isEmpty() && !policies.containsKey(policy)) {
            limit.problem("policy", "the policy \"" + policy + "\" is not told", "write it under \"policies\"");
        }
        Limit read = LimitReader.limit(limit, criterion, citation);
        return new Limit(read.criterion(), read.topic(), read.zone(), read.where(), read.atLeast(), read.atMost(), read.scope(), read.increment(),
                read.cap(), read.grade(), read.citation(), false, policy);
    }

    private static Set<String> species(Section section) {
        Set<String> species = Set.copyOf(section.texts("species"));
        if (species.isEmpty()) {
            section.lacks("species", "name the species it is for");
        }
        return species;
    }

    private static String id(Section section, Set<String> ids) {
        String id = section.requiredText("id", "an id");
        if (!id.isEmpty() && !id.matches("[a-z0-9-]+")) {
            section.problem("id", "found \"" + id + "\"", "write small letters, digits and hyphens: \"2-2-24-floor\"");
        } else if (!id.isEmpty() && !ids.add(id)) {
            section.problem("id", "the id \"" + id + "\" is given twice", "give each an id of its own");
        }
        return id;
    }

    private static CodeClause clause(Section clause, Set<String> ids) {
        return new CodeClause(id(clause, ids), clause.requiredText("clause", "where it stands"), clause.requiredText("says", "what it asks"),
                Set.copyOf(clause.texts("species")), clause.texts("judged-by"), must(clause, "standing", Standing.class));
    }
}
