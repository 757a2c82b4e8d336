package org.skewback.frame;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Unit;

/**
 * Reads fields of a table, which may be blank or, as in {@code =g}, stand for a quantity given
 * elsewhere. Columns that are absent read as blank.
 */
final class FieldReader {

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

    private final CsvTable table;
    private final Map<String, Quantity> given;
    private final Map<String, List<String>> texts = new HashMap<>();
    private final Map<String, String> units = new HashMap<>();

    FieldReader(CsvTable table, Map<String, Quantity> given, List<String> columns) {
        this.table = table;
        this.given = given;
        for (CsvTable.Heading heading : table.headings()) {
            if (!columns.contains(heading.name())) {
                throw new TableException(
                        table.name()
                                + " has a column "
                                + heading.name()
                                + "; allowed are "
                                + String.join(", ", columns)
                                + ".");
            }
            texts.put(heading.name(), table.texts(heading.name()));
            units.put(heading.name(), heading.unit());
        }
    }

    int size() {
        return table.size();
    }

    String text(int record, String column) {
        List<String> fields = texts.get(column);
        return fields == null ? "" : fields.get(record).strip();
    }

    /** Text that must be there. */
    String required(int record, String column) {
        String text = text(record, column);
        if (text.isEmpty()) {
            throw refused(record, column, "some text");
        }
        return text;
    }

    boolean has(int record, String column) {
        return !text(record, column).isEmpty();
    }

    double number(int record, String column, String unit, double ifBlank) {
        String field = text(record, column);
        return field.isEmpty() ? ifBlank : number(record, column, unit);
    }

    /** A number in SI; the column's own unit must be of the dimension of the one wanted. */
    double number(int record, String column, String unit) {
        String field = text(record, column);
        Unit wanted = Unit.of(unit);
        if (field.startsWith("=")) {
            Quantity quantity = given.get(field.substring(1).strip());
            if (quantity == null) {
                throw refused(record, column, "a number, or = and one of " + given.keySet());
            }
            if (!quantity.dimension().equals(wanted.dimension())) {
                throw refused(record, column, "a quantity in the dimension of " + unit);
            }
            return quantity.si();
        }
        if (field.isEmpty()) {
            throw refused(record, column, unit.isEmpty() ? "a number" : "a number, in " + unit);
        }
        Unit own = unit(column);
        if (!own.dimension().equals(wanted.dimension())) {
            throw new TableException(
                    table.name()
                            + ", column "
                            + column
                            + ": the unit is ["
                            + units.get(column)
                            + "]; allowed are units of the dimension of ["
                            + unit
                            + "].");
        }
        if (!NUMBER.matcher(field).matches()) {
            throw refused(record, column, "a finite number with a decimal point");
        }
        return own.toSi(Double.parseDouble(field));
    }

    private Unit unit(String column) {
        String unit = units.get(column);
        try {
            return Unit.of(unit == null ? "" : unit);
        } catch (IllegalArgumentException e) {
            throw new TableException(
                    table.name() + ", column " + column + ": " + e.getMessage(), e);
        }
    }

    Vector vector(int record, String columns, String unit) {
        return new Vector(
                number(record, columns + "x", unit, 0),
                number(record, columns + "y", unit, 0),
                number(record, columns + "z", unit, 0));
    }

    @Nullable Vector vectorOrNone(int record, String columns, String unit) {
        return has(record, columns + "x")
                        || has(record, columns + "y")
                        || has(record, columns + "z")
                ? vector(record, columns, unit)
                : null;
    }

    TableException refused(int record, String column, String allowed) {
        return table.refused(record, column, text(record, column), allowed);
    }

    /** Makes something of a record, naming the line if it is refused. */
    <T> T make(int record, Supplier<T> maker) {
        try {
            return maker.get();
        } catch (TableException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new TableException(
                    table.name() + ", line " + table.line(record) + ": " + e.getMessage(), e);
        }
    }
}
