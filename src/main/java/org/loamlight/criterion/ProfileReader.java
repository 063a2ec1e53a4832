package org.loamlight.criterion;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.loamlight.quantity.Unit;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Section;
import org.loamlight.setup.Stated;
import org.loamlight.setup.SubstrateKind;

/** Reads the profile of a species. */
final class ProfileReader {
    private ProfileReader() {
    }

    /** @param every the limits for every reptile */
    static Profile profile(Section profile, List<Limit> every) {
        Map<String, Citation> habits = new LinkedHashMap<>();
        profile.member("format");
        String id = profile.requiredText("id", "the scientific name in lower case with a hyphen");
        String english = profile.requiredText("english", "the common name");
        String latin = profile.requiredText("latin", "the scientific name");
        if (profile.member("habits").isEmpty()) {
            profile.lacks("habits", "say how it lives, each with its source");
        }
        Species species = profile.section("habits", section -> new Species(id, english, latin,
                habit(section, "form", Form.class, habits), habit(section, "lives", Lives.class, habits),
                habit(section, "active", Active.class, habits), habit(section, "digs", Stated.class, habits),
                habit(section, "climbs", Stated.class, habits), habit(section, "basks", Stated.class, habits),
                habit(section, "uv", UvUse.class, habits), habit(section, "drinks", Drinks.class, habits),
                habit(section, "soaks", Stated.class, habits), habit(section, "eats", Eats.class, habits),
                habit(section, "company", Company.class, habits), habit(section, "eats-snakes", Stated.class, habits),
                habit(section, "lays-eggs", Stated.class, habits), habit(section, "rests-in-winter", Stated.class, habits),
                habit(section, "dangerous", Stated.class, habits), habit(section, "restricted", Stated.class, habits),
                habit(section, "specialist", Stated.class, habits), adultLength(section, habits),
                ground(section, "harmful-ground", habits), ground(section, "unsuited-ground", habits)));
        List<Limit> own = profile.unnamed("limits", LimitReader::limit);
        return new Profile(species, profile.texts("also"), profile.text("note"), habits, withShared(own, every),
                profile.unnamed("not-meant", one -> new NotMeant(one.requiredText("criterion", "a criterion"),
                        one.requiredText("reason", "a reason"))));
    }

    private static <E extends Enum<E>> E habit(Section habits, String key, Class<E> type, Map<String, Citation> cited) {
        if (habits.member(key).isEmpty()) {
            habits.lacks(key, "say {\"is\": ..., \"source\": ..., \"standing\": ...}");
        }
        return habits.section(key, habit -> {
            cited.put(key, LimitReader.citation(habit));
            return Optional.ofNullable(CriterionReader.must(habit, "is", type));
        }).orElse(null);
    }

    /** Kinds of substrate; none where the profile says nothing of them. */
    private static Set<SubstrateKind> ground(Section habits, String key, Map<String, Citation> cited) {
        if (habits.member(key).isEmpty()) {
            return Set.of();
        }
        return habits.section(key, habit -> {
            cited.put(key, LimitReader.citation(habit));
            return habit.choices("is", SubstrateKind.class);
        });
    }

    /** A length as a limit writes one; unknown after a problem. */
    private static Measure adultLength(Section habits, Map<String, Citation> cited) {
        String key = "adult-length";
        if (habits.member(key).isEmpty()) {
            habits.lacks(key, "say {\"is\": \"120 cm\", \"source\": ..., \"standing\": ...}");
        }
        return habits.section(key, habit -> {
            cited.put(key, LimitReader.citation(habit));
            return LimitReader.constant(habit, "is", Unit.CENTIMETRE)
                    .map(one -> new Measure(one.unit().convert(one.value(), Unit.CENTIMETRE), 0, Unit.CENTIMETRE)).orElse(Measure.UNKNOWN);
        });
    }

    /** The limits for every reptile hold where the species has no chosen limit of its own for the same topic of that criterion. */
    private static List<Limit> withShared(List<Limit> own, List<Limit> every) {
        Stream<Limit> shared = every.stream().filter(limit -> own.stream()
                .noneMatch(mine -> mine.chosen() && mine.criterion().equals(limit.criterion()) && mine.topic() == limit.topic()));
        return Stream.concat(own.stream(), shared).toList();
    }
}
