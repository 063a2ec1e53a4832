package org.loamlight.workbook.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts of cells: the runs joined, readings of characters left out, escapes undone (ECMA-376-1, 18.4 and 22.9.2.19). */
final class RichText {
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");
    private static final int HEXADECIMAL = 16;

    private RichText() {
    }

    /** The texts the sheets share, in their order; none when the workbook has no such part. */
    static List<String> shared(String name, Parts parts) throws NoWorkbook {
        List<String> texts = new ArrayList<>();
        if (parts.has(name)) {
            XmlPart xml = XmlPart.of(name, parts);
            while (xml.next()) {
                if (xml.begins("si")) {
                    texts.add(within("si", xml));
                }
            }
        }
        return texts;
    }

    /** The text of the element that begins here. */
    static String within(String element, XmlPart xml) throws NoWorkbook {
        StringBuilder text = new StringBuilder();
        boolean isPhonetic = false;
        while (xml.next() && !xml.ends(element)) {
            if (xml.begins("rPh")) {
                isPhonetic = true;
            } else if (xml.ends("rPh")) {
                isPhonetic = false;
            } else if (xml.begins("t") && !isPhonetic) {
                text.append(xml.text());
            }
        }
        return plain(text.toString());
    }

    /** The text without its escapes: "_x000D_" is a carriage return. */
    static String plain(String text) {
        return text.indexOf("_x") < 0 ? text
                : ESCAPED.matcher(text).replaceAll(found -> Matcher.quoteReplacement(Character.toString((char) Integer.parseInt(found.group(1), HEXADECIMAL))));
    }
}
