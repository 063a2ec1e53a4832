package org.loamlight.report;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.Criterion;
import org.loamlight.criterion.Form;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.Limit;
import org.loamlight.criterion.NotMeant;
import org.loamlight.criterion.Page;
import org.loamlight.criterion.Profile;
import org.loamlight.criterion.Species;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Stated;
import org.loamlight.setup.SubstrateKind;
import org.loamlight.setup.Words;
import org.loamlight.wording.Wording;

/** Pages of text, at most 80 columns, that say what is asked and where it comes from. */
public final class Explanation {
    private static final int INDENT = 2;
    private static final int MOST_HINTS = 3;

    private final Knowledge knowledge;
    private final Wording wording;

    public Explanation(Knowledge knowledge, Wording wording) {
        this.knowledge = knowledge;
        this.wording = wording;
    }

    /**
     * The page of a criterion or of a species.
     *
     * @param name id of a criterion, or id, English, Latin or other name of a species
     * @throws NoSuchElementException saying what is known, when there is neither
     */
    public String of(String name) {
        if (knowledge.criteria().containsKey(name)) {
            return criterion(name);
        }
        return species(find(name).orElseThrow(() -> new NoSuchElementException(unknown(name))));
    }

    private String unknown(String name) {
        List<String> known = Stream.concat(knowledge.criteria().keySet().stream(), knowledge.profiles().keySet().stream()).toList();
        return say("unknown", name) + " " + hint(name, known).orElseGet(() -> say("unknown.ways"));
    }

    private Optional<String> hint(String name, Collection<String> known) {
        List<String> near = Words.nearest(name, known, MOST_HINTS);
        return near.isEmpty() ? Optional.empty() : Optional.of(say("unknown.near", String.join(", ", near)));
    }

    private Optional<Profile> find(String name) {
        String wanted = name.strip();
        return knowledge.profiles().values().stream().filter(profile -> wanted.equalsIgnoreCase(profile.species().id())
                || profile.names().stream().anyMatch(wanted::equalsIgnoreCase)).findFirst();
    }

    /**
     * The profile of a species.
     *
     * @param species its id, English, Latin or other name
     * @throws NoSuchElementException saying what is known, when there is no such species
     */
    public Profile profile(String species) {
        return find(species).orElseThrow(() -> new NoSuchElementException(say("unknown-species", species) + " "
                + hint(species, knowledge.profiles().keySet()).orElseGet(() -> say("unknown.species", String.join(", ", knowledge.profiles().keySet())))));
    }

    /**
     * The id of a species.
     *
     * @param name its id, English, Latin or other name
     * @throws NoSuchElementException saying what is known, when there is no such species
     */
    public String speciesId(String name) {
        return profile(name).species().id();
    }

    private String say(String key, Object... arguments) {
        return wording.sentence("page." + key, arguments);
    }

    /**
     * The page of a criterion with its limits for every species.
     *
     * @throws NoSuchElementException when there is no such criterion
     */
    public String criterion(String id) {
        return criterion(knowledge.criterion(id), List.copyOf(knowledge.profiles().values()));
    }

    /**
     * The page of a criterion with its limits for one species.
     *
     * @param id      id of a criterion
     * @param species id or name of a species
     * @throws NoSuchElementException saying what is known, when one of the two does not exist
     */
    public String criterion(String id, String species) {
        if (!knowledge.criteria().containsKey(id)) {
            throw new NoSuchElementException(unknown(id));
        }
        return criterion(knowledge.criterion(id), List.of(profile(species)));
    }

    private String criterion(Criterion criterion, List<Profile> profiles) {
        Lines lines = new Lines();
        Map<String, Citation> sources = new LinkedHashMap<>();
        lines.hanging(criterion.id() + "  ", criterion.title()).rule('=');
        summary(lines, criterion);
        prose(lines, criterion);
        criterion.citations().forEach(citation -> sources.putIfAbsent(citation.source(), citation));
        if (!criterion.quantities().isEmpty()) {
            profiles.forEach(profile -> limits(lines, criterion, profile, sources));
        }
        sources(lines, criterion.citations(), sources);
        return lines.toString();
    }

    private void summary(Lines lines, Criterion criterion) {
        lines.labelled(0, say("need"), wording.need(criterion.need()));
        lines.labelled(0, say("grade"), wording.grade(criterion.grade()));
        criterion.grades().forEach((variant, grade) -> lines.labelled(0, "", say("grade.variant", variant, wording.grade(grade))));
        lines.labelled(0, say("subject"), wording.sentence("kind." + criterion.subject().id()));
        lines.labelled(0, say("judged"), wording.judged(criterion));
        lines.labelled(0, say("applies"), applies(criterion));
        lines.labelled(0, say("since"), say("since.version", criterion.since()));
    }

