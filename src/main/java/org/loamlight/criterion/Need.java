package org.loamlight.criterion;

/** The five welfare needs (Animal Welfare Act 2006, section 9), in the order in which findings of equal weight are told. */
public enum Need {
    PROTECTION, ENVIRONMENT, DIET, COMPANY, BEHAVIOUR
}
