package org.skewback.desk.holding;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.Problem;

/** An issue is read inside its own bounds. */
class HoldingTest {

    @TempDir private Path home;

    private Path pdf(Map<String, byte[]> files) throws IOException {
        Path file = home.resolve("a.pdf");
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            Map<String, PDComplexFileSpecification> names = new LinkedHashMap<>();
            for (Map.Entry<String, byte[]> entry : files.entrySet()) {
                PDComplexFileSpecification one = new PDComplexFileSpecification();
                one.setFile(entry.getKey());
                one.setFileUnicode(entry.getKey());
                PDEmbeddedFile embedded =
                        new PDEmbeddedFile(
                                document,
                                new ByteArrayInputStream(entry.getValue()),
                                COSName.FLATE_DECODE);
                one.setEmbeddedFile(embedded);
                one.setEmbeddedFileUnicode(embedded);
                names.put(entry.getKey(), one);
            }
            PDEmbeddedFilesNameTreeNode leaf = new PDEmbeddedFilesNameTreeNode();
            leaf.setNames(names);
            PDDocumentNameDictionary dictionary =
                    new PDDocumentNameDictionary(document.getDocumentCatalog());
            dictionary.setEmbeddedFiles(leaf);
            document.getDocumentCatalog().setNames(dictionary);
            document.save(file.toFile());
        }
        return file;
    }

    @Test
    void aNameInAPdfThatLeadsOutIsRefusedAndNothingIsWritten() throws Exception {
        byte[] bytes = {1, 2, 3};
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String name :
                new String[] {
                    "../../evil", "/etc/evil", "C:\\evil", "a/../../evil", "records/a.json"
                }) {
            files.put(name, bytes);
        }
        try (Holding holding = Holding.of(pdf(files))) {
            assertEquals(Set.of("records/a.json"), holding.paths());
            assertEquals(4, holding.refused().size());
            assertArrayEquals(bytes, holding.read("records/a.json", 3));
            assertThrows(Problem.class, () -> holding.read("records/a.json", 2));
            assertThrows(IOException.class, () -> holding.open("../../evil"));
        }
        assertEquals(1, home.toFile().list().length, "the PDF itself and nothing else");
    }

    @Test
    void aPdfThatUnfoldsToMoreThanAnIssueIsRefused() throws Exception {
        Path bomb = pdf(Map.of("records/a.json", new byte[8 << 20]));
        assertTrue(Files.size(bomb) < 100_000, "small on disk");
        String said =
                String.valueOf(
                        assertThrows(Problem.class, () -> new PdfHolding(bomb, 1 << 20))
                                .getMessage());
        assertTrue(said.contains("more than 1048576 bytes"), said);
    }

    @Test
    void whatIsNoPdfOrHoldsNoFilesIsRefused() throws Exception {
        assertThrows(Problem.class, () -> Holding.of(pdf(Map.of())));
        Path text = Files.writeString(home.resolve("b.pdf"), "no PDF");
        assertThrows(IOException.class, () -> Holding.of(text));
        assertThrows(Problem.class, () -> Holding.of(home.resolve("none")));
    }

    @Test
    void aLinkInAFolderIsNamedAndNotFollowed() throws Exception {
        Path secret = Files.writeString(home.resolve("secret"), "secret");
        Path folder = Files.createDirectories(home.resolve("issue/records"));
        Files.createSymbolicLink(folder.resolve("a.json"), secret);
        Files.createSymbolicLink(home.resolve("issue/notebooks"), home);
        Files.writeString(folder.resolve("b.json"), "{}");
        try (Holding holding = Holding.of(home.resolve("issue"))) {
            assertEquals(Set.of("records/b.json"), holding.paths());
            assertEquals(Set.of("records/a.json", "notebooks"), holding.refused());
            assertThrows(IOException.class, () -> holding.open("records/a.json"));
            assertThrows(IOException.class, () -> holding.open("records/../../secret"));
            // A link that takes a file's place after the folder was looked through is not followed.
            Files.delete(folder.resolve("b.json"));
            Files.createSymbolicLink(folder.resolve("b.json"), secret);
            assertThrows(IOException.class, () -> holding.read("records/b.json", 100));
            assertFalse(holding.isPrinted());
        }
    }
}
