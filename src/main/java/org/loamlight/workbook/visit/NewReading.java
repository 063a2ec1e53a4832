package org.loamlight.workbook.visit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Unit;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.DayTime;
import org.loamlight.setup.JsonPlace;
import org.loamlight.setup.JsonValue;
import org.loamlight.setup.ReadingOf;
import org.loamlight.setup.Words;

/**
 * A reading nobody took yet, wanted for a limit.
 *
 * @param zone where; the middle third where any place would do
 */
record NewReading(ReadingOf of, DayTime time, Zone zone) {
    private static final Pattern KEY = Pattern.compile("new reading: ([a-zA-Z ]+); (day|night); ([a-z-]+)");
    private static final Map<Topic, ReadingOf> READ = Map.of(
            Topic.AIR_TEMPERATURE_BY_DAY, ReadingOf.AIR_TEMPERATURE, Topic.AIR_TEMPERATURE_BY_NIGHT, ReadingOf.AIR_TEMPERATURE,
            Topic.SURFACE_TEMPERATURE_BY_DAY, ReadingOf.SURFACE_TEMPERATURE, Topic.SURFACE_TEMPERATURE_BY_NIGHT, ReadingOf.SURFACE_TEMPERATURE,
            Topic.RESTING_TEMPERATURE_BY_DAY, ReadingOf.SURFACE_TEMPERATURE, Topic.RELATIVE_HUMIDITY, ReadingOf.HUMIDITY);

    /** The reading a limit waits for; empty for a limit no reading in the enclosure tells of. */
    static Optional<NewReading> wantedFor(ResolvedLimit limit) {
        Zone zone = limit.place().zone();
        return zone == Zone.ITEM ? Optional.empty() : Optional.ofNullable(READ.get(limit.topic()))
                .map(of -> new NewReading(of, isByNight(limit.topic()) ? DayTime.NIGHT : DayTime.DAY, zone == Zone.ENCLOSURE ? Zone.MIDDLE_THIRD : zone));
    }

    static boolean isByNight(Topic topic) {
        return topic == Topic.AIR_TEMPERATURE_BY_NIGHT || topic == Topic.SURFACE_TEMPERATURE_BY_NIGHT;
    }

    /** "new reading: air temperature; night; cool-end". */
    String key() {
        return "new reading: " + Words.of(of) + "; " + Words.of(time) + "; " + zone.id();
    }

    /** The reading a key asks for; empty for any other key. */
    static Optional<NewReading> of(String key) {
        Matcher parts = KEY.matcher(key);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Optional<ReadingOf> of = Words.find(parts.group(1), ReadingOf.class);
        Optional<DayTime> time = Words.find(parts.group(2), DayTime.class);
        return of.flatMap(found -> time.flatMap(when -> Zone.named(parts.group(3)).map(where -> new NewReading(found, when, where))));
    }

    Unit unit() {
        return of == ReadingOf.HUMIDITY ? Unit.PERCENT : Unit.CELSIUS;
    }

    /** "air temperature by night, cool end". */
    String name() {
        return Words.of(of) + " by " + Words.of(time) + ", " + zone.id().replace('-', ' ');
    }

    /**
     * The element of the list of readings.
     *
     * @param taken names that are taken already: a number is put behind one of them
     */
    JsonValue.JsonObject element(JsonValue value, String on, List<String> taken) {
        JsonPlace at = value.at();
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("name", new JsonValue.JsonText(at, free(taken)));
        members.put("of", new JsonValue.JsonText(at, Words.of(of)));
        members.put("place", new JsonValue.JsonText(at, zone.id().replace('-', ' ').replace(" third", "")));
        members.put("time", new JsonValue.JsonText(at, Words.of(time)));
        members.put("value", value);
        members.put("on", new JsonValue.JsonText(at, on));
        return new JsonValue.JsonObject(at, members);
    }

    private String free(List<String> taken) {
        String name = name();
        for (int number = 2; taken.contains(name); number++) {
            name = name() + " " + number;
        }
        return name;
    }
}
