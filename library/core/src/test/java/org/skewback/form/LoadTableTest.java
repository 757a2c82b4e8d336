package org.skewback.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.skewback.data.CsvTable;
import org.skewback.data.TableException;

/** Loads from tables. */
class LoadTableTest {

    @Test
    void eachRowIsAPointLoad() {
        CsvTable table = CsvTable.parse("l.csv", "x [m],P [kN]\n2,100\n3.5,50\n");
        assertEquals(
                List.of(new PointLoad(2, 100e3), new PointLoad(3.5, 50e3)),
                LoadTable.pointLoads(table, "x", "P").parts());
    }

    @Test
    void betweenTwoRowsTheLoadVariesLinearly() {
        CsvTable table = CsvTable.parse("l.csv", "x [m],g [kN/m]\n0,10\n4,20\n6,0\n");
        VerticalLoad load = LoadTable.lineLoad(table, "x", "g");
        assertEquals(
                List.of(new LineLoad(0, 4, 10e3, 20e3), new LineLoad(4, 6, 20e3, 0)), load.parts());
        assertEquals(80e3, SimpleBeam.under(load, 6).total(), 1e-9);
    }

    @Test
    void errorsNameTheRow() {
        assertEquals(
                "l.csv, line 2: column x is \"-1\"; allowed is at least 0.",
                refusal("x [m],P [kN]\n-1,100\n"));
        assertEquals(
                "l.csv, line 3: column x is \"1\"; allowed is more than the one before, 2.",
                refusal("x [m],P [kN]\n2,100\n1,100\n"));
        assertEquals("l.csv has 0 rows; allowed is at least 1.", refusal("x [m],P [kN]\n"));
    }

    private static String refusal(String text) {
        CsvTable table = CsvTable.parse("l.csv", text);
        return String.valueOf(
                assertThrows(TableException.class, () -> LoadTable.pointLoads(table, "x", "P"))
                        .getMessage());
    }
}
