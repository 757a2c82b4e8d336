package org.skewback.desk.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.issue.RunPackage;
import org.skewback.desk.notebook.Notebook;
import org.skewback.figure.Sweep;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Column;
import org.skewback.sheet.Part;
import org.skewback.sheet.Sheet;
import org.skewback.sheet.Table;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

final class HtmlPackageTest {

    @TempDir static Path folder;

    @BeforeAll
    static void writeTheHostilePackage() throws IOException {
        new HtmlPackage().render(SamplePackage.hostile(), folder);
    }

    @Test
    void anAngleIsNoPartialFactorThoughItBearsTheLetterOfOne() {
        String basis =
                new HtmlPackage().pages(ReadPackage.of(SamplePackage.tables())).get("basis.html");
        assertTrue(basis.contains("on permanent load"), basis);
        assertFalse(basis.contains("inclination of a face"), basis);
    }

    /** In running text too, a telephone must not scroll sideways. */
    @Test
    void aLongFormulaInTextMayStandOnALineOfItsOwn() {
        PageMedium medium = new PageMedium(ReadPackage.of(SamplePackage.calm()));
        String brief = "<math><mi>x</mi></math>";
        assertEquals(brief, medium.equation(brief, false));
        String wide = "<math><mi>" + "x".repeat(30) + "</mi></math>";
        assertEquals("<span class=\"long\">" + wide + "</span>", medium.equation(wide, false));
        assertEquals("<span class=\"wide\">" + wide + "</span>", medium.equation(wide, true));
    }

    /** A formula is broken for a telephone only where the telephone shows it. */
    @Test
    void aLongFormulaStandsInThePageAsBrokenForEachWidth() {
        PageMedium medium = new PageMedium(ReadPackage.of(SamplePackage.calm()));
        Quantity side = Quantity.of(2, "m").named("side", "m", "a side");
        Quantity sum = side;
        for (int i = 0; i < 5; i++) {
            sum = sum.plus(side.times(i + 2));
        }
        String set = medium.worked(sum.named("sum", "m", "a long sum"));
        int broad = set.indexOf("class=\"broad\"");
        int narrow = set.indexOf("class=\"narrow\"");
        assertTrue(broad >= 0 && narrow > broad, set);
        int rowsBroad = set.substring(0, narrow).split("<mtr>", -1).length;
        int rowsNarrow = set.substring(narrow).split("<mtr>", -1).length;
        assertTrue(rowsNarrow > rowsBroad, rowsNarrow + " and " + rowsBroad);
        assertFalse(medium.worked(side.times(3).named("t", "m", "short")).contains("narrow"));
    }

    /** A chain typed in prose has no breaks; a telephone gets one side a line. */
    @Test
    void aLongChainInProseHasASideALineOnATelephone() {
        Prose prose = new Prose(new PageMedium(ReadPackage.of(SamplePackage.calm())));
        String chain =
                prose.set(
                        "$$a\\cdot b = 123456789\\cdot 123456789 = \\frac{x ="
                                + " 1}{1234567890123456}$$",
                        null);
        String narrow = chain.substring(chain.indexOf("class=\"narrow\""));
        assertEquals(4, narrow.split("<mtr>", -1).length, chain);
        assertFalse(prose.set("$$a = b = c$$", null).contains("narrow"));
        String list =
                "<math display=\"block\"><mrow><mi>a</mi></mrow><mrow><mo>=</mo></mrow></math>";
        assertEquals(list, SplitAtEquals.in(list));
    }

    /** A drawing may scroll in its own box, which the keyboard reaches; a photograph shrinks. */
    @Test
    void aDrawingStandsInABoxThatTheKeyboardReaches() {
        PageMedium medium = new PageMedium(ReadPackage.of(SamplePackage.calm()));
        String drawing = medium.picture("image/svg+xml", "PHN2Zy8+", "a line");
        assertTrue(drawing.contains("class=\"drawn\" role=\"region\" tabindex=\"0\""), drawing);
        assertFalse(medium.picture("image/png", "AAAA", "a dot").contains("tabindex"));
    }

    @Test
    void everyPageIsWellFormedAndNamesItsLanguage() throws IOException {
        List<Path> pages = pages();
        assertEquals(6, pages.size());
        for (Path page : pages) {
            Document document = parsed(page);
            assertEquals("en", document.getDocumentElement().getAttribute("lang"));
            assertEquals(1, document.getElementsByTagName("h1").getLength(), page.toString());
            assertEquals(1, document.getElementsByTagName("main").getLength());
        }
    }

    @Test
    void thePolicyStandsFirstAndAllowsNoScript() throws IOException {
        for (Path page : pages()) {
            Element head = (Element) parsed(page).getElementsByTagName("head").item(0);
            Element first = (Element) head.getFirstChild();
            assertEquals("Content-Security-Policy", first.getAttribute("http-equiv"));
            String policy = first.getAttribute("content");
            assertTrue(policy.startsWith("default-src 'none';"), policy);
            assertFalse(policy.contains("script-src"), policy);
        }
    }

