package org.loamlight.criterion;

/**
 * Where something stands.
 *
 * @param source   id of the {@link Source}
 * @param clause   clause, table or page; empty for the whole
 * @param standing how firmly it is known
 */
public record Citation(String source, String clause, Standing standing) {
}
