package org.loamlight.criterion;

/** What sort of reptile a species is. */
public enum Form {
    SNAKE, LIZARD, TORTOISE
}
