package org.skewback.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.quantity.InterpolationTable;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.QuantityVector;
import org.skewback.quantity.Source;

class SheetTest {

    private static final Source DRAWING = Source.drawing("OG-201", "B");

    private final Sheet sheet = Sheet.numbered("06", "Form of the rib");

    private Quantity load(double value) {
        return sheet.given("g", value, "kN/m", "load on plan", DRAWING);
    }

    private Quantity span() {
        return sheet.given("L", 336, "m", "span between springings", DRAWING);
    }

    private Quantity moment(Quantity load, Quantity span) {
        return sheet.step("M", load.times(span.squared()).over(8), "MN·m", "moment of the beam");
    }

    private List<String> kinds() {
        return sheet.record().entries().stream()
                .map(entry -> entry.block().getClass().getSimpleName())
                .toList();
    }

    @Test
    void rerunningACellReplacesWhatItSaidInItsPlace() {
        sheet.cellStarts("one");
        load(148);
        sheet.cellStarts("two");
        span();
        sheet.cellStarts("one");
        sheet.purpose("to show the order");
        load(150);

        assertEquals(List.of("Purpose", "Given", "Given"), kinds());
        assertEquals(
                List.of("g", "L"),
                sheet.record().quantities().stream().map(Quantity::symbol).toList());
        assertEquals(150, sheet.record().quantities().get(0).in("kN/m"));
    }

    @Test
    void aCellRunAgainWithFewerStatementsLeavesNoneBehind() {
        sheet.cellStarts("one");
        load(148);
        span();
        sheet.cellStarts("one");
        load(148);

        assertEquals(List.of("Given"), kinds());
    }

    @Test
    void whatRestsOnAChangedGivenIsStaleUntilItRunsAgain() {
        sheet.cellStarts("one");
        Quantity load = load(148);
        Quantity span = span();
        sheet.cellStarts("two");
        Quantity moment = moment(load, span);
        sheet.check("the moment is below its limit", moment).atMost(Quantity.of(3000, "MN·m"));
        assertEquals(Verdict.PASSED, sheet.record().checks().get(0).verdict());

        sheet.cellStarts("one");
        Quantity changed = load(350);
        Quantity sameSpan = span();
        assertEquals(Verdict.STALE, sheet.record().checks().get(0).verdict());
        assertTrue(sheet.record().entries().get(2).stale());

        sheet.cellStarts("two");
        moment = moment(changed, sameSpan);
        sheet.check("the moment is below its limit", moment).atMost(Quantity.of(3000, "MN·m"));
        assertEquals(Verdict.FAILED, sheet.record().checks().get(0).verdict());
    }

    @Test
    void aCellThatShowsTellsThatItsOldStepIsStale() {
        sheet.cellStarts("one");
        Quantity load = load(148);
        Quantity span = span();
        sheet.cellStarts("one");
        load(149);
        span();
        sheet.cellStarts("two");
        moment(load, span);

        assertTrue(
                sheet.latest()
                        .toString()
                        .contains(
                                "(stale: g changed from 148\u00A0kN/m to 149\u00A0kN/m; run its"
                                        + " cell again)"));
    }

    /** What a checker reads when a given was changed and nothing behind it was run again. */
    @Test
    void aChangedGivenSaysFromWhatToWhatAndWhatIsStaleAndWhereToRunAgain() {
        sheet.cellStarts("one");
        Quantity load = load(148);
        Quantity span = span();
        sheet.cellStarts("two");
        Quantity moment = moment(load, span);
        sheet.cellStarts("three");
        sheet.check("the moment is below its limit", moment).atMost(Quantity.of(3000, "MN·m"));
        sheet.figure(new Picture("Moment"), moment);
        sheet.table(Table.of("Moments", Column.of("M", "MN·m", List.of(moment))));

        sheet.cellStarts("one");
        load(150);
        span();
        String nb = "\u00A0";
        assertEquals(
                """
                g = 150~kN/m   load on plan (drawing OG-201, revision B)
                L = 336~m   span between springings (drawing OG-201, revision B)
                Stale: step 06.1 M: g changed from 148~kN/m to 150~kN/m. Run again the cell of step 06.1.
                Stale: check 06.1 the moment is below its limit, figure 06.1 Moment, table 06.1 Moments: g changed from 148~kN/m to 150~kN/m. Run again the cell of check 06.1.\
                """
                        .replace("~", nb),
                sheet.latest().toString());
        String markdown = sheet.latest().display().get("text/markdown");
        assertTrue(
                markdown.contains(
                        "> Stale: step 06.1 M: g changed from 148~kN/m to 150~kN/m. Run again the"
                                .replace("~", nb)),
                markdown);

        String json = RecordWriter.write(sheet.record());
        assertEquals(sheet.record(), RecordReader.read(json));
        assertEquals(json, RecordWriter.write(RecordReader.read(json)));
        Change change = RecordReader.read(json).stale().get(0).changes().get(0);
        assertEquals(148, change.was().in("kN/m"));
        assertEquals(150, change.now().in("kN/m"));
        String whole = sheet.display().get("text/plain");
        assertEquals(4, whole.split("run its cell again", -1).length - 1, whole);
    }

