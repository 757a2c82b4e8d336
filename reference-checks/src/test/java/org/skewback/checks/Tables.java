package org.skewback.checks;

import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;

/** Tables as a surveyor or a crew would write them, put together from the inputs of a row. */
final class Tables {

    private Tables() {}

    /** A table whose columns are inputs of a row, with their units in the heading. */
    static CsvTable of(Inputs in, String... columns) {
        StringBuilder text = new StringBuilder();
        int rows = 0;
        for (String column : columns) {
            List<Quantity> values = in.quantities(column);
            rows = values.size();
            String unit = values.get(0).unit().symbol();
            text.append(text.length() == 0 ? "" : ",").append(column);
            text.append(unit.isEmpty() ? "" : " [" + unit + "]");
        }
        for (int i = 0; i < rows; i++) {
            text.append('\n');
            for (int k = 0; k < columns.length; k++) {
                Quantity value = in.quantities(columns[k]).get(i);
                text.append(k == 0 ? "" : ",").append(value.in(value.unit().symbol()));
            }
        }
        return CsvTable.parse("table", text.append('\n').toString());
    }
}
