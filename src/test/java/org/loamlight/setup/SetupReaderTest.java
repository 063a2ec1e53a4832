package org.loamlight.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;

/** What each section of a setup becomes, and that nothing becomes zero or no which was not told. */
class SetupReaderTest {
    private static final Build BUILD_UNKNOWN = new Build(Pane.UNKNOWN, Pane.UNKNOWN, Pane.UNKNOWN, Pane.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN);
    private static final Diet FED_UNKNOWN = new Diet(PreyKind.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN, Set.of(), Stated.UNKNOWN,
            Stated.UNKNOWN, Measure.UNKNOWN, Thawing.UNKNOWN, Set.of(), Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN);
    private static final Health HEALTH_UNKNOWN = new Health(BodyCondition.UNKNOWN, Set.of(), Set.of(), Stated.UNKNOWN, Stated.UNKNOWN, Shed.UNKNOWN,
            Optional.empty(), Optional.empty());
    private static final Fixing FIXING_UNKNOWN = new Fixing(Measure.UNKNOWN, HolderMaterial.UNKNOWN, Hung.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN);
    private static final Fixing FIXED = new Fixing(known(150, 7.5, Unit.WATT), HolderMaterial.CERAMIC, Hung.CHAINED, centimetres(35, 1), centimetres(30, 1));
    private static final String FIXED_WRITTEN = "'holder-rating': '150 W', 'holder': 'ceramic', 'hung': 'chained', 'clearance': '35 cm', 'marked-clearance': '30 cm'";
    private static final Electrical OUTLET_UNKNOWN = new Electrical(Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN,
            Stated.UNKNOWN, Stated.UNKNOWN);
    private static final Hygiene HYGIENE_UNKNOWN = new Hygiene(Measure.UNKNOWN, Measure.UNKNOWN, Disinfectant.UNKNOWN, Stated.UNKNOWN, Measure.UNKNOWN,
            Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, WashedWhere.UNKNOWN);
    private static final Household HOUSEHOLD_UNKNOWN = new Household(Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN,
            Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN);
    private static final Monitoring MONITORING_UNKNOWN = new Monitoring(Set.of(), Stated.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN);
    private static final Season SEASON_UNKNOWN = new Season(WinterRest.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Measure.UNKNOWN,
            Measure.UNKNOWN);
    private static final Quarantine QUARANTINE_UNKNOWN = new Quarantine(Stated.UNKNOWN, Stated.UNKNOWN, Measure.UNKNOWN);
    private static final Room ROOM_UNKNOWN = new Room(Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN, Stated.UNKNOWN, Measure.UNKNOWN, Stated.UNKNOWN,
            Stated.UNKNOWN, Set.of(), Set.of(), Stated.UNKNOWN);


    private static Measure known(double value, double halfWidth, Unit unit) {
        return new Measure(value, halfWidth / StrictMath.sqrt(3), unit);
    }

    private static Measure centimetres(double value, double halfWidth) {
        return known(value, halfWidth, Unit.CENTIMETRE);
    }

    private static Heater heater(String members) throws ProblemsFound {
        return Given.setup("'heaters': [{'name': 'mat', " + members + "}]").heaters().get(0);
    }

    private static Lamp lamp(String members) throws ProblemsFound {
        return Given.setup("'lamps': [{'name': 'tube'" + members + "}]").lamps().get(0);
    }

    private static Furnishing furnishing(String members) throws ProblemsFound {
        return Given.setup("'furnishings': [{'name': 'cave'" + members + "}]").furnishings().get(0);
    }

    // ---- nothing told

