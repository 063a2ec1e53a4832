package org.loamlight.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.loamlight.criterion.Citation;
import org.loamlight.criterion.DecisionRule;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Knowledge;
import org.loamlight.criterion.KnowledgeReader;
import org.loamlight.criterion.LimitUse;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Standing;
import org.loamlight.criterion.Where;
import org.loamlight.evaluation.Audit;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.finding.Result;
import org.loamlight.finding.Voided;
import org.loamlight.quantity.Amount;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;
import org.loamlight.setup.Subject;
import org.loamlight.setup.SubjectKind;
import org.loamlight.wording.Units;
import org.loamlight.wording.Wording;

/**
 * An invented audit with every kind of finding, made without rules, so that the workbook is tested apart from what the
 * knowledge says today. The names in it can be replaced by nasty ones.
 */
final class Sample {
    static final LocalDate ON = LocalDate.parse("2026-11-02");
    private static final String KNOWLEDGE = """
            {"version": "0.0.1",
             "criteria": [
              {"id": "heat.guard", "title": "A hot heater within reach has a guard", "need": "protection", "grade": "critical",
               "subject": "heater", "sources": [{"source": "vet-talk", "clause": "heat sources", "standing": "read"}],
               "cautions": ["burn"], "since": "0.0.1", "rules": ["heat.guard"],
               "page": {"requirement": "A hot lamp is out of reach or guarded.", "why": "Burns show only days later.",
                "measure": "Think of the animal stretched and climbing: can any part of it come to the bulb?",
                "correct": {"": "Switch the heater off, let it cool, and fit a guard all round, at least a hand's width from the bulb."},
                "exceptions": "", "found": {"": "The animal can touch {subject}, and nothing keeps it off."}}},
              {"id": "heat.air-cool-day", "title": "The cool end stays cool by day", "need": "environment", "grade": "major",
               "subject": "enclosure", "topics": ["air-temperature-by-day"],
               "sources": [{"source": "care-sheet", "standing": "secondary"}], "since": "0.0.1",
               "page": {"requirement": "Shaded air at the cool end.", "why": "An animal that cannot cool down overheats.",
                "measure": "Hang the sensor in the shade at the cool end and read it in the afternoon.",
                "correct": {"": "Move heat away from the cool end until it is {shortfall} cooler: {limit} at most."}, "exceptions": ""}},
              {"id": "light.uv-basking", "title": "UV index at the basking place", "need": "environment", "grade": "minor",
               "subject": "enclosure", "topics": ["uv-index"],
               "sources": [{"source": "care-sheet", "standing": "secondary"}], "since": "0.0.1",
               "page": {"requirement": "UV index in the band.", "why": "Too much burns skin and eyes.",
                "measure": "Hold the meter at the height of the animal's back.",
                "correct": {"": "Change the distance."}, "exceptions": ""}},
              {"id": "space.gap", "title": "No gap lets the animal out", "need": "protection", "grade": "critical",
               "subject": "opening", "topics": ["opening-gap"], "decision": "guarded",
               "sources": [{"source": "judgement", "standing": "judgement"}], "since": "0.0.1",
               "page": {"requirement": "Gaps are narrower than the head.", "why": "An animal that is out dries up or is stepped on.",
                "measure": "Push a rod gauge into the gap.", "correct": {"": "Close the gap."}, "exceptions": ""}},
              {"id": "water.dish", "title": "There is water to drink", "need": "diet", "grade": "major", "subject": "enclosure",
               "sources": [{"source": "care-sheet", "clause": "water", "standing": "secondary"}], "since": "0.0.1", "rules": ["water.dish"],
               "page": {"requirement": "Water.", "why": "Thirst.", "measure": "Look.", "correct": {"": "Offer water."}, "exceptions": "",
                "found": {"": "There is no water."}}},
              {"id": "substrate.dig", "title": "Deep substrate for animals that dig", "need": "behaviour", "grade": "minor",
               "subject": "enclosure", "sources": [{"source": "never-shown", "standing": "from memory"}], "since": "0.0.1",
               "page": {"requirement": "Depth.", "why": "Digging.", "measure": "Ruler.", "correct": {"": "Add."}, "exceptions": ""}}],
             "every-reptile": [],
             "species": [{"format": 1, "id": "exempli-gratia", "english": "example snake", "latin": "Exempli gratia", "habits": {
               "form": {"is": "snake", "source": "judgement", "standing": "judgement"},
               "active": {"is": "by day", "source": "judgement", "standing": "judgement"},
               "basks": {"is": "no", "source": "judgement", "standing": "judgement"},
               "soaks": {"is": "no", "source": "judgement", "standing": "judgement"},
               "eats": {"is": "whole prey", "source": "judgement", "standing": "judgement"},
               "lays-eggs": {"is": "yes", "source": "judgement", "standing": "judgement"},
               "rests-in-winter": {"is": "no", "source": "judgement", "standing": "judgement"},
               "dangerous": {"is": "no", "source": "judgement", "standing": "judgement"},
               "restricted": {"is": "no", "source": "judgement", "standing": "judgement"},
               "specialist": {"is": "no", "source": "judgement", "standing": "judgement"},
               "adult-length": {"is": "120 cm", "source": "judgement", "standing": "judgement"},
               "lives": {"is": "ground", "source": "judgement", "standing": "judgement"},
               "digs": {"is": "no", "source": "judgement", "standing": "judgement"},
               "climbs": {"is": "no", "source": "judgement", "standing": "judgement"},
               "uv": {"is": "profits", "source": "judgement", "standing": "judgement"},
               "drinks": {"is": "from dish", "source": "judgement", "standing": "judgement"},
               "company": {"is": "alone", "source": "judgement", "standing": "judgement"},
               "eats-snakes": {"is": "no", "source": "judgement", "standing": "judgement"}}}],
             "sources": [
              {"id": "vet-talk", "title": "Fennimore, A. 2019. Burns (invented for this test)", "read": "first part"},
              {"id": "care-sheet", "title": "Wending Vale Herpetological Club. Care sheet (invented for this test)", "read": "original"},
              {"id": "never-shown", "title": "Source nobody cites (invented for this test)", "read": "nothing"},
              {"id": "judgement", "title": "Our own judgement, no source", "read": "nothing to read"}],
             "cautions": [{"id": "burn", "text": "Unplug and let cool first.", "general": "no"},
              {"id": "salmonella", "text": "Wash your hands.", "general": "yes"}],
             "limit-rules": []}
            """;

