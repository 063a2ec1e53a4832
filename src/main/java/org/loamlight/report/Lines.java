package org.loamlight.report;

import java.util.List;

/** A page of text being written: at most 80 columns, lines ended by a line feed. */
final class Lines {
    static final int WIDTH = 80;
    /** Labels stand in a column of their own. */
    private static final int LABEL = 12;

    private final StringBuilder text = new StringBuilder();

    Lines rule(char sign) {
        text.append(String.valueOf(sign).repeat(WIDTH)).append('\n');
        return this;
    }

    /** An empty line; only one where several would follow each other. */
    Lines gap() {
        if (text.length() > 1 && !text.substring(text.length() - 2).equals("\n\n")) {
            text.append('\n');
        }
        return this;
    }

    /** A heading with a rule beneath, after an empty line. */
    Lines heading(String heading) {
        return gap().paragraph(0, heading).rule('-');
    }

    /** A paragraph; each line break of the text begins another one. */
    Lines paragraph(int indent, String prose) {
        prose.lines().forEach(paragraph -> hanging(" ".repeat(indent), paragraph));
        return this;
    }

    /** A text whose first line begins with a mark, the others under its first word. */
    Lines hanging(String mark, String prose) {
        List<String> lines = Columns.wrap(prose, WIDTH - Columns.width(mark));
        String blank = " ".repeat(Columns.width(mark));
        for (int i = 0; i < lines.size(); i++) {
            text.append((i == 0 ? mark : blank).concat(lines.get(i)).stripTrailing()).append('\n');
        }
        return this;
    }

    /** A label and its text in two columns; nothing when the text is empty. */
    Lines labelled(int indent, String label, String prose) {
        return prose.isEmpty() ? this : hanging(" ".repeat(indent) + padded(label, LABEL), prose);
    }

    static String padded(String text, int width) {
        return text + " ".repeat(Math.max(1, width - Columns.width(text)));
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