    private String applies(Criterion criterion) {
        Stream<String> when = criterion.appliesWhen().stream().map(condition -> say("applies.when", wording.condition(condition)));
        boolean forAll = criterion.purposes().size() == Purpose.values().length;
        Stream<String> purposes = forAll ? Stream.of()
                : Stream.of(say("applies.for", criterion.purposes().stream().sorted().map(Words::of).collect(Collectors.joining(", "))));
        String text = Stream.concat(when, purposes).collect(Collectors.joining("; "));
        return text.isEmpty() ? say("applies.always") : text;
    }

    private void prose(Lines lines, Criterion criterion) {
        Page page = criterion.page();
        section(lines, "requirement", page.requirement());
        section(lines, "why", page.why());
        section(lines, "measure", page.measure());
        byVariant(lines, "correct", page.correct(), criterion);
        if (!page.meanwhile().isEmpty()) {
            byVariant(lines, "meanwhile", page.meanwhile(), criterion);
        }
        section(lines, "exceptions", page.exceptions());
    }

    private void byVariant(Lines lines, String key, Map<String, String> texts, Criterion criterion) {
        lines.heading(say(key));
        texts.forEach((variant, text) -> lines.paragraph(0, withoutSlots(variant.isEmpty() ? text : say("because", variant, text), criterion)));
    }

    private void section(Lines lines, String key, String prose) {
        if (!prose.isEmpty()) {
            lines.heading(say(key)).paragraph(0, prose);
        }
    }

    private String withoutSlots(String text, Criterion criterion) {
        return text.replace("{shortfall}", say("shortfall")).replace("{limit}", say("limit"))
                .replace("{without-heat}", wording.sentence("until.without-heat")).replace("{subject}", say("subject-placeholder", wording.sentence("kind." + criterion.subject().id())));
    }

    private void limits(Lines lines, Criterion criterion, Profile profile, Map<String, Citation> sources) {
        lines.heading(say("limits.of", profile.species().english().toUpperCase(Locale.ROOT)));
        Optional<String> notMeant = profile.whyNotMeant(criterion.id());
        notMeant.ifPresent(reason -> lines.paragraph(0, say("not-meant", reason)));
        List<Limit> limits = profile.limits().stream().filter(limit -> limit.criterion().equals(criterion.id())).toList();
        if (limits.isEmpty() && notMeant.isEmpty()) {
            lines.paragraph(0, say("limits.none"));
        }
        limits.forEach(limit -> {
            limit(lines, limit);
            sources.putIfAbsent(limit.citation().source(), limit.citation());
        });
    }

    private void limit(Lines lines, Limit limit) {
        lines.hanging(limit.chosen() ? "* " : "- ", wording.limit(limit));
        lines.labelled(INDENT, say("use"), reason(limit.chosen() ? say("chosen") : say("not-chosen"), limit.why()));
        lines.labelled(INDENT, say("from"), wording.source(limit.citation()));
    }

    private String reason(String what, String why) {
        return why.isEmpty() ? what : say("because", what, why);
    }

    /** The sources of the requirement with their clauses, then those of the limits; what was read of each stands below it. */
    private void sources(Lines lines, List<Citation> own, Map<String, Citation> all) {
        lines.heading(say("sources"));
        own.forEach(citation -> source(lines, wording.source(citation), citation));
        all.values().stream().filter(citation -> own.stream().noneMatch(cited -> cited.source().equals(citation.source())))
                .forEach(citation -> source(lines, knowledge.source(citation.source()).title(), citation));
    }

    private void source(Lines lines, String title, Citation citation) {
        lines.hanging("* ", title).paragraph(INDENT, say("read", knowledge.source(citation.source()).read()));
    }

    /**
     * The page of a species.
     *
     * @param name id or name of a species
     * @throws NoSuchElementException saying what is known, when there is no such species
     */
    public String species(String name) {
        return species(profile(name));
    }

    private String species(Profile profile) {
        Lines lines = new Lines();
        Species species = profile.species();
        lines.paragraph(0, species.english()).rule('=');
        lines.labelled(0, say("latin"), species.latin());
        lines.labelled(0, say("also"), String.join(", ", profile.also()));
        lines.labelled(0, say("id"), species.id());
        lines.labelled(0, say("note"), profile.note());
        lines.heading(say("habits"));
        habits(species).forEach((key, habit) -> habit(lines, wording.habit(key, habit), profile.habits().get(key)));
        habit(lines, adult(wording, species), profile.habits().get("adult-length"));
        grounds(wording, species).forEach((key, ground) -> habit(lines, ground, profile.habits().get(key)));
        lines.heading(say("limits"));
        profile.limits().stream().map(Limit::criterion).distinct().sorted().forEach(id -> criterionLimits(lines, id, profile));
        notMeant(lines, profile.notMeant());
        return lines.toString();
    }

