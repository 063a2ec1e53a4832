package org.loamlight.drawing;

/** Text made fit for XML. */
public final class XmlText {
    private static final int REPLACEMENT = 0xFFFD;

    private XmlText() {
    }

    /** Fit for an element and for an attribute in quotes, with a mark in place of what XML cannot hold and of what makes text read other than it is (Unicode Standard Annex 9, 2). */
    public static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            switch (point) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                case '\t', '\n', '\r' -> escaped.append(' ');
                default -> escaped.appendCodePoint(mayStand(point) ? point : REPLACEMENT);
            }
        });
        return escaped.toString();
    }

    private static boolean mayStand(int point) {
        int type = Character.getType(point);
        boolean turns = point == 0x200E || point == 0x200F || point == 0x061C || point >= 0x202A && point <= 0x202E || point >= 0x2066 && point <= 0x2069;
        return type != Character.CONTROL && type != Character.SURROGATE && !turns && (point & 0xFFFE) != 0xFFFE;
    }
}
