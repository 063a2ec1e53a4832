package org.loamlight.criterion;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Section;

/**
 * Reads a knowledge file that was checked whole when it was built, as far as it is asked for: the front matter of the criteria and
 * the names of the species at once; a page, a profile and the sources when somebody wants them. Damage is told then.
 */
final class PartialReader {
    private final KnowledgeLines lines;
    private final Once<List<Limit>> every = Once.by(this::every);

    PartialReader(byte[] file) {
        this.lines = new KnowledgeLines(file);
    }

    /** @throws IllegalStateException when what every audit needs is damaged; the maps throw it for what is read later */
    Knowledge knowledge(String sha256) {
        Map<String, Criterion> criteria = criteria();
        Map<String, List<String>> names = new TreeMap<>();
        Map<String, Once<Profile>> profiles = profiles(names);
        return part("the head", lines.head(), head -> new Knowledge(KnowledgeReader.version(head), sha256, criteria,
                new OnDemand<>(Once.of(profiles)), new OnDemand<>(Once.by(this::sources)), KnowledgeReader.cautions(head),
                KnowledgeReader.limitRules(head), Collections.unmodifiableMap(names), List.of(), Optional.empty()));
    }

    private Map<String, Criterion> criteria() {
        AtomicInteger next = new AtomicInteger();
        List<Criterion> all = part("the criteria", lines.criteria(),
                document -> document.unnamed("criteria", front -> criterion(front, next.getAndIncrement())));
        Map<String, Criterion> byId = new TreeMap<>();
        all.forEach(one -> byId.put(one.id(), one));
        return Collections.unmodifiableMap(byId);
    }

    private Criterion criterion(Section front, int number) {
        String id = front.text("id");
        return CriterionReader.front(front, Page.onDemand(() -> page(id, number)));
    }

    private Page page(String id, int number) {
        return part("the page of " + id, lines.page(number), document -> document.section("page", CriterionReader::page));
    }

    /** @param names takes up what each species is called */
    private Map<String, Once<Profile>> profiles(Map<String, List<String>> names) {
        List<String> ids = part("the names of the species", lines.species(),
                document -> document.unnamed("species", species -> called(species, names)));
        Map<String, Once<Profile>> profiles = new TreeMap<>();
        for (int at = 0; at < ids.size(); at++) {
            int number = at;
            profiles.put(ids.get(number), Once.by(() -> profile(ids.get(number), number)));
        }
        return profiles;
    }

    private static String called(Section species, Map<String, List<String>> names) {
        species.member("format");
        String id = species.text("id");
        names.put(id, Profile.names(species.text("english"), species.text("latin"), species.texts("also")));
        return id;
    }

    private Profile profile(String id, int number) {
        return part("the profile of " + id, lines.profile(number), profile -> ProfileReader.profile(profile, every.get()));
    }

    private List<Limit> every() {
        return part("the limits for every reptile", lines.every(), document -> document.unnamed("every-reptile", LimitReader::limit));
    }

    private Map<String, Once<Source>> sources() {
        Map<String, Once<Source>> sources = new TreeMap<>();
        part("the sources", lines.sources(), document -> document.unnamed("sources", KnowledgeReader::source))
                .forEach(source -> sources.put(source.id(), Once.of(source)));
        return sources;
    }

    private static <T> T part(String name, byte[] text, Function<Section, T> reader) {
        try {
            Problems problems = new Problems(name);
            Section section = Section.document(JsonFile.read(text, problems), problems, new HashMap<>());
            T read = reader.apply(section);
            section.reportUnasked();
            problems.throwIfAny();
            return read;
        } catch (ProblemsFound e) {
            throw KnowledgeReader.unreadable(e);
        }
    }
}
