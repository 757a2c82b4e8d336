package org.skewback.sheet;

import java.util.List;

/**
 * A table of a sheet.
 *
 * @param title what the table shows
 * @param columns its columns, all of one length
 */
public record Table(String title, List<Column> columns) {

    /**
     * Keeps a copy of the list.
     *
     * @param title what the table shows
     * @param columns its columns, all of one length
     * @throws IllegalArgumentException when there is no column or the lengths differ
     */
    public Table {
        columns = List.copyOf(columns);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("table \"" + title + "\" has no columns");
        }
        int rows = columns.get(0).texts().size();
        for (Column column : columns) {
            if (column.texts().size() != rows) {
                throw new IllegalArgumentException(
                        "table \""
                                + title
                                + "\": column \""
                                + column.heading()
                                + "\" has "
                                + column.texts().size()
                                + " rows where \""
                                + columns.get(0).heading()
                                + "\" has "
                                + rows);
            }
        }
    }

    /**
     * Makes a table of columns.
     *
     * @param title what the table shows
     * @param columns its columns
     * @return the table
     */
    public static Table of(String title, Column... columns) {
        return new Table(title, List.of(columns));
    }

    /**
     * Gives the count of rows.
     *
     * @return rows without the heading
     */
    public int rows() {
        return columns.get(0).texts().size();
    }
}
