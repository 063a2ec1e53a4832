package org.loamlight.workbook.cells;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** A sheet: its cells that hold something, those of hidden rows and columns too, and which of them were merged. */
public final class Sheet {
    private final String name;
    private final boolean isHidden;
    private final SortedMap<Integer, SortedMap<Integer, Cell>> rows = new TreeMap<>();
    private final SortedMap<Integer, SortedMap<Integer, String>> merged = new TreeMap<>();

    Sheet(String name, boolean isHidden) {
        this.name = name;
        this.isHidden = isHidden;
    }

    void add(Cell cell) {
        rows.computeIfAbsent(cell.row(), row -> new TreeMap<>()).put(cell.column(), cell);
    }

    void merge(int row, int column, String range) {
        merged.computeIfAbsent(row, missing -> new TreeMap<>()).put(column, range);
    }

    public String name() {
        return name;
    }

    /** Whether the whole sheet is kept from sight. */
    public boolean isHidden() {
        return isHidden;
    }

    /** The rows that are not empty from the top down, each with its cells from left to right. */
    public List<List<Cell>> rows() {
        return rows.values().stream().map(row -> List.copyOf(row.values())).toList();
    }

    /** The cell there; empty when it holds nothing. */
    public Optional<Cell> cell(int row, int column) {
        return Optional.ofNullable(rows.getOrDefault(row, new TreeMap<>()).get(column));
    }

    /** Every range of merged cells, as a cell at its upper left corner whose text names the range: "B4:C4". */
    public List<Cell> merged() {
        return merged.entrySet().stream().flatMap(row -> row.getValue().entrySet().stream()
                .map(range -> new Cell(name, row.getKey(), range.getKey(), Cell.Content.TEXT, range.getValue()))).toList();
    }
}
