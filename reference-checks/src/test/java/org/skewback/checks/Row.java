package org.skewback.checks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;

/**
 * One check, as the table states it.
 *
 * @param id name of the check, unique in all topics
 * @param topic package exercised
 * @param routine routine exercised
 * @param inputs inputs, see {@link Inputs}
 * @param quantity which of the routine's results is checked
 * @param expected value expected, as written in the table
 * @param unit unit of that value, empty for a plain number
 * @param tolerance deviation that still agrees, relative unless the value expected is 0
 * @param toleranceReason why that tolerance
 * @param kind kind of source
 * @param source source with its section
 */
record Row(
        String id,
        String topic,
        String routine,
        String inputs,
        String quantity,
        String expected,
        String unit,
        double tolerance,
        String toleranceReason,
        Kind kind,
        String source) {

    double expectedValue() {
        return Double.parseDouble(expected);
    }

    /** Reads the table of a subject. */
    static List<Row> of(Subject subject) {
        String file = subject.table() + ".csv";
        CsvTable table = CsvTable.parse(file, text(subject, file));
        double[] expected = table.numbers("expected", "");
        double[] tolerance = table.numbers("tolerance", "");
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < table.size(); i++) {
            for (String column :
                    List.of("id", "routine", "quantity", "tolerance reason", "source")) {
                if (table.texts(column).get(i).isBlank()) {
                    throw table.refused(i, column, "", "some text");
                }
            }
            if (!(tolerance[i] > 0 && tolerance[i] <= 0.1)) {
                throw table.refused(
                        i,
                        "tolerance",
                        table.texts("tolerance").get(i),
                        "more than 0, at most 0.1");
            }
            if (!Double.isFinite(expected[i])) {
                throw new TableException(file + ": a value expected is not finite.");
            }
            rows.add(
                    new Row(
                            table.texts("id").get(i),
                            subject.topic(),
                            table.texts("routine").get(i),
                            table.texts("inputs").get(i),
                            table.texts("quantity").get(i),
                            table.texts("expected").get(i),
                            table.texts("unit").get(i),
                            tolerance[i],
                            table.texts("tolerance reason").get(i),
                            Kind.of(table.texts("kind").get(i)),
                            table.texts("source").get(i)));
        }
        return List.copyOf(rows);
    }

    private static String text(Subject subject, String file) {
        try (InputStream stream = subject.getClass().getResourceAsStream(file)) {
            if (stream == null) {
                throw new TableException("There is no table " + file + " beside its subject.");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
