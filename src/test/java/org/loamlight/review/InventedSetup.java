package org.loamlight.review;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * An invented enclosure as a keeper would describe it for a review: good in most, with one or two slips. Animals, people and clubs are made up; the
 * numbers are our own, chosen around the limits of the profiles, and no example to follow. The same seed makes the same setup.
 */
public final class InventedSetup {
    private static final List<String> NAMES = List.of("Alder", "Burdock", "Clover", "Dewberry", "Eyebright", "Fennel", "Gorse", "Heather", "Ivy", "Juniper", "Knapweed", "Lovage",
            "Mallow", "Nettle", "Orache", "Pignut", "Quince", "Ramson", "Saffron", "Thistle", "Umber", "Vetch", "Willow", "Yarrow", "Aster", "Bramble", "Comfrey", "Dill", "Elder",
            "Flax", "Ginger", "Hazel");
    /** How keepers house and feed each species; lengths in cm, mass in g, temperatures in °C. */
    private static final List<Kind> KINDS = List.of(
            new Kind("pantherophis-guttatus", 120, 560, 150, 65, 80, 24, 32, 20, 55, "2.2", "\"prey\": \"adult mouse\", \"meal\": \"26 g\", \"every\": \"every 12 d\""),
            new Kind("lampropeltis-californiae", 115, 640, 120, 60, 60, 24, 32, 20, 50, "2.2", "\"prey\": \"adult mouse\", \"meal\": \"26 g\", \"every\": \"every 12 d\""),
            new Kind("lampropeltis-triangulum", 100, 380, 110, 55, 50, 23, 31, 20, 65, "2.2", "\"prey\": \"adult mouse\", \"meal\": \"22 g\", \"every\": \"every 12 d\""),
            new Kind("python-regius", 125, 1600, 150, 65, 60, 26, 33, 23, 65, "2", "\"prey\": \"young rat\", \"meal\": \"70 g\", \"every\": \"every 14 d\""),
            new Kind("boa-imperator", 180, 4200, 185, 110, 95, 26, 33, 23, 65, "2.2", "\"prey\": \"adult rat\", \"meal\": \"150 g\", \"every\": \"every 21 d\""),
            new Kind("heterodon-nasicus", 60, 180, 90, 45, 45, 24, 33, 19, 45, "2.2", "\"prey\": \"young mouse\", \"meal\": \"9 g\", \"every\": \"every 8 d\""),
            new Kind("thamnophis-sirtalis", 80, 160, 100, 50, 50, 22, 32, 18, 60, "2.2", "\"prey\": \"fish\", \"meal\": \"12 g\", \"every\": \"every 6 d\""),
            new Kind("pogona-vitticeps", 48, 420, 130, 65, 65, 25, 41, 20, 40, "5", "\"plants\": \"75 %\", \"calcium\": \"every 2 d\""),
            new Kind("eublepharis-macularius", 21, 62, 90, 45, 45, 24, 33, 20, 50, "1", "\"prey\": \"crickets\", \"every\": \"every 3 d\", \"calcium\": \"every 3 d\""),
            new Kind("tiliqua-scincoides", 50, 480, 130, 60, 60, 24, 38, 20, 50, "3", "\"plants\": \"50 %\", \"calcium\": \"every 4 d\""),
            new Kind("correlophus-ciliatus", 20, 42, 50, 50, 75, 22, 27, 19, 65, "1", "\"every\": \"every 2 d\", \"calcium\": \"every 3 d\""));
    private static final List<String> SLIPS = List.of("guard", "control", "box", "gap", "water", "heat", "uv", "fumes", "damp", "unknown");

    private final Random random;
    private final int number;

    /** @param number of the member or home, from 1; also the seed */
    public InventedSetup(int number) {
        this.random = new Random(41L * number);
        this.number = number;
    }

    private record Kind(String species, int length, int mass, int boxLength, int boxDepth, int boxHeight, int cool, int basking, int night, int damp, String index, String diet) {
    }

    private String slip = "";

