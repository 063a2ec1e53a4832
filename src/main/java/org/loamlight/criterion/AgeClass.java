package org.loamlight.criterion;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import org.loamlight.setup.Animal;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stage;

/**
 * A class of age in whole months. An adult is older than every class that ends; of others the day of hatching must be told.
 *
 * @param youngest the youngest age that belongs to it (months), 0 or more
 * @param below    age from which on it no longer holds (months); {@link Integer#MAX_VALUE} when it has no end
 */
public record AgeClass(int youngest, int below) {
    /** Every age. */
    public static final AgeClass ANY = new AgeClass(0, Integer.MAX_VALUE);

    public boolean isAny() {
        return equals(ANY);
    }

    boolean excludes(Animal animal, Setup setup) {
        if (animal.stage() == Stage.ADULT) {
            return below != Integer.MAX_VALUE;
        }
        return months(animal, setup).map(age -> age < youngest || age >= below).orElse(false);
    }

    /** Whether the age decides and is not told. */
    boolean isOpen(Animal animal, Setup setup) {
        return animal.stage() != Stage.ADULT && months(animal, setup).isEmpty();
    }

    private static Optional<Integer> months(Animal animal, Setup setup) {
        Optional<LocalDate> on = setup.on();
        return animal.hatched().filter(day -> on.isPresent()).map(day -> (int) Period.between(day, on.get()).toTotalMonths());
    }
}
