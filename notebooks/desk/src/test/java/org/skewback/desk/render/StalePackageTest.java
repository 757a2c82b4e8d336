package org.skewback.desk.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a checker reads of a package in which a given was changed and the rest not run again. */
class StalePackageTest {

    private static final String WHY = "g changed from 148 kN/m to 190 kN/m";
    private static final String MARK = "stale " + WHY + "; its cell was not run again";
    private static final List<String> REGISTER =
            List.of(
                    "06, step 06.1 F: " + WHY,
                    "06, check 06.1 load of the span: " + WHY,
                    "06, figure 06.1",
                    "06, table 06.1 In words: " + WHY);

    @TempDir private Path folder;

    @Test
    void thePageMarksWhatIsStaleAndTheFrontPageListsIt() throws IOException {
        new HtmlPackage().render(SamplePackage.stale(), folder);
        String sheet = text(folder.resolve("sheets/06-form.html"));
        assertEquals(4, sheet.split(MARK, -1).length - 1, sheet);
        assertTrue(sheet.contains("1 check: 0 passed, 0 failed, 1 stale."), sheet);
        String front = text(folder.resolve("index.html"));
        assertTrue(front.contains("What is stale"), front);
        REGISTER.forEach(line -> assertTrue(front.contains(line), front));
    }

    @Test
    void aPackageWithNothingStaleHasNoSuchList() throws IOException {
        new HtmlPackage().render(SamplePackage.calm(), folder);
        assertFalse(text(folder.resolve("index.html")).contains("What is stale"));
    }

    @Test
    void printSaysTheSame() throws IOException {
        new PdfPackage().render(SamplePackage.stale(), folder);
        Path pdf;
        try (Stream<Path> files = Files.list(folder)) {
            pdf = files.filter(file -> file.toString().endsWith(".pdf")).findFirst().orElseThrow();
        }
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String print = plain(new PDFTextStripper().getText(document));
            assertEquals(4, print.split(MARK, -1).length - 1, print);
            // The page says it four times, the list at the end once for each of the four.
            assertEquals(8, print.split(WHY, -1).length - 1, print);
            assertEquals(2, print.split("What is stale", -1).length - 1, "contents and heading");
        }
    }

    private static String text(Path page) throws IOException {
        return plain(Files.readString(page).replaceAll("<[^>]*>", ""));
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00A0\u202F]+", " ");
    }
}
