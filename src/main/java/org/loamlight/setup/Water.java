package org.loamlight.setup;

/**
 * The forms in which water is offered. There is one such fact when the setup tells of water, none otherwise.
 *
 * @param dish  in a dish
 * @param drops as drops: a drip or a mist
 * @param volume held by dish or basin (L)
 * @param depth  of the water in it (cm)
 * @param soaks  whether the whole animal can lie in it
 * @param spills whether it wets the substrate around it
 * @param place  where it stands
 */
public record Water(Stated dish, Stated drops, Measure volume, Measure depth, Stated soaks, Stated spills, Spot place) {
}
