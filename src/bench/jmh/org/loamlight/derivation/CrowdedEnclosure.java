package org.loamlight.derivation;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.ProblemsFound;
import org.loamlight.setup.Setup;
import org.loamlight.setup.SetupReader;

/** A made-up enclosure that answers every question quantities are derived from, with as many pieces as asked for. */
final class CrowdedEnclosure {
    /** What must come out of it: everything that is computed, so that no work is left out of the time. Mere answers cost nothing. */
    static final Set<Topic> COMPUTED = EnumSet.of(Topic.COVER_PIECES, Topic.HIDES, Topic.HEAT_SOURCES, Topic.LONGEST_OPEN_STRETCH, Topic.UV_INDEX,
            Topic.LAMP_DISTANCE, Topic.COLD_ROOM_AIR_BY_DAY, Topic.COLD_ROOM_AIR_BY_NIGHT, Topic.HOT_ROOM_AIR_BY_DAY, Topic.RUNAWAY_AIR,
            Topic.RUNAWAY_SURFACE, Topic.RUNAWAY_HOURS, Topic.OUTAGE_HOURS, Topic.NEEDED_POWER, Topic.AIR_CHANGES, Topic.HEATER_SURFACE,
            Topic.HEATER_DISTANCE, Topic.BASKING_PATCH, Topic.UV_LIT_SHARE, Topic.SHADE_DISTANCE, Topic.LAMP_HEIGHT_LEAST, Topic.LAMP_HEIGHT_MOST,
            Topic.NATURAL_DAY_LENGTH, Topic.PANE_HUMIDITY_BY_NIGHT, Topic.DEW_POINT, Topic.IMPLIED_HUMIDITY, Topic.WATER_PER_DAY,
            Topic.SUBSTRATE_VOLUME, Topic.SUBSTRATE_TO_BUY, Topic.SUBSTRATE_MASS, Topic.TOTAL_LOAD, Topic.COVER_SHARE, Topic.REFUGE_DISTANCE,
            Topic.HIDE_ROOM, Topic.MEAL_SHARE, Topic.ENERGY_INTAKE, Topic.CONNECTED_POWER, Topic.OUTLET_CURRENT, Topic.ENERGY_PER_DAY,
            Topic.ENERGY_PER_MONTH, Topic.COST_PER_DAY, Topic.COST_PER_MONTH);

    private static final int ROWS = 4;
    private static final double LENGTH = 240;
    private static final double DEPTH = 80;
    private static final List<String> KINDS = List.of("hide", "cork", "stone", "plant", "branch", "bark", "leaf litter", "humid hide", "ledge", "water dish");