    /** As members of many places would send it, for measuring: at one of 26 latitudes, on one of 26 days. */
    public static String somewhere(int number) {
        String latitude = String.format(Locale.ROOT, "\"latitude\": \"%d °\"", 35 + number / 26 % 26);
        return new InventedSetup(number).json("Invented setup %d", number % 2 == 0).replace("\"latitude\": \"52 °\"", latitude);
    }

    /** @param title has a place for the number */
    public String json(String title, boolean livesHere) {
        Kind kind = KINDS.get((number * 7 + 3) % KINDS.size());
        slip = random.nextInt(4) == 0 ? "" : SLIPS.get(random.nextInt(SLIPS.size()));
        int box = is("box") ? kind.boxLength * 6 / 10 : kind.boxLength + 5 * random.nextInt(4);
        String day = String.format(Locale.ROOT, "2026-10-%02d", 3 + number % 26);
        return String.format(Locale.ROOT, """
                {
                  "$schema": "../../docs/setup.schema.json",
                  "format": 1,
                  "on": "%s",
                  "title": "%s",
                  "animals": [
                    {"name": "%s", "species": "%s", "stage": "adult", "sex": "%s", "length": "%d cm", "mass": "%d g", "condition": "good", "signs": [], "behaviour": [],
                     "diet": {%s}, "from": "%s"%s}
                  ],
                """, day, String.format(Locale.ROOT, title, number), NAMES.get(number % NAMES.size()), kind.species, random.nextBoolean() ? "female" : "male", kind.length,
                kind.mass + 5 * random.nextInt(9), kind.diet, random.nextInt(4) == 0 ? "rehomed" : "captive bred", livesHere ? ", \"since\": \"202" + random.nextInt(6) + "-04-17\"" : "")
                + enclosure(kind, box) + heat(kind, box) + inside(kind, box) + readings(kind, day);
    }

    private boolean is(String name) {
        return slip.equals(name);
    }

    private String enclosure(Kind kind, int box) {
        return String.format(Locale.ROOT, """
                  "enclosure": {
                    "inside": {"length": "%d cm", "depth": "%d cm", "height": "%d cm"}, "front": "glass doors", "warm-end": "right",
                    "openings": [
                      {"name": "doors", "kind": "door", "gap": "%d mm", "lock": "key lock", "level": "low"},
                      {"name": "vent", "kind": "vent", "gap": "3 mm", "level": "high"}
                    ]
                  },
                  "room": {"coldest": "18 °C", "hottest": "27 °C", "when-read": "21 °C", "cooling": "yes", "latitude": "52 °", "sun": "no", "smoke-alarm": "yes", "fumes": [%s], "disturbances": [],
                           "lit-at-night": "no"},
                """, box, kind.boxDepth, kind.boxHeight, is("gap") ? 16 : 2, is("fumes") ? "\"smoke\"" : "");
    }

    private String heat(Kind kind, int box) {
        return String.format(Locale.ROOT, """
                  "heaters": [
                    {"name": "basking lamp", "kind": "halogen lamp", "power": "50 W", "place": {"along": "%d cm", "across": "%d cm", "above": "%d cm"}, "mounted": "inside",
                     "control": "%s", "set-to": "%d °C", "hours": "12 h", "probe-fixed": "yes", "reachable": "yes", "guard": "%s", "nearest-rest": "35 cm", "warms": "30 cm",
                     "warms-across": "30 cm", "holder": "ceramic", "holder-rating": "100 W", "hung": "screwed", "on-at-night": "no"}
                  ],
                  "lamps": [%s],
                """, box - 20, kind.boxDepth / 2, kind.boxHeight - 6, is("control") ? "none" : "dimming thermostat", kind.basking, is("guard") ? "no" : "yes",
                is("uv") ? "" : "\n    " + tube(kind, box) + "\n  ");
    }

