package org.loamlight.setup;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads a setup from JSON: strictly, with every problem of the file at its place. */
public final class SetupReader {
    /** The version of the format this reader understands. */
    public static final int FORMAT = 1;

    /** Longer titles and materials fit no line of a report. */
    private static final int LONGEST_LINE = 500;

    private final KnownSpecies species;
    private final Problems problems;
    private final Map<String, String> told = new HashMap<>();

    private SetupReader(KnownSpecies species, Problems problems) {
        this.species = species;
        this.problems = problems;
    }

    /**
     * Reads a setup.
     *
     * @param fileName as the user named it, for messages
     * @param bytes    the whole file
     * @param species  ids of the species that can be audited
     * @throws ProblemsFound with every problem of the file
     */
    public static Setup read(String fileName, byte[] bytes, Collection<String> species) throws ProblemsFound {
        return read(fileName, bytes, species.stream().distinct().collect(Collectors.toMap(id -> id, id -> List.of())));
    }

    /**
     * Reads a setup; the message about an unknown species then knows what keepers call it.
     *
     * @param names for each id of a species that can be audited the names keepers use, the common one first
     */
    public static Setup read(String fileName, byte[] bytes, Map<String, ? extends Collection<String>> names) throws ProblemsFound {
        Problems problems = new Problems(fileName);
        return read(JsonFile.read(bytes, problems), problems, names);
    }

    /**
     * Reads a setup whose values were taken from anywhere; they know where they stand.
     *
     * @param problems with what is wrong already
     */
    public static Setup read(JsonValue document, Problems problems, Map<String, ? extends Collection<String>> names) throws ProblemsFound {
        Setup setup = new SetupReader(new KnownSpecies(names), problems).setup(document);
        problems.throwIfAny();
        return setup;
    }

    private Setup setup(JsonValue value) {
        Section document = Section.document(value, problems, told);
        document.text("$schema");
        format(document);
        // What is told is known when everything before it has been read, so it comes last.
        Setup setup = new Setup(document.text("title", LONGEST_LINE), document.day("on"), purpose(document), animals(document),
                document.section("enclosure", SetupReader::enclosure), document.section("room", SetupReader::room),
                document.named("heaters", SetupReader::heater), document.named("lamps", SetupReader::lamp),
                document.present("substrate", SetupReader::substrate),
                document.named("furnishings", SetupReader::furnishing),
                document.present("water", SetupReader::water),
                document.named("readings", SetupReader::reading), document.section("care", SetupReader::care),
                document.section("electrical", SetupReader::electrical), document.section("hygiene", SetupReader::hygiene),
                document.section("household", SetupReader::household), document.section("monitoring", SetupReader::monitoring),
                document.section("season", SetupReader::season), document.section("quarantine", SetupReader::quarantine), new Told(told));
        document.reportUnasked();
        new Contradictions(setup, value, problems).report();
        return setup;
    }

    private static void format(Section document) {
        if (document.isAnswered("format")) {
            document.wholeNumber("format").filter(found -> found != FORMAT).ifPresent(
                    found -> document.problem("format", "this is format " + found, "this version reads format " + FORMAT));
        } else {
            document.unanswered("format", "the first line of a setup is \"format\": " + FORMAT);
        }
    }

    private static Purpose purpose(Section document) {
        return document.choice("purpose", Purpose.class, Purpose.PERMANENT);
    }

    private List<Animal> animals(Section document) {
        List<Animal> animals = document.named("animals", this::animal);
        String allowed = "name at least one animal with its species: \"animals\": [{\"name\": ..., \"species\": ...}]";
        if (!document.isAnswered("animals")) {
            document.unanswered("animals", allowed);
        } else if (document.isEmptyList("animals")) {
            document.problem("animals", "there is no animal in it", allowed);
        }
        return animals;
    }

    private Animal animal(Section animal) {
        return new Animal(animal.name(), species(animal), animal.choice("stage", Stage.class, Stage.UNKNOWN),
                animal.choice("sex", Sex.class, Sex.UNKNOWN), animal.measure("length", Answer.BODY_LENGTH),
                animal.measure("mass", Answer.BODY_MASS), animal.measure("head-width", Answer.HEAD_WIDTH), animal.measure("carapace", Answer.SIZE),
                animal.measure("snout-vent-length", Answer.BODY_LENGTH), animal.day("hatched"),
                animal.section("diet", SetupReader::diet), health(animal), animal.stated("papers"),
                animal.choice("from", Provenance.class, Provenance.UNKNOWN), animal.day("since"));
    }

