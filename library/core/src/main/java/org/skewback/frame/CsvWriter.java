package org.skewback.frame;

import org.skewback.quantity.Numerals;

/** Builds CSV text after RFC 4180. */
final class CsvWriter {

    private final StringBuilder text = new StringBuilder();
    private final int columns;

    CsvWriter(String header) {
        columns = header.split(",", -1).length;
        text.append(header).append('\n');
    }

    static String number(double value) {
        return Numerals.exact(value);
    }

    /** Adds a record; what is missing at its end is blank. */
    void row(Object... fields) {
        for (int i = 0; i < columns; i++) {
            Object field = i < fields.length ? fields[i] : "";
            text.append(i == 0 ? "" : ",")
                    .append(
                            field instanceof Double value
                                    ? number(value)
                                    : quoted(String.valueOf(field)));
        }
        text.append('\n');
    }

    private static String quoted(String field) {
        return field.contains(",") || field.contains("\"") || field.contains("\n")
                ? '"' + field.replace("\"", "\"\"") + '"'
                : field;
    }

    String text() {
        return text.toString();
    }
}
