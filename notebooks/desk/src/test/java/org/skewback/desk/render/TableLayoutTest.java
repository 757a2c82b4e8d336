package org.skewback.desk.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.skewback.desk.issue.RunPackage;

/** Tables: columns that follow what they hold on paper, rows as cards on a telephone. */
final class TableLayoutTest {

    private static final ReadPackage NOTHING =
            ReadPackage.of(
                    new RunPackage(SamplePackage.info("title", "summary"), List.of(), Map.of()));

    private static final String OBJECTIONS =
            "| objection | answer |\n|---|---|\n| The base was moved after its check failed. | "
                    + "The drawing was not, so that the check stands as failed until the revision. "
                            .repeat(4)
                    + " |\n| $\\sigma_1$ is left out. | It is small. |\n";

    private static TableMarkup table(String... cells) {
        StringBuilder markup = new StringBuilder("<table><thead><tr><th>a</th><th>b</th></tr>");
        markup.append("</thead><tbody>");
        for (int i = 0; i < cells.length; i += 2) {
            markup.append("<tr><td>").append(cells[i]).append("</td><td>");
            markup.append(cells[i + 1]).append("</td></tr>");
        }
        return TableMarkup.of(markup.append("</tbody></table>").toString(), tag -> 3);
    }

    /** By hand: 24 em of short words beside 200 em of long text have room in three lines of eight. */
    @Test
    void aShortTextBesideALongOneIsNotBrokenAfterEveryWord() {
        TableMarkup table = table("word ".repeat(10), "word ".repeat(90));
        ColumnWidths columns = new ColumnWidths(table, 1);
        double[] widths = columns.divided(40);
        assertEquals(40, Arrays.stream(widths).sum(), 1e-6);
        // Equal heights are the fewest lines: the words stand as one to nine.
        assertEquals(1 + 38 * 0.1, widths[0], 2);
        assertTrue(columns.linesARow(40) <= 9, () -> columns.linesARow(40) + " lines");
    }

    @Test
    void widthsAlwaysAddUpAndNoWordIsBroken() {
        for (int available = 12; available < 60; available++) {
            TableMarkup table = table("unbreakable", "a few words more", "x", "w ".repeat(80));
            ColumnWidths columns = new ColumnWidths(table, 1);
            double[] widths = columns.divided(available);
            assertTrue(Arrays.stream(widths).sum() <= available + 1e-6);
            assertTrue(widths[0] >= 1 + Lettering.text().width("unbreakable") - 1e-9);
        }
        assertFalse(new ColumnWidths(table("unbreakable", "unbreakable"), 1).fit(8));
    }

    /** Width of letters by the font's own table: hmtx of Source Sans 3, an em of 1000 units. */
    @Test
    void lettersHaveTheWidthOfTheFont() {
        assertEquals(0.497, Lettering.text().width("0"), 0.001);
        assertEquals(0.2, Lettering.text().width(" "), 0.001);
    }

    @Test
    void onPaperTheColumnsOfProseFollowTheirContent() {
        String set = new Prose(new PrintMedium(NOTHING, Drawing.DONE)).set(OBJECTIONS, null);
        Matcher widths = Pattern.compile("<th[^>]*width:([\\d.]+)pt").matcher(set);
        assertTrue(widths.find(), set);
        double first = Double.parseDouble(widths.group(1));
        assertTrue(widths.find(), set);
        double second = Double.parseDouble(widths.group(1));
        double padding = 2 * 4 * 72 / 25.4;
        assertTrue(first + second + padding <= 168 * 72 / 25.4, first + " " + second);
        // The short text gets so much that it is no longer than the long one, and a line at most.
        double objection = Lettering.text().width("The base was moved after its check failed.");
        double answer =
                4
                        * Lettering.text()
                                .width(
                                        "The drawing was not, so that the check stands as failed"
                                                + " until the revision. ");
        assertTrue(objection / first <= answer / second + 1 / 9.5, first + " and " + second);
        assertFalse(
                new Prose(new PrintMedium(NOTHING, Drawing.DONE))
                        .set("| a | b |\n|---|---|\n| 1 | 2 |\n", null)
                        .contains("width:"),
                "what has room anyway is left alone");
    }

    @Test
    void aTableTooWideForATelephoneNamesEachCellByItsColumn() {
        PageMedium page = new PageMedium(NOTHING);
        StringBuilder head = new StringBuilder();
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < 10; i++) {
            head.append("<th scope=\"col\">force ").append(i).append(" &quot;kN&quot;</th>");
            row.append("<td class=\"number\">−12 345</td>");
        }
        String wide =
                page.table(
                        "<table class=\"values\"><thead><tr>"
                                + head
                                + "</tr></thead><tbody><tr>"
                                + row
                                + "</tr></tbody></table>",
                        "Table: forces");
        assertTrue(wide.contains("class=\"cards values\""), wide);
        assertTrue(wide.contains("data-head=\"force 9 &quot;kN&quot;\""), wide);
        assertTrue(wide.contains("<tr role=\"row\">"), wide);
        assertFalse(Xml.parse(wide) == null, "well-formed");
        String small = new Prose(page).set("| a | b |\n|---|---|\n| 1 | 2 |\n", null);
        assertFalse(small.contains("cards"), small);
        String pairs = new Prose(page).set(OBJECTIONS, null);
        assertTrue(pairs.contains("class=\"cards pairs\""), pairs);
    }

    @Test
    void aLyingTableIsShownAsItStands() {
        String uneven = "<table><tr><th>a</th></tr><tr><td>1</td><td>2</td></tr></table>";
        assertFalse(TableMarkup.of(uneven, tag -> 1).isRegular());
        assertTrue(new PageMedium(NOTHING).table(uneven, "Table").contains(uneven));
        assertEquals(uneven, new PrintMedium(NOTHING, Drawing.DONE).table(uneven, "Table"));
    }
}