    @Test
    void aChangeIsSaidInAsManyDigitsAsShowIt() {
        Quantity before = Quantity.of(29_008.01, "kN").times(1).named("H", "kN", "thrust");
        Quantity after = Quantity.of(29_008.02, "kN").times(1).named("H", "kN", "thrust");
        assertEquals(
                "H changed from 29\u202F008.01\u00A0kN to 29\u202F008.02\u00A0kN",
                new Change(before, after).inWords());
        assertEquals("H was said again", new Change(before, before).inWords());
        assertEquals(
                "H = 29\u202F008\u00A0kN is no longer said", new Change(before, null).inWords());
    }

    @Test
    void whatWasSaidAgainUnchangedExplainsNothingBesideWhatMoved() {
        sheet.cellStarts("one");
        Quantity span = span();
        Quantity load = load(148);
        List<Quantity> x = sheet.series("x", new double[] {1, 2, 3, 4, 5}, "m", "places", DRAWING);
        sheet.cellStarts("two");
        sheet.step("A", load.times(span), "kN", "load");
        sheet.step("B", Quantity.sum(x), "m", "sum");
        sheet.step("C", span.times(2), "m", "twice");
        sheet.cellStarts("one");
        span();
        load(149);
        sheet.series("x", new double[] {2, 3, 4, 5, 6}, "m", "places", DRAWING);
        assertEquals(
                List.of(
                        "g changed from 148~kN/m to 149~kN/m",
                        "x_1 changed from 1~m to 2~m, x_2 changed from 2~m to 3~m, x_3 changed"
                                + " from 3~m to 4~m, x_4 changed from 4~m to 5~m and 1 more",
                        "L was said again"),
                sheet.record().stale().stream()
                        .map(entry -> entry.because().replace('\u00A0', '~'))
                        .toList());
    }

