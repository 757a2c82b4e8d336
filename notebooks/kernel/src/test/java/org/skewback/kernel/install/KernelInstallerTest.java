package org.skewback.kernel.install;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KernelInstallerTest {

    @TempDir Path folder;

    private Path jar(String content) throws IOException {
        return Files.writeString(folder.resolve("built.jar"), content);
    }

    @Test
    void writesTheJarAndACommandOfAbsolutePaths() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        Path installed = installer.install(jar("first"));

        JsonNode json = new ObjectMapper().readTree(installed.resolve("kernel.json").toFile());
        assertEquals("java", json.path("language").asText());
        assertEquals("message", json.path("interrupt_mode").asText());
        JsonNode command = json.path("argv");
        assertTrue(Files.isExecutable(Path.of(command.get(0).asText())));
        assertEquals("{connection_file}", command.get(command.size() - 1).asText());
        assertEquals("org.skewback.kernel.Kernel", command.get(command.size() - 2).asText());
        Path copy = Path.of(command.get(command.size() - 3).asText());
        assertTrue(copy.isAbsolute());
        assertEquals("first", Files.readString(copy));
    }

    @Test
    void replacesAnEarlierOneAndLeavesNothingBeside() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        installer.install(jar("first"));
        Path installed = installer.install(jar("second"));
        assertEquals("second", Files.readString(installed.resolve("skewback.jar")));
        try (Stream<Path> all = Files.list(folder.resolve("data").resolve("kernels"))) {
            assertEquals(1, all.count());
        }
    }

    @Test
    void removesWhatItInstalledAndSaysWhetherItWasThere() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        installer.install(jar("first"));
        assertTrue(installer.remove());
        assertFalse(Files.exists(installer.folder()));
        assertFalse(installer.remove());
    }

    @Test
    void aMissingJarLeavesTheInstalledKernelAsItWas() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        Path installed = installer.install(jar("first"));
        assertThrows(IOException.class, () -> installer.install(folder.resolve("none.jar")));
        assertEquals("first", Files.readString(installed.resolve("skewback.jar")));
    }

    /** Jupyter documentation, "Common Directories and File Locations", data files. */
    @Test
    void findsTheDataFolderAsJupyterDoes() {
        Path home = folder.toAbsolutePath();
        assertEquals(
                home.resolve(".local/share/jupyter"),
                KernelInstaller.dataFolder(Map.of(), "Linux", home));
        assertEquals(
                Path.of("/shared/jupyter"),
                KernelInstaller.dataFolder(Map.of("XDG_DATA_HOME", "/shared"), "Linux", home));
        assertEquals(
                home.resolve("Library/Jupyter"),
                KernelInstaller.dataFolder(Map.of(), "Mac OS X", home));
        assertEquals(
                Path.of("/roaming/jupyter"),
                KernelInstaller.dataFolder(Map.of("APPDATA", "/roaming"), "Windows 11", home));
        assertEquals(
                Path.of("/own"),
                KernelInstaller.dataFolder(Map.of("JUPYTER_DATA_DIR", "/own"), "Linux", home));
    }
}
