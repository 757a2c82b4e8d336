package org.skewback.data;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables read right, and refused with the place of what is wrong. */
class CsvTableTest {

    @Test
    void numbersComeInTheUnitAskedForWhateverTheHeadingHas() {
        CsvTable table =
                CsvTable.parse(
                        "loads.csv", "# invented\nx [m],P [kN]\n0.5,100\n\n# more\n2,-2.5e1\n");
        assertArrayEquals(new double[] {0.5, 2}, table.ascending("x", "m"));
        assertArrayEquals(new double[] {100e3, -25e3}, table.numbers("P", "N"));
        assertArrayEquals(new double[] {100, -25}, table.numbers("P", "kN"));
        assertEquals(2, table.size());
        assertEquals(3, table.line(0));
        assertEquals(6, table.line(1));
        assertEquals(
                List.of(new CsvTable.Heading("x", "m"), new CsvTable.Heading("P", "kN")),
                table.headings());
    }

    @Test
    void aDecimalPointIsADecimalPointInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            CsvTable table = CsvTable.parse("t", "x [m]\n12.5\n");
            assertArrayEquals(new double[] {12.5}, table.numbers("x", "m"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Property(tries = 300)
    void whatRfc4180QuotesComesBack(@ForAll @Size(min = 2, max = 4) List<String> fields) {
        StringBuilder header = new StringBuilder("a0");
        StringBuilder record = new StringBuilder(quote(fields.get(0)));
        for (int i = 1; i < fields.size(); i++) {
            header.append(",a").append(i);
            record.append(',').append(quote(fields.get(i)));
        }
        CsvTable table = CsvTable.parse("t", header + "\r\n" + record + "\r\n");
        for (int i = 0; i < fields.size(); i++) {
            assertEquals(List.of(fields.get(i)), table.texts("a" + i));
        }
    }

    private static String quote(String field) {
        return '"' + field.replace("\"", "\"\"") + '"';
    }

    @Test
    void errorsNameTheirPlace() {
        CsvTable table = CsvTable.parse("l.csv", "x [m],P [kN],n\n0,1,a\n0,NaN,b\n");
        assertEquals(
                "l.csv, line 3: column P is \"NaN\"; allowed is a finite number with a decimal"
                        + " point.",
                refusal(() -> table.numbers("P", "N")));
        assertEquals(
                "l.csv, line 3: column x is \"0\"; allowed is more than the one before, 0.",
                refusal(() -> table.ascending("x", "m")));
        assertEquals(
                "l.csv has no column Q; it has x, P, n.", refusal(() -> table.numbers("Q", "N")));
        assertEquals(
                "l.csv, column P: the unit is [kN]; allowed are units of the dimension of [m].",
                refusal(() -> table.numbers("P", "m")));
        assertEquals(
                "l.csv, column P: unit \"mtr\": \"mtr\" is not a known unit; allowed are units of"
                        + " the dimension of [m].",
                refusal(() -> CsvTable.parse("l.csv", "P [mtr]\n1\n").numbers("P", "m")));
        assertEquals(
                "l.csv, line 2: column n is \"a\"; allowed is a finite number with a decimal"
                        + " point.",
                refusal(() -> table.numbers("n", "")));
        assertEquals(
                "l.csv, line 2: 1 fields, but the header has 2.",
                refusal(() -> CsvTable.parse("l.csv", "x,y\n1\n")));
        assertEquals(
                "l.csv, line 1: column x is named twice.",
                refusal(() -> CsvTable.parse("l.csv", "x [m],x [kN]\n")));
        assertEquals("l.csv has no header.", refusal(() -> CsvTable.parse("l.csv", "# none\n")));
        assertEquals(
                "l.csv, line 2: the quotation mark opened here is never closed.",
                refusal(() -> CsvTable.parse("l.csv", "x\n\"1\n\n")));
        assertEquals(
                "l.csv, line 2: text after a closing quotation mark.",
                refusal(() -> CsvTable.parse("l.csv", "x\n\"1\"2\n")));
        assertTrue(
                refusal(() -> CsvTable.parse("l.csv", "x [furlong]\n1\n").numbers("x", "m"))
                        .startsWith("l.csv, column x: "));
    }

    @Test
    void aMissingFileIsNamed(@TempDir Path folder) {
        Path file = folder.resolve("none.csv");
        assertEquals(
                "There is no file " + file.toAbsolutePath() + ".",
                refusal(() -> CsvTable.read(file)));
    }

    @Test
    void aFileWithAByteOrderMarkReadsLikeAnyOther(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("t.csv"), "\uFEFFx [mm]\n1500\n");
        assertArrayEquals(new double[] {1.5}, CsvTable.read(file).numbers("x", "m"));
    }

    private static String refusal(Runnable action) {
        return String.valueOf(assertThrows(TableException.class, action::run).getMessage());
    }
}
