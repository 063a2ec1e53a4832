package org.loamlight.criterion;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Purpose;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Sex;
import org.loamlight.setup.Stage;

/**
 * For whom and when a limit is meant. The special housings are told by the purpose; day and night by the topic.
 *
 * @param stages       stages of life; empty for all
 * @param sexes        sexes; empty for all
 * @param size         class of total length
 * @param shell        class of the length of the shell, for tortoises
 * @param age          class of age
 * @param purposes     purposes of the housing; empty for all
 * @param season       time of year
 * @param fewestAnimals smallest number of animals in the enclosure
 * @param mostAnimals  largest number of animals in the enclosure
 */
public record Scope(Set<Stage> stages, Set<Sex> sexes, SizeClass size, SizeClass shell, AgeClass age,
        Set<Purpose> purposes, TimeOfYear season, int fewestAnimals, int mostAnimals) {
    /** Everybody. */
    public static final Scope ALL = new Scope(Set.of(), Set.of(), SizeClass.ANY, SizeClass.ANY, AgeClass.ANY, Set.of(),
            TimeOfYear.ANY, 1, Integer.MAX_VALUE);

    public Scope {
        stages = Set.copyOf(stages);
        sexes = Set.copyOf(sexes);
        purposes = Set.copyOf(purposes);
    }

    /** Whether it is out of the question, whatever else is still unknown of the animal. */
    boolean excludes(Animal animal, Setup setup) {
        int animals = setup.animals().size();
        return animals < fewestAnimals || animals > mostAnimals
                || season.excludes(setup) || age.excludes(animal, setup)
                || !purposes.isEmpty() && !purposes.contains(setup.purpose())
                || !stages.isEmpty() && animal.stage() != Stage.UNKNOWN && !stages.contains(animal.stage())
                || !sexes.isEmpty() && animal.sex() != Sex.UNKNOWN && !sexes.contains(animal.sex())
                || isOutside(size, animal.length()) || isOutside(shell, animal.carapace());
    }

    private static boolean isOutside(SizeClass of, Measure length) {
        return !of.isAny() && length.isKnown() && !of.holds(length);
    }

    /** The questions about the animal that decide whether it is meant and are not answered. */
    List<String> open(Animal animal, Setup setup) {
        List<String> open = new ArrayList<>();
        if (!stages.isEmpty() && animal.stage() == Stage.UNKNOWN) {
            open.add("animals[].stage");
        }
        if (!sexes.isEmpty() && animal.sex() == Sex.UNKNOWN) {
            open.add("animals[].sex");
        }
        if (!size.isAny() && !animal.length().isKnown()) {
            open.add("animals[].length");
        }
        if (!shell.isAny() && !animal.carapace().isKnown()) {
            open.add("animals[].carapace");
        }
        if (!age.isAny() && age.isOpen(animal, setup)) {
            open.add("animals[].hatched");
        }
        return open;
    }
}
