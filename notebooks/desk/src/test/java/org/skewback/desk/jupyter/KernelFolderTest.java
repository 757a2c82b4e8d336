package org.skewback.desk.jupyter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;

/** The kernel's folder is written for Jupyter, and nobody else's is touched. */
class KernelFolderTest {

    @TempDir private Path home;

    private Path jar = Path.of("");

    @BeforeEach
    void aProgram() throws Exception {
        jar = Files.writeString(home.resolve("program.jar"), "the program");
    }

    private Path kernels() {
        return home.resolve("kernels");
    }

    private KernelFolder folder() {
        return new KernelFolder(kernels());
    }

    @Test
    void theSpecificationStartsTheCopiedProgram() throws Exception {
        Path folder = folder().install(jar, List.of("-Xmx2g"));
        JsonNode spec = Json.read(Files.readAllBytes(folder.resolve("kernel.json")));
        JsonNode words = spec.path("argv");
        Path java = Path.of(words.get(0).asText());
        assertTrue(java.isAbsolute() && Files.isExecutable(java), java.toString());
        assertEquals("{connection_file}", words.get(words.size() - 1).asText());
        assertEquals(KernelCommand.MAIN, words.get(words.size() - 2).asText());
        Path copied = Path.of(words.get(words.size() - 3).asText());
        assertEquals("the program", Files.readString(copied));
        assertTrue(copied.startsWith(folder));
        assertTrue(words.toString().contains("\"-Xmx2g\""));
        assertEquals("java", spec.path("language").asText());
        assertEquals("message", spec.path("interrupt_mode").asText());
    }

    @Test
    void installingAgainRenewsAndRemovingRemoves() throws Exception {
        Path folder = folder().install(jar, List.of());
        Files.writeString(jar, "a newer program");
        folder().install(jar, List.of());
        assertEquals("a newer program", Files.readString(folder.resolve("skewback.jar")));
        assertEquals(folder, folder().remove());
        assertFalse(Files.exists(folder));
        assertEquals(
                "no kernel is installed in " + folder,
                assertThrows(Problem.class, () -> folder().remove()).getMessage());
    }

    @Test
    void anothersKernelIsLeftAlone() throws Exception {
        Path spec = kernels().resolve("skewback/kernel.json");
        Files.createDirectories(spec.getParent());
        Files.writeString(spec, "{\"argv\":[\"another\"]}");
        assertThrows(Problem.class, () -> folder().install(jar, List.of()));
        assertThrows(Problem.class, () -> folder().remove());
        assertEquals("{\"argv\":[\"another\"]}", Files.readString(spec));
    }

    /** The folders are those of Jupyter's documentation of common directories, data files. */
    @Test
    void theUsersFolderIsWhereJupyterLooks() {
        Path user = Path.of("/u");
        assertEquals(
                Path.of("/u/.local/share/jupyter/kernels"),
                KernelFolder.ofUser(Map.of(), "Linux", user));
        assertEquals(
                Path.of("/x/jupyter/kernels"),
                KernelFolder.ofUser(Map.of("XDG_DATA_HOME", "/x"), "Linux", user));
        assertEquals(
                Path.of("/u/Library/Jupyter/kernels"),
                KernelFolder.ofUser(Map.of(), "Mac OS X", user));
        assertEquals(
                Path.of("/a/jupyter/kernels"),
                KernelFolder.ofUser(Map.of("APPDATA", "/a"), "Windows 11", user));
        assertEquals(
                Path.of("/d/kernels"),
                KernelFolder.ofUser(Map.of("JUPYTER_DATA_DIR", "/d"), "Linux", user));
    }
}
