package org.skewback.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.quantity.Unit;
import org.skewback.sheet.Column;
import org.skewback.sheet.Table;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.StringColumn;

/**
 * Carries tables between a sheet and the Tablesaw library, which sorts, joins and groups them.
 *
 * <p>Units go along in the names of the columns, as in {@code thrust [kN]}. Plain numbers do not
 * remember where they came from, so whoever brings a table back says what its source is.
 *
 * <pre>{@code
 * tech.tablesaw.api.Table columns = TablesawTables.of(table);
 * Table heavy = TablesawTables.back(
 *     columns.where(columns.numberColumn("load [kN]").isGreaterThan(4000)),
 *     Source.data("columns.csv", "loads above 4 MN"));
 * }</pre>
 */
public final class TablesawTables {

    private static final Pattern HEADING = Pattern.compile("(.*?)\\s*\\[([^\\[\\]]*)]");

    private TablesawTables() {}

    /**
     * Gives a sheet's table as one of Tablesaw's.
     *
     * @param table a table of a sheet
     * @return a table of the same title; quantities are numbers in the column's unit, which stands
     *     in square brackets after the heading
     * @throws IllegalArgumentException when two columns have the same heading and unit, capitals
     *     and small letters being the same
     */
    public static tech.tablesaw.api.Table of(Table table) {
        List<tech.tablesaw.columns.Column<?>> columns = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Column column : table.columns()) {
            String name = column.fullHeading();
            if (!names.add(name.toLowerCase(Locale.ROOT))) {
                throw new IllegalArgumentException(
                        "table \""
                                + table.title()
                                + "\" has two columns \""
                                + name
                                + "\"; allowed is one of a name, whether in capitals or not");
            }
            columns.add(
                    column.isNumeric()
                            ? DoubleColumn.create(
                                    name,
                                    column.values().stream()
                                            .mapToDouble(q -> q.in(column.unit()))
                                            .toArray())
                            : StringColumn.create(name, column.texts()));
        }
        return tech.tablesaw.api.Table.create(table.title(), columns);
    }

    /**
     * Brings a table of Tablesaw's back as one of a sheet.
     *
     * @param table a table; the unit of a column of numbers stands in square brackets at the end of
     *     its name, and a name without brackets means plain numbers; other columns are texts
     * @param source where the numbers came from
     * @return a table of the same title; the number in row 5 of the second column is the quantity
     *     T_2,5, with the source
     * @throws IllegalArgumentException when a number is missing or not finite, or a unit is not
     *     known; names the column and the row
     */
    public static Table back(tech.tablesaw.api.Table table, Source source) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < table.columnCount(); i++) {
            tech.tablesaw.columns.Column<?> column = table.column(i);
            columns.add(
                    column instanceof NumericColumn<?> numbers
                            ? numbers(numbers, i + 1, source)
                            : Column.texts(column.name(), texts(column)));
        }
        return new Table(table.name() == null ? "" : table.name(), columns);
    }

    private static Column numbers(NumericColumn<?> numbers, int position, Source source) {
        Matcher named = HEADING.matcher(numbers.name());
        String heading = named.matches() ? named.group(1) : numbers.name();
        String unit = named.matches() ? named.group(2).strip() : "";
        try {
            Unit.of(unit);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "column \"" + numbers.name() + "\": " + e.getMessage(), e);
        }
        List<Quantity> values = new ArrayList<>();
        for (int row = 0; row < numbers.size(); row++) {
            double value = numbers.isMissing(row) ? Double.NaN : numbers.getDouble(row);
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        "column \""
                                + numbers.name()
                                + "\", row "
                                + (row + 1)
                                + (numbers.isMissing(row) ? ": no number" : ": " + value)
                                + "; allowed are finite numbers");
            }
            String symbol = "T_" + position + "," + (row + 1);
            values.add(Quantity.given(symbol, value, unit, heading + ", row " + (row + 1), source));
        }
        return values.isEmpty()
                ? Column.texts(numbers.name(), List.of())
                : Column.of(heading, unit, values);
    }

    private static List<String> texts(tech.tablesaw.columns.Column<?> column) {
        List<String> texts = new ArrayList<>();
        for (int row = 0; row < column.size(); row++) {
            texts.add(column.isMissing(row) ? "" : column.getString(row));
        }
        return texts;
    }
}
