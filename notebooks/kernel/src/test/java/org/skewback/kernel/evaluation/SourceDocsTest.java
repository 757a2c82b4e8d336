package org.skewback.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceDocsTest {

    private static final String SOURCE =
            """
            package test;
            /** An arch. */
            public class Arch<T> {
                /** Its span, m. */
                public double span;
                /** Builds one. */
                public Arch(double span) { }
                /**
                 * Computes the rise, {@code span/4} where {@code n} is 4; see
                 * {@link Arch#rise(int, java.util.Map) the general case}.
                 *
                 * <p>A second paragraph with a &lt; b.
                 *
                 * @param n parts, at least 1
                 * @return the rise, m
                 * @throws IllegalArgumentException if n is 0
                 */
                public double rise(int n) { return span / n; }
                /** The general case. */
                public double rise(int n, java.util.Map<String, Integer> m) { return 0; }
            }
            """;

    private static List<Path> jars(Path folder) throws IOException {
        Path jar = folder.resolve("arch-1.0.jar");
        Files.write(jar, new byte[0]);
        try (ZipOutputStream zip =
                new ZipOutputStream(
                        Files.newOutputStream(folder.resolve("arch-1.0-sources.jar")))) {
            zip.putNextEntry(new ZipEntry("test/Arch.java"));
            zip.write(SOURCE.getBytes(StandardCharsets.UTF_8));
        }
        return List.of(jar);
    }

    private static String find(Path folder, String signature) throws IOException {
        return SourceDocs.find(signature, jars(folder)).map(DocText::beginning).orElse("");
    }

    @Test
    void findsClassesMembersAndConstructors(@TempDir Path folder) throws IOException {
        assertEquals("An arch.", find(folder, "test.Arch<T>"));
        assertEquals("Its span, m.", find(folder, "Arch.span:double"));
        assertEquals("Builds one.", find(folder, "Arch<T>(double span)"));
        assertEquals(
                "Computes the rise, span/4 where n is 4; see\nthe general case.",
                find(folder, "double Arch<T>.rise(int n)"));
        assertEquals(
                "The general case.",
                find(folder, "double Arch<T>.rise(int n, Map<String,Integer> m)"));
        assertEquals("", find(folder, "double Arch<T>.rise()"));
        assertEquals("", find(folder, "other.Arch"));
    }

    @Test
    void aLibraryWithoutSourcesHasNoDocumentation(@TempDir Path folder) {
        assertEquals(Optional.empty(), SourceDocs.find("a.B", List.of(folder.resolve("none.jar"))));
    }

    @Test
    void theWholeCommentSaysItsTagsInWords(@TempDir Path folder) throws IOException {
        String comment = SourceDocs.find("double Arch.rise(int n)", jars(folder)).orElse("");
        assertEquals(
                """
                Computes the rise, span/4 where n is 4; see
                the general case.

                A second paragraph with a < b.
                parameter n: parts, at least 1
                returns the rise, m
                throws IllegalArgumentException: if n is 0\
                """,
                DocText.whole(comment));
    }

    @Test
    void typeParametersAndNotesAreReadAsWhatTheyAre() {
        assertEquals(
                """
                Holds one.
                type parameter T: what it holds
                parameter a: the <one>
                note: never null.
                how it is done: by a field.
                since 9\
                """,
                DocText.whole(
                        """
                        Holds one.
                        @param <T> what it holds
                        @param a the &lt;one&gt;
                        @apiNote never null.
                        @implSpec by a field.
                        @since 9
                        """));
    }
}