    private static final String BOX = """
            {"format": 1, "on": "2026-11-02",
             "animals": [{"name": "Marl", "species": "lampropeltis-californiae", "stage": "adult", "length": "112 cm", "mass": "430 g",
               "diet": {"prey": "adult mouse", "meal": "40 g", "every": "10 d"}}],
             "enclosure": {"inside": {"length": "240 cm", "depth": "80 cm", "height": "70 cm"}, "front": "glass doors", "warm-end": "left",
               "build": {"walls": {"of": "plywood", "thickness": "12 mm"}, "front-pane": {"of": "glass", "thickness": "4 mm"},
                 "top": {"of": "plywood", "thickness": "12 mm"}, "base": {"of": "plywood", "thickness": "12 mm"}, "mass": "60 kg", "stand-carries": "300 kg"},
               "openings": [{"name": "doors", "kind": "door", "gap": "3 mm"}, {"name": "vent", "kind": "vent", "gap": "2 mm"}]},
             "room": {"coldest": "15 °C", "hottest": "30 °C", "when-read": "20 °C", "cooling": "no", "latitude": "52 °", "lit-at-night": "no"},
             "heaters": [
               {"name": "basking lamp", "kind": "basking lamp", "power": "60 W", "place": {"along": "30 cm", "across": "40 cm", "above": "62 cm"},
                "mounted": "inside", "control": "timer", "hours": "12 h", "reachable": "no", "guard": "no", "surface": "140 °C", "surface-of": "glass",
                "nearest-rest": "45 cm", "warms": "40 cm", "warms-across": "35 cm", "on-at-night": "no"},
               {"name": "panel", "kind": "radiant panel", "power": "80 W", "place": {"along": "60 cm", "across": "40 cm", "above": "68 cm"}, "mounted": "inside",
                "control": "dimming thermostat", "probe-fixed": "yes", "set-to": "28 °C", "hours": "24 h", "reachable": "no", "guard": "yes", "on-at-night": "yes"},
               {"name": "mat", "kind": "heat mat", "power": "28 W", "place": {"along": "20 cm", "across": "20 cm", "above": "0 cm"}, "mounted": "outside",
                "control": "thermostat", "probe-fixed": "yes", "set-to": "30 °C", "hours": "24 h", "surface": "32 °C", "surface-of": "plastic", "on-at-night": "yes"},
               {"name": "ceramic", "kind": "ceramic heater", "power": "100 W", "place": {"along": "45 cm", "across": "40 cm", "above": "60 cm"}, "mounted": "inside",
                "control": "dimming thermostat", "probe-fixed": "yes", "set-to": "26 °C", "hours": "24 h", "reachable": "no", "guard": "yes", "on-at-night": "yes"}],
             "lamps": [
               {"name": "tube", "kind": "UV tube", "power": "39 W", "lit-length": "85 cm", "runs": "along", "hours": "12 h",
                "place": {"along": "60 cm", "across": "30 cm", "above": "66 cm"}, "between": [], "minimum-distance": "20 cm",
                "readings": [{"index": "2.4", "distance": "30 cm", "instrument": "UV meter"}, {"index": "1.1", "distance": "50 cm", "instrument": "UV meter"}],
                "nearest-rest": "32 cm", "on-at-night": "no"},
               {"name": "bulb", "kind": "UV bulb", "power": "70 W", "hours": "12 h", "place": {"along": "35 cm", "across": "45 cm", "above": "64 cm"},
                "between": [{"what": "mesh", "passes": "62 %"}], "minimum-distance": "30 cm",
                "readings": [{"index": "3.1", "distance": "30 cm", "through-what-lies-between": "no", "instrument": "UV meter"}], "on-at-night": "no"},
               {"name": "second tube", "kind": "UV tube", "power": "24 W", "lit-length": "55 cm", "runs": "across", "hours": "12 h",
                "place": {"along": "120 cm", "across": "40 cm", "above": "66 cm"}, "between": [], "minimum-distance": "20 cm",
                "readings": [{"index": "1.2", "distance": "30 cm", "instrument": "UV meter"}], "on-at-night": "no"}],
             "substrate": {"material": "topsoil and sand", "kind": "soil and sand", "depth": "10 cm", "moisture": "damp below"},
             "furnishings": [PIECES],
             "water": {"offered": ["dish"], "volume": "1 L"},
             "readings": [
               {"name": "cool air", "of": "air temperature", "place": "cool end", "time": "day", "value": "23.5 °C", "instrument": "probe thermometer"},
               {"name": "warm air", "of": "air temperature", "place": "warm end", "time": "day", "value": "27 °C", "instrument": "probe thermometer"},
               {"name": "night air", "of": "air temperature", "place": "middle", "time": "night", "value": "20 °C", "instrument": "probe thermometer"},
               {"name": "night floor", "of": "surface temperature", "place": "middle", "time": "night", "value": "20 °C", "instrument": "infrared thermometer"},
               {"name": "slate", "of": "surface temperature", "place": "basking place", "time": "day", "value": "32 °C", "instrument": "infrared thermometer"},
               {"name": "night hygrometer", "of": "humidity", "place": "middle", "time": "night", "value": "65 %", "instrument": "digital hygrometer"},
               {"name": "hygrometer", "of": "humidity", "place": "cool end", "time": "day", "value": "55 %", "instrument": "digital hygrometer"}],
             "care": {"water-change": "daily", "light-hours": "12 h"},
             "electrical": {"voltage": "230 V", "outlet": "16 A", "tariff": "0.3 per kWh"}}
            """;

    private CrowdedEnclosure() {
    }

    /** @param pieces a multiple of four, which stand in four rows without touching */
    static Setup with(int pieces) throws ProblemsFound {
        String furnishings = IntStream.range(0, pieces).mapToObj(i -> piece(i, pieces / ROWS)).collect(Collectors.joining(",\n"));
        return SetupReader.read("crowded.json", BOX.replace("PIECES", furnishings).getBytes(StandardCharsets.UTF_8), List.of("lampropeltis-californiae"));
    }

    private static String piece(int number, int columns) {
        double width = LENGTH / columns;
        double from = number % columns * width;
        double front = (double) (number / columns) * DEPTH / ROWS;
        String kind = KINDS.get(number % KINDS.size());
        String hide = kind.endsWith("hide") ? ", \"inside-length\": \"20 cm\", \"inside-width\": \"15 cm\", \"entrance\": \"40 mm\"" : "";
        return "{\"name\": \"piece " + number + "\", \"kind\": \"" + kind + "\", \"place\": {\"along\": \"" + (from + width / 2) + " cm\"}, \"from\": \"" + from
                + " cm\", \"to\": \"" + (from + width * 0.9) + " cm\", \"from-front\": \"" + front + " cm\", \"to-front\": \"" + (front + DEPTH / ROWS * 0.9)
                + " cm\", \"bottom\": \"0 cm\", \"top\": \"" + (12 + number % 9) + " cm\", \"rest-height\": \"" + (12 + number % 9)
                + " cm\", \"stands-on\": \"floor\", \"mass\": \"" + (0.2 + number % 5) + " kg\"" + hide + "}";
    }

    /** Limits like those of a kingsnake, so that values computed towards a limit are computed. */
    static Wanted wanted() {
        double none = Double.POSITIVE_INFINITY;
        return new Wanted.Builder().add(Topic.UV_INDEX, 1.1, 3.0).add(Topic.AIR_TEMPERATURE_BY_DAY, 21, 27).add(Topic.AIR_TEMPERATURE_BY_NIGHT, 15, none)
                .add(Topic.SURFACE_TEMPERATURE_BY_DAY, -none, 35).add(Topic.RUNAWAY_AIR, -none, 38).add(Topic.RUNAWAY_SURFACE, -none, 43)
                .add(Topic.COLD_ROOM_AIR_BY_DAY, 21, none).add(Topic.COLD_ROOM_AIR_BY_NIGHT, 15, none).build();
    }
}