    @Test
    void nothingOfTheHostileBitsIsMarkup() throws IOException {
        for (Path page : pages()) {
            NodeList all = parsed(page).getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                Element element = (Element) all.item(i);
                String name = element.getTagName();
                assertFalse(Set.of("script", "iframe", "svg", "object").contains(name), name);
                for (int a = 0; a < element.getAttributes().getLength(); a++) {
                    String attribute = element.getAttributes().item(a).getNodeName();
                    assertFalse(attribute.startsWith("on"), name + " " + attribute);
                }
                assertFalse(element.getAttribute("href").startsWith("javascript:"));
                assertFalse(element.getAttribute("href").startsWith("file:"));
                String source = element.getAttribute("src");
                assertTrue(source.isEmpty() || source.startsWith("data:image/"), source);
            }
        }
    }

    @Test
    void hostileBitsCanStillBeRead() throws IOException {
        String text =
                parsed(folder.resolve("sheets/99-hostile.html"))
                        .getDocumentElement()
                        .getTextContent();
        assertTrue(text.contains(SamplePackage.SCRIPT));
        assertTrue(text.contains(SamplePackage.MARKED));
        assertTrue(text.contains("No cell shows this."));
        assertTrue(text.contains("\\newcommand{\\a}{\\a}\\a"));
    }

    @Test
    void aPictureAmongForeignWordsStandsBetweenThem() throws IOException {
        String page = Files.readString(folder.resolve("sheets/99-hostile.html"));
        int before = page.indexOf("<b>before</b>");
        int picture = page.indexOf("alt=\"between words\"");
        int after = page.indexOf("<i>after</i>");
        assertTrue(0 < before && before < picture && picture < after);
    }

    @Test
    void linksWithinThePackageResolve() throws IOException {
        Set<String> besides = new HashSet<>(List.of("package.pdf"));
        for (String slug : List.of("06-form", "08-forces", "99-hostile")) {
            besides.add("notebooks/" + slug + ".ipynb");
            besides.add("records/" + slug + ".json");
        }
        int seen = 0;
        for (Path page : pages()) {
            NodeList links = parsed(page).getElementsByTagName("a");
            for (int i = 0; i < links.getLength(); i++) {
                String href = ((Element) links.item(i)).getAttribute("href");
                if (href.startsWith("https://example.org/")) {
                    continue;
                }
                String[] parts = href.split("#", 2);
                Path target = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
                if (besides.contains(folder.relativize(target).toString())) {
                    continue;
                }
                assertTrue(Files.exists(target), page + " links to " + href);
                if (parts.length == 2) {
                    assertNotNull(byId(parsed(target), parts[1]), page + " links to " + href);
                }
                seen++;
            }
        }
        assertTrue(seen > 20, "links seen: " + seen);
    }

    @Test
    void identifiersAreUnique() throws IOException {
        for (Path page : pages()) {
            Set<String> seen = new HashSet<>();
            NodeList all = parsed(page).getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                String id = ((Element) all.item(i)).getAttribute("id");
                assertTrue(id.isEmpty() || seen.add(id), page + " has " + id + " twice");
            }
        }
    }

    @Test
    void aFailedCheckIsSaidInWordsOnItsSheetAndInTheRegister() throws IOException {
        String sheet =
                parsed(folder.resolve("sheets/06-form.html")).getDocumentElement().getTextContent();
        String index = parsed(folder.resolve("index.html")).getDocumentElement().getTextContent();
        assertTrue(sheet.contains("failed Check 06.2 rise-to-span ratio"), sheet);
        assertTrue(
                index.contains("rise-to-span ratio, from common practicefailed1.170.2143≥0.25"),
                index);
        assertTrue(sheet.contains("3 checks: 1 passed, 2 failed, 0 stale."), sheet);
    }

    @Test
    void theBasisSaysWhatIsStatedAndWhatTheRecordsCite(@TempDir Path pages) throws IOException {
        new HtmlPackage().render(SamplePackage.calm(), pages);
        String basis = parsed(pages.resolve("basis.html")).getDocumentElement().getTextContent();
        for (String said :
                List.of(
                        "EN 1990:2002, with the national choices of nobody",
                        "Permanent load is taken with its mean value.",
                        "Thrust is positive in compression.",
                        "Drawings are preliminary & not signed.",
                        "DrawingOG-201revision B",
                        "The status of this issue is preliminary.",
                        "is to be confirmed before anything is built from it")) {
            assertTrue(basis.contains(said), () -> said + " is not in " + basis);
        }
        String index = parsed(pages.resolve("index.html")).getDocumentElement().getTextContent();
        List<Integer> places = new ArrayList<>();
        for (String part :
                List.of(
                        "Basis of the calculations",
                        "Register of givens and assumptions",
                        "06 Form of the rib",
                        "Register of checks",
                        "Sources cited",
                        "Software and environment",
                        "Cautions")) {
            places.add(index.indexOf(part, index.lastIndexOf("ContentsBasis")));
        }
        assertEquals(places.stream().sorted().toList(), places, index);
    }

    @Test
    void theCautionsStandOnAPageOfTheirOwnWithWhomDeferenceIsOwed() throws IOException {
        String page = parsed(folder.resolve("cautions.html")).getDocumentElement().getTextContent();
        assertTrue(page.contains("Deference is owed to local codes and licensed practice"), page);
        assertTrue(page.contains("Working at height, rock fall and lifting"), page);
        assertTrue(page.contains("On the sheets"), page);
    }

    @Test
    void symbolsInTextsOfATableHaveTheirSubscriptsLowered() {
        Sheet sheet = Sheet.numbered("01", "Short");
        Quantity moment = sheet.given("M_Ed", 5, "kN·m", "moment", Source.assumption("a guess"));
        sheet.table(
                Table.of(
                        "What M_Ed does, not x_y",
                        Column.texts("from M_Ed", List.of("M_Ed (changed)", "a_b <i>")),
                        Column.of("moment", "kN·m", List.of(moment, moment))));
        String page = page(sheet);
        String symbol = "<i>M</i><sub>Ed</sub>";
        assertTrue(page.contains("What " + symbol + " does, not x_y</caption>"), page);
        assertTrue(page.contains(">from " + symbol + "</th>"), page);
        assertTrue(page.contains("<td>" + symbol + " (changed)</td>"), page);
        assertTrue(page.contains("<td>a_b &lt;i&gt;</td>"), page);
    }

    private static String page(Sheet sheet) {
        String record = new Part(sheet.record(), List.of(), true).display().get(Part.RECORD_TYPE);
        Notebook none = new Notebook(List.of(), JsonNodeFactory.instance.objectNode());
        RunPackage run =
                new RunPackage(
                        SamplePackage.info("Short", "Short"),
                        List.of(new RunDocument("01-sheet", "Sheet", none, record)),
                        Map.of());
        return String.valueOf(new HtmlPackage().pages(run).get("sheets/01-sheet.html"));
    }

    @Test
    void aNoteOfTenMillionLettersIsSetWhole() {
        Sheet sheet = Sheet.numbered("01", "Long");
        sheet.note("word < ".repeat(1_430_000));
        String page = page(sheet);
        assertEquals(1_430_001, page.split("word &lt;", -1).length);
    }

    @Test
    void aSweepIsAGroupOfButtonsThatNeedsNoScript() throws IOException {
        Document page = parsed(folder.resolve("sheets/06-form.html"));
        List<Element> buttons = new ArrayList<>();
        NodeList inputs = page.getElementsByTagName("input");
        for (int i = 0; i < inputs.getLength(); i++) {
            buttons.add((Element) inputs.item(i));
        }
        assertEquals(3, buttons.size());
        assertEquals(
                List.of("", "checked", ""),
                buttons.stream().map(e -> e.getAttribute("checked")).toList());
        Element group = (Element) buttons.get(0).getParentNode();
        assertEquals("radiogroup", group.getAttribute("role"));
        assertEquals("Chain of three sags: sag of the chain", group.getAttribute("aria-label"));
        NodeList pictures = group.getElementsByTagName("img");
        assertEquals(3, pictures.getLength());
        assertTrue(
                ((Element) pictures.item(1)).getAttribute("alt").startsWith("3"),
                "each picture says its state");
        String style = Files.readString(folder.resolve("sheets/06-form.html"));
        assertTrue(
                style.contains(
                        "input:nth-of-type("
                                + Sweep.MOST_STATES
                                + "):checked ~ .frames > div:nth-child("
                                + Sweep.MOST_STATES
                                + ")"),
                "the style reaches the last state that a sweep may have");
    }

    @Test
    void anAnswerIsFoldedUntilAskedFor() throws IOException {
        NodeList folds =
                parsed(folder.resolve("sheets/06-form.html")).getElementsByTagName("details");
        Element fold = null;
        for (int i = 0; i < folds.getLength(); i++) {
            Element one = (Element) folds.item(i);
            fold = one.getAttribute("class").contains("answer") ? one : fold;
        }
        assertNotNull(fold);
        assertFalse(fold.hasAttribute("open"));
        assertEquals(
                "Answer to question 1",
                fold.getElementsByTagName("summary").item(0).getTextContent());
        assertTrue(fold.getTextContent().contains("<nothing> moves"), fold.getTextContent());
        assertEquals(1, fold.getElementsByTagName("math").getLength());
        String hostile = Files.readString(folder.resolve("sheets/99-hostile.html"));
        assertTrue(hostile.contains("<summary>&lt;b onclick=x&gt;</summary>"));
        assertTrue(hostile.contains("an answer of a later edition"));
    }

    @Test
    void aSweepOnASheetIsMovedLikeAnyOther() throws IOException {
        Document page = parsed(folder.resolve("sheets/99-hostile.html"));
        NodeList inputs = page.getElementsByTagName("input");
        List<Element> buttons = new ArrayList<>();
        for (int i = 0; i < inputs.getLength(); i++) {
            Element button = (Element) inputs.item(i);
            if (button.getAttribute("name").startsWith("states-")) {
                buttons.add(button);
            }
        }
        assertEquals(3, buttons.size());
        Element group = (Element) buttons.get(0).getParentNode();
        assertEquals("radiogroup", group.getAttribute("role"));
        assertEquals(3, group.getElementsByTagName("img").getLength());
        assertTrue(buttons.get(1).hasAttribute("checked"));
        assertTrue(
                group.getTextContent().matches("(?s)Figure 2 Chain of three sags.*"),
                group.getTextContent());
        assertFalse(((Element) group.getParentNode()).getAttribute("id").isEmpty());
    }

    @Test
    void everyBlockBearsTheNumberByWhichPeopleSpeakOfIt() throws IOException {
        String sheet =
                parsed(folder.resolve("sheets/06-form.html")).getDocumentElement().getTextContent();
        for (String said :
                List.of(
                        "1 Limits of this sheet",
                        "1.1 Loads",
                        "06.1 ",
                        "Table 06.1 Levels along the axis",
                        "Figure 06.1 Axis of the rib",
                        "is not between 0.1 and 0.2; utilisation\u00A01.29; margin\u00A0−0.01429",
                        "Prepared by A. Designer, 2026-11-18",
                        "Comment by B. Checker, 2026-11-19 Where does the load come from?",
                        "drawing OG-201, revision B: L, f")) {
            assertTrue(sheet.contains(said), said + " is not in " + sheet);
        }
    }

    @Test
    void aStepShowsItsEquationAndUnfoldsToItsGivens() throws IOException {
        Document page = parsed(folder.resolve("sheets/06-form.html"));
        NodeList origins = page.getElementsByTagName("details");
        List<String> unfolded = new ArrayList<>();
        for (int i = 0; i < origins.getLength(); i++) {
            if (((Element) origins.item(i)).getAttribute("class").equals("origin")) {
                unfolded.add(origins.item(i).getTextContent());
            }
        }
        assertEquals(7, unfolded.size());
        assertTrue(unfolded.get(0).contains("drawing OG-201, revision B"), unfolded.get(0));
        assertTrue(unfolded.get(2).contains("permanent load of one rib"), unfolded.get(2));
        assertTrue(page.getDocumentElement().getTextContent().contains("29\u202F008"));
        assertTrue(page.getElementsByTagName("math").getLength() > 8);
    }

    @Test
    void aResultOfAnotherSheetLeadsThere() throws IOException {
        Document page = parsed(folder.resolve("sheets/08-forces.html"));
        NodeList links = page.getElementsByTagName("a");
        List<String> addresses = new ArrayList<>();
        for (int i = 0; i < links.getLength(); i++) {
            Element link = (Element) links.item(i);
            if (link.getTextContent().equals("sheet 06")) {
                addresses.add(link.getAttribute("href"));
            }
        }
        // Once beside the given and once in the register of sources.
        assertEquals(List.of("06-form.html", "06-form.html"), addresses);
    }

    @Test
    void theSameRunGivesTheSameBytes(@TempDir Path again) throws IOException {
        new HtmlPackage().render(SamplePackage.hostile(), again);
        for (Path page : pages()) {
            assertEquals(
                    -1L, Files.mismatch(page, again.resolve(folder.relativize(page))), "" + page);
        }
    }

    @Test
    void aPageStaysSmallEnoughToMail() throws IOException {
        for (Path page : pages()) {
            assertTrue(Files.size(page) < 700_000, page + ": " + Files.size(page));
        }
    }

    private static @Nullable Element byId(Document document, String id) {
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            if (((Element) all.item(i)).getAttribute("id").equals(id)) {
                return (Element) all.item(i);
            }
        }
        return null;
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".html")).sorted().toList();
        }
    }

    /** The pages say {@code <!DOCTYPE html>}, which has nothing to load; XML may not see it. */
    private static Document parsed(Path page) throws IOException {
        String text = Files.readString(page).replaceFirst("<!DOCTYPE html>", "");
        Document document = Xml.parse(text);
        assertNotNull(document, page + " is not well-formed");
        return document;
    }
}
