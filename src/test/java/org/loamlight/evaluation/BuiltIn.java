package org.loamlight.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.criterion.Profile;
import org.loamlight.criterion.Species;
import org.loamlight.setup.JsonFile;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.Problems;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.setup.Stated;

/** The knowledge and rules this build made, loaded once for all tests. */
public final class BuiltIn {
    public static final Knowledge KNOWLEDGE = KnowledgeReader.builtIn();
    public static final RuleBase RULES = RuleBase.load(KNOWLEDGE);
    /** With one species more, serpens-ficta, made up: no known one is dangerous to people, and the rules for such are to be shown to work. */
    static final Knowledge WITH_MADE_UP = withMadeUp();
    public static final Auditor AUDITOR = new Auditor(WITH_MADE_UP, RULES);
    public static final LocalDate ON = LocalDate.parse("2026-11-02");

    private BuiltIn() {
    }

    private static Knowledge withMadeUp() {
        Map<String, Profile> profiles = new TreeMap<>(KNOWLEDGE.profiles());
        Profile python = KNOWLEDGE.profile("python-regius");
        Species species = dangerous(python.species());
        profiles.put(species.id(), new Profile(species, List.of(), "Made up.", python.habits(), python.limits(), python.notMeant()));
        return new Knowledge(KNOWLEDGE.version(), KNOWLEDGE.sha256(), KNOWLEDGE.criteria(), profiles, KNOWLEDGE.sources(), KNOWLEDGE.cautions(),
                KNOWLEDGE.limitRules());
    }

    private static Species dangerous(Species like) {
        return new Species("serpens-ficta", "made-up snake", "Serpens ficta", like.form(), like.lives(), like.active(), like.digs(), like.climbs(),
                like.basks(), like.uv(), like.drinks(), like.soaks(), like.eats(), like.company(), like.eatsSnakes(), like.laysEggs(),
                like.restsInWinter(), Stated.YES, like.restricted(), like.specialist(), like.adultLength(), like.harmfulGround(), like.unsuitedGround());
    }

    public static Setup setup(String json) throws ProblemsFound {
        return SetupReader.read("setup.json", json.getBytes(StandardCharsets.UTF_8), WITH_MADE_UP.profiles().keySet());
    }

    public static Audit audit(String json) throws ProblemsFound {
        return AUDITOR.audit(setup(json), ON);
    }

    /** What a file of test data says; a fault in it fails the test that reads it. */
    public static JsonValue json(Path file) {
        try {
            Problems problems = new Problems(file.toString());
            JsonValue value = JsonFile.read(Files.readAllBytes(file), problems);
            problems.throwIfAny();
            return value;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }
}
