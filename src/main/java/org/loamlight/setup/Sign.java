package org.loamlight.setup;

/** What a keeper can see of an animal that is not well. Naming one is never a diagnosis. */
public enum Sign {
    WHEEZING, OPEN_MOUTH_BREATHING, REGURGITATION, MITES, BURN, SUNKEN_EYES, SWOLLEN_EYES, DISCHARGE, RETAINED_SHED, LOSS_OF_MASS,
    SWELLING, BLEEDING, LIMPNESS, TREMBLING, STRAINING, UNKNOWN
}
