package org.loamlight.setup;

/**
 * How the enclosure is built and what it stands on.
 *
 * @param walls     back and sides
 * @param frontPane the front; like the walls when not told
 * @param top       the lid
 * @param base      the floor of the enclosure; like the walls when not told
 * @param mass      of the empty enclosure (kg)
 * @param carries   what the stand, shelf or cabinet beneath is rated for (kg)
 */
public record Build(Pane walls, Pane frontPane, Pane top, Pane base, Measure mass, Measure carries) {
}
