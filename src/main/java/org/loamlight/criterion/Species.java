package org.loamlight.criterion;

import org.loamlight.setup.Stated;

/**
 * What rules ask of a species.
 *
 * @param id         key in setups, the scientific name in lower case with a hyphen
 * @param english    common name
 * @param latin      scientific name
 * @param digs       whether it digs or burrows
 * @param climbs     whether it uses climbing structure
 * @param eatsSnakes whether it eats other snakes, its own kind included
 */
public record Species(String id, String english, String latin, Lives lives, Stated digs, Stated climbs, UvUse uv, Drinks drinks,
        Company company, Stated eatsSnakes) {
}
