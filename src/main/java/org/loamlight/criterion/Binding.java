package org.loamlight.criterion;

/** How far a code binds a keeper. */
public enum Binding {
    /** Law where the enclosure stands in the place it is made for. */
    LAW,
    /** An expert opinion that authorities and courts go by. */
    EXPERT_OPINION,
    /** Advice of a public or welfare body. */
    ADVICE,
    /** Rules an association gives its members. */
    ASSOCIATION,
    /** Law of the past, for history only. */
    SUPERSEDED,
    /** Law for laboratories, which says nothing on keeping at home. */
    LABORATORY
}
