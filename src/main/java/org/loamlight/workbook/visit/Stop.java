package org.loamlight.workbook.visit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loamlight.quantity.Zone;

/**
 * Where one stands in a visit, and what is asked there.
 *
 * @param say    what to know before one begins there
 * @param parts  paths of the parts of a setup that are asked about there: {@code heaters}
 * @param always paths of the questions that are asked at every visit; the others only while something hangs on them
 * @param zones  where the readings by day are taken here; empty for none
 * @param night  whether readings by night belong here
 */
record Stop(String title, String say, List<String> parts, Set<String> always, Set<Zone> zones, boolean night) {

    /** How closely one of the parts or questions of this stop names the path, in letters; empty when none does. */
    Optional<Integer> fit(String pattern) {
        if (always.contains(pattern)) {
            return Optional.of(pattern.length() + 1);
        }
        return parts.stream().filter(part -> pattern.equals(part) || pattern.startsWith(part + ".") || pattern.startsWith(part + "[")).map(String::length)
                .max(Comparator.naturalOrder());
    }
}
