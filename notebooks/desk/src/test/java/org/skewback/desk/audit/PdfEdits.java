package org.skewback.desk.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;

/** What a tamperer does to a PDF. */
final class PdfEdits {

    private PdfEdits() {}

    /** Covers a part of the first page, which its text does not show. */
    static byte[] withARectangle(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            try (PDPageContentStream content =
                    new PDPageContentStream(
                            document,
                            document.getPage(0),
                            PDPageContentStream.AppendMode.APPEND,
                            true)) {
                content.addRect(100, 100, 50, 50);
                content.fill();
            }
            return saved(document);
        }
    }

    /** Turns the first words of the first page's head round: its first glyph is last, and so on. */
    static byte[] withAnotherHead(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDPage page = document.getPage(0);
            List<Object> tokens = new PDFStreamParser(page).parse();
            boolean head = false;
            for (int i = 0; i < tokens.size(); i++) {
                head |= COSName.getPDFName("Artifact").equals(tokens.get(i));
                if (head && tokens.get(i) instanceof COSString words) {
                    tokens.set(i, turned(words));
                    break;
                } else if (head && tokens.get(i) instanceof COSArray array) {
                    array.set(0, turned((COSString) array.get(0)));
                    break;
                }
            }
            PDStream stream = new PDStream(document);
            try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
                new ContentStreamWriter(out).writeTokens(tokens);
            }
            page.setContents(stream);
            return saved(document);
        }
    }

    /** A glyph of an embedded font is named by two bytes. */
    private static COSString turned(COSString words) {
        byte[] bytes = words.getBytes();
        byte[] turned = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i += 2) {
            turned[i] = bytes[bytes.length - 2 - i];
            turned[i + 1] = bytes[bytes.length - 1 - i];
        }
        return new COSString(turned);
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    /** Gives a bookmark another name. */
    static byte[] withABookmarkCalled(byte[] pdf, String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            document.getDocumentCatalog().getDocumentOutline().getLastChild().setTitle(name);
            return saved(document);
        }
    }

    /** Lets the last bookmark, that of the cautions, lead to the basis on the third page. */
    static byte[] withABookmarkToTheBasis(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDPageFitDestination basis = new PDPageFitDestination();
            basis.setPage(document.getPage(2));
            document.getDocumentCatalog().getDocumentOutline().getLastChild().setDestination(basis);
            return saved(document);
        }
    }
}
