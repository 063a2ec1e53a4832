package org.loamlight.setup;

/** Whether the animal rests in winter. */
public enum WinterRest {
    NOT_PLANNED, PLANNED, RUNNING, UNKNOWN
}