    @Test
    void oneSymbolHasOneMeaning() {
        sheet.cellStarts("one");
        span();
        sheet.cellStarts("two");
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, this::span);
        assertEquals(
                "symbol L already stands for \"span between springings\" in this sheet; choose"
                        + " another, such as L_2",
                e.getMessage());
    }

    @Test
    void whereNobodyTellsTheCellASymbolSaidAgainReplaces() {
        load(148);
        Quantity span = span();
        sheet.latest();
        moment(load(150), span);

        assertEquals(List.of("Given", "Given", "Step"), kinds());
        assertEquals(150, sheet.record().quantities().get(0).in("kN/m"));
        assertTrue(sheet.latest().toString().contains("g = 150"));
        assertTrue(sheet.latest().entries().isEmpty());
    }

    /** Before anything was shown, all of it was said in the cell that makes the sheet. */
    @Test
    void inTheCellThatMakesTheSheetNothingIsSilentlyReplaced() {
        span();
        sheet.series("x", new double[] {24, 48}, "m", "columns", DRAWING);
        List<Runnable> again =
                List.of(
                        this::span,
                        () -> sheet.given("x_2", 1, "m", "another", DRAWING),
                        () -> sheet.series("x", new double[] {24}, "m", "columns", DRAWING),
                        () -> sheet.step("L", Quantity.of(3), "", "another"));
        for (Runnable one : again) {
            String message = assertThrows(IllegalArgumentException.class, one::run).getMessage();
            assertTrue(message.contains("already stands for"), message);
            assertTrue(
                    message.endsWith("or run the sheet from its first cell to say it anew"),
                    message);
        }
        Table table = Table.of("Loads", Column.texts("load", List.of("much")));
        sheet.figure(new Picture("Loads"));
        sheet.figure(new Picture("Loads"), span(2));
        sheet.table(table);
        sheet.table(table, span(3));
        assertEquals(
                List.of(
                        "Given",
                        "Series",
                        "Drawn",
                        "Given",
                        "Drawn",
                        "Tabulated",
                        "Given",
                        "Tabulated"),
                kinds());

        sheet.latest();
        sheet.figure(new Picture("Loads"));
        sheet.table(table);
        assertEquals(8, kinds().size());
    }

    private Quantity span(int number) {
        return sheet.given("L_" + number, 336, "m", "span " + number, DRAWING);
    }

    @Test
    void aSeriesThatIsRefusedLeavesItsSymbolsFree() {
        sheet.cellStarts("one");
        assertThrows(
                IllegalArgumentException.class,
                () -> sheet.series("x", new double[] {24, Double.NaN}, "m", "columns", DRAWING));
        sheet.given("y_2", 1, "m", "another", DRAWING);
        assertThrows(
                IllegalArgumentException.class,
                () -> sheet.series("y", new double[] {24, 48}, "m", "columns", DRAWING));

        sheet.cellStarts("one");
        sheet.series("x", new double[] {24, 48}, "m", "columns", DRAWING);
        sheet.series("y", new double[] {24, 48}, "m", "columns", DRAWING);
        assertEquals(List.of("Series", "Series"), kinds());
    }

    @Test
    void whatASeriesNoLongerHoldsIsStale() {
        List<Quantity> x = sheet.series("x", new double[] {24, 48, 72}, "m", "columns", DRAWING);
        sheet.step("a", x.get(2).over(2), "m", "half the last position");
        sheet.latest();
        sheet.series("x", new double[] {24, 48}, "m", "columns", DRAWING);

        assertTrue(sheet.record().entries().get(1).stale());
    }

    @Test
    void whereNobodyTellsTheCellNoRequirementIsLost() {
        Quantity limit = Quantity.of(400, "m");
        for (double length : new double[] {500, 300}) {
            sheet.check("length", Quantity.of(length, "m")).atMost(limit);
        }
        sheet.check("length", span()).atMost(Quantity.of(300, "m"));
        sheet.latest();
        sheet.check("length", span()).atMost(limit);
        assertEquals(
                List.of(Verdict.FAILED, Verdict.PASSED, Verdict.STALE, Verdict.PASSED),
                sheet.record().checks().stream().map(Entry::verdict).toList());

        sheet.latest();
        sheet.check("length", span()).atMost(limit);
        assertEquals(4, sheet.record().checks().size());
    }

    @Test
    void aCheckWithoutALimitKeepsTheSheetOpen() {
        sheet.cellStarts("one");
        sheet.check("length", span());
        sheet.cellStarts("two");
        IllegalStateException e =
                assertThrows(IllegalStateException.class, () -> sheet.conclude("done"));
        assertEquals(
                "check \"length\" has no limit yet; finish it with atMost, atLeast or between",
                e.getMessage());

        sheet.cellStarts("one");
        sheet.check("length", span()).atMost(Quantity.of(400, "m"));
        sheet.cellStarts("two");
        assertEquals(1, sheet.conclude("done").closing().checks().size());
    }

    @Test
    void aCheckThatWasRefusedMayBeSaidAgain() {
        Quantity span = span();
        assertThrows(
                IllegalArgumentException.class,
                () -> sheet.check("length", span).atMost(Quantity.of(400, "kN")));
        sheet.check("length", span).atMost(Quantity.of(400, "m"));
        assertEquals(1, sheet.conclude("done").closing().checks().size());
    }

    @Test
    void aQuantityOfAnEarlierRunOfTheSheetIsRefusedByName() {
        Sheet again = Sheet.numbered("06", "Form of the rib");
        Quantity old = span();
        IllegalArgumentException e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> again.step("A", old.squared(), "m²", "area"));
        assertEquals(
                "L = 336\u00A0m belongs to an earlier run of this sheet; run again the cell that"
                        + " defines L",
                e.getMessage());
        Sheet other = Sheet.titled("Deck");
        e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> other.check("length", old).atMost(Quantity.of(400, "m")));
        assertTrue(e.getMessage().contains("belongs to sheet \"Form of the rib\""));
    }

    @Test
    void numbersWithoutASourceAreListed() {
        sheet.step("A", span().times(Quantity.of(12, "m")).over(2), "m²", "area of the deck");
        String shown = sheet.conclude("The deck is wide enough.").toString();
        assertTrue(shown.contains("Numbers without a source: 12\u00A0m."), shown);
        assertTrue(shown.contains("This sheet has no checks."), shown);
    }

    /** What hides a number from the register, and what does not. */
    @Test
    void theRegisterHoldsEveryNumberThatLostItsSourceOnTheWay() {
        Quantity span = span();
        Quantity leaked = Quantity.of(span.in("m") * 2, "m");
        Quantity one = Quantity.of(1, "kN");
        sheet.step("A", span.times(leaked), "m²", "a number taken out and put in again");
        sheet.step("B", Quantity.of(12, "m").named("b", "m", "width"), "m", "named, not cited");
        sheet.step("r", span.per("m").root(), "", "a plain number of metres");
        sheet.step("F", one.times(span.per("m")), "kN", "one unit that is a number of its own");
        sheet.table(Table.of("Deck", Column.of("width", "m", List.of(Quantity.of(11, "m")))));
        sheet.figure(new Picture("Deck"), Quantity.of(13, "m"));
        sheet.check("length", span).atMost(Quantity.of(400, "m"));
        sheet.check("nothing", Quantity.of(0, "m")).atMost(span);
        assertEquals(
                List.of("672", "12", "1", "11", "13", "400"),
                sheet.record().withoutSource().stream().map(Numerals::of).toList());
        assertEquals(
                sheet.record().withoutSource(),
                RecordReader.read(RecordWriter.write(sheet.record())).withoutSource());
    }

    @Test
    void aTableThatWasReadIsAmongTheSources() {
        InterpolationTable table =
                new InterpolationTable(
                        "k",
                        "a factor",
                        InterpolationTable.Axis.linear("m", 0, 400),
                        InterpolationTable.Axis.linear("", 1, 3),
                        Source.book("a book", "table 3"));
        Quantity span = span();
        sheet.step("a", span.times(table.at(span)), "m", "first");
        sheet.step("b", span.times(table.at(span.over(2))), "m", "second");
        Map<Source, List<String>> sources =
                Map.of(DRAWING, List.of("L"), Source.book("a book", "table 3"), List.of("k"));
        assertEquals(sources, sheet.record().sources());
        assertEquals(sources, RecordReader.read(RecordWriter.write(sheet.record())).sources());
        assertTrue(
                sheet.conclude("words")
                        .toString()
                        .contains(
                                "Sources: drawing OG-201, revision B (L); book a book, table 3"
                                        + " (k)."));
    }

    @Test
    void figuresAndTablesOfTextsAreStaleWithWhatTheyRestOn() {
        sheet.cellStarts("one");
        Quantity load = load(148);
        Quantity span = span();
        sheet.cellStarts("two");
        Table texts = Table.of("In words", Column.texts("load", List.of(load.toString())));
        sheet.figure(new Picture("Loads"), load);
        sheet.figure(new Picture("Free"));
        sheet.table(texts, List.of(load, span));
        String json = RecordWriter.write(sheet.record());
        assertEquals(sheet.record(), RecordReader.read(json));
        assertEquals(List.of(false, false, false), stale("two"));

        sheet.cellStarts("one");
        Quantity changed = load(150);
        span();
        assertEquals(List.of(true, false, true), stale("two"));
        sheet.cellStarts("three");
        assertTrue(sheet.conclude("done").closing().entries().get(2).stale());

        sheet.cellStarts("two");
        sheet.figure(new Picture("Loads"), changed);
        assertEquals(List.of(false), stale("two"));
        Sheet again = Sheet.numbered("06", "Form of the rib");
        assertThrows(
                IllegalArgumentException.class, () -> again.figure(new Picture("Loads"), load));
        assertThrows(IllegalArgumentException.class, () -> again.table(texts, load));
    }

    private List<Boolean> stale(String cell) {
        return sheet.record().entries().stream()
                .filter(entry -> cell.equals(entry.cell()))
                .map(Entry::stale)
                .toList();
    }

    @Test
    void aCheckInANotebookSetsItsSymbolsAsMathematics() {
        Sheet sheet = Sheet.titled("s");
        Quantity demand = sheet.given("F", 2, "kN", "n", Source.assumption("a"));
        Quantity limit = sheet.given("F_Rd", 3, "kN", "n", Source.assumption("a"));
        sheet.check("it holds", demand).atMost(limit);
        String markdown = sheet.latest().display().get("text/markdown");
        assertTrue(
                markdown.contains("$F = 2\\ \\mathrm{kN}$ ≤ $F_{\\mathrm{Rd}} = 3\\ \\mathrm{kN}$"),
                markdown);
    }

    @Test
    void utilisationIsOneAtTheLimitAndAbsentWhereItMeansNothing() {
        Quantity three = Quantity.of(3, "kN");
        Quantity four = Quantity.of(4, "kN");
        assertEquals(0.75, sheet.check("a", three).atMost(four).utilisation().si());
        assertEquals(0.75, sheet.check("b", four).atLeast(three).utilisation().si());
        assertNull(sheet.check("c", three.negated()).atMost(four).utilisation());
        assertThrows(
                IllegalArgumentException.class,
                () -> sheet.check("d", three).atMost(Quantity.of(4, "m")));
    }

    @Test
    void betweenTwoLimitsUtilisationIsTheDistanceFromTheMiddleOverHalfTheRange() {
        Quantity low = Quantity.of(2, "kN");
        Quantity high = Quantity.of(6, "kN");
        double[][] cases = {{2, 1, 0}, {4, 0, 2}, {5, 0.5, 1}, {6, 1, 0}, {7, 1.5, -1}};
        for (double[] one : cases) {
            Check check = sheet.check("force", Quantity.of(one[0], "kN")).between(low, high);
            assertEquals(one[1], check.utilisation().si());
            assertEquals(one[2], check.margin().in("kN"));
            assertEquals(one[0] <= 6, check.isMet());
        }
        assertEquals(
                "check \"a\": the lower limit is 6\u00A0kN and the upper 2\u00A0kN; allowed is a"
                        + " lower limit below the upper",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> sheet.check("a", low).between(high, low))
                        .getMessage());
    }

    @Test
    void theMarginIsWhatIsLeftToTheLimit() {
        Quantity three = Quantity.of(3, "kN");
        Quantity four = Quantity.of(4, "kN");
        assertEquals(1, sheet.check("a", three).atMost(four).margin().in("kN"));
        assertEquals(1, sheet.check("b", four).atLeast(three).margin().in("kN"));
        assertEquals(-1, sheet.check("c", four).atMost(three).margin().in("kN"));
        assertTrue(sheet.latest().toString().contains("utilisation 0.75, margin 1\u00A0kN"));
    }

    @Test
    void aTemperatureIsCheckedOnItsOwnScale() {
        Quantity reading = Quantity.of(20, "°C");
        Check range =
                sheet.check("air", reading).between(Quantity.of(-10, "°C"), Quantity.of(40, "°C"));
        assertEquals(0.2, range.utilisation().si(), 1e-12);
        assertEquals(20, range.margin().in("K"), 1e-12);
        assertNull(sheet.check("steel", reading).atMost(Quantity.of(40, "°C")).utilisation());
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () -> sheet.check("rise", reading).atMost(Quantity.of(40, "K")))
                        .getMessage()
                        .contains("a reading in °C and a difference in kelvin"));
    }

    @Test
    void numbersFollowFromTheOrder() {
        sheet.cellStarts("one");
        sheet.section("Loads");
        Quantity load = load(148);
        sheet.cellStarts("two");
        sheet.subsection("Rib");
        sheet.check("first", load).atMost(load);
        sheet.subsection("Deck");
        sheet.section("Forces");
        sheet.subsection("Rib");
        sheet.check("second", load).atMost(load);
        sheet.step("G", load.times(2), "kN/m", "load of two ribs");
        assertEquals(
                List.of(
                        "section 1",
                        "section 1.1",
                        "check 06.1",
                        "section 1.2",
                        "section 2",
                        "section 2.1",
                        "check 06.2",
                        "step 06.1"),
                names());

        sheet.cellStarts("one");
        sheet.section("Scope");
        sheet.section("Loads");
        load(148);
        assertEquals("section 2.1", names().get(2));
        assertEquals("check 06.2", names().get(7));
    }

    private List<String> names() {
        SheetRecord record = sheet.record();
        return record.entries().stream()
                .map(record.numbering()::name)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    @Test
    void theRegisterOfSourcesNamesEachOnceWithWhatItGave() {
        everyBlock("words");
        Map<Source, List<String>> sources = sheet.record().sources();
        assertEquals(List.of("P_1", "P_2"), sources.get(Source.data("x.csv", "words")));
        assertEquals(List.of("g"), sources.get(Source.assumption("words")));
        assertEquals(2, sources.size());
        assertTrue(
                sheet.conclude("words")
                        .toString()
                        .contains("Sources: assumption words (g); data x.csv, words (P_1, P_2)."));
    }

    @Test
    void datesAndNamesThatAreNoneAreRefused() {
        assertEquals(
                "\"20.11.2026\" is no date; allowed are year-month-day such as 2026-11-20",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> sheet.preparedBy("A. Designer", "20.11.2026"))
                        .getMessage());
        assertEquals(
                "the name of whom the sheet was checked by is blank",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> sheet.checkedBy(" ", "2026-11-20"))
                        .getMessage());
    }

    @Test
    void aRecordReadBackIsTheSameRecord() {
        everyBlock("plain words");
        String json = RecordWriter.write(sheet.record());
        SheetRecord read = RecordReader.read(json);
        assertEquals(sheet.record().entries().size(), read.entries().size());
        assertEquals(sheet.record().quantities(), read.quantities());
        assertEquals(json, RecordWriter.write(read));
        for (int i = 0; i < read.entries().size(); i++) {
            assertEquals(sheet.record().entries().get(i), read.entries().get(i));
        }
        assertEquals(json, RecordWriter.write(sheet.record()));
    }

    @Test
    void whatAuthorsWriteIsTextWhereverItIsShown() {
        everyBlock("<script>alert(1)</script> $x$ *a* [b](javascript:c) | `d` \\ & \"e\"");
        Map<String, String> bundle = sheet.conclude("<img src=x onerror=y>").display();
        String markdown = bundle.get("text/markdown");
        assertFalse(markdown.contains("<script"), markdown);
        assertFalse(markdown.contains("<img"), markdown);
        assertFalse(markdown.contains("[b]("), markdown);
        assertFalse(markdown.contains("$x$"), markdown);
        assertEquals(
                RecordWriter.write(RecordReader.read(bundle.get(Part.RECORD_TYPE))),
                bundle.get(Part.RECORD_TYPE));
    }

    private void everyBlock(String words) {
        sheet.cellStarts("one");
        sheet.purpose(words);
        sheet.assume(words);
        sheet.caution(words);
        Quantity load = sheet.given("g", 148.25, "kN/m", words, Source.assumption(words));
        List<Quantity> loads =
                sheet.series("P", new double[] {1, 2.5}, "kN", words, Source.data("x.csv", words));
        Quantity total = sheet.step("P_tot", Quantity.sum(loads), "kN", words);
        sheet.table(
                Table.of(
                        words,
                        Column.of(words, "kN", loads),
                        Column.texts(words, List.of(words, "b"))));
        sheet.check(words, total).atMost(load.times(Quantity.of(1, "m")));
        sheet.check(words, total).atLeast(Quantity.of(2, "kN"));
        sheet.check(words, total).between(Quantity.of(1, "kN"), Quantity.of(6, "kN"));
        sheet.section(words);
        sheet.subsection(words);
        sheet.note(words);
        sheet.preparedBy(words, "2026-11-18");
        sheet.checkedBy(words, "2026-11-19");
        sheet.approvedBy(words, "2026-11-20");
        sheet.comment(words, "2026-11-20", words);
        sheet.figure(new Picture(words));
    }

    private record Picture(String title) implements Figure {
        @Override
        public String description() {
            return title;
        }

        @Override
        public String svg() {
            return "<svg xmlns=\"http://www.w3.org/2000/svg\"/>";
        }

        @Override
        public byte[] png() {
            return new byte[0];
        }
    }

    @Test
    void recordsThatAreNoneAreRefusedWithTheReason() {
        everyBlock("words");
        String json = RecordWriter.write(sheet.record());
        Map<String, String> spoiled =
                Map.of(
                        json.replace("skewback-record", "else"),
                        "format",
                        json.replace("\"edition\" : 3,", "\"edition\" : 9,"),
                        "edition 9",
                        json.replace("\"operation\" : \"sum\"", "\"operation\" : \"run\""),
                        "\"run\"",
                        json.replace("\"node\" : 0", "\"node\" : 99"),
                        "node 99",
                        json.replace("\"kind\" : \"step\"", "\"kind\" : \"jump\""),
                        "\"jump\"",
                        json.substring(0, json.length() / 2),
                        "no JSON",
                        json + "{}",
                        "goes on",
                        "[".repeat(1000),
                        "no JSON");
        spoiled.forEach(
                (text, reason) -> {
                    IllegalArgumentException e =
                            assertThrows(
                                    IllegalArgumentException.class, () -> RecordReader.read(text));
                    assertTrue(e.getMessage().contains(reason), e.getMessage());
                });
    }

    @Test
    void aRecordOfTheEditionBeforeIsRead() {
        everyBlock("words");
        String json = RecordWriter.write(sheet.record());
        String before = json.replace("\"edition\" : 3,", "\"edition\" : 2,");
        assertEquals(json, RecordWriter.write(RecordReader.read(before)));
        assertTrue(RecordReevaluation.of(before).isConsistent());
    }

    @Test
    void aColumnHasTheDigitsThatItsAuthorChose() {
        List<Quantity> loads = QuantityVector.of("kN", 29_008, 0.5, 7.846, 0);
        Column significant = Column.of("load", "kN", loads, Precision.significant(3));
        assertEquals(List.of("29\u202F000", "0.500", "7.85", "0"), significant.texts());
        Column decimals = Column.of("load", "MN", loads, Precision.decimals(4));
        assertEquals(List.of("29.0080", "0.0005", "0.0078", "0.0000"), decimals.texts());
        sheet.table(Table.of("Loads", significant, decimals));

        String json = RecordWriter.write(sheet.record());
        assertEquals(sheet.record(), RecordReader.read(json));
        assertTrue(json.contains("\"significant\" : 3"), json);
        Map<String, String> shown = sheet.latest().display();
        assertTrue(shown.get("text/plain").contains("    0.500     0.0005\n"), shown.toString());
        assertTrue(shown.get("text/markdown").contains("| 7\\.85 | 0\\.0078 |"), shown.toString());

        assertEquals(
                "significant digits of a column are 0; allowed: 1 to 15",
                assertThrows(IllegalArgumentException.class, () -> Precision.significant(0))
                        .getMessage());
        assertEquals(
                "decimals of a column are 16; allowed: 0 to 15",
                assertThrows(IllegalArgumentException.class, () -> Precision.decimals(16))
                        .getMessage());
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () ->
                                        RecordReader.read(
                                                json.replace(
                                                        "\"significant\" : 3",
                                                        "\"significant\" : 3, \"decimals\" : 1")))
                        .getMessage()
                        .contains("column \"load\" counts its digits in two ways"));
    }

    @Test
    void aResultOfAnotherSheetComesWithItsSource(@TempDir Path folder) throws IOException {
        Quantity moment = moment(load(148), span());
        Files.writeString(folder.resolve("06.json"), RecordWriter.write(sheet.record()));

        Sheet other = Sheet.numbered("08", "Arch");
        RecordShelf shelf = new RecordShelf(folder);
        Quantity taken = other.take(shelf, "06", "M");
        assertEquals(moment.in("MN·m"), taken.in("MN·m"), 1e-9);
        assertTrue(taken.source().toString().startsWith("sheet 06, M, record "));
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> other.take(shelf, "06", "X"))
                        .getMessage()
                        .contains("sheet 06 has no quantity X"));
        assertTrue(
                assertThrows(IllegalArgumentException.class, () -> other.take(shelf, "07", "g"))
                        .getMessage()
                        .contains("run that sheet first"));
    }

    /** Both count from b1; by its sums whoever issues the sheet tells one from its namesake. */
    @Test
    void aPartTellsItsBlocksFromThoseOfANamesake() {
        String first = part("the span is short");
        assertTrue(first.contains("\"blocks\" : [ \"b1\" ]"), first);
        assertEquals(first, part("the span is short"));
        assertFalse(first.equals(part("the span is long")));
    }

    private static String part(String note) {
        Sheet sheet = Sheet.numbered("09", "Namesakes");
        sheet.note(note);
        return sheet.latest().display().get(Part.PART_TYPE);
    }
}
