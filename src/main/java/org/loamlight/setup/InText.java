package org.loamlight.setup;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * A place in a text, kept as the offset of its character and the way to it from the document.
 *
 * @param within what it is a member or an element of; null for the document itself
 * @param key    of the member; null for an element and for the document
 * @param index  of the element, from 0; 0 for a member and for the document
 */
record InText(SourceText text, int offset, InText within, String key, int index) implements Located {

    static InText document(SourceText text, int offset) {
        return new InText(text, offset, null, null, 0);
    }

    InText member(String name, int at) {
        return new InText(text, at, this, name, 0);
    }

    InText element(int position, int at) {
        return new InText(text, at, this, null, position);
    }

    @Override
    public JsonPlace place() {
        return text.place(offset, path());
    }

    @Override
    public JsonPlace keyPlace() {
        return key == null ? place() : text.place(text.startOfKey(offset), path());
    }

    private String path() {
        Deque<InText> way = new ArrayDeque<>();
        for (InText step = this; step.within != null; step = step.within) {
            way.push(step);
        }
        StringBuilder path = new StringBuilder();
        for (InText step : way) {
            if (step.key == null) {
                path.append('[').append(step.index).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(Quoted.plain(step.key));
            }
        }
        return path.toString();
    }
}
