package org.skewback.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Column;
import org.skewback.sheet.Part;
import org.skewback.sheet.RecordReevaluation;
import org.skewback.sheet.Sheet;
import org.skewback.sheet.Table;
import org.slf4j.spi.SLF4JServiceProvider;
import tech.tablesaw.api.BooleanColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;

class TablesawTablesTest {

    private static final Source FILE = Source.data("columns.csv", "as weighed");

    private static Quantity of(double value, String unit) {
        return Quantity.of(value, unit);
    }

    private final Table columns =
            Table.of(
                    "Columns on the rib",
                    Column.texts("column", List.of("C1", "C2", "C3")),
                    Column.of("x", "m", List.of(of(24, "m"), of(48, "m"), of(72, "m"))),
                    Column.of(
                            "load",
                            "kN",
                            List.of(of(4.62, "MN"), of(4125.5, "kN"), of(3990, "kN"))),
                    Column.of("ratio", "", List.of(of(0.1, ""), of(0.25, ""), of(0.5, ""))));

    @Test
    void unitsStandInTheNamesAndNumbersAreInThem() {
        tech.tablesaw.api.Table saw = TablesawTables.of(columns);
        assertEquals("Columns on the rib", saw.name());
        assertEquals(List.of("column", "x [m]", "load [kN]", "ratio"), saw.columnNames());
        assertEquals(4620, saw.doubleColumn("load [kN]").getDouble(0), 1e-9);
        assertEquals("C3", saw.stringColumn("column").get(2));
    }

    @Test
    void aTableThatGoesOutAndComesBackReadsTheSame() {
        Table back = TablesawTables.back(TablesawTables.of(columns), FILE);
        assertEquals(columns.title(), back.title());
        for (int i = 0; i < columns.columns().size(); i++) {
            Column before = columns.columns().get(i);
            Column after = back.columns().get(i);
            assertEquals(before.fullHeading(), after.fullHeading());
            assertEquals(before.texts(), after.texts());
            for (int row = 0; row < before.values().size(); row++) {
                double was = before.values().get(row).si();
                assertEquals(was, after.values().get(row).si(), Math.ulp(was));
            }
        }
    }

    @Test
    void whatComesBackHasItsSourceAndIsUsedInASheet() {
        tech.tablesaw.api.Table saw = TablesawTables.of(columns);
        Table heavy =
                TablesawTables.back(
                        saw.where(saw.numberColumn("load [kN]").isGreaterThan(4000))
                                .sortDescendingOn("x [m]"),
                        FILE);
        assertEquals(List.of("C2", "C1"), heavy.columns().get(0).texts());
        List<Quantity> loads = heavy.columns().get(2).values();
        assertEquals("T_3,1", loads.get(0).symbol());
        assertEquals("load, row 1", loads.get(0).note());
        assertEquals(FILE, loads.get(0).source());

        Sheet sheet = Sheet.titled("Loads");
        sheet.table(heavy);
        sheet.step("P", Quantity.sum(loads), "MN", "load of the heavy columns");
        assertEquals(List.of(), sheet.record().withoutSource());
        String json = sheet.conclude("Heavy.").display().get(Part.RECORD_TYPE);
        assertTrue(RecordReevaluation.of(json).isConsistent());
    }

    @Test
    void whatIsNoNumberIsRefusedByColumnAndRow() {
        DoubleColumn gap = DoubleColumn.create("load [kN]", 1.0, Double.NaN);
        assertEquals(
                "column \"load [kN]\", row 2: no number; allowed are finite numbers",
                refusal(tech.tablesaw.api.Table.create("t", gap)));
        DoubleColumn endless = DoubleColumn.create("load [kN]", Double.POSITIVE_INFINITY);
        assertEquals(
                "column \"load [kN]\", row 1: Infinity; allowed are finite numbers",
                refusal(tech.tablesaw.api.Table.create("t", endless)));
        DoubleColumn unknown = DoubleColumn.create("load [furlong]", 1.0);
        assertTrue(
                refusal(tech.tablesaw.api.Table.create("t", unknown))
                        .startsWith("column \"load [furlong]\": "));
        Column once = Column.texts("Column", List.of("a"));
        Column twice = Column.texts("column", List.of("a"));
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () -> TablesawTables.of(Table.of("t", once, twice)))
                        .getMessage()
                        .contains("two columns \"column\""));
    }

    private static String refusal(tech.tablesaw.api.Table table) {
        return assertThrows(IllegalArgumentException.class, () -> TablesawTables.back(table, FILE))
                .getMessage();
    }

    @Test
    void otherColumnsAreWholeNumbersOrTexts() {
        tech.tablesaw.api.Table saw =
                tech.tablesaw.api.Table.create(
                        "Bolts",
                        IntColumn.create("count", 12, 8),
                        BooleanColumn.create("tightened", true, false));
        Table back = TablesawTables.back(saw, FILE);
        assertEquals(List.of("12", "8"), back.columns().get(0).texts());
        assertEquals(List.of("true", "false"), back.columns().get(1).texts());
    }

    /** Without a provider the logging facade complains under the first cell that has a table. */
    @Test
    void theLoggingFacadeFindsAProvider() {
        assertTrue(ServiceLoader.load(SLF4JServiceProvider.class).findFirst().isPresent());
    }
}
