package org.loamlight.setup;

/**
 * A place an animal might leave by.
 *
 * @param gap the widest gap or mesh opening left when it is shut (mm)
 */
public record Opening(String name, OpeningKind kind, Measure gap) {
    public Subject subject() {
        return new Subject(SubjectKind.OPENING, name);
    }
}
