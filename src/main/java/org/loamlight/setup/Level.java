package org.loamlight.setup;

/** How high an opening lies. */
public enum Level {
    LOW, HIGH, UNKNOWN
}
