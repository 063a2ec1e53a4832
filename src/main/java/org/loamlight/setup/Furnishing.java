package org.loamlight.setup;

/**
 * A thing in the enclosure.
 *
 * @param place      where it stands
 * @param begins     where it begins along the length, from the left wall (cm)
 * @param ends       where it ends along the length (cm)
 * @param bottom     where it begins above the bare floor (cm)
 * @param top        where it ends above the bare floor (cm)
 * @param nearEdge   where it begins, from the front (cm)
 * @param farEdge    where it ends, from the front (cm)
 * @param extent     how far it reaches along the length (cm), for pieces placed in words
 * @param cover      whether the animal is out of sight under, in or behind it
 * @param hide       whether it is a closed hide
 * @param humid      whether it is kept humid inside
 * @param standsOn   what carries it
 * @param mass       its mass (kg)
 * @param insideLength of a hide: the longer inner side of its floor (cm)
 * @param insideWidth  of a hide: the shorter inner side of its floor (cm)
 * @param entrance   of a hide: the narrowest way in (mm)
 * @param beneath    whether the animal can hide beneath it
 * @param holds      whether it carries the animal without giving way
 * @param traps      whether tape, loose netting or a hole in it can hold the animal fast
 * @param restHeight height above the bare floor at which the animal can lie on it (cm)
 */
public record Furnishing(String name, FurnishingKind kind, Spot place, Measure begins, Measure ends, Measure bottom, Measure top,
        Measure nearEdge, Measure farEdge, Measure extent, Stated cover, Stated hide, Stated humid, Support standsOn, Measure mass,
        Measure insideLength, Measure insideWidth, Measure entrance, Stated beneath, Stated holds, Stated traps,
        Measure restHeight) {

    public Subject subject() {
        return new Subject(SubjectKind.FURNISHING, name);
    }
}
