package org.skewback.desk.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

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
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }
}
