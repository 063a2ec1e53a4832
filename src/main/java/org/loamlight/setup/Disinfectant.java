package org.loamlight.setup;

/** What enclosure and tools are disinfected with. */
public enum Disinfectant {
    HYPOCHLORITE, QUATERNARY_AMMONIUM, CHLORHEXIDINE, PEROXIDE, PEROXYMONOSULFATE, ALCOHOL, AMMONIA, PHENOL, PINE_OIL, STEAM, NONE,
    OTHER, UNKNOWN
}
