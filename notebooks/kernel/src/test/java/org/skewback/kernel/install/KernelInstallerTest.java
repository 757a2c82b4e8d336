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
import java.util.ArrayList;
import java.util.List;
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
        Path installed = installer.install(jar("first"), WorkerOptions.NONE).folder();

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
    void passesTheUsersOptionsToTheVmOfTheCellsOnly() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        WorkerOptions worker = new WorkerOptions("300m", List.of("-Xss2m"));
        Path installed = installer.install(jar("first"), worker).folder();
        JsonNode json = new ObjectMapper().readTree(installed.resolve("kernel.json").toFile());
        List<String> command = new ArrayList<>();
        json.path("argv").forEach(word -> command.add(word.asText()));
        String options =
                command.stream()
                        .filter(word -> word.startsWith("-Dskewback.worker.options="))
                        .findFirst()
                        .orElse("");
        assertTrue(options.endsWith("-Xmx300m -Xss2m"), command::toString);
        assertFalse(command.contains("-Xmx300m"), command::toString);
    }

    @Test
    void optionsThatJavaRefusesLeaveTheInstalledKernelAsItWas() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        Path installed = installer.install(jar("first"), WorkerOptions.NONE).folder();
        WorkerOptions nonsense = new WorkerOptions(null, List.of("-XX:NoSuchOption=1"));
        IOException refused =
                assertThrows(IOException.class, () -> installer.install(jar("second"), nonsense));
        assertTrue(String.valueOf(refused.getMessage()).contains("NoSuchOption"));
        assertEquals("first", Files.readString(installed.resolve("skewback.jar")));
    }

    @Test
    void whatIsNoSizeAndNoOptionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new WorkerOptions("much", List.of()));
        assertThrows(IllegalArgumentException.class, () -> new WorkerOptions("0g", List.of()));
        assertThrows(
                IllegalArgumentException.class, () -> new WorkerOptions(null, List.of("Xss2m")));
        assertThrows(
                IllegalArgumentException.class,
                () -> new WorkerOptions(null, List.of("-Xss2m -version")));
    }

    @Test
    void anEnvironmentKeepsItsKernelsUnderShare() {
        assertEquals(
                folder.toAbsolutePath().resolve("share/jupyter/kernels/skewback"),
                KernelInstaller.ofEnvironment(folder).folder());
    }

    @Test
    void replacesAnEarlierOneAndLeavesNothingBeside() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        installer.install(jar("first"), WorkerOptions.NONE);
        Path installed = installer.install(jar("second"), WorkerOptions.NONE).folder();
        assertEquals("second", Files.readString(installed.resolve("skewback.jar")));
        try (Stream<Path> all = Files.list(folder.resolve("data").resolve("kernels"))) {
            assertEquals(1, all.count());
        }
    }

    @Test
    void removesWhatItInstalledAndSaysWhetherItWasThere() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        installer.install(jar("first"), WorkerOptions.NONE);
        assertTrue(installer.remove());
        assertFalse(Files.exists(installer.folder()));
        assertFalse(installer.remove());
    }

    @Test
    void aMissingJarLeavesTheInstalledKernelAsItWas() throws IOException {
        KernelInstaller installer = new KernelInstaller(folder.resolve("data"));
        Path installed = installer.install(jar("first"), WorkerOptions.NONE).folder();
        assertThrows(
                IOException.class,
                () -> installer.install(folder.resolve("none.jar"), WorkerOptions.NONE));
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