    private String species(Section animal) {
        String id = animal.isAnswered("species") ? animal.text("species") : animal.requiredText("species", "known are " + species.all());
        if (!id.isEmpty() && !species.has(id)) {
            animal.problem("species", "the species " + Quoted.of(id) + " is not known", species.hint(id));
        }
        return id;
    }

    private static Enclosure enclosure(Section enclosure) {
        record Inside(Measure length, Measure depth, Measure height) {
        }
        Inside inside = enclosure.section("inside", size -> new Inside(size.measure("length", Answer.SIZE),
                size.measure("depth", Answer.SIZE), size.measure("height", Answer.SIZE)));
        return new Enclosure(enclosure.text("title", LONGEST_LINE), inside.length, inside.depth, inside.height,
                enclosure.choice("front", Front.class, Front.UNKNOWN), enclosure.choice("warm-end", Side.class, Side.UNKNOWN),
                enclosure.section("build", SetupReader::build), enclosure.named("openings", SetupReader::opening),
                enclosure.isAnswered("openings") ? Stated.YES : Stated.UNKNOWN);
    }

    private static Build build(Section build) {
        return new Build(build.section("walls", SetupReader::pane), build.section("front-pane", SetupReader::pane),
                build.section("top", SetupReader::pane), build.section("base", SetupReader::pane),
                build.measure("mass", Answer.THING_MASS), build.measure("stand-carries", Answer.THING_MASS));
    }

    private static Pane pane(Section pane) {
        return new Pane(pane.choice("of", PaneMaterial.class, PaneMaterial.UNKNOWN), pane.measure("thickness", Answer.THICKNESS));
    }

    private static Diet diet(Section diet) {
        return new Diet(diet.choice("prey", PreyKind.class, PreyKind.UNKNOWN), diet.measure("meal", Answer.MEAL_MASS),
                diet.measure("every", Answer.INTERVAL), diet.choices("also", PreyKind.class),
                diet.isAnswered("also") ? Stated.YES : Stated.UNKNOWN, diet.stated("live"),
                diet.measure("thickest", Answer.GAP), diet.choice("thawing", Thawing.class, Thawing.UNKNOWN),
                diet.choices("unsuitable", HarmfulFood.class), diet.measure("plants", Answer.SHARE), diet.measure("calcium", Answer.INTERVAL),
                diet.measure("vitamin-d3", Answer.INTERVAL));
    }

    private static Health health(Section animal) {
        return new Health(animal.choice("condition", BodyCondition.class, BodyCondition.UNKNOWN), animal.choices("signs", Sign.class),
                animal.choices("behaviour", Behaviour.class), animal.stated("gravid"), animal.stated("little-pigment"),
                animal.choice("shed", Shed.class, Shed.UNKNOWN), animal.day("last-meal"), animal.day("last-shed"));
    }

    private static Fixing fixing(Section thing) {
        return new Fixing(thing.measure("holder-rating", Answer.POWER), thing.choice("holder", HolderMaterial.class, HolderMaterial.UNKNOWN),
                thing.choice("hung", Hung.class, Hung.UNKNOWN), thing.measure("clearance", Answer.DISTANCE),
                thing.measure("marked-clearance", Answer.DISTANCE));
    }

    private static Hygiene hygiene(Section hygiene) {
        return new Hygiene(hygiene.measure("spot-clean", Answer.INTERVAL), hygiene.measure("substrate-change", Answer.INTERVAL),
                hygiene.choice("disinfectant", Disinfectant.class, Disinfectant.UNKNOWN), hygiene.stated("diluted-by-label"),
                hygiene.measure("contact-time", Answer.CONTACT_TIME), hygiene.stated("rinsed"), hygiene.stated("shared-tools"),
                hygiene.stated("quarantine-last"), hygiene.stated("hands-washed"),
                hygiene.choice("washed-where", WashedWhere.class, WashedWhere.UNKNOWN));
    }

    private static Household household(Section people) {
        return new Household(people.stated("small-children"), people.stated("people-at-risk"), people.stated("veterinarian"),
                people.stated("experienced"), people.stated("second-adult"), people.stated("tongs"), people.stated("warnings-known"),
                people.stated("handled-after-meals"), people.stated("settles-first"));
    }

