package org.loamlight.setup;

/** Where a JSON value stands: 1-based line and column, and its path from the document ("animals[0].length"). */
public record JsonPlace(int line, int column, String path) {
}
