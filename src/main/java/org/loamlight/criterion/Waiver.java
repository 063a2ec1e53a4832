package org.loamlight.criterion;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Leave not to meet one requirement for a time.
 *
 * @param criterion id of the criterion
 * @param setup     title of the setup it is for; empty for any that holds the animal
 * @param animal    name of the animal it is for; empty for all of the setup
 * @param subject   name of the thing it is for; empty for all the criterion is applied to
 * @param reason    why it is granted
 * @param grantedBy who granted it
 * @param until     last day it holds
 */
public record Waiver(String criterion, Optional<String> setup, Optional<String> animal, Optional<String> subject, String reason, String grantedBy,
        LocalDate until) {

    /** Whether it still holds on a day. */
    public boolean holdsOn(LocalDate day) {
        return !day.isAfter(until);
    }
}
