package org.loamlight.criterion;

/** What ultraviolet is to a species. */
public enum UvUse {
    NEEDS, PROFITS, WITHOUT
}
