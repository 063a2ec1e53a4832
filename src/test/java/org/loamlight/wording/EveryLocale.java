package org.loamlight.wording;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/** Makes a text under default locales that treat letters and numbers in their own way: Turkish i, German commas, Arabic digits. */
public final class EveryLocale {
    private static final List<Locale> LOCALES = List.of(Locale.ROOT, Locale.forLanguageTag("tr-TR"), Locale.GERMANY,
            Locale.forLanguageTag("ar-EG-u-nu-arab"));

    private EveryLocale() {
    }

    /** The different texts that came out; one when the locale does not matter. */
    public static Set<String> texts(Supplier<String> text) {
        Locale before = Locale.getDefault();
        Set<String> texts = new TreeSet<>();
        try {
            for (Locale locale : LOCALES) {
                Locale.setDefault(locale);
                texts.add(text.get());
            }
        } finally {
            Locale.setDefault(before);
        }
        return texts;
    }
}
