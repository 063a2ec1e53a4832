package org.loamlight.setup;

/**
 * A place an animal might leave by.
 *
 * @param lock  what keeps it shut
 * @param level how high it lies, for vents
 * @param gap the widest gap or mesh opening left when it is shut (mm)
 */
public record Opening(String name, OpeningKind kind, Measure gap, Lock lock, Level level) {
    /** Whether it is opened to get at the animal. */
    public Stated isDoor() {
        return switch (kind) {
            case DOOR, LID -> Stated.YES;
            case UNKNOWN -> Stated.UNKNOWN;
            default -> Stated.NO;
        };
    }

    public Subject subject() {
        return new Subject(SubjectKind.OPENING, name);
    }
}
