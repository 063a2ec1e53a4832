package org.loamlight.criterion;

/**
 * A caution for people and animals that stands in every report it applies to, once.
 *
 * @param general whether it stands in every report
 */
public record Caution(String id, String text, boolean general) {
}
