package org.skewback.desk.render;

import java.util.Arrays;
import java.util.List;

/**
 * Divides a width among the columns of a table so that the table has few lines.
 *
 * <p>Both the print engine and browsers divide by the longest text of each column, whereby short words
 * beside long ones are broken after every word. Here each column starts as wide as its longest text,
 * and what is too much is taken, bit by bit, where it adds the fewest lines. Lengths are in em.
 */
final class ColumnWidths {

    /** What is taken at once. */
    private static final double BIT = 0.5;

    /** The most that is moved at once. */
    private static final double WIDEST_STEP = 8;

    private static final int MOST_ROUNDS = 20;

    /** A cell is taken for no longer than this, so that hostile tables end too. */
    private static final int MOST_WORDS = 2_000;

    /** Beyond so many cells, all columns are judged by the first rows. */
    private static final int MOST_CELLS = 4_000;

    private final List<List<TableMarkup.Cell>> rows;
    private final int columns;
    private final double between;
    private final double[] longest;
    private final double[] least;

    /**
     * Measures a table.
     *
     * @param table the table
     * @param between room that each column needs beside its text
     */
    ColumnWidths(TableMarkup table, double between) {
        this.columns = table.columns();
        this.rows = table.rows().stream().limit(Math.max(2, MOST_CELLS / columns)).toList();
        this.between = between;
        this.longest = new double[columns];
        this.least = new double[columns];
        for (List<TableMarkup.Cell> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                longest[i] = Math.max(longest[i], row.get(i).whole());
                least[i] = Math.max(least[i], row.get(i).widest());
            }
        }
        for (int i = 0; i < columns; i++) {
            longest[i] += between;
            least[i] += between;
        }
    }

    /** Tells whether every text has room in one line. */
    boolean fitUnbroken(double available) {
        return Arrays.stream(longest).sum() <= available;
    }

    /** Tells whether there is room without any word being broken. */
    boolean fit(double available) {
        return Arrays.stream(least).sum() <= available;
    }

    /** The length of the longest text of a column. */
    double longest(int column) {
        return longest[column] - between;
    }

    /**
     * Divides a width that {@link #fit}s.
     *
     * @param available the width
     * @return width of each column with the room beside it
     */
    double[] divided(double available) {
        double[] widths = new double[columns];
        for (int i = 0; i < columns; i++) {
            widths[i] = Math.max(least[i], Math.min(longest[i], available));
        }
        double[][] heights = new double[rows.size()][columns];
        for (int i = 0; i < columns; i++) {
            measure(heights, i, widths[i]);
        }
        double excess = Arrays.stream(widths).sum() - available;
        while (excess > 1e-9) {
            int cheapest = -1;
            double fewest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < columns; i++) {
                double width = narrower(widths, i, excess);
                if (width < widths[i]) {
                    double added = added(heights, i, width);
                    boolean wider = cheapest < 0 || widths[i] > widths[cheapest];
                    if (added < fewest - 1e-9 || (added < fewest + 1e-9 && wider)) {
                        fewest = added;
                        cheapest = i;
                    }
                }
            }
            if (cheapest < 0) {
                break;
            }
            double width = narrower(widths, cheapest, excess);
            excess -= widths[cheapest] - width;
            widths[cheapest] = width;
            measure(heights, cheapest, width);
        }
        exchange(widths, heights);
        return widths;
    }

    /** Moves width from column to column while that makes the table lower. */
    private void exchange(double[] widths, double[][] heights) {
        double height = total(heights);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double before = height;
            for (int from = 0; from < columns; from++) {
                for (int to = 0; to < columns; to++) {
                    for (double step = WIDEST_STEP; step >= BIT; step /= 2) {
                        if (from == to || widths[from] - step < least[from]) {
                            continue;
                        }
                        move(widths, heights, from, to, step);
                        double after = total(heights);
                        if (after < height - 1e-9) {
                            height = after;
                        } else {
                            move(widths, heights, to, from, step);
                        }
                    }
                }
            }
            if (height >= before) {
                return;
            }
        }
    }

    private void move(double[] widths, double[][] heights, int from, int to, double step) {
        widths[from] -= step;
        widths[to] += step;
        measure(heights, from, widths[from]);
        measure(heights, to, widths[to]);
    }

    private static double total(double[][] heights) {
        double total = 0;
        for (double[] row : heights) {
            total += Arrays.stream(row).max().orElse(0);
        }
        return total;
    }

    /** The lines of a row of the body, on average, in a width that {@link #fit}s. */
    double linesARow(double available) {
        double[] widths = divided(available);
        long sum = 0;
        for (int r = 1; r < rows.size(); r++) {
            int most = 1;
            for (int i = 0; i < rows.get(r).size(); i++) {
                most = Math.max(most, lines(r, i, widths[i]));
            }
            sum += most;
        }
        return sum / (double) Math.max(1, rows.size() - 1);
    }

    private double narrower(double[] widths, int column, double excess) {
        return Math.max(least[column], widths[column] - Math.min(BIT, excess));
    }

    /** How much higher the table gets where a column has a width. */
    private double added(double[][] heights, int column, double width) {
        double added = 0;
        for (int r = 0; r < heights.length; r++) {
            if (column < rows.get(r).size()) {
                double before = Arrays.stream(heights[r]).max().orElse(0);
                added += Math.max(0, height(r, column, width) - before);
            }
        }
        return added;
    }

    private void measure(double[][] heights, int column, double width) {
        for (int r = 0; r < heights.length; r++) {
            if (column < rows.get(r).size()) {
                heights[r][column] = height(r, column, width);
            }
        }
    }

    /**
     * The lines of a cell, and how full they would be if words could be broken anywhere: so that a
     * column whose last line fills up is not taken for one that can be narrowed for nothing.
     */
    private double height(int row, int column, double width) {
        double full = rows.get(row).get(column).whole() / Math.max(BIT, width - between);
        return lines(row, column, width) + Math.max(1, full);
    }

    private int lines(int row, int column, double width) {
        TableMarkup.Cell cell = rows.get(row).get(column);
        double room = width - between + 1e-9;
        int lines = 1;
        double filled = 0;
        for (int i = 0; i < Math.min(cell.count(), MOST_WORDS); i++) {
            double with = filled == 0 ? cell.width(i) : filled + TableMarkup.SPACE + cell.width(i);
            if (with > room && filled > 0) {
                lines++;
                filled = cell.width(i);
            } else {
                filled = with;
            }
        }
        return lines;
    }
}