    private String tube(Kind kind, int box) {
        return String.format(Locale.ROOT, "{\"name\": \"UV tube\", \"kind\": \"UV tube\", \"power\": \"24 W\", \"lit-length\": \"%d cm\", \"runs\": \"along\", \"hours\": \"12 h\","
                + " \"place\": {\"along\": \"%d cm\", \"across\": \"%d cm\", \"above\": \"%d cm\"}, \"between\": [],\n     \"readings\": [{\"index\": \"%s\", \"distance\": \"30 cm\","
                + " \"instrument\": \"UV meter\"}], \"nearest-rest\": \"32 cm\",%s \"shines\": \"from above\", \"control\": \"timer\", \"on-at-night\": \"no\"}",
                Math.min(38, box / 3), box - Math.min(38, box / 3) / 2 - 6, kind.boxDepth / 2, kind.boxHeight - 5, kind.index, number % 4 == 0 ? "" : " \"minimum-distance\": \"25 cm\",");
    }

    private String inside(Kind kind, int box) {
        int hide = kind.length > 90 ? 34 : 22;
        return String.format(Locale.ROOT, """
                  "substrate": {"material": "topsoil, sand and leaf litter", "kind": "soil and sand", "depth": "11 cm", "moisture": "%s", "dry-place": "yes", "holds-burrow": "yes"},
                  "furnishings": [
                    {"name": "cool hide", "kind": "hide", "from": "0 cm", "to": "%d cm", "humid": "yes", "inside-length": "%d cm", "inside-width": "22 cm", "entrance": "60 mm",
                     "stands-on": "floor", "mass": "one hand"},
                    {"name": "thicket", "kind": "plant", "from": "%d cm", "to": "%d cm", "stands-on": "substrate", "mass": "one finger"},
                    {"name": "warm hide", "kind": "hide", "from": "%d cm", "to": "%d cm", "humid": "no", "inside-length": "%d cm", "inside-width": "22 cm", "entrance": "60 mm",
                     "stands-on": "floor", "mass": "one hand"%s}
                  ],
                  "water": {"offered": ["dish"%s], "volume": "1 L", "depth": "3 cm", "place": "cool end"},
                """, is("damp") ? "wet" : "damp below", hide, hide - 2, hide, box - hide - 4, box - hide, box, hide - 2, number % 3 == 0 ? "" : ", \"beneath\": \"yes\"", kind.damp > 60 ? ", \"mist\"" : "");
    }

    private String readings(Kind kind, String day) {
        String humidity = is("unknown") ? "" : String.format(Locale.ROOT, """
                    {"name": "damp", "of": "humidity", "place": "middle", "time": "day", "value": "%d %%", "instrument": "digital hygrometer", "on": "%s"},
                """, kind.damp + random.nextInt(6), day);
        String night = is("unknown") ? "" : String.format(Locale.ROOT, """
                    {"name": "night air", "of": "air temperature", "place": "cool end", "time": "night", "value": "%d °C", "instrument": "probe thermometer", "in-beam": "no", "on": "%s"},
                """, kind.night + random.nextInt(2), day);
        return String.format(Locale.ROOT, """
                  "readings": [
                %s%s    {"name": "cool air", "of": "air temperature", "place": "cool end", "time": "day", "value": "%d °C", "instrument": "probe thermometer", "in-beam": "no", "on": "%s"},
                    {"name": "basking stone", "of": "surface temperature", "place": "basking place", "time": "day", "value": "%d °C", "instrument": "infrared thermometer", "on": "%s"}
                  ],
                  "care": {"water-change": "%s", "light-hours": "12 h"},
                  "electrical": {"voltage": "230 V", "safety-switch": "yes", "drip-loop": "yes", "splash-proof": "yes"},
                  "monitoring": {"gauges": ["air thermometer", "hygrometer"], "check": "daily", "changed-since": "no"},
                  "hygiene": {"spot-clean": "daily", "substrate-change": "every 28 d", "hands-washed": "yes", "washed-where": "bathroom"}
                }
                """, humidity, night, is("heat") ? kind.cool + 6 : kind.cool, day, is("heat") ? kind.basking + 9 : kind.basking, day, is("water") ? "every 5 d" : "daily");
    }
}