    /** Each habit by the key under which its source stands; that it eats no other snakes is said of snakes alone. */
    static Map<String, Enum<?>> habits(Species species) {
        Map<String, Enum<?>> habits = new LinkedHashMap<>();
        habits.put("form", species.form());
        habits.put("lives", species.lives());
        habits.put("active", species.active());
        habits.put("digs", species.digs());
        habits.put("climbs", species.climbs());
        habits.put("basks", species.basks());
        habits.put("uv", species.uv());
        habits.put("drinks", species.drinks());
        habits.put("soaks", species.soaks());
        habits.put("eats", species.eats());
        habits.put("company", species.company());
        if (species.form() == Form.SNAKE || species.eatsSnakes() != Stated.NO) {
            habits.put("eats-snakes", species.eatsSnakes());
        }
        habits.put("lays-eggs", species.laysEggs());
        habits.put("rests-in-winter", species.restsInWinter());
        habits.put("dangerous", species.dangerous());
        habits.put("restricted", species.restricted());
        habits.put("specialist", species.specialist());
        return habits;
    }

    /** How long adults get. */
    static String adult(Wording wording, Species species) {
        return wording.sentence("habit.adult-length", wording.amount(species.adultLength().amount()));
    }

    /** Which substrates are wrong for it, by the key under which the source stands; without those of which nothing is known. */
    static Map<String, String> grounds(Wording wording, Species species) {
        Map<String, String> grounds = new LinkedHashMap<>();
        if (!species.harmfulGround().isEmpty()) {
            grounds.put("harmful-ground", wording.sentence("habit.harmful-ground", kinds(species.harmfulGround())));
        }
        if (!species.unsuitedGround().isEmpty()) {
            grounds.put("unsuited-ground", wording.sentence("habit.unsuited-ground", kinds(species.unsuitedGround())));
        }
        return grounds;
    }

    private static String kinds(Set<SubstrateKind> kinds) {
        return kinds.stream().sorted().map(Words::of).collect(Collectors.joining(", "));
    }

    private void habit(Lines lines, String habit, Citation citation) {
        lines.hanging("* ", habit).labelled(INDENT, say("from"), wording.source(citation));
    }

    private void criterionLimits(Lines lines, String id, Profile profile) {
        lines.gap().hanging(id + "  ", knowledge.criteria().containsKey(id) ? knowledge.criterion(id).title() : "");
        profile.limits().stream().filter(limit -> limit.criterion().equals(id)).forEach(limit -> limit(lines, limit));
    }

    private void notMeant(Lines lines, List<NotMeant> notMeant) {
        lines.heading(say("not-meant.heading"));
        if (notMeant.isEmpty()) {
            lines.paragraph(0, say("not-meant.none"));
        }
        notMeant.forEach(one -> lines.hanging("- ", say("not-meant.line", one.criterion(), one.reason())));
    }

    /** Every species: id, English and Latin name. */
    public String speciesList() {
        Lines lines = new Lines();
        lines.paragraph(0, wording.sentence("list.species", knowledge.profiles().size())).rule('=');
        knowledge.profiles().values().forEach(profile -> lines.hanging(Lines.padded(profile.species().id(), widest(knowledge.profiles().keySet())),
                wording.sentence("found.how", profile.species().english(), profile.species().latin())));
        return lines.toString();
    }

    private static int widest(Collection<String> texts) {
        return texts.stream().mapToInt(String::length).max().orElse(0) + 2;
    }

    /** Every criterion: id, title, grade, how it is judged. */
    public String criteriaList() {
        return list(wording.sentence("list.criteria", knowledge.criteria().size()), List.copyOf(knowledge.criteria().values()));
    }

    /**
     * The criteria that hold for a species.
     *
     * @throws NoSuchElementException saying what is known, when there is no such species
     */
    public String criteriaList(String species) {
        Profile profile = profile(species);
        List<Criterion> held = knowledge.criteria().values().stream().filter(criterion -> profile.whyNotMeant(criterion.id()).isEmpty())
                .filter(criterion -> criterion.quantities().isEmpty() || profile.chosen(criterion.id()).findAny().isPresent()).toList();
        return list(wording.sentence("list.criteria.species", profile.species().english(), held.size()), held);
    }

    private String list(String title, List<Criterion> criteria) {
        Lines lines = new Lines();
        lines.paragraph(0, title).rule('=');
        int width = widest(criteria.stream().map(Criterion::id).toList());
        criteria.forEach(criterion -> lines.hanging(Lines.padded(criterion.id(), width), wording.sentence("found.how", criterion.title(),
                wording.grade(criterion.grade()) + ", " + wording.judged(criterion))));
        return lines.toString();
    }
}
