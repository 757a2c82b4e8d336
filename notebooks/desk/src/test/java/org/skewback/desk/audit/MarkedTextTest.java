package org.skewback.desk.audit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.TestIssue;

/** The text of pages as the audit reads it, held against what PDFBox, which places each sign, reads. */
class MarkedTextTest {

    private static Map<Integer, String> placed(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.setSuppressDuplicateOverlappingText(false);
        extractor.processPage(page);
        Map<Integer, String> texts = new TreeMap<>();
        for (PDMarkedContent content : extractor.getMarkedContents()) {
            String text = text(content);
            if (content.getMCID() >= 0 && !text.isEmpty()) {
                texts.merge(content.getMCID(), text, String::concat);
            }
        }
        return texts;
    }

    private static String text(PDMarkedContent content) {
        StringBuilder text = new StringBuilder();
        for (Object part : content.getContents()) {
            if (part instanceof TextPosition position) {
                text.append(position.getUnicode());
            } else if (part instanceof PDMarkedContent inner) {
                text.append(text(inner));
            }
        }
        return text.toString();
    }

    @Test
    void everyPageOfAnIssueReadsAsPdfBoxReadsIt(@TempDir Path folder) throws Exception {
        Path pdf = TestIssue.FIRST.issue(folder).resolve("package.pdf");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            MarkedText reader = new MarkedText();
            for (PDPage page : document.getPages()) {
                Map<Integer, String> placed = placed(page);
                assertFalse(placed.isEmpty());
                assertEquals(placed, reader.of(page));
            }
        }
    }

    /** A page that shows text in each of the ways of ISO 32000-1, 9.4.3, and in forms. */
    private static final String EVERY_WAY =
            """
            /Artifact BMC BT /F1 9 Tf (artifact) Tj ET EMC
            /P <</Lang (en) /MCID 0>> BDC BT /F1 9 Tf 1 0 0 1 20 700 Tm
            (a\\(b\\)\\\\ (nested) \\101\\
            c) Tj [(d) -200 (e) 30 <66 6>] TJ (g) ' 1 2 (h) " ET EMC
            % (a comment) Tj
            /P /Named#20one BDC q BT /F1 9 Tf (i) Tj ET
              /Span <</MCID 7>> BDC BT (j) Tj ET EMC Q EMC
            /Figure <</MCID 2>> BDC /Text Do /Path Do EMC
            """;

    private static PDPage page(PDDocument document, String content) throws IOException {
        PDPage page = new PDPage();
        document.addPage(page);
        PDResources resources = new PDResources();
        resources.put(COSName.getPDFName("F1"), new PDType1Font(FontName.HELVETICA));
        resources.put(
                COSName.getPDFName("Text"),
                form(document, "BT /F1 9 Tf (in a form) Tj ET /Inner Do", "BT /F1 9 Tf (k) Tj ET"));
        resources.put(COSName.getPDFName("Path"), form(document, "0 0 m 10 10 l S", ""));
        page.setResources(resources);
        page.getResources().getCOSObject().setItem(COSName.PROPERTIES, properties("Named one", 1));
        PDStream stream = new PDStream(document);
        try (OutputStream out = stream.createOutputStream()) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        }
        page.setContents(stream);
        return page;
    }

    private static COSDictionary properties(String name, int identifier) {
        var properties = new COSDictionary();
        var one = new COSDictionary();
        one.setInt(COSName.MCID, identifier);
        properties.setItem(COSName.getPDFName(name), one);
        return properties;
    }

    private static PDFormXObject form(PDDocument document, String content, String inner)
            throws IOException {
        PDFormXObject form = new PDFormXObject(document);
        try (OutputStream out = form.getContentStream().createOutputStream()) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        }
        PDResources resources = new PDResources();
        resources.put(COSName.getPDFName("F1"), new PDType1Font(FontName.HELVETICA));
        if (!inner.isEmpty()) {
            resources.put(COSName.getPDFName("Inner"), form(document, inner, ""));
        }
        form.setResources(resources);
        return form;
    }

    @Test
    void textIsReadInEveryWayInWhichItCanBeShown() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = page(document, EVERY_WAY);
            MarkedText reader = new MarkedText();
            Map<Integer, String> read = reader.of(page);
            assertTrue(reader.outside().contains("artifact"), reader.outside());
            assertEquals(Map.of(0, "a(b)\\ (nested) Acdef`gh", 1, "ij", 2, "in a formk"), read);
            assertEquals(placed(page), read);
        }
    }

    @Test
    void whatNoIssueHoldsAndReadersTakeInDifferentWaysIsRefused() throws IOException {
        try (PDDocument document = new PDDocument()) {
            MarkedText reader = new MarkedText();
            PDPage picture = page(document, "BI /W 1 /H 1 ID x EI");
            assertThrows(IOException.class, () -> reader.of(picture));
            PDPage open = page(document, "/P <</MCID 0>> BDC BT (no end");
            assertThrows(IOException.class, () -> reader.of(open));
            PDPage bare = page(document, "/P <</MCID 0>> BDC BT (no font) Tj ET EMC");
            assertThrows(IOException.class, () -> reader.of(bare));
        }
    }

    @Test
    void aFormThatDrawsItselfIsRefused() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = page(document, "/Self Do");
            PDFormXObject self = form(document, "/Self Do", "");
            self.getResources().put(COSName.getPDFName("Self"), self);
            page.getResources().put(COSName.getPDFName("Self"), self);
            assertThrows(IOException.class, () -> new MarkedText().of(page));
        }
    }

    @Test
    void tokensAreThoseOfTheStandard() throws IOException {
        ContentTokens tokens =
                new ContentTokens(
                        "/A#42<6a 7>[-1.5(x\r\n\\n)]Tj".getBytes(StandardCharsets.US_ASCII));
        assertEquals(ContentTokens.Kind.NAME, tokens.next());
        assertEquals("AB", tokens.text());
        assertEquals(ContentTokens.Kind.STRING, tokens.next());
        assertArrayEquals(new byte[] {0x6a, 0x70}, tokens.string());
        assertEquals(ContentTokens.Kind.BRACKET, tokens.next());
        assertEquals(ContentTokens.Kind.NUMBER, tokens.next());
        assertEquals("-1.5", tokens.text());
        assertEquals(ContentTokens.Kind.STRING, tokens.next());
        assertArrayEquals("x\n\n".getBytes(StandardCharsets.US_ASCII), tokens.string());
        assertEquals(ContentTokens.Kind.BRACKET, tokens.next());
        assertEquals(ContentTokens.Kind.WORD, tokens.next());
        assertEquals("Tj", tokens.text());
        assertEquals(ContentTokens.Kind.END, tokens.next());
    }
}
