package org.loamlight.setup;

import java.util.Set;

/**
 * What one animal is fed.
 *
 * @param prey      the usual food
 * @param meal      all food of one meal together (g)
 * @param every     days between meals
 * @param also      what it gets besides; empty when nothing or not told
 * @param alsoTold  whether the keeper said what it gets besides
 * @param live      whether living vertebrates are offered
 * @param thickest  widest part of the usual prey (mm)
 * @param thawing   how frozen prey is thawed
 * @param unsuitable harmful food it gets; empty when none or not told
 * @param plants    share of plants in what it eats (%)
 * @param calcium   days between calcium supplements
 * @param vitaminD3 days between supplements of vitamin D3
 */
public record Diet(PreyKind prey, Measure meal, Measure every, Set<PreyKind> also, Stated alsoTold, Stated live, Measure thickest,
        Thawing thawing, Set<HarmfulFood> unsuitable, Measure plants, Measure calcium, Measure vitaminD3) {
    public Diet {
        also = Set.copyOf(also);
        unsuitable = Set.copyOf(unsuitable);
    }

    /** Whether it gets more than one kind of food. */
    public boolean isVaried() {
        return also.stream().anyMatch(one -> one != prey);
    }

    /** Whether the keeper said that it never gets calcium; no when nobody told. */
    public boolean isWithoutCalcium() {
        return MeasureText.isNever(calcium);
    }

    /** Whether it gets anything that must not be fed. */
    public boolean isHarmful() {
        return !unsuitable.isEmpty();
    }
}
