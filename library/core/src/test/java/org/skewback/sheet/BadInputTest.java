package org.skewback.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.skewback.quantity.HtmlWriter;
import org.skewback.quantity.Origin;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/** What anyone may type, and what any file may hold. */
class BadInputTest {

    private static final String RECORD = RecordWriter.write(RandomSheet.of(3, 25).record());

    private static String refusal(Runnable work) {
        return assertThrows(IllegalArgumentException.class, work::run).getMessage();
    }

    @Test
    void aSheetIsTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        Map<String, String> plain = RandomSheet.of(11, 60).display();
        String record = RecordWriter.write(RandomSheet.of(11, 60).record());
        try {
            for (String tag :
                    new String[] {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(plain, RandomSheet.of(11, 60).display(), tag);
                assertEquals(record, RecordWriter.write(RandomSheet.of(11, 60).record()), tag);
                assertTrue(RecordReevaluation.of(record).isConsistent(), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<b>L</b>", "L<script>", "L&amp;", "L\"", "$L$", "L L", "L\n", "_L", ""})
    void markupIsNoSymbol(String symbol) {
        Sheet sheet = Sheet.titled("Symbols");
        String said =
                refusal(() -> sheet.given(symbol, 1, "m", "length", Source.assumption("none")));
        assertTrue(said.startsWith("symbol \"" + symbol), said);
    }

    @ParameterizedTest
    @CsvSource({
        "N\u043E,U+043E CYRILLIC SMALL LETTER O",
        "\u0410_s,U+0410 CYRILLIC CAPITAL LETTER A",
        "N_\u0435d,U+0435 CYRILLIC SMALL LETTER IE",
        "\u03C3_\u0441,U+0441 CYRILLIC SMALL LETTER ES",
        "H\u0555,U+0555 ARMENIAN CAPITAL LETTER OH"
    })
    void lettersThatLookLikeOthersBesideThemAreRefusedByCodePoint(String symbol, String named) {
        String said = refusal(() -> Quantity.of(1).named(symbol, "", ""));
        assertTrue(said.contains(named), said);
        assertTrue(said.contains("mixes letters that look alike"), said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "σ_Ed",
                "ΔV",
                "φ_w",
                "μ",
                "µ",
                "ℓ",
                "N_b,Rd",
                "T_0",
                "α_cr",
                "Å",
                "M_y,Ed",
                "P_風",
                "Нагрузка",
                "荷重_max",
                "x′"
            })
    void lettersOfTheTradeAndOfOneScriptPass(String symbol) {
        assertEquals(symbol, Quantity.of(1).named(symbol, "", "").symbol());
    }

    @ParameterizedTest
    @CsvSource({
        "A,\u0410,U+0410 CYRILLIC CAPITAL LETTER A",
        "\u0410,A,U+0041 LATIN CAPITAL LETTER A",
        "A_s,\u0391_s,U+0391 GREEK CAPITAL LETTER ALPHA",
        "\u00B5,\u03BC,U+03BC GREEK SMALL LETTER MU",
        "p_o,p_\u03BF,U+03BF GREEK SMALL LETTER OMICRON"
    })
    void aSymbolThatLooksLikeAnotherOfTheSheetIsRefused(String first, String second, String named) {
        Sheet sheet = Sheet.titled("Alike");
        Source source = Source.assumption("an example");
        Quantity kept = sheet.given(first, 1, "m", "one", source);
        String said = refusal(() -> sheet.given(second, 2, "m", "another", source));
        assertTrue(said.contains("looks like the symbol \"" + first + "\""), said);
        assertTrue(said.contains(named), said);
        String step = refusal(() -> sheet.step(second, kept.times(2), "m", "another"));
        assertTrue(step.contains("looks like"), step);
        assertEquals(1, sheet.record().entries().size());
    }

    /** The trade writes both in one sheet, and the usual fonts tell them apart. */
    @Test
    void symbolsThatCanBeToldApartPassTogether() {
        Sheet sheet = Sheet.titled("Apart");
        Source source = Source.assumption("an example");
        for (String symbol :
                List.of("v", "ν", "a", "α", "k", "κ", "w", "ω", "γ", "y", "l", "I", "O", "ρ")) {
            sheet.given(symbol, 1, "m", "one", source);
        }
        assertEquals(14, sheet.record().entries().size());
    }

    /** What an author wrote is text wherever it is shown, and itself in the record. */
    @Test
    void markupIsTextWhereverAnAuthorMayWrite() {
        String hostile = "<script>alert(1)</script> & \"x\" $\\input{y}$ [a](javascript:b)";
        Source source = Source.book(hostile, hostile);
        Sheet sheet = Sheet.titled(hostile);
        sheet.purpose(hostile);
        sheet.section(hostile);
        sheet.assume(hostile);
        Quantity given = sheet.given("L", 3, "m", hostile, source);
        Quantity step = sheet.step("A", given.squared(), "m²", hostile);
        sheet.table(new Table(hostile, List.of(Column.texts(hostile, List.of(hostile)))));
        sheet.check(hostile, step).atMost(Quantity.of(20, "m²"));
        sheet.caution(hostile);
        sheet.note(hostile);
        sheet.conclude(hostile);
        String markdown = sheet.display().getOrDefault("text/markdown", "");
        assertTrue(markdown.contains("&lt;script&gt;"), markdown);
        assertFalse(markdown.contains("[a](") || markdown.contains("$\\"), markdown);
        for (String shown :
                List.of(
                        markdown,
                        Origin.of(step).html(),
                        step.worked().mathml(),
                        step.worked().latex(),
                        HtmlWriter.text(hostile))) {
            assertFalse(shown.contains("<script"), shown);
        }
        String json = RecordWriter.write(sheet.record());
        assertEquals(sheet.record(), RecordReader.read(json));
        assertTrue(refusal(() -> Quantity.of(1, hostile)).startsWith("unit "));
    }

    @Test
    void aNoteOfTenMillionCharactersIsKeptShownAndRead() {
        Sheet sheet = Sheet.titled("Long");
        String text = "<i>wind & snow</i>\n\n".repeat(500_000);
        sheet.note(text);
        String markdown = sheet.latest().display().get("text/markdown");
        assertFalse(markdown.contains("<i>"));
        SheetRecord read = RecordReader.read(RecordWriter.write(sheet.record()));
        assertEquals(new Block.Note(text), read.entries().get(0).block());
    }

    @Test
    void aTextThatNoRecordCanKeepIsRefusedWhenItIsSaid() {
        Sheet sheet = Sheet.titled("Too long");
        String text = "x".repeat(RecordWriter.LONGEST_TEXT + 1);
        assertEquals(
                "a text of 33554433 characters; a sheet keeps texts of at most 33554432",
                refusal(() -> sheet.note(text)));
        assertTrue(
                refusal(() -> RecordReader.read("{\"format\":\"" + text + "\"}"))
                        .startsWith("the record is no JSON: String value length"));
    }

    @Test
    void aListBeyondTheBoundIsRefusedWhileItIsRead() {
        String many = "0,".repeat(Json.MOST_ELEMENTS);
        assertTrue(
                refusal(() -> RecordReader.read("{\"nodes\":[" + many + "0]}"))
                        .contains("a list has more than 5000000 elements"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{\"a\":", "{\"nodes\":[[", "[{\"a\":["})
    void deepNestingIsRefused(String opening) {
        assertTrue(
                refusal(() -> RecordReader.read(opening.repeat(200_000)))
                        .contains("nesting depth"));
    }

    @Test
    void everyTruncatedRecordIsRefused() {
        for (int end = 0; end < RECORD.length() - 2; end += 7) {
            String cut = RECORD.substring(0, end);
            String said = refusal(() -> RecordReader.read(cut));
            assertTrue(said.startsWith("the record"), said);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"value\" : 1e999|must be a finite number",
                "\"value\" : \"1\"|must be a finite number",
                "\"value\" : null|is not allowed here"
            })
    void aValueThatIsNoFiniteNumberIsRefused(String value, String reason) {
        String spoiled = RECORD.replaceFirst("\"value\" : [^,]+", value);
        assertTrue(refusal(() -> RecordReader.read(spoiled)).contains(reason));
    }

    /** Whatever a file holds, reading it ends in a record or in a refusal. */
    @Property(tries = 2000)
    void aSpoiledRecordIsReadOrRefused(
            @ForAll @IntRange(max = 1_000_000) int at, @ForAll @IntRange(max = 15) int what) {
        String[] bits = {
            "0", "9", "-1", "\"", "{", "}", "[", "]", ",", "e99", "null", "true", "#3", "named",
            "m", ""
        };
        int place = at % RECORD.length();
        String spoiled = RECORD.substring(0, place) + bits[what] + RECORD.substring(place + 1);
        try {
            RecordReevaluation.of(spoiled);
        } catch (IllegalArgumentException e) {
            assertFalse(String.valueOf(e.getMessage()).isBlank());
        }
    }
}
