package org.loamlight.build;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodePoint;
import org.loamlight.criterion.CodeReader;
import org.loamlight.criterion.Knowledge;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.ProblemsFound;

/**
 * Writes each code of rules/codes, with the sentences all of them share, into a file of its own, and the list of them. Beside the
 * whole code stands for each species what it asks of that species, so that an audit reads no more than it needs.
 */
final class CodeCompiler {
    private final Path codes;
    private final Knowledge knowledge;

    /** @param codes folder rules/codes */
    CodeCompiler(Path codes, Knowledge knowledge) {
        this.codes = codes;
        this.knowledge = knowledge;
    }

    /** @param target folder of the classes */
    void compile(String target) throws IOException, ProblemsFound {
        Path folder = Path.of(target + CodeReader.FOLDER);
        Files.createDirectories(folder);
        Object shared = KnowledgeCompiler.json(codes.resolve(CodeReader.SHARED + ".json"));
        List<String> list = new ArrayList<>();
        for (Path file : files()) {
            byte[] bytes = compiled(file, shared);
            String id = file.getFileName().toString().replace(".json", "");
            requireUsable(id, CodeReader.read(file.toString(), bytes));
            Files.write(folder.resolve(id + ".json"), bytes);
            for (String species : knowledge.profiles().keySet()) {
                Files.createDirectories(folder.resolve(species));
                Files.write(folder.resolve(species).resolve(id + ".json"), text(cut(document(file, shared), species)));
            }
            list.add(id + " " + JsonFile.sha256(bytes) + "\n");
        }
        Files.writeString(Path.of(target + CodeReader.LIST), String.join("", list), StandardCharsets.UTF_8);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(codes)) {
            return all.filter(path -> path.toString().endsWith(".json") && !path.endsWith(CodeReader.SHARED + ".json")).sorted().toList();
        }
    }

    private static byte[] compiled(Path file, Object shared) throws IOException, ProblemsFound {
        return text(document(file, shared));
    }

    /** The code without what it asks of other species only. */
    private static Map<String, Object> cut(Map<String, Object> document, String species) {
        for (String part : List.of("points", "clauses")) {
            document.computeIfPresent(part, (key, all) -> ((List<?>) all).stream().filter(one -> isFor((Map<?, ?>) one, species)).toList());
        }
        return document;
    }

    /** What names no species is for all. */
    private static boolean isFor(Map<?, ?> part, String species) {
        return !part.containsKey("species") || ((List<?>) part.get("species")).contains(species);
    }

    private static byte[] text(Map<String, Object> document) throws IOException {
        return KnowledgeWriter.text(document).getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, Object> document(Path file, Object shared) throws IOException, ProblemsFound {
        Map<String, Object> document = new LinkedHashMap<>();
        ((Map<?, ?>) KnowledgeCompiler.json(file)).forEach((key, value) -> document.put((String) key, value));
        document.put(CodeReader.SHARED, shared);
        return document;
    }

    /** What a code names must exist in the knowledge. */
    private void requireUsable(String id, Code code) throws ProblemsFound {
        Set<String> unknown = new TreeSet<>();
        if (!code.id().equals(id)) {
            unknown.add("the id " + code.id() + ", which is not the name of its file");
        }
        Stream.concat(Stream.of(code.source()), code.points().stream().map(CodePoint::source)).filter(source -> !knowledge.sources().containsKey(source))
                .forEach(source -> unknown.add("the source " + source));
        Stream.concat(code.points().stream().flatMap(point -> point.beside().stream()), code.clauses().stream().flatMap(clause -> clause.judgedBy().stream()))
                .filter(criterion -> !knowledge.criteria().containsKey(criterion)).forEach(criterion -> unknown.add("the criterion " + criterion));
        Stream.concat(code.points().stream().flatMap(point -> point.species().stream()), code.clauses().stream().flatMap(clause -> clause.species().stream()))
                .filter(species -> !knowledge.profiles().containsKey(species)).forEach(species -> unknown.add("the species " + species));
        if (!unknown.isEmpty()) {
            throw new CriterionPage.Unusable(codes.resolve(id + ".json"), "it names what is not known: " + String.join(", ", unknown));
        }
    }
}
