package org.loamlight.cli;

/** Something the user can put right: wrong usage, an input that cannot be read, an output that cannot be written. */
final class Complaint extends Exception {
    private static final long serialVersionUID = 1;

    /** @param message what was found, where, what is allowed and the way out */
    Complaint(String message) {
        super(message);
    }
}
