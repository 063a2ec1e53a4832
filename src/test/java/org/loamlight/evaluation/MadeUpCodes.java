package org.loamlight.evaluation;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.CodeReader;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;

/** Two invented codes that differ, contradict and can be read in several ways, so that tests do not hang on what real ones say. */
public final class MadeUpCodes {
    private static final String SHARED = """
            "every-code": {"requirement": "{code} asks for it in {clause}: {asks}.", "why": "A floor.", "measure": "Measure.",
              "correct": {"": "Bring it to {limit}, {shortfall} from now."}, "exceptions": "", "found": {"": "{code}, {clause}: {asks}"}}""";

    /** A law: floor with two readings, room for the young only, warm air, a bare figure, a place to lie in quarantine, two clauses. */
    public static final String LAW = """
            {"format": 1, "id": "marram-1", "name": "Marram law", "title": "Marram Coast Act on keeping reptiles (invented)",
             "issuer": "Marram Coast council", "date": "1 May 2020", "binding": "law", "source": "judgement", "read": "all of it, since it is invented",
             "policies": {"whole-group": "The group counts as a whole.", "never-matters": "It makes no difference."},
             "points": [
              {"id": "1-floor", "clause": "s. 1", "asks": "floor area", "beside": "space.floor-area", "species": ["pantherophis-guttatus"],
               "grade": "major", "standing": "read", "limits": [{"topic": "floor-area", "at-least": "0.7 m2"}],
               "other-readings": [{"topic": "floor-area", "at-least": "1.65 m2", "policy": "whole-group"},
                {"topic": "floor-area", "at-least": "0.7 m2", "policy": "never-matters"},
                {"topic": "floor-area", "at-least": "3 m2", "scope": {"stages": ["hatchling"]}, "policy": "never-matters"}]},
              {"id": "1-young", "clause": "s. 1", "asks": "height for the young", "beside": "space.height", "species": ["pantherophis-guttatus"],
               "grade": "major", "standing": "read", "limits": [{"topic": "inside-height", "at-least": "30 cm", "scope": {"stages": ["hatchling"]}}]},
              {"id": "2-sides", "clause": "s. 2", "asks": "length and height", "beside": "space.length", "species": ["pantherophis-guttatus"],
               "grade": "major", "standing": "read", "limits": [{"topic": "inside-length", "at-least": "200 cm"}, {"topic": "inside-height", "at-least": "20 cm"}]},
              {"id": "3-air", "clause": "s. 3", "asks": "air by day at the cool end", "beside": "heat.air-cool-day", "species": ["pantherophis-guttatus"],
               "grade": "major", "standing": "read", "limits": [{"topic": "air-temperature-by-day", "place": "cool-end", "at-least": "29 °C"}]},
              {"id": "4-depth", "clause": "s. 4", "asks": "depth", "beside": "space.depth", "species": ["pantherophis-guttatus"],
               "grade": "major", "standing": "read", "decision": "shown", "limits": [{"topic": "inside-depth", "at-least": "50 cm", "at-most": "50 cm"}]},
              {"id": "5-vent", "clause": "s. 5", "asks": "way around the floor", "beside": "space.length", "species": ["pantherophis-guttatus"],
               "grade": "major", "standing": "read", "limits": [{"topic": "inside-perimeter", "at-least": {"factor": "1.0", "of": "snout vent length"}}]},
              {"id": "6-tortoise", "clause": "s. 6", "asks": "floor area", "beside": "space.floor-area", "species": ["testudo-hermanni"],
               "grade": "major", "standing": "read", "limits": [{"topic": "floor-area", "at-least": "9 m2"}]}],
             "clauses": [
              {"id": "7", "clause": "s. 7", "says": "The air is read.", "species": ["pantherophis-guttatus"],
               "judged-by": ["monitoring.air-thermometer", "monitoring.hygrometer"], "standing": "read"},
              {"id": "8", "clause": "s. 8", "says": "Who keeps them knows how.", "species": ["pantherophis-guttatus"], "standing": "secondary"},
              {"id": "9", "clause": "s. 9", "says": "Tortoises dig.", "species": ["testudo-hermanni"], "standing": "read"}],
            """ + SHARED + "}";

    /** Rules of an association: another floor, cooler air than the law, the length to the vent again. */
    public static final String CLUB = """
            {"format": 1, "id": "wending-2", "name": "Wending rules", "title": "Wending Vale Herpetological Club, keeping rules (invented)",
             "issuer": "Wending Vale Herpetological Club", "date": "spring 2021", "binding": "association", "source": "judgement", "read": "a summary",
             "policies": {}, "points": [
              {"id": "a-floor", "clause": "rule A", "asks": "floor area", "beside": "space.floor-area", "species": ["pantherophis-guttatus"],
               "grade": "minor", "standing": "secondary", "limits": [{"topic": "floor-area", "at-least": "0.5 m2"}]},
              {"id": "b-air", "clause": "rule B", "asks": "air by day at the cool end", "beside": "heat.air-cool-day", "species": ["pantherophis-guttatus"],
               "grade": "minor", "standing": "inferred", "limits": [{"topic": "air-temperature-by-day", "place": "cool-end", "at-most": "26 °C"}]},
              {"id": "c-vent", "clause": "rule C", "asks": "way around the floor", "beside": "space.length", "species": ["pantherophis-guttatus"],
               "grade": "minor", "standing": "secondary", "limits": [{"topic": "inside-perimeter", "at-least": {"factor": "1.5", "of": "snout vent length"}}]}],
             "clauses": [],
            """ + SHARED + "}";

    /** An adult corn snake in a box of 1.2 m by 0.5 m by 0.6 m, its length to the vent and the air not told. */
    public static final String BOX = """
            {"format": 1, "on": "2026-11-02", "animals": [{"name": "Sedge", "species": "pantherophis-guttatus", "stage": "adult", "length": "120 cm"}],
             "enclosure": {"inside": {"length": "120 cm", "depth": "50 cm", "height": "60 cm"}}}""";

    private MadeUpCodes() {
    }

    public static Code code(String json) {
        try {
            return CodeReader.read("made-up.json", json.getBytes(StandardCharsets.UTF_8));
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** An audit of a setup with invented codes chosen. */
    public static Audit audit(String setup, String... codes) {
        try {
            Setup described = BuiltIn.setup(setup);
            List<Code> chosen = List.of(codes).stream().map(MadeUpCodes::code).toList();
            return new Auditor(BuiltIn.KNOWLEDGE.withCodes(chosen, described.species()), BuiltIn.RULES).audit(described, BuiltIn.ON);
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }
}
