package org.loamlight.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;

/**
 * Joins rules/ into the one knowledge file that the program, its pages and its tests read. YAML is read here and nowhere
 * else. The build ends with every problem when the result cannot be read back.
 */
public final class KnowledgeCompiler {
    private static final String EVERY_REPTILE = "every-reptile";
    /** What of a profile is read only when somebody wants it. */
    private static final List<String> BEHIND_NAMES = List.of("note", "habits", "limits", "not-meant");

    private final Path rules;

    private KnowledgeCompiler(Path rules) {
        this.rules = rules;
    }

    /** @param arguments project folder, output folder of the classes, version of the project */
    public static void main(String[] arguments) throws IOException {
        Path target = Path.of(arguments[1] + KnowledgeReader.RESOURCE);
        try {
            byte[] knowledge = new KnowledgeCompiler(Path.of(arguments[0], "rules")).compile(arguments[2]);
            Knowledge read = read(knowledge, Path.of(arguments[0]));
            Files.createDirectories(target.getParent());
            Files.write(target, knowledge);
            Files.writeString(Path.of(arguments[1] + KnowledgeReader.HASH_RESOURCE), read.sha256());
            new CodeCompiler(Path.of(arguments[0], "rules", "codes"), read).compile(arguments[1]);
        } catch (ProblemsFound | CriterionPage.Unusable e) {
            System.err.println("The knowledge in rules/ cannot be used:\n" + e.getMessage());
            System.exit(1);
        }
    }

    private static Knowledge read(byte[] knowledge, Path project) throws IOException, ProblemsFound {
        try {
            return checked(knowledge);
        } catch (ProblemsFound joined) {
            throw origins(project).leadBack(joined);
        }
    }

    private static Origins origins(Path project) throws IOException {
        Path rules = project.resolve("rules");
        Origins origins = new Origins(project);
        origins.each("criteria", pages(rules));
        origins.each("species", profiles(rules));
        origins.whole(EVERY_REPTILE, everyReptile(rules), "limits");
        origins.whole("sources", rules.resolve("sources.json"), "");
        origins.whole("cautions", rules.resolve("cautions.json"), "");
        return origins;
    }

    /** Reads it whole, which tells every problem, and in parts, which must come to the same. */
    private static Knowledge checked(byte[] file) throws ProblemsFound {
        Knowledge whole = KnowledgeReader.read(file);
        if (!whole.equals(KnowledgeReader.onDemand(file, whole.sha256()))) {
            throw new IllegalStateException("The knowledge read in parts is not the knowledge read whole");
        }
        return whole;
    }

    private byte[] compile(String version) throws IOException, ProblemsFound {
        Map<String, Object> head = new LinkedHashMap<>();
        head.put("version", version);
        head.put("limit-rules", CriterionPage.ruleNames(rules.resolve("limits.drl")));
        head.put("cautions", json(rules.resolve("cautions.json")));
        return new KnowledgeWriter(head).list("criteria", criteria(), List.of("page"))
                .value(EVERY_REPTILE, every()).list("species", profiles(), BEHIND_NAMES)
                .value("sources", json(rules.resolve("sources.json"))).file();
    }

    private List<Map<String, Object>> criteria() throws IOException {
        List<Map<String, Object>> criteria = new ArrayList<>();
        for (Path page : pages(rules)) {
            criteria.add(CriterionPage.read(page));
        }
        return criteria;
    }

    private static List<Path> pages(Path rules) throws IOException {
        return files(rules.resolve("criteria"), "criterion.md");
    }

    private List<Map<?, ?>> profiles() throws IOException, ProblemsFound {
        List<Map<?, ?>> profiles = new ArrayList<>();
        for (Path file : profiles(rules)) {
            profiles.add((Map<?, ?>) json(file));
        }
        return profiles;
    }

    private static List<Path> profiles(Path rules) throws IOException {
        return files(rules.resolve("species"), ".json").stream().filter(file -> !file.equals(everyReptile(rules))).toList();
    }

    private static Path everyReptile(Path rules) {
        return rules.resolve("species").resolve(EVERY_REPTILE + ".json");
    }

    private Object every() throws IOException, ProblemsFound {
        return ((Map<?, ?>) json(everyReptile(rules))).get("limits");
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.toString().endsWith(ending)).sorted().toList();
        }
    }

    static Object json(Path file) throws IOException, ProblemsFound {
        Problems problems = new Problems(file.toString());
        Object plain = plain(JsonFile.read(Files.readAllBytes(file), problems));
        problems.throwIfAny();
        return plain;
    }

    private static Object plain(JsonValue value) {
        if (value instanceof JsonValue.JsonObject object) {
            Map<String, Object> members = new LinkedHashMap<>();
            object.members().forEach((key, member) -> members.put(key, plain(member)));
            return members;
        }
        if (value instanceof JsonValue.JsonArray array) {
            return array.elements().stream().map(KnowledgeCompiler::plain).toList();
        }
        return value instanceof JsonValue.JsonText text ? text.text() : value;
    }
}
