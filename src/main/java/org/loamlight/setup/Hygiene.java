package org.loamlight.setup;

/**
 * How clean it is kept, and by whom.
 *
 * @param spotClean       days between looks for droppings and leftovers
 * @param substrateChange days between changes of all substrate
 * @param dilutionTold    whether the dilution is measured as the label says
 * @param contactTime     how long the agent stays on (min)
 * @param rinsed          whether it is rinsed off and dried
 * @param sharedTools     whether tools are used for several enclosures
 * @param quarantineLast  whether animals in quarantine are served last
 * @param handsWashed     whether hands are washed with soap after the work
 * @param washedWhere     where dishes and furnishings are cleaned
 */
public record Hygiene(Measure spotClean, Measure substrateChange, Disinfectant disinfectant, Stated dilutionTold, Measure contactTime,
        Stated rinsed, Stated sharedTools, Stated quarantineLast, Stated handsWashed, WashedWhere washedWhere) {
}
