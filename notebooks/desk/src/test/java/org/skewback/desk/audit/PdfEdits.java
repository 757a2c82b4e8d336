package org.skewback.desk.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
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
