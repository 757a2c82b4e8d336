package org.skewback.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.InterpolationTable.Axis;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.quantity.Tape;

/** A study needs nothing of a sheet but its record. */
class RecordGraphTest {

    private final Sheet sheet = Sheet.titled("Heights and pressures");

    @Test
    void branchesAndTablesComeBackFromTheRecord() {
        InterpolationTable table =
                new InterpolationTable(
                        "k_h",
                        "factor by height",
                        Axis.logarithmic("m", 1, 10, 100),
                        Axis.linear("kN/m²", 0.5, 0.75, 1.3),
                        Source.book("A book", "table 3"));
        Quantity height = sheet.given("h", 20, "m", "height", Source.assumption("an example"));
        Quantity limit = sheet.given("h_0", 12, "m", "limit", Source.assumption("an example"));
        Quantity pressure =
                sheet.step(
                        "q",
                        Quantity.choose(
                                height.moreThan(limit),
                                () -> height.interpolated(table),
                                () -> limit.interpolated(table)),
                        "kN/m²",
                        "pressure");
        String json = RecordWriter.write(sheet.record());
        assertTrue(json.contains("\"tables\""), json);
        SheetRecord read = RecordReader.read(json);
        assertEquals(json, RecordWriter.write(read));
        List<Quantity> quantities = read.quantities();
        Tape live = Tape.of(List.of(pressure), List.of(height, limit));
        Tape again = Tape.of(List.of(quantities.get(2)), quantities.subList(0, 2));
        double[][] samples = {{20, 15, 8, 99}, {12, 16, 9, 2}};
        double[][] expected = new double[1][4];
        double[][] results = new double[1][4];
        live.evaluate(samples, 4, expected);
        again.evaluate(samples, 4, results);
        assertArrayEquals(expected, results);
        assertEquals(table.at(Quantity.of(16, "m")).si(), results[0][1]);
    }

    @Test
    void aRecordWithoutTablesSaysNothingOfThem() {
        sheet.given("h", 20, "m", "height", Source.assumption("an example"));
        assertFalse(RecordWriter.write(sheet.record()).contains("\"tables\""));
    }

    @Test
    void aTableThatIsNoneIsRefused() {
        Quantity height = sheet.given("h", 2, "m", "height", Source.assumption("an example"));
        InterpolationTable table =
                new InterpolationTable(
                        "k_h",
                        "",
                        Axis.linear("m", 1, 4),
                        Axis.linear("", 3, 7),
                        Source.assumption("an example"));
        sheet.step("k", height.interpolated(table), "", "factor");
        String json = RecordWriter.write(sheet.record());
        for (String spoiled :
                List.of(
                        json.replace("\"#0\"", "\"#1\""),
                        json.replace("\"linear\"", "\"square\""),
                        json.replace("[ 1, 4 ]", "[ 4, 1 ]"),
                        json.replace("[ 1, 4 ]", "[ 1 ]"))) {
            assertFalse(spoiled.equals(json));
            assertThrows(IllegalArgumentException.class, () -> RecordReader.read(spoiled));
        }
    }
}
