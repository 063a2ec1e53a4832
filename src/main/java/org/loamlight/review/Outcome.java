package org.loamlight.review;

import java.util.Optional;

/**
 * What came of one description.
 *
 * @param key how to tell whose it is; empty where names stand in the result itself
 */
record Outcome(Reviewed reviewed, Optional<NameKey> key) {
}
