package org.loamlight.setup;

/**
 * The people, and what they know and hold.
 *
 * @param smallChildren  whether children under five live there or come often
 * @param peopleAtRisk   whether somebody is pregnant, old or of weak resistance
 * @param veterinarian   whether a veterinarian who sees reptiles is known
 * @param experienced    whether somebody has kept such animals for years
 * @param secondAdult    whether a second adult is there when a large animal is handled
 * @param tongs          whether tongs are used at feeding
 * @param warningsKnown  whether the signs are known by which it asks to be left alone
 * @param handledFed     whether it is handled on the days after a meal or in shed
 * @param settlesFirst   whether a new animal is left alone until it has eaten some meals
 */
public record Household(Stated smallChildren, Stated peopleAtRisk, Stated veterinarian, Stated experienced, Stated secondAdult, Stated tongs,
        Stated warningsKnown, Stated handledFed, Stated settlesFirst) {
}