    private final Knowledge knowledge;
    private final String heater;
    private final Setup setup;

    private Sample(String animal, String heater) throws ProblemsFound {
        this.knowledge = KnowledgeReader.read(KNOWLEDGE.getBytes(StandardCharsets.UTF_8));
        this.heater = heater;
        this.setup = SetupReader.read("setup.json", """
                {"format": 1, "on": "2026-11-02", "title": "Shelf 3", "animals": [{"name": "%s", "species": "exempli-gratia",
                "since": "2024-05-01"}], "enclosure": {"inside": {"length": "120 cm", "depth": "60 cm"}}}
                """.formatted(escaped(animal)).getBytes(StandardCharsets.UTF_8), knowledge.profiles().keySet());
    }

    private static String escaped(String text) {
        return text.chars().mapToObj(unit -> String.format(Locale.ROOT, "\\u%04x", unit)).collect(Collectors.joining());
    }

    static Audit audit() {
        return audit("Bracken", "basking lamp");
    }

    static Audit audit(String animal, String heater) {
        try {
            return new Sample(animal, heater).made();
        } catch (ProblemsFound e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** Nothing is carried along that anybody looks at. */
    static final Carried CARRIED = Carried.first(new JsonValue.JsonObject(new JsonPlace(0, 0, ""), Map.of()));

    /** The same setup with no finding and no value at all. */
    static Audit empty() {
        Audit full = audit();
        return new Audit(full.setup(), full.on(), full.knowledge(), List.of(), List.of());
    }

    static byte[] workbook(Audit audit) {
        return workbook(audit, Units.METRIC);
    }

    static byte[] workbook(Audit audit, Units units) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Checklist.write(audit, Ranking.of(audit.findings()), new Wording(units, audit.knowledge()), CARRIED, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Audit made() {
        Quantity cool = read(Topic.AIR_TEMPERATURE_BY_DAY, Zone.COOL_END, 29, 1, "cool end probe");
        Quantity uv = new Quantity(Topic.UV_INDEX, Place.of(Zone.BASKING_PLACE), 4.2, 0.6,
                new Origin(Method.COMPUTED, "lamp:UV tube", "2026-10-30"),
                List.of(Step.of("from-lamp-reading", new Amount(3.1, Unit.UV_INDEX), new Amount(30, Unit.CENTIMETRE)),
                        Step.of("inverse-square", new Amount(25, Unit.CENTIMETRE))));
        Quantity inBeam = read(Topic.AIR_TEMPERATURE_BY_DAY, Zone.WARM_END, 38, 1, "warm end probe");
        Quantity gap = new Quantity(Topic.OPENING_GAP, Place.at("opening:door"), 9.5, 0.5,
                new Origin(Method.MEASURED, "opening:door", ""), List.of());
        Finding guard = rule("heat.guard", new Subject(SubjectKind.HEATER, heater), Result.NONCONFORMITY);
        Finding air = limit("heat.air-cool-day", Subject.ENCLOSURE, held("heat.air-cool-day", cool, 21, 27), Result.NONCONFORMITY);
        List<Finding> findings = new ArrayList<>(List.of(
                guard.linked(List.of(air.pair()), List.of()), air.linked(List.of(), List.of(guard.pair())),
                limit("space.gap", new Subject(SubjectKind.OPENING, "door"), held("space.gap", gap, Double.NEGATIVE_INFINITY, 10),
                        Result.UNDECIDED),
                wanted(guard.pair(), inBeam), rule("water.dish", Subject.ENCLOSURE, Result.CONFORMITY),
                limit("light.uv-basking", Subject.ENCLOSURE, held("light.uv-basking", uv, 3, 5), Result.CONFORMITY),
                rule("substrate.dig", Subject.ENCLOSURE, Result.NOT_APPLICABLE)));
        return new Audit(setup, ON, knowledge, List.of(cool, inBeam, uv, gap), findings);
    }

    private static Quantity read(Topic topic, Zone zone, double value, double uncertainty, String reading) {
        return new Quantity(topic, Place.of(zone), value, uncertainty, new Origin(Method.MEASURED, "reading:" + reading, "2026-10-31"),
                List.of());
    }

    private Finding rule(String criterion, Subject subject, Result result) {
        List<String> variants = result == Result.NONCONFORMITY ? List.of("") : List.of();
        String reason = result == Result.NOT_APPLICABLE ? "not-applicable.condition.digs" : "";
        return new Finding(knowledge.criterion(criterion), subject, result, knowledge.criterion(criterion).grade(), variants, List.of(),
                List.of(), List.of(), List.of(), List.of(), reason, List.of(), List.of());
    }

    private Finding limit(String criterion, Subject subject, Held held, Result result) {
        return new Finding(knowledge.criterion(criterion), subject, result, knowledge.criterion(criterion).grade(), List.of(), List.of(held),
                List.of(), List.of(), List.of(), List.of(), "", List.of(), List.of());
    }

    private Finding wanted(Pair cause, Quantity voided) {
        ResolvedLimit limit = resolved("light.uv-basking", Topic.AIR_TEMPERATURE_BY_DAY, Zone.WARM_END, 28, 32);
        return new Finding(knowledge.criterion("light.uv-basking"), setup.animals().get(0).subject(), Result.NO_EVIDENCE, Grade.MINOR,
                List.of(), List.of(), List.of(), List.of("readings"), List.of(limit), List.of(new Voided(voided, "heat.guard")), "",
                List.of(), List.of(cause));
    }

    private static Held held(String criterion, Quantity quantity, double low, double high) {
        return Held.of(quantity, resolved(criterion, quantity.topic(), Zone.ENCLOSURE, low, high));
    }

    private static ResolvedLimit resolved(String criterion, Topic topic, Zone zone, double low, double high) {
        return new ResolvedLimit(criterion, Subject.ENCLOSURE, topic, Place.of(zone), Where.EVERYWHERE, LimitUse.NEED, low, high, 0, DecisionRule.SIMPLE,
                Grade.MAJOR, new Citation("care-sheet", "table 2", Standing.SECONDARY), "Bracken");
    }
}
