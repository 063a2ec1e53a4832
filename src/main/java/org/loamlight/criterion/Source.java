package org.loamlight.criterion;

/**
 * A publication that limits and criteria rest on.
 *
 * @param id    key by which it is cited
 * @param title authors, year, title and where it stands, as a reader would look it up
 * @param read  what of it was read
 */
public record Source(String id, String title, String read) {
}
