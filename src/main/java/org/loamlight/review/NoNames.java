package org.loamlight.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes the names out of results of an earlier review that had them, so that an anonymous one can be compared with it. */
final class NoNames {
    private NoNames() {
    }

    /** The setup as it is called today: its parts by today's names, parts that are gone by their kind and a number; without sentences. */
    static Reviewed of(Reviewed before, Reviewed now, NameKey key) {
        Map<String, String> known = new HashMap<>();
        key.names().forEach((anonymous, real) -> known.putIfAbsent(kind(anonymous) + ":" + real, anonymous));
        return renamed(before, now.label(), now.file(), known);
    }

    private static String kind(String anonymous) {
        return anonymous.replaceFirst(" \\d+$", "");
    }

    /** A setup that is there no more. */
    static Reviewed gone(Reviewed before, int number) {
        return renamed(before, "gone " + number, "gone " + number, new HashMap<>());
    }

    private static Reviewed renamed(Reviewed before, String title, String file, Map<String, String> known) {
        Judged judged = before.judged().orElseThrow();
        List<Kept> animals = new ArrayList<>();
        judged.animals().forEach(animal -> animals.add(new Kept(name("animal", animal.name(), known), animal.species(), animal.english())));
        List<Point> points = new ArrayList<>();
        judged.points().forEach(point -> points.add(renamed(point, known)));
        return new Reviewed(before.number(), file, 0, before.sha256(), before.basis(), List.of(), false, Optional.of(new Judged(judged.on(), judged.dayTaken(), title, animals,
                judged.livesHere(), judged.conclusion(), judged.inWords(), points)));
    }

    private static String name(String kind, String real, Map<String, String> known) {
        return known.computeIfAbsent(kind + ":" + real, first -> "former " + kind + " " + known.size());
    }

    private static Point renamed(Point point, Map<String, String> known) {
        int colon = point.subject().indexOf(':');
        String kind = colon < 0 ? point.subject() : point.subject().substring(0, colon);
        String subject = colon < 0 ? kind : kind + ":" + name(kind, point.subject().substring(colon + 1), known);
        Optional<PointWords> words = point.words().map(told -> new PointWords(told.title(), colon < 0 ? kind : subject.substring(colon + 1), "", "", "", "", told.by(), told.due(),
                told.citations(), told.leave()));
        return new Point(point.criterion(), subject, point.result(), point.grade(), point.need(), words);
    }
}
