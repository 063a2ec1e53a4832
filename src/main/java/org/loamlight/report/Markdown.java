package org.loamlight.report;

import org.loamlight.criterion.Criterion;

/** The parts generated pages are made of, written one after the other. */
final class Markdown {
    private final StringBuilder text = new StringBuilder();

    Markdown title(int level, String prose) {
        text.append(text.isEmpty() || text.toString().endsWith("\n\n") ? "" : "\n").append("#".repeat(level)).append(' ').append(prose).append("\n\n");
        return this;
    }

    Markdown paragraph(String prose) {
        text.append(prose).append("\n\n");
        return this;
    }

    Markdown bullet(String prose) {
        text.append("* ").append(prose).append('\n');
        return this;
    }

    /** @param header the whole line, with a bar at each end */
    Markdown header(String header) {
        long columns = header.chars().filter(sign -> sign == '|').count() - 1;
        text.append(header).append('\n').append('|').append("---|".repeat((int) columns)).append('\n');
        return this;
    }

    Markdown row(String... cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
        return this;
    }

    /** Text that does not break a table or begin a tag. */
    static String cell(String prose) {
        return prose.replace("|", "\\|").replace("<", "&lt;").replace('\n', ' ');
    }

    static String link(String words, String to) {
        return "[" + words + "](" + to + ")";
    }

    /** Where the page of a criterion stands, seen from rules/. */
    static String page(Criterion criterion) {
        return "criteria/" + criterion.topic() + "/" + criterion.id() + "/criterion.md";
    }

    @Override
    public String toString() {
        return text.toString().stripTrailing() + "\n";
    }
}