    @Test
    void what_is_absent_is_unknown_and_never_zero_or_no() throws ProblemsFound {
        Setup bare = Given.setup("");
        Enclosure box = new Enclosure("", Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN, Front.UNKNOWN, Side.UNKNOWN, BUILD_UNKNOWN, List.of(), Stated.UNKNOWN);
        Animal animal = new Animal("Bracken", "pantherophis-guttatus", Stage.UNKNOWN, Sex.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN,
                Measure.UNKNOWN, Measure.UNKNOWN, Optional.empty(), FED_UNKNOWN, HEALTH_UNKNOWN, Stated.UNKNOWN, Provenance.UNKNOWN, Optional.empty());
        assertEquals(new Setup("", Optional.empty(), Purpose.PERMANENT, List.of(animal), box, ROOM_UNKNOWN,
                List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), new Care(Measure.UNKNOWN, Measure.UNKNOWN),
                OUTLET_UNKNOWN, HYGIENE_UNKNOWN, HOUSEHOLD_UNKNOWN, MONITORING_UNKNOWN, SEASON_UNKNOWN, QUARANTINE_UNKNOWN, bare.told()), bare);
        assertEquals(Map.of("animals", "a list", "animals[Bracken].name", "Bracken", "animals[Bracken].species", "pantherophis-guttatus", "format", "1"),
                bare.told().answers());
        assertFalse(Measure.UNKNOWN.isKnown());
    }

    @ParameterizedTest
    @ValueSource(strings = {"title", "on", "purpose", "enclosure", "room", "heaters", "lamps", "substrate", "furnishings", "water", "readings", "care", "electrical", "hygiene",
        "household", "monitoring", "season", "quarantine"})
    void a_section_that_is_not_looked_at_reads_as_if_it_were_absent(String section) throws ProblemsFound {
        assertEquals(Given.setup(""), Given.setup("'" + section + "': 'not looked'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"enclosure", "room", "care", "electrical", "hygiene", "household", "monitoring", "season", "quarantine"})
    void a_section_in_which_nothing_is_told_is_not_told(String section) throws ProblemsFound {
        assertEquals(Given.setup(""), Given.setup("'" + section + "': {}"));
        assertEquals(Given.setup(""), Given.setup("'enclosure': {'inside': {'length': 'not looked'}}"));
    }

    @Test
    void substrate_and_water_are_there_when_they_are_told_of_whatever_is_known_of_them() throws ProblemsFound {
        Setup setup = Given.setup("'substrate': {'moisture': 'not looked'}, 'water': {'offered': 'not looked'}");
        assertEquals(Optional.of(new Substrate("", SubstrateKind.UNKNOWN, Measure.UNKNOWN, Moisture.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN)), setup.substrate());
        assertEquals(Optional.of(new Water(Stated.UNKNOWN, Stated.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN, Stated.UNKNOWN, Stated.UNKNOWN, Spot.UNKNOWN)), setup.water());
        assertTrue(setup.told().answers().containsKey("water"));
        assertFalse(setup.told().answers().containsKey("water.offered"));
    }

    @Test
    void an_empty_list_says_there_is_none_and_a_missing_one_says_nothing() throws ProblemsFound {
        Setup setup = Given.setup("'heaters': [], 'lamps': 'not looked'");
        assertEquals(Optional.of("a list"), setup.told().answer("heaters"));
        assertEquals(Optional.empty(), setup.told().answer("lamps"));
        assertEquals(List.of(), setup.heaters());
    }

    // ---- the sections

    @Test
    void the_header() throws ProblemsFound {
        Setup setup = Given.setup("'$schema': 'x', 'title': ' Foster home 12 ', 'on': '2026-11-02', 'purpose': 'winter rest'");
        assertEquals("Foster home 12", setup.title());
        assertEquals(Optional.of(LocalDate.of(2026, 11, 2)), setup.on());
        assertEquals(Purpose.WINTER_REST, setup.purpose());
    }

    @Test
    void animals() throws ProblemsFound {
        Setup setup = Given.read("""
                {"format": 1, "animals": [
                  {"name": "Sedge", "species": "lampropeltis-californiae", "stage": "subadult", "sex": "male", "length": "3 ft 6 in", "mass": "13 oz",
                   "head-width": "14 mm", "diet": {"prey": "adult mouse", "meal": "27 g", "every": "weekly", "also": ["day old chick"], "live": "no", "thickest": "22 mm",
                    "thawing": "refrigerator", "unsuitable": ["citrus"], "plants": "0 %", "calcium": "every 2 d", "vitamin-d3": "every 14 d"},
                   "carapace": "14 cm", "snout-vent-length": "92 cm", "hatched": "2023-08-30", "condition": "good", "signs": ["mites"], "behaviour": ["pacing"], "gravid": "no", "little-pigment": "yes",
                   "shed": "in pieces", "last-meal": "2026-10-28", "last-shed": "2026-10-09", "papers": "yes", "from": "wild caught", "since": "2024-02-29"},
                  {"name": "Tansy", "species": "pantherophis-guttatus"}]}""");
        assertEquals(new Animal("Sedge", "lampropeltis-californiae", Stage.SUBADULT, Sex.MALE, centimetres(106.68, 106.68 * 0.05),
                known(13 * 28.349523125, 13 * 28.349523125 * 0.01, Unit.GRAM), known(14, 1, Unit.MILLIMETRE),
                centimetres(14, 0.5), centimetres(92, 92 * 0.05), Optional.of(LocalDate.of(2023, 8, 30)), new Diet(PreyKind.ADULT_MOUSE, known(27, 1.35, Unit.GRAM), known(7, 7 * 0.10, Unit.DAY), Set.of(PreyKind.DAY_OLD_CHICK),
                        Stated.YES, Stated.NO, known(22, 1, Unit.MILLIMETRE), Thawing.REFRIGERATOR, Set.of(HarmfulFood.CITRUS), known(0, 5, Unit.PERCENT),
                        known(2, 0.2, Unit.DAY), known(14, 14 * 0.10, Unit.DAY)),
                new Health(BodyCondition.GOOD, Set.of(Sign.MITES), Set.of(Behaviour.PACING), Stated.NO, Stated.YES, Shed.IN_PIECES,
                        Optional.of(LocalDate.of(2026, 10, 28)), Optional.of(LocalDate.of(2026, 10, 9))), Stated.YES, Provenance.WILD_CAUGHT,
                Optional.of(LocalDate.of(2024, 2, 29))), setup.animals().get(0));
        assertEquals(List.of("animal:Sedge", "animal:Tansy"), setup.subjects(SubjectKind.ANIMAL).stream().map(Subject::key).toList());
    }

    @Test
    void the_enclosure_with_its_openings() throws ProblemsFound {
        Enclosure box = Given.setup("""
                'enclosure': {'title': 'box', 'inside': {'length': '4 ft', 'depth': '60 cm', 'height': 'not looked'}, 'front': 'open top lid',
                 'warm-end': 'right', 'build': {'walls': {'of': 'PVC', 'thickness': '6 mm'}, 'top': {'of': 'mesh'}, 'base': 'not looked',
                 'mass': '20 kg', 'stand-carries': '80 kg'}, 'openings': [{'name': 'lid', 'kind': 'lid', 'gap': '14 mm', 'lock': 'catch', 'level': 'high'}, {'name': 'hole', 'kind': 'cable hole'}]}""").enclosure();
        assertEquals(new Enclosure("box", centimetres(121.92, 0.5), centimetres(60, 0.5), Measure.UNKNOWN, Front.OPEN_TOP_LID, Side.RIGHT,
                new Build(new Pane(PaneMaterial.PVC, known(6, 1, Unit.MILLIMETRE)), Pane.UNKNOWN, new Pane(PaneMaterial.MESH, Measure.UNKNOWN), Pane.UNKNOWN,
                        known(20, 1, Unit.KILOGRAM), known(80, 4, Unit.KILOGRAM)),
                List.of(new Opening("lid", OpeningKind.LID, known(14, 1, Unit.MILLIMETRE), Lock.CATCH, Level.HIGH),
                        new Opening("hole", OpeningKind.CABLE_HOLE, Measure.UNKNOWN, Lock.UNKNOWN, Level.UNKNOWN)), Stated.YES), box);
    }

    @Test
    void the_room_and_the_care() throws ProblemsFound {
        Setup setup = Given.setup("'room': {'coldest': '59 °F', 'hottest': '30 °C', 'lit-at-night': true, 'when-read': '21 °C', 'cooling': 'no', 'sun': 'no', 'smoke-alarm': 'yes', 'fumes': ['smoke'], 'disturbances': [], "
                + "'latitude': '-34 °'}, 'care': {'water-change': 'every 2 d', 'light-hours': '12 h'}, "
                + "'electrical': {'voltage': '230 V', 'outlet': '10 A', 'tariff': '0.31 per kWh', 'safety-switch': 'yes', 'drip-loop': 'yes', "
                + "'socket-below': 'no', 'splash-proof': 'no'}");
        assertEquals(new Room(known(15, 3, Unit.CELSIUS), known(30, 3, Unit.CELSIUS), known(21, 3, Unit.CELSIUS), Stated.NO, known(-34, 0.5, Unit.DEGREE),
                Stated.NO, Stated.YES, Set.of(Fume.SMOKE), Set.of(), Stated.YES), setup.room());
        assertEquals(new Care(known(2, 0.2, Unit.DAY), known(12, 0.25, Unit.HOUR)), setup.care());
        assertEquals(new Electrical(known(230, 23, Unit.VOLT), known(10, 0.01, Unit.AMPERE), known(0.31, 0.0031, Unit.PER_KILOWATT_HOUR),
                Stated.YES, Stated.YES, Stated.NO, Stated.NO), setup.electrical());
    }

    @Test
    void cleaning_people_watching_winter_and_others() throws ProblemsFound {
        Setup setup = Given.setup("""
                'hygiene': {'spot-clean': 'daily', 'substrate-change': 'every 30 d', 'disinfectant': 'peroxide', 'diluted-by-label': 'yes',
                 'contact-time': '10 min', 'rinsed': 'yes', 'shared-tools': 'no', 'quarantine-last': 'yes', 'hands-washed': 'no', 'washed-where': 'kitchen'},
                'household': {'small-children': 'yes', 'people-at-risk': 'no', 'veterinarian': 'yes', 'experienced': 'no', 'second-adult': 'yes',
                 'tongs': 'yes', 'warnings-known': 'no', 'handled-after-meals': 'no', 'settles-first': 'yes'},
                'monitoring': {'gauges': ['hygrometer'], 'check': 'daily', 'run-in': '5 d', 'emissivity-suits': 'no', 'changed-since': 'no'},
                'season': {'winter-rest': 'planned', 'checked': 'yes', 'emptied': 'no', 'weighed': 'yes', 'rests-at': '10 °C ± 1 °C', 'lasts': '10 wk'},
                'quarantine': {'other-reptiles': 'yes', 'same-room': 'no', 'kept-apart': '60 d'}""");
        assertEquals(new Hygiene(known(1, 0.1, Unit.DAY), known(30, 3, Unit.DAY), Disinfectant.PEROXIDE, Stated.YES, known(10, 2, Unit.MINUTE), Stated.YES,
                Stated.NO, Stated.YES, Stated.NO, WashedWhere.KITCHEN), setup.hygiene());
        assertEquals(new Household(Stated.YES, Stated.NO, Stated.YES, Stated.NO, Stated.YES, Stated.YES, Stated.NO, Stated.NO, Stated.YES), setup.household());
        assertEquals(new Monitoring(Set.of(Gauge.HYGROMETER), Stated.YES, known(1, 0.1, Unit.DAY), known(5, 0.5, Unit.DAY), Stated.NO, Stated.NO), setup.monitoring());
        assertEquals(new Season(WinterRest.PLANNED, Stated.YES, Stated.NO, Stated.YES, known(10, 1, Unit.CELSIUS), known(70, 7, Unit.DAY)), setup.season());
        assertEquals(new Quarantine(Stated.YES, Stated.NO, known(60, 6, Unit.DAY)), setup.quarantine());
    }

    @Test
    void heaters() throws ProblemsFound {
        assertEquals(new Heater("mat", HeaterKind.HEAT_MAT, known(14, 14 * 0.05, Unit.WATT),
                new Spot(Zone.ENCLOSURE, centimetres(15, 2), Measure.UNKNOWN, centimetres(0, 2)), Mount.OUTSIDE, Control.NONE, Stated.UNKNOWN, Stated.NO,
                Stated.YES, known(30, 1, Unit.CELSIUS), known(12, 0.25, Unit.HOUR), known(38, 2, Unit.CELSIUS), SurfaceMaterial.PLASTIC,
                centimetres(40, 1), centimetres(30, 3), centimetres(25, 3), Stated.YES, FIXED, Stated.UNKNOWN),
                heater("'kind': 'heat mat', 'power': '14 W', 'place': {'along': '15 cm', 'above': '0 cm'}, 'mounted': 'outside', 'control': 'none', "
                        + "'set-to': '30 °C', 'hours': '12 h', 'surface': '38 °C ± 2 °C', 'surface-of': 'plastic', 'nearest-rest': '40 cm', 'warms': '30 cm', "
                        + "'warms-across': '25 cm', 'buried': 'yes', " + FIXED_WRITTEN + ", 'reachable': false, 'guard': 'yes', 'probe-fixed': 'not looked'"));
    }

    @Test
    void lamps_with_what_lies_between_and_what_was_read() throws ProblemsFound {
        Lamp lamp = lamp("""
                , 'kind': 'UV tube', 'power': '24 W', 'lit-length': '55 cm', 'runs': 'across', 'hours': '12 h', 'control': 'timer',
                'shines': 'from above', 'fitted-on': '2026-03-01', 'life': '52 wk', %s, 'place': 'warm end', 'nearest-rest': '28 cm', 'minimum-distance': '30 cm',
                'between': [{'what': 'mesh', 'passes': '62 %%'}, {'what': 'glass'}], 'on-at-night': 'no',
                'readings': [{'index': 2.4, 'distance': '10 in', 'through-what-lies-between': 'no', 'instrument': 'lamp chart', 'on': '2026-10-20'}]""".formatted(FIXED_WRITTEN));
        assertEquals(List.of(new Screen(ScreenKind.MESH, known(62, 5, Unit.PERCENT)), new Screen(ScreenKind.GLASS, Measure.UNKNOWN)), lamp.between());
        assertEquals(Stated.YES, lamp.betweenTold());
        assertEquals(TubeRuns.ACROSS, lamp.runs());
        assertEquals(List.of(Control.TIMER, Shines.FROM_ABOVE, Optional.of(LocalDate.of(2026, 3, 1)), known(364, 36.4, Unit.DAY), FIXED),
                List.of(lamp.control(), lamp.shines(), lamp.fittedOn(), lamp.life(), lamp.fixing()));
        assertEquals(known(12, 0.25, Unit.HOUR), lamp.hours());
        assertEquals(List.of(new LampReading(known(2.4, 0.3 * 2.4, Unit.UV_INDEX), centimetres(25.4, 1), Stated.NO, Instrument.LAMP_CHART,
                Optional.of(LocalDate.of(2026, 10, 20)))), lamp.readings());
        assertEquals(List.of(centimetres(55, 0.5), centimetres(28, 1), centimetres(30, 1)), List.of(lamp.arcLength(), lamp.nearestRest(), lamp.minimumDistance()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {", 'between': [] | YES", ", 'between': 'not looked' | UNKNOWN", "`` | UNKNOWN", ", 'between': [{}] | YES"})
    void only_a_list_tells_what_lies_between(String members, Stated expected) throws ProblemsFound {
        assertEquals(expected, lamp(members).betweenTold());
    }

    @Test
    void the_substrate() throws ProblemsFound {
        assertEquals(Optional.of(new Substrate("coir", SubstrateKind.COIR, centimetres(7.62, 2), Moisture.DAMP_BELOW, Stated.YES, Stated.NO, Stated.YES)),
                Given.setup("'substrate': {'material': 'coir', 'kind': 'coir', 'depth': '3 in', 'moisture': 'damp below', 'holds-burrow': 'yes', 'dry-place': 'no', "
                        + "'laying-site': 'yes'}").substrate());
    }

    @Test
    void furnishings() throws ProblemsFound {
        assertEquals(new Furnishing("cave", FurnishingKind.STONE, new Spot(Zone.COOL_END, Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN),
                centimetres(10, 2), centimetres(32, 2), centimetres(0, 2), centimetres(24, 2), centimetres(5, 2), centimetres(35, 2),
                centimetres(22, 2), Stated.YES, Stated.NO, Stated.NO,
                Support.FLOOR, known(2.4, 0.12, Unit.KILOGRAM), centimetres(24, 0.5), centimetres(16, 0.5), known(50, 1, Unit.MILLIMETRE),
                Stated.YES, Stated.NO, Stated.NO, centimetres(34, 2)),
                furnishing(", 'kind': 'stone', 'place': 'cool end', 'from': '10 cm', 'to': '32 cm', 'bottom': '0 cm', 'top': '24 cm', 'extent': '22 cm', 'from-front': '5 cm', 'to-front': '35 cm', "
                        + "'inside-length': '24 cm', 'inside-width': '16 cm', 'entrance': '50 mm', 'beneath': 'yes', 'holds-animal': 'no', 'traps': 'no', "
                        + "'cover': 'yes', 'humid': 'no', 'stands-on': 'floor', 'mass': '2.4 kg', 'rest-height': '34 cm'"));
    }

    @ParameterizedTest
    @EnumSource(FurnishingKind.class)
    void cover_and_hide_come_from_the_kind_until_the_keeper_says_otherwise(FurnishingKind kind) throws ProblemsFound {
        String said = kind == FurnishingKind.UNKNOWN ? "not looked" : Words.of(kind);
        Furnishing told = furnishing(", 'kind': '" + said + "'");
        assertEquals(List.of(kind.givesCover(), kind.isHide()), List.of(told.cover(), told.hide()));
        assertEquals(kind == FurnishingKind.HUMID_HIDE ? Stated.YES : Stated.UNKNOWN, told.humid());
        Furnishing denied = furnishing(", 'kind': '" + said + "', 'cover': 'no', 'hide': 'no', 'humid': 'no'");
        assertEquals(List.of(Stated.NO, Stated.NO, Stated.NO), List.of(denied.cover(), denied.hide(), denied.humid()));
    }

    @ParameterizedTest
    @CsvSource({"one finger, 0.2, 0.2", "One Hand, 1.5, 1.2", "two-hands, 6, 4"})
    void lifting_words_are_coarse_masses(String words, double kilograms, double halfWidth) throws ProblemsFound {
        assertEquals(known(kilograms, halfWidth, Unit.KILOGRAM), furnishing(", 'mass': '" + words + "'").mass());
    }

    @Test
    void a_mass_nobody_looked_for_is_unknown() throws ProblemsFound {
        assertEquals(Measure.UNKNOWN, furnishing(", 'mass': 'not looked'").mass());
        assertEquals(Measure.UNKNOWN, furnishing("").mass());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"['dish'] | YES | NO", "'dish' | YES | NO", "['drip'] | NO | YES", "['mist', 'dish'] | YES | YES", "[] | NO | NO",
        "'not looked' | UNKNOWN | UNKNOWN"})
    void water(String offered, Stated dish, Stated drops) throws ProblemsFound {
        assertEquals(Optional.of(new Water(dish, drops, known(1.5, 1.5 * 0.10, Unit.LITRE), centimetres(4, 2), Stated.NO, Stated.NO,
                new Spot(Zone.COOL_END, Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN))), Given.setup("'water': {'offered': " + offered + ", 'volume': '1.5 L', 'depth': '4 cm', 'soaks': 'no', 'spills': 'no', "
                + "'place': 'cool end'}").water());
    }

    @Test
    void readings_are_as_good_as_what_they_were_read_with() throws ProblemsFound {
        List<Reading> readings = Given.setup("""
                'readings': [
                  {'name': 'a', 'of': 'air temperature', 'place': 'cool end', 'time': 'day', 'value': '24 °C', 'instrument': 'probe thermometer',
                   'in-beam': 'no', 'on': '2026-11-01'},
                  {'name': 'b', 'of': 'surface temperature', 'value': '41 °C', 'instrument': 'infrared thermometer'},
                  {'name': 'c', 'of': 'humidity', 'value': '55 %'},
                  {'name': 'd', 'of': 'UV index', 'value': '0'},
                  {'name': 'e', 'of': 'air temperature', 'value': '78 °F ± 1 °F', 'instrument': 'dial thermometer'},
                  {'name': 'f', 'of': 'air temperature', 'value': 'not looked'}]""").readings();
        assertEquals(new Reading("a", ReadingOf.AIR_TEMPERATURE, new Spot(Zone.COOL_END, Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN), DayTime.DAY,
                known(24, 1, Unit.CELSIUS), Instrument.PROBE_THERMOMETER, Stated.NO, Optional.of(LocalDate.of(2026, 11, 1))), readings.get(0));
        assertEquals(List.of(known(41, 2, Unit.CELSIUS), known(55, 10, Unit.PERCENT), known(0, 0.1, Unit.UV_INDEX)),
                readings.subList(1, 4).stream().map(Reading::value).toList());
        assertEquals(5.0 / 9 / Math.sqrt(3), readings.get(4).value().standardUncertainty(), 1e-15);
        assertEquals(Measure.UNKNOWN, readings.get(5).value());
    }

    // ---- places

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"warm end | WARM_END", "Warm End | WARM_END", "warm-end | WARM_END", "hot end | WARM_END", "hot side | WARM_END",
        "warm side | WARM_END", "cool end | COOL_END", "cold end | COOL_END", "cool side | COOL_END", "cold side | COOL_END", "middle | MIDDLE_THIRD",
        "left | LEFT_THIRD", "left end | LEFT_THIRD", "right | RIGHT_THIRD", "right end | RIGHT_THIRD", "basking place | BASKING_PLACE",
        "basking spot | BASKING_PLACE", "warm end, back | WARM_END", "back, warm end | WARM_END", "cool end, front, floor | COOL_END", "back | ENCLOSURE",
        "centre, high | ENCLOSURE", "warm end, hot side | WARM_END", "not looked | ENCLOSURE"})
    void a_place_in_words(String words, Zone zone) throws ProblemsFound {
        Spot spot = heater("'place': '" + words + "'").place();
        assertEquals(new Spot(zone, Measure.UNKNOWN, Measure.UNKNOWN, Measure.UNKNOWN), spot);
        assertEquals(zone != Zone.ENCLOSURE, spot.isKnown());
    }

    @Test
    void a_place_in_coordinates_in_words_or_both() throws ProblemsFound {
        assertEquals(new Spot(Zone.WARM_END, centimetres(82, 2), centimetres(30.48, 2), centimetres(38, 2)),
                heater("'place': {'zone': 'warm end', 'along': '82 cm', 'across': '1 ft', 'above': '38 cm'}").place());
        assertEquals(new Spot(Zone.ENCLOSURE, Measure.UNKNOWN, Measure.UNKNOWN, centimetres(38, 2)), heater("'place': {'above': '38 cm'}").place());
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "{'along': 'not looked'}", "'not looked'"})
    void a_place_that_tells_nothing_is_not_told(String place) throws ProblemsFound {
        Setup setup = Given.setup("'heaters': [{'name': 'mat', 'place': " + place + "}]");
        assertEquals(Spot.UNKNOWN, setup.heaters().get(0).place());
        assertFalse(setup.told().has("heaters[].place", setup.heaters().get(0).subject()));
    }

    // ---- what is told

    @Test
    void each_answer_is_told_under_the_name_of_its_part_as_it_was_written() throws ProblemsFound {
        Setup setup = Given.setup("""
                'enclosure': {'inside': {'length': ' 4 ft '}, 'openings': [{'name': 'lid', 'gap': '14 mm'}]}, 'room': {'lit-at-night': false},
                'heaters': [{'name': 'basking lamp', 'place': {'along': '10 cm'}, 'guard': 'not looked'}], 'lamps': [{'name': 'tube', 'readings': [{'index': 3.10}]}]""");
        Map<String, String> told = setup.told().answers();
        assertEquals("4 ft", told.get("enclosure.inside.length"));
        assertEquals("14 mm", told.get("enclosure.openings[lid].gap"));
        assertEquals("false", told.get("room.lit-at-night"));
        assertEquals("an object", told.get("heaters[basking lamp].place"));
        assertEquals("10 cm", told.get("heaters[basking lamp].place.along"));
        assertEquals("3.10", told.get("lamps[tube].readings[].index"));
        assertFalse(told.containsKey("heaters[basking lamp].guard"));
        assertTrue(setup.told().has("heaters[].place", setup.heaters().get(0).subject()));
    }

    // ---- the file

    @Test
    void a_byte_order_mark_before_utf_8_is_passed_over() throws ProblemsFound {
        assertEquals(Given.setup(""), Given.read("\uFEFF" + Given.text("")));
        assertEquals(List.of("setup.json:1:2: animal: the key \"animal\" is not known"),
                Given.problemsOf("\uFEFF{\"animal\": 1}").stream().map(Problem::text).filter(text -> text.contains("animal:")).map(text -> text.split(";")[0]).toList());
    }

    @Test
    void names_in_any_script_and_white_space_around_them() throws ProblemsFound {
        Setup setup = Given.read("{\"format\": 1, \"animals\": [{\"name\": \" 飼育 \uD83E\uDD8E é \", \"species\": \" pantherophis-guttatus \"}]}\r\n\t ");
        assertEquals("飼育 \uD83E\uDD8E é", setup.animals().get(0).name());
        assertEquals("pantherophis-guttatus", setup.animals().get(0).species());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "th-TH-u-ca-buddhist-nu-thai"})
    void the_locale_of_the_machine_changes_nothing(String locale) throws ProblemsFound {
        String members = "'on': '2026-11-02', 'purpose': 'QUARANTINE', 'heaters': [{'name': 'mat', 'place': 'MIDDLE', 'kind': 'RADIANT PANEL', 'power': '14.5 W'}]";
        Setup before = Given.setup(members);
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            assertEquals(before, Given.setup(members));
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Test
    void the_ids_alone_suffice_to_read() throws ProblemsFound {
        assertEquals(Given.setup(""), SetupReader.read("setup.json", Given.text("").getBytes(StandardCharsets.UTF_8), List.of("pantherophis-guttatus")));
    }
}
