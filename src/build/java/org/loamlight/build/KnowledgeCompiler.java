package org.loamlight.build;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
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

    private final Path rules;

    private KnowledgeCompiler(Path rules) {
        this.rules = rules;
    }

    /** @param arguments project folder, output folder of the classes, version of the project */
    public static void main(String[] arguments) throws IOException {
        Path target = Path.of(arguments[1] + KnowledgeReader.RESOURCE);
        try {
            byte[] knowledge = new KnowledgeCompiler(Path.of(arguments[0], "rules")).compile(arguments[2]);
            Knowledge read = KnowledgeReader.read(knowledge);
            Files.createDirectories(target.getParent());
            Files.write(target, knowledge);
            Files.writeString(Path.of(arguments[1] + KnowledgeReader.HASH_RESOURCE), read.sha256());
            new CodeCompiler(Path.of(arguments[0], "rules", "codes"), read).compile(arguments[1]);
        } catch (ProblemsFound | CriterionPage.Unusable e) {
            System.err.println("The knowledge in rules/ cannot be used:\n" + e.getMessage());
            System.exit(1);
        }
    }

    private byte[] compile(String version) throws IOException, ProblemsFound {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("version", version);
        document.put("criteria", criteria());
        document.put(EVERY_REPTILE, every());
        document.put("species", profiles());
        document.put("sources", json(rules.resolve("sources.json")));
        document.put("cautions", json(rules.resolve("cautions.json")));
        document.put("limit-rules", CriterionPage.ruleNames(rules.resolve("limits.drl")));
        return written(document);
    }

    private List<Object> criteria() throws IOException {
        List<Object> criteria = new ArrayList<>();
        for (Path page : files(rules.resolve("criteria"), "criterion.md")) {
            criteria.add(CriterionPage.read(page));
        }
        return criteria;
    }

    private List<Object> profiles() throws IOException, ProblemsFound {
        List<Object> profiles = new ArrayList<>();
        for (Path file : files(rules.resolve("species"), ".json")) {
            if (!file.endsWith(EVERY_REPTILE + ".json")) {
                profiles.add(json(file));
            }
        }
        return profiles;
    }

    private Object every() throws IOException, ProblemsFound {
        return ((Map<?, ?>) json(rules.resolve("species").resolve(EVERY_REPTILE + ".json"))).get("limits");
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

    static byte[] written(Object document) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            write(document, json);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void write(Object value, JsonGenerator json) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> member : map.entrySet()) {
                json.writeFieldName(String.valueOf(member.getKey()));
                write(member.getValue(), json);
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object element : list) {
                write(element, json);
            }
            json.writeEndArray();
        } else if (value instanceof JsonValue.JsonNumber number) {
            json.writeNumber(number.literal());
        } else if (value instanceof JsonValue.JsonWord word) {
            json.writeRawValue(word.word());
        } else {
            json.writeString(String.valueOf(value));
        }
    }
}
