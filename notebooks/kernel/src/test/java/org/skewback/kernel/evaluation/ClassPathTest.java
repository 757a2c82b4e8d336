package org.skewback.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.kernel.evaluation.Libraries.Library;
import org.skewback.kernel.evaluation.Libraries.MissingException;

class ClassPathTest {

    @TempDir Path folder;
    private final Map<String, Libraries.Found> known = new HashMap<>();
    private final ClassPath classPath =
            new ClassPath(
                    coordinates -> {
                        Libraries.Found found = known.get(coordinates);
                        if (found == null) {
                            throw new MissingException("unknown");
                        }
                        return found;
                    });

    private Path jar(String name) throws IOException {
        Path jar = folder.resolve(name);
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
            out.putNextEntry(new ZipEntry("a.txt"));
        }
        return jar;
    }

    private ClassPath.Outcome obey(String name, String argument) throws MissingException {
        return classPath.obey(new Magic(name, argument, 1));
    }

    private String complaint(String name, String argument) {
        MissingException e = assertThrows(MissingException.class, () -> obey(name, argument));
        return String.valueOf(e.getMessage());
    }

    private Library library(String name, String version) {
        return new Library(name, version, folder.resolve(name.replace(':', '-') + version));
    }

    @Test
    void aJarIsAddedOnce() throws Exception {
        Path jar = jar("a.jar");
        assertEquals(List.of(jar), obey("classpath", jar.toString()).added());
        assertEquals(List.of(), obey("classpath", " " + jar).added());
        assertEquals(List.of(jar), classPath.paths());
    }

    @Test
    void nonsenseIsRefusedAndSaysWhy() throws Exception {
        Path text = Files.writeString(folder.resolve("b.jar"), "no jar");
        assertTrue(
                complaint("classpath", folder.resolve("none").toString()).contains("there is no"));
        assertTrue(complaint("classpath", text.toString()).contains("is no jar"));
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertTrue(complaint("classpath", empty.toString()).contains("is empty"));
        assertTrue(complaint("classpath", "\0").contains("is no path"));
        assertTrue(complaint("jars", "").contains("needs a jar"));
        assertTrue(complaint("jars", empty + "/*.jar").contains("nothing in"));
        assertTrue(complaint("jars", empty + "/[").contains("is no pattern"));
        assertTrue(complaint("jars", folder + "/*.jar").contains("b.jar is no jar"));
        assertTrue(complaint("jar", "x").contains("there is no %jar"));
        assertEquals(List.of(), classPath.paths());
    }

    @Test
    void aFolderOfJarsIsSentToTheOtherMagic() throws Exception {
        jar("a.jar");
        assertTrue(complaint("classpath", folder.toString()).contains("%jars"));
    }

    @Test
    void aPatternTakesAllJarsInOrder() throws Exception {
        Path b = jar("b.jar");
        Path a = jar("a.jar");
        assertEquals(List.of(a, b), obey("jars", folder + "/*.jar").added());
    }

    @Test
    void theFirstVersionStaysAndTheOtherIsTold() throws Exception {
        Library rib = library("t:rib", "1");
        known.put("t:a:1", new Libraries.Found(List.of(library("t:a", "1"), rib), List.of("told")));
        known.put(
                "t:b:1",
                new Libraries.Found(
                        List.of(library("t:b", "1"), library("t:rib", "2")), List.of()));
        known.put("t:a:2", new Libraries.Found(List.of(library("t:a", "2")), List.of()));
        assertEquals(List.of("told"), obey("maven", "t:a:1").notes());
        ClassPath.Outcome second = obey("maven", "t:b:1");
        assertEquals(1, second.added().size());
        assertTrue(second.notes().get(0).contains("t:rib is already in use in version 1"));
        assertTrue(complaint("maven", "t:a:2").contains("restart the kernel"));
        assertEquals(Map.of("t:a", "1", "t:b", "1", "t:rib", "1"), classPath.versions());
    }

    @Test
    void withoutAnArgumentItListsWhatIsThere() throws Exception {
        assertEquals(List.of("nothing is on the class path yet"), obey("maven", "").answers());
        known.put("t:a:1", new Libraries.Found(List.of(library("t:a", "1")), List.of()));
        obey("maven", "t:a:1");
        assertTrue(obey("classpath", "").answers().get(0).endsWith("(t:a:1)"));
    }
}
