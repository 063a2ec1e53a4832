package org.loamlight.setup;

/** What must not be fed, or not to some. */
public enum HarmfulFood {
    AVOCADO, RHUBARB, ONION, CITRUS, SPINACH_DAILY, DOG_OR_CAT_FOOD, FIREFLIES, WILD_INSECTS, PIECES_OF_PREY, MILK_PRODUCTS,
    POISONOUS_PLANTS, UNKNOWN
}
