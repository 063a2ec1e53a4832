package org.loamlight.workbook.visit;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loamlight.quantity.Topic;
import org.loamlight.quantity.Zone;
import org.loamlight.setup.BuiltInFile;
import org.loamlight.setup.Section;
import org.loamlight.setup.Stated;

/** In which order one walks and works at an enclosure, as rules/walk.json says. */
final class WalkPlan {
    private final List<Stop> stops;
    private final List<String> never;
    /** By the id of a topic the question whose answer is its value. */
    private final Map<String, String> values;

    private WalkPlan(Section plan) {
        stops = plan.unnamed("stops", WalkPlan::stop);
        never = plan.texts("never");
        values = plan.textsByKey("values");
        values.keySet().stream().filter(id -> Topic.named(id).isEmpty()).forEach(id -> plan.problem("values", "no topic has the id " + id, "see Topic"));
        plan.reportUnasked();
    }

    /** The plan in the program. */
    static WalkPlan builtIn() {
        return BuiltInFile.read("walk.json", "rules/walk.json", WalkPlan::new);
    }

    private static Stop stop(Section stop) {
        Set<Zone> zones = stop.texts("zones").stream().map(id -> Zone.named(id).orElseGet(() -> {
            stop.problem("zones", "found \"" + id + "\"", "write a zone such as warm-end");
            return Zone.ENCLOSURE;
        })).collect(Collectors.toSet());
        return new Stop(stop.requiredText("title", "a title"), stop.requiredText("say", "a sentence"), stop.texts("parts"), Set.copyOf(stop.texts("always")), zones,
                stop.stated("night") == Stated.YES);
    }

    List<Stop> stops() {
        return stops;
    }

    /** The question whose answer is the value of a topic, with {@code []} for the part; empty for what is worked out. */
    Optional<String> answerOf(Topic topic) {
        return Optional.ofNullable(values.get(topic.id()));
    }

    /** Questions nobody asks at a visit: what things are called, and what is asked in words of its own. */
    boolean isNeverAsked(String pattern) {
        return never.stream().anyMatch(path -> pattern.equals(path) || pattern.startsWith(path + "[]"));
    }

    /** Where a question is asked: at the stop that names it, or its part, most closely. Empty when none does. */
    Optional<Stop> stop(String pattern) {
        return stops.stream().filter(stop -> stop.fit(pattern).isPresent()).max(Comparator.comparingInt(stop -> stop.fit(pattern).orElseThrow()));
    }

    /** Where a reading is taken; the plan has a stop for each place and for the night. */
    Stop stop(Zone zone, boolean byNight) {
        return stops.stream().filter(stop -> byNight ? stop.night() : stop.zones().contains(zone)).findFirst()
                .orElseThrow(() -> new IllegalStateException("rules/walk.json has no stop for readings in " + zone));
    }
}
