package org.skewback.desk.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;

/** Notebooks that take nothing from each other may run side by side, and no others. */
class SheetNeedsTest {

    private static List<Set<Integer>> needs(String... codes) {
        return SheetNeeds.of(Arrays.stream(codes).map(SheetNeedsTest::notebook).toList());
    }

    private static Notebook notebook(String code) {
        return new Notebook(
                List.of(
                        new Cell(
                                "c",
                                Cell.Kind.CODE,
                                code,
                                JsonNodeFactory.instance.objectNode(),
                                null,
                                List.of())),
                JsonNodeFactory.instance.objectNode());
    }

    @Test
    void aSheetNeedsThoseItTakesFrom() {
        assertEquals(
                List.of(Set.of(), Set.of(), Set.of(0), Set.of(0, 1)),
                needs(
                        "Sheet s = Sheet.numbered(\"06\", \"Form\");",
                        "%maven a:b:1\nSheet s = Sheet.numbered( \"07\", \"Actions\");",
                        "s.take(\"06\", \"H\")",
                        "s.take(\"07\", \"g\"); s.take(\"06\", \"H\")"));
    }

    @Test
    void theNumberOfASheetIsReadFromItsCodeWhereThatLeavesNoDoubt() {
        assertEquals("06", SheetNeeds.number(notebook("s = Sheet.numbered(\"06\", \"Form\");")));
        for (String code :
                List.of(
                        "",
                        "// Sheet.numbered(\"06\", \"Form\")",
                        "/* Sheet.numbered(\"06\", \"Form\") */",
                        "Sheet.numbered(number, \"Form\")",
                        "Sheet.numbered(\"06\", \"A\"); Sheet.numbered(\"07\", \"B\")")) {
            assertEquals("", SheetNeeds.number(notebook(code)), code);
        }
    }

    @Test
    void aSheetThatTakesFromWhatCannotBeFoundNeedsAllBeforeIt() {
        String first = "Sheet.numbered(\"06\", \"Form\")";
        for (String code :
                List.of(
                        "s.take(number, \"H\")",
                        "s.take(\"99\", \"H\")",
                        "List.of(\"06\").forEach(s::take)",
                        "System.getenv(\"SKEWBACK_RECORDS\")")) {
            assertEquals(List.of(Set.of(), Set.of(), Set.of(0, 1)), needs(first, "1", code), code);
        }
    }
}
