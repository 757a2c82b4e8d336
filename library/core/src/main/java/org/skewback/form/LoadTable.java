package org.skewback.form;

import java.util.ArrayList;
import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;

/** Vertical loads from tables. */
public final class LoadTable {

    private LoadTable() {}

    /**
     * Takes point loads from a table.
     *
     * @param table the table
     * @param position name of the column of positions from the left springing, a length; ascending
     * @param force name of the column of forces, positive downward
     * @return the loads
     * @throws TableException if the table is empty, a column is missing or of the wrong dimension, a
     *     field is no finite number, a position is negative, or positions repeat or do not ascend
     */
    public static VerticalLoad pointLoads(CsvTable table, String position, String force) {
        double[] x = positions(table, position, 1);
        double[] forces = table.numbers(force, "N");
        List<PointLoad> loads = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            loads.add(new PointLoad(x[i], forces[i]));
        }
        return VerticalLoad.together(loads);
    }

    /**
     * Takes a load per plan length from a table, linear between its rows.
     *
     * @param table the table
     * @param position name of the column of positions from the left springing, a length; ascending
     * @param intensity name of the column of loads per plan length, positive downward
     * @return the load, from the first position to the last
     * @throws TableException if the table has fewer than two rows, a column is missing or of the
     *     wrong dimension, a field is no finite number, a position is negative, or positions repeat
     *     or do not ascend
     */
    public static VerticalLoad lineLoad(CsvTable table, String position, String intensity) {
        double[] x = positions(table, position, 2);
        double[] intensities = table.numbers(intensity, "N/m");
        List<LineLoad> loads = new ArrayList<>();
        for (int i = 0; i + 1 < x.length; i++) {
            loads.add(new LineLoad(x[i], x[i + 1], intensities[i], intensities[i + 1]));
        }
        return VerticalLoad.together(loads);
    }

    private static double[] positions(CsvTable table, String column, int least) {
        double[] x = table.ascending(column, "m");
        if (x.length < least) {
            throw new TableException(
                    table.name()
                            + " has "
                            + x.length
                            + " rows; allowed is at least "
                            + least
                            + ".");
        }
        if (x[0] < 0) {
            throw table.refused(0, column, table.texts(column).get(0), "at least 0");
        }
        return x;
    }
}
