package org.loamlight.criterion;

import java.util.Set;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Stated;
import org.loamlight.setup.SubstrateKind;

/**
 * What rules ask of a species.
 *
 * @param id            key in setups, the scientific name in lower case with a hyphen
 * @param english       common name
 * @param latin         scientific name
 * @param digs          whether it digs or burrows
 * @param climbs        whether it uses climbing structure
 * @param eatsSnakes    whether it eats other snakes, its own kind included
 * @param basks         whether it lies in the sun to warm up
 * @param soaks         whether it lies in water, and should be able to
 * @param laysEggs      whether females lay eggs in the ground, with or without a male
 * @param restsInWinter whether it rests in winter
 * @param dangerous     whether it can badly hurt a person
 * @param restricted    whether keeping it asks for papers in many places
 * @param specialist    whether it belongs with experienced keepers
 * @param adultLength   total length most adults stay below (cm)
 * @param harmfulGround  kinds of substrate that can harm it; empty when none is known to
 * @param unsuitedGround kinds of substrate that do it no good; empty when none is known to
 */
public record Species(String id, String english, String latin, Form form, Lives lives, Active active, Stated digs, Stated climbs, Stated basks,
        UvUse uv, Drinks drinks, Stated soaks, Eats eats, Company company, Stated eatsSnakes, Stated laysEggs, Stated restsInWinter,
        Stated dangerous, Stated restricted, Stated specialist, Measure adultLength,
        Set<SubstrateKind> harmfulGround, Set<SubstrateKind> unsuitedGround) {

    public Species {
        harmfulGround = Set.copyOf(harmfulGround);
        unsuitedGround = Set.copyOf(unsuitedGround);
    }
}
