package org.loamlight.physics;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * Lines of equal value of a field over a rectangle, by marching squares: the field is looked at on a grid, and where a
 * line crosses a side of a mesh is found by linear interpolation between its ends. Immutable.
 */
public final class Isolines {
    private final double[][] values;
    private final double width;
    private final double height;

    /**
     * Looks at the field at every point of the grid.
     *
     * @param field   its value at x from 0 to {@code width} and y from 0 to {@code height}; finite
     * @param width   above 0, finite
     * @param height  above 0, finite
     * @param columns meshes along x, 1 or more
     * @param rows    meshes along y, 1 or more
     */
    public Isolines(DoubleBinaryOperator field, double width, double height, int columns, int rows) {
        this.width = Argument.positive("width", width);
        this.height = Argument.positive("height", height);
        this.values = new double[columns + 1][rows + 1];
        for (int i = 0; i <= columns; i++) {
            for (int j = 0; j <= rows; j++) {
                values[i][j] = Argument.finite("field", field.applyAsDouble(width * i / columns, height * j / rows));
            }
        }
    }

    /** A point of a line, in the units of the rectangle. */
    public record Vertex(double x, double y) {
        /** By plain comparison: what a record brings for this costs tens of milliseconds to link in a short program. */
        boolean isAt(Vertex other) {
            return x == other.x && y == other.y;
        }
    }

    /**
     * The lines at a level, each from end to end; a closed one ends where it began. Empty if the field passes the level nowhere.
     * A value that is the level itself counts as above it. Where two lines meet in a mesh they are kept apart so that the higher
     * corners are not joined.
     */
    public List<List<Vertex>> at(double level) {
        List<Vertex[]> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < values.length; i++) {
            for (int j = 0; j + 1 < values[i].length; j++) {
                addPieces(pieces, crossings(i, j, level), values[i][j] >= level);
            }
        }
        return joined(pieces);
    }

    /** Where the sides of a mesh are crossed, against the clock from the lower side; null for a side that is not. */
    private Vertex[] crossings(int i, int j, double level) {
        return new Vertex[] {crossing(i, j, i + 1, j, level), crossing(i + 1, j, i + 1, j + 1, level),
            crossing(i, j + 1, i + 1, j + 1, level), crossing(i, j, i, j + 1, level)};
    }

    private Vertex crossing(int i, int j, int k, int l, double level) {
        double one = values[i][j];
        double other = values[k][l];
        if (one >= level == other >= level) {
            return null;
        }
        double share = (level - one) / (other - one);
        return new Vertex(width * (i + share * (k - i)) / (values.length - 1), height * (j + share * (l - j)) / (values[0].length - 1));
    }

    private static void addPieces(List<Vertex[]> pieces, Vertex[] sides, boolean isFirstCornerAbove) {
        List<Vertex> crossed = new ArrayList<>();
        for (Vertex side : sides) {
            if (side != null) {
                crossed.add(side);
            }
        }
        if (crossed.size() == 2) {
            add(pieces, crossed.get(0), crossed.get(1));
        } else if (crossed.size() == sides.length) {
            int first = isFirstCornerAbove ? 3 : 1;
            add(pieces, sides[0], sides[first]);
            add(pieces, sides[2], sides[4 - first]);
        }
    }

    /** Where a line runs through a point of the grid, a mesh that it only touches adds nothing. */
    private static void add(List<Vertex[]> pieces, Vertex one, Vertex other) {
        if (!one.isAt(other)) {
            pieces.add(new Vertex[] {one, other});
        }
    }

    private static List<List<Vertex>> joined(List<Vertex[]> pieces) {
        List<Vertex[]> left = new ArrayList<>(pieces);
        List<List<Vertex>> lines = new ArrayList<>();
        while (!left.isEmpty()) {
            Vertex[] piece = left.remove(0);
            Deque<Vertex> line = new ArrayDeque<>(List.of(piece[0], piece[1]));
            Vertex next = taken(left, line.getLast());
            while (next != null) {
                line.addLast(next);
                next = taken(left, next);
            }
            Vertex before = taken(left, line.getFirst());
            while (before != null) {
                line.addFirst(before);
                before = taken(left, before);
            }
            lines.add(List.copyOf(line));
        }
        return lines;
    }

    /** The far end of a piece that begins or ends here, which is taken out; null if there is none. Neighbours share their crossing exactly. */
    private static Vertex taken(List<Vertex[]> pieces, Vertex end) {
        for (int i = 0; i < pieces.size(); i++) {
            Vertex[] piece = pieces.get(i);
            if (piece[0].isAt(end) || piece[1].isAt(end)) {
                pieces.remove(i);
                return piece[0].isAt(end) ? piece[1] : piece[0];
            }
        }
        return null;
    }
}
