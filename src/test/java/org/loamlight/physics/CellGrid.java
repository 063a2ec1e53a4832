package org.loamlight.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The axis as a row of equal cells, covered or not, by counting: the slow and plain counterpart of Stretches. */
record CellGrid(int count, List<int[]> pieces) {

    /** Up to 60 cells and 9 pieces, some without width, some reaching past or lying beyond the ends. */
    static CellGrid random(Random random) {
        int count = 1 + random.nextInt(60);
        List<int[]> pieces = new ArrayList<>();
        for (int left = random.nextInt(10); left > 0; left--) {
            int from = random.nextInt(count + 11) - 5;
            pieces.add(new int[] {from, from + random.nextInt(15)});
        }
        return new CellGrid(count, pieces);
    }

    List<Stretch> stretches(double cell) {
        return pieces.stream().map(piece -> new Stretch(piece[0] * cell, piece[1] * cell)).toList();
    }

    /** Runs of equal cells as {first, one past the last}. */
    List<int[]> runs(boolean covered) {
        List<int[]> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean continues = i > 0 && isCovered(i - 1) == covered;
            if (isCovered(i) == covered && continues) {
                runs.get(runs.size() - 1)[1] = i + 1;
            } else if (isCovered(i) == covered) {
                runs.add(new int[] {i, i + 1});
            }
        }
        return runs;
    }

    int coveredCells() {
        return runs(true).stream().mapToInt(run -> run[1] - run[0]).sum();
    }

    int longestOpenCells() {
        return runs(false).stream().mapToInt(run -> run[1] - run[0]).max().orElse(0);
    }

    private boolean isCovered(int cell) {
        return pieces.stream().anyMatch(piece -> piece[0] <= cell && cell < piece[1]);
    }
}
