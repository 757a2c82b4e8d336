package org.skewback.desk.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

final class PdfPackageTest {

    @TempDir static Path folder;

    private static byte[] calm = new byte[0];
    private static byte[] hostile = new byte[0];

    @BeforeAll
    static void writeBothPackages() throws IOException {
        VeraGreenfieldFoundryProvider.initialise();
        new PdfPackage().render(SamplePackage.calm(), folder);
        calm = Files.readAllBytes(folder.resolve("package.pdf"));
        new PdfPackage().render(SamplePackage.hostile(), folder);
        hostile = Files.readAllBytes(folder.resolve("package.pdf"));
    }

    /** The rules are veraPDF's, of ISO 19005-2 (level A) and ISO 14289-1. */
    @ParameterizedTest
    @ValueSource(strings = {"3a", "ua1"})
    void bothPackagesFollowTheStandard(String flavour) throws VeraPDFException, IOException {
        assertEquals(List.of(), broken(calm, flavour));
        assertEquals(List.of(), broken(hostile, flavour));
    }

    private static List<String> broken(byte[] pdf, String id) throws VeraPDFException, IOException {
        PDFAFlavour flavour = PDFAFlavour.byFlavourId(id);
        List<String> broken = new ArrayList<>();
        try (PDFAParser parser =
                        Foundries.defaultInstance()
                                .createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            result.getTestAssertions()
                    .forEach(a -> broken.add(a.getRuleId().getClause() + " " + a.getMessage()));
            assertTrue(result.isCompliant() == broken.isEmpty());
        }
        return broken.stream().distinct().toList();
    }

    @Test
    void theTextHoldsEveryResultOfTheStepsAndEveryVerdict() throws IOException {
        String text = text(calm).replace("  ", " ");
        for (String result :
                List.of(
                        "H = 29\u202F008 kN",
                        "= 38.21 MN",
                        "A = 0.1766 m²",
                        "failed Check 06.2 rise-to-span ratio",
                        "1.1 Loads",
                        "It does not.",
                        "Comment by B. Checker",
                        "Prepared by A. Designer, 2026-11-18",
                        "margin −0.01429",
                        "drawing OG-201, revision B",
                        "OG-C-001 · revision B",
                        "Chain of three sags: 2 of 3 states of the sag of the chain",
                        "page 2 of ")) {
            assertTrue(text.contains(result), () -> result + " is not in\n" + text);
        }
    }

    @Test
    void answersStandAfterTheirDocumentAndNotBesideTheQuestion() throws IOException {
        String words = text(calm).replaceAll("\\s+", " ");
        int place = words.indexOf("Answer to question 1: at the end.");
        int conclusion = words.indexOf("Conclusion", place);
        int answer = words.indexOf("The thrust doubles", place);
        assertTrue(place > 0 && conclusion > place && answer > conclusion, words);
    }

    @Test
    void eachDocumentHasItsBookmarkAndItsLineInTheContents() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(calm)) {
            List<String> names = new ArrayList<>();
            for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
                names.add(item.getTitle());
                assertNotNull(item.findDestinationPage(pdf), item.getTitle());
            }
            assertEquals(
                    List.of(
                            "Contents",
                            "Basis of the calculations",
                            "Register of givens and assumptions",
                            "06 Form of the rib",
                            "08 Forces",
                            "Register of checks",
                            "Numbers without a source",
                            "Sources cited",
                            "Software and environment",
                            "Cautions"),
                    names);
        }
        assertTrue(text(calm).contains("06 Form of the rib 5"), text(calm));
    }

    @Test
    void thePackageIsAsLongAsItsContent() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(calm)) {
            int pages = pdf.getNumberOfPages();
            assertTrue(pages >= 8 && pages <= 12, "pages: " + pages);
        }
    }

    /** A reader who turns the page would not know of which table the rows are. */
    @Test
    void noTitleOrHeadOfATableStandsAloneAtTheFootOfAPage() throws IOException {
        byte[] tables = new PdfPackage().bytes(SamplePackage.tables(), Map.of());
        int titles = 0;
        try (PDDocument pdf = Loader.loadPDF(tables)) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(pdf);
                List<String> lines =
                        text.lines()
                                .filter(line -> !line.isBlank() && !line.contains(" of "))
                                .toList();
                titles += text.split("Table 09\\.", -1).length - 1;
                String last = lines.get(lines.size() - 1);
                assertFalse(last.matches("(Table 09|place|Given).*"), page + ": " + text);
            }
        }
        assertEquals(30, titles);
    }

    @Test
    void theSameRunGivesTheSameBytes() throws IOException {
        new PdfPackage().render(SamplePackage.calm(), folder);
        assertArrayEquals(calm, Files.readAllBytes(folder.resolve("package.pdf")));
    }

    @Test
    void theDatesAreThePackagesOwn() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(calm)) {
            Instant own = Instant.parse("2026-11-20T00:00:00Z");
            PDDocumentInformation about = pdf.getDocumentInformation();
            assertEquals(own, about.getCreationDate().toInstant());
            assertEquals(own, about.getModificationDate().toInstant());
            String described =
                    new String(
                            pdf.getDocumentCatalog().getMetadata().toByteArray(),
                            StandardCharsets.UTF_8);
            assertTrue(described.contains("2026-11-20T00:00:00"), described);
        }
    }

    @Test
    void everyFontIsEmbeddedAndCutDown() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(hostile)) {
            int seen = 0;
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
                    seen++;
                }
            }
            assertTrue(seen > 0);
        }
    }

    @Test
    void hostileBitsAreTextAndNothingRunsOrOpens() throws IOException {
        String text = text(hostile);
        assertTrue(text.contains(SamplePackage.SCRIPT), text);
        assertTrue(text.contains(SamplePackage.MARKED), text);
        try (PDDocument pdf = Loader.loadPDF(hostile)) {
            assertTrue(
                    pdf.getDocumentCatalog().getNames() == null
                            || pdf.getDocumentCatalog().getNames().getJavaScript() == null);
        }
        String raw = new String(hostile, StandardCharsets.ISO_8859_1);
        assertFalse(raw.contains("/JavaScript"));
        assertFalse(raw.contains("/Launch"));
        assertFalse(raw.contains("file:"));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }
}
