package org.skewback.desk.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Block;
import org.skewback.sheet.Column;
import org.skewback.sheet.Entry;
import org.skewback.sheet.SheetRecord;

/** The quantities that a sheet shows, under names that hold from one run to the next. */
public final class ShownQuantities {

    private ShownQuantities() {}

    /**
     * Gives the givens of a sheet.
     *
     * @param record the sheet
     * @return the givens by symbol, those of a series with their position, in order
     */
    public static Map<String, Quantity> givens(SheetRecord record) {
        Map<String, Quantity> found = new LinkedHashMap<>();
        for (Entry entry : record.entries()) {
            if (entry.block() instanceof Block.Given given) {
                found.put(String.valueOf(given.quantity().symbol()), given.quantity());
            } else if (entry.block() instanceof Block.Series series) {
                for (int i = 0; i < series.values().size(); i++) {
                    found.put(series.symbol() + "[" + (i + 1) + "]", series.values().get(i));
                }
            }
        }
        return found;
    }

    /**
     * Gives what a sheet worked out.
     *
     * @param record the sheet
     * @return steps by symbol, then values of tables by title, heading and row, in order
     */
    public static Map<String, Quantity> results(SheetRecord record) {
        Map<String, Quantity> found = new LinkedHashMap<>();
        for (Entry entry : record.entries()) {
            if (entry.block() instanceof Block.Step step) {
                found.put(String.valueOf(step.quantity().symbol()), step.quantity());
            } else if (entry.block() instanceof Block.Tabulated tabulated) {
                for (Column column : tabulated.table().columns()) {
                    for (int row = 0; row < column.values().size(); row++) {
                        found.put(
                                tabulated.table().title()
                                        + ", "
                                        + column.heading()
                                        + ", row "
                                        + (row + 1),
                                column.values().get(row));
                    }
                }
            }
        }
        return found;
    }

    /**
     * Gives the checks of a sheet.
     *
     * @param record the sheet
     * @return the checks by title, in order; a title that comes again is told apart by a number
     */
    public static Map<String, Entry> checks(SheetRecord record) {
        Map<String, Entry> found = new LinkedHashMap<>();
        for (Entry entry : record.checks()) {
            if (entry.block() instanceof Block.Checked checked) {
                String title = checked.check().title();
                String name = title;
                for (int i = 2; found.containsKey(name); i++) {
                    name = title + " (" + i + ")";
                }
                found.put(name, entry);
            }
        }
        return found;
    }
}
