package org.loamlight.setup;

/**
 * What one animal is fed: the usual meal.
 *
 * @param prey  what it is
 * @param meal  all prey of one meal together (g)
 * @param every days between meals
 */
public record Diet(PreyKind prey, Measure meal, Measure every) {
}