    private static Monitoring monitoring(Section watch) {
        return new Monitoring(watch.choices("gauges", Gauge.class), watch.isAnswered("gauges") ? Stated.YES : Stated.UNKNOWN,
                watch.measure("check", Answer.INTERVAL),
                watch.measure("run-in", Answer.INTERVAL), watch.stated("emissivity-suits"), watch.stated("changed-since"));
    }

    private static Season season(Section season) {
        return new Season(season.choice("winter-rest", WinterRest.class, WinterRest.UNKNOWN), season.stated("checked"), season.stated("emptied"),
                season.stated("weighed"), season.measure("rests-at", Answer.TEMPERATURE), season.measure("lasts", Answer.INTERVAL));
    }

    private static Quarantine quarantine(Section apart) {
        return new Quarantine(apart.stated("other-reptiles"), apart.stated("same-room"), apart.measure("kept-apart", Answer.INTERVAL));
    }

    private static Electrical electrical(Section electrical) {
        return new Electrical(electrical.measure("voltage", Answer.VOLTAGE), electrical.measure("outlet", Answer.RATING),
                electrical.measure("tariff", Answer.TARIFF), electrical.stated("safety-switch"), electrical.stated("drip-loop"),
                electrical.stated("socket-below"), electrical.stated("splash-proof"));
    }

    private static Opening opening(Section opening) {
        return new Opening(opening.name(), opening.choice("kind", OpeningKind.class, OpeningKind.UNKNOWN),
                opening.measure("gap", Answer.GAP), opening.choice("lock", Lock.class, Lock.UNKNOWN), opening.choice("level", Level.class, Level.UNKNOWN));
    }

    private static Room room(Section room) {
        Measure coldest = room.measure("coldest", Answer.TEMPERATURE);
        Measure hottest = room.measure("hottest", Answer.TEMPERATURE);
        if (coldest.value() > hottest.value()) {
            room.problem("coldest", "the coldest is warmer than the hottest", "exchange the two, or check them");
        }
        return new Room(coldest, hottest, room.measure("when-read", Answer.TEMPERATURE), room.stated("cooling"),
                room.measure("latitude", Answer.LATITUDE), room.stated("sun"), room.stated("smoke-alarm"), room.choices("fumes", Fume.class),
                room.choices("disturbances", Disturbance.class), room.stated("lit-at-night"));
    }

    private static Heater heater(Section heater) {
        return new Heater(heater.name(), heater.choice("kind", HeaterKind.class, HeaterKind.UNKNOWN),
                heater.measure("power", Answer.POWER), SpotReader.place(heater), heater.choice("mounted", Mount.class, Mount.UNKNOWN),
                heater.choice("control", Control.class, Control.UNKNOWN), heater.stated("probe-fixed"), heater.stated("reachable"),
                heater.stated("guard"), heater.measure("set-to", Answer.SETTING), heater.measure("hours", Answer.HOURS),
                heater.measure("surface", Answer.TEMPERATURE), heater.choice("surface-of", SurfaceMaterial.class, SurfaceMaterial.UNKNOWN),
                heater.measure("nearest-rest", Answer.DISTANCE), heater.measure("warms", Answer.PATCH),
                heater.measure("warms-across", Answer.PATCH), heater.stated("buried"), fixing(heater), heater.stated("on-at-night"));
    }

    private static Lamp lamp(Section lamp) {
        return new Lamp(lamp.name(), lamp.choice("kind", LampKind.class, LampKind.UNKNOWN), lamp.measure("power", Answer.POWER),
                lamp.measure("lit-length", Answer.SIZE), lamp.choice("runs", TubeRuns.class, TubeRuns.UNKNOWN), lamp.measure("hours", Answer.HOURS),
                lamp.choice("control", Control.class, Control.UNKNOWN), lamp.choice("shines", Shines.class, Shines.UNKNOWN), lamp.day("fitted-on"),
                lamp.measure("life", Answer.INTERVAL), fixing(lamp), SpotReader.place(lamp), lamp.unnamed("between", SetupReader::screen),
                lamp.isAnswered("between") ? Stated.YES : Stated.UNKNOWN, lamp.unnamed("readings", SetupReader::lampReading),
                lamp.measure("nearest-rest", Answer.DISTANCE), lamp.measure("minimum-distance", Answer.DISTANCE),
                lamp.stated("on-at-night"));
    }

