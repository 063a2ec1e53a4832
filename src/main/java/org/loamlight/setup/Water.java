package org.loamlight.setup;

/**
 * The forms in which water is offered. There is one such fact when the setup tells of water, none otherwise.
 *
 * @param dish  in a dish
 * @param drops as drops: a drip or a mist
 * @param volume held by dish or basin (L)
 */
public record Water(Stated dish, Stated drops, Measure volume) {
}
