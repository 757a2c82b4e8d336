package org.skewback.action;

/** What lies on a deck where it is no thickness of asphalt; EN 1991-1-5, table 6.2. */
public enum DeckSurface {
    /** Nothing. */
    UNSURFACED(0),
    /** Waterproofing, dark, and nothing on it. */
    WATERPROOFED(1),
    /** Ballast, 750 mm. */
    BALLAST(5);

    private final int column;

    DeckSurface(int column) {
        this.column = column;
    }

    /** Its place among the columns of table 6.2. */
    int column() {
        return column;
    }
}
