package org.loamlight.criterion;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Section;
import org.loamlight.setup.Stated;

/** Reads the knowledge file that the build makes of rules/. */
public final class KnowledgeReader {
    /** Where the build puts it on the class path. */
    public static final String RESOURCE = "/org/loamlight/knowledge.json";
    /** Where the build puts its SHA-256: computing it would cost each cold start some 30 ms, most of them for the security providers. */
    public static final String HASH_RESOURCE = "/org/loamlight/knowledge.sha256";

    private KnowledgeReader() {
    }

    /**
     * The knowledge this program was built with. The build has read it whole and found nothing wrong, so its pages, profiles and
     * sources are read when they are asked for.
     *
     * @throws IllegalStateException when it is absent or damaged; an empty model must never audit. What is read later throws the same
     */
    public static Knowledge builtIn() {
        try {
            return onDemand(resource(RESOURCE), new String(resource(HASH_RESOURCE), StandardCharsets.US_ASCII).strip());
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /**
     * Knowledge from a file that {@link #read} found nothing wrong in, its parts read when they are asked for.
     *
     * @param file   as the build arranges it, in lines
     * @param sha256 its sum, which is not computed again
     * @throws IllegalStateException when it is damaged; for a part that is read later, when that is asked for
     */
    public static Knowledge onDemand(byte[] file, String sha256) {
        return new PartialReader(file).knowledge(sha256);
    }

    static IllegalStateException unreadable(Exception e) {
        return new IllegalStateException("The knowledge file " + RESOURCE + " cannot be read: " + e.getMessage(), e);
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
        Problems problems = new Problems("knowledge.json");
        Section document = Section.document(JsonFile.read(bytes, problems), problems, new HashMap<>());
        List<Limit> every = document.unnamed("every-reptile", LimitReader::limit);
        Knowledge knowledge = new Knowledge(version(document), JsonFile.sha256(bytes),
                byId(unique(document, "criteria", CriterionReader::whole, Criterion::id), Criterion::id),
                byId(unique(document, "species", section -> ProfileReader.profile(section, every), KnowledgeReader::id), KnowledgeReader::id),
                byId(unique(document, "sources", KnowledgeReader::source, Source::id), Source::id),
                cautions(document), limitRules(document));
        document.reportUnasked();
        problems.throwIfAny();
        return knowledge;
    }

    static String version(Section document) {
        return document.requiredText("version", "the version of the tool");
    }

    static List<Caution> cautions(Section document) {
        return unique(document, "cautions", KnowledgeReader::caution, Caution::id);
    }

    static List<String> limitRules(Section document) {
        return document.texts("limit-rules");
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

    static Source source(Section source) {
        return new Source(source.requiredText("id", "an id"), source.requiredText("title", "a title"),
                source.requiredText("read", "what of it was read"));
    }

    private static Caution caution(Section caution) {
        return new Caution(caution.requiredText("id", "an id"), caution.requiredText("text", "a text"),
                caution.stated("general") == Stated.YES);
    }
}