    private static Screen screen(Section screen) {
        return new Screen(screen.choice("what", ScreenKind.class, ScreenKind.UNKNOWN), screen.measure("passes", Answer.SHARE));
    }

    private static LampReading lampReading(Section reading) {
        Instrument instrument = reading.choice("instrument", Instrument.class, Instrument.UNKNOWN);
        return new LampReading(reading.measure("index", Answer.UV_INDEX, instrument), reading.measure("distance", Answer.DISTANCE),
                reading.stated("through-what-lies-between"), instrument, reading.day("on"));
    }

    private static Substrate substrate(Section substrate) {
        return new Substrate(substrate.text("material", LONGEST_LINE),
                substrate.choice("kind", SubstrateKind.class, SubstrateKind.UNKNOWN), substrate.measure("depth", Answer.POSITION),
                substrate.choice("moisture", Moisture.class, Moisture.UNKNOWN), substrate.stated("holds-burrow"),
                substrate.stated("dry-place"), substrate.stated("laying-site"));
    }

    private static Furnishing furnishing(Section part) {
        String name = part.name();
        FurnishingKind kind = part.choice("kind", FurnishingKind.class, FurnishingKind.UNKNOWN);
        return new Furnishing(name, kind, SpotReader.place(part), part.measure("from", Answer.POSITION),
                part.measure("to", Answer.POSITION), part.measure("bottom", Answer.POSITION), part.measure("top", Answer.POSITION),
                part.measure("from-front", Answer.POSITION), part.measure("to-front", Answer.POSITION),
                part.measure("extent", Answer.POSITION), part.choice("cover", Stated.class, kind.givesCover()),
                part.choice("hide", Stated.class, kind.isHide()), humid(part, kind),
                part.choice("stands-on", Support.class, Support.UNKNOWN), mass(part), part.measure("inside-length", Answer.SIZE),
                part.measure("inside-width", Answer.SIZE), part.measure("entrance", Answer.GAP), part.stated("beneath"), part.stated("holds-animal"),
                part.stated("traps"), part.measure("rest-height", Answer.POSITION));
    }

    private static Stated humid(Section part, FurnishingKind kind) {
        return part.choice("humid", Stated.class, kind == FurnishingKind.HUMID_HIDE ? Stated.YES : Stated.UNKNOWN);
    }

    /** A scale reading, or what it takes to lift the piece. */
    private static Measure mass(Section part) {
        return part.isInWords("mass") ? part.choice("mass", Lift.class, Lift.UNKNOWN, ", a mass such as \"12 kg\"").mass()
                : part.measure("mass", Answer.THING_MASS);
    }

    private static Water water(Section water) {
        Set<WaterForm> forms = water.choices("offered", WaterForm.class);
        Stated absent = water.isAnswered("offered") ? Stated.NO : Stated.UNKNOWN;
        return new Water(forms.contains(WaterForm.DISH) ? Stated.YES : absent,
                forms.contains(WaterForm.DRIP) || forms.contains(WaterForm.MIST) ? Stated.YES : absent,
                water.measure("volume", Answer.CAPACITY), water.measure("depth", Answer.POSITION), water.stated("soaks"), water.stated("spills"),
                SpotReader.place(water));
    }

    private static Reading reading(Section reading) {
        String name = reading.name();
        Instrument instrument = reading.choice("instrument", Instrument.class, Instrument.UNKNOWN);
        ReadingOf of = reading.requiredChoice("of", ReadingOf.class, ReadingOf.UNKNOWN);
        return new Reading(name, of, SpotReader.place(reading), reading.choice("time", DayTime.class, DayTime.UNKNOWN),
                value(reading, of, instrument), instrument, reading.stated("in-beam"), reading.day("on"));
    }

    /** Without knowing what was read its value cannot be judged, and saying so once is enough. */
    private static Measure value(Section reading, ReadingOf of, Instrument instrument) {
        boolean isTold = reading.isAnswered("value");
        return isTold && of != ReadingOf.UNKNOWN ? reading.measure("value", of.answer(), instrument) : Measure.UNKNOWN;
    }

    private static Care care(Section care) {
        return new Care(care.measure("water-change", Answer.INTERVAL), care.measure("light-hours", Answer.HOURS));
    }
}
