package org.loamlight.drawing;

/** How a line is drawn: by its width and its dashes, never by colour. */
public enum Stroke {
    NONE(0, Dash.SOLID), WALL(0.8, Dash.SOLID),
    /** A wall whose place is not told. */
    UNTOLD_WALL(0.5, Dash.DASHED),
    EDGE(0.35, Dash.SOLID),
    /** The edge of a thing known less well than to the tape. */
    UNSURE(0.35, Dash.DASHED),
    HEAVY(0.6, Dash.SOLID), THIN(0.15, Dash.SOLID),
    /** A line of equal UV index. */
    INDEX(0.25, Dash.DOTTED);

    /** Which pieces of a line are drawn. */
    public enum Dash {
        SOLID, DASHED, DOTTED
    }

    private final double millimetres;
    private final Dash dash;

    Stroke(double millimetres, Dash dash) {
        this.millimetres = millimetres;
        this.dash = dash;
    }

    /** Width on paper (mm); 0 for no line. */
    public double millimetres() {
        return millimetres;
    }

    public Dash dash() {
        return dash;
    }
}
