package org.loamlight.workbook.cells;

/** Thrown for a file that is no workbook, or none that can be read; says what was found and the way out. */
public final class NoWorkbook extends Exception {
    /** The way out of most limits. */
    static final String COPY = "copy what is needed into a new workbook";

    private final String allowed;

    NoWorkbook(String found, String allowed) {
        super(found);
        this.allowed = allowed;
    }

    /** What would be read, and the way out. */
    public String allowed() {
        return allowed;
    }

    static NoWorkbook broken(String part) {
        return new NoWorkbook("the workbook is broken: its part " + part + " cannot be read",
                "open it in a spreadsheet program and save it again as .xlsx");
    }
}
