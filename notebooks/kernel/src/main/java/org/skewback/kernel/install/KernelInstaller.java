package org.skewback.kernel.install;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.skewback.kernel.Kernel;

/**
 * Installs the kernel in a Jupyter data folder and removes it.
 *
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/kernels.html#kernel-specs">Jupyter
 *     client documentation, "Kernel specs"</a>
 */
public final class KernelInstaller {

    /** Name of the kernel's folder, by which notebooks know it. */
    public static final String NAME = "skewback";

    private static final String JAR = "skewback.jar";

    private final Path kernels;

    /**
     * Uses a data folder.
     *
     * @param dataFolder Jupyter data folder; need not exist yet
     */
    public KernelInstaller(Path dataFolder) {
        this.kernels = dataFolder.toAbsolutePath().normalize().resolve("kernels");
    }

    /**
     * Uses the data folder of the user that runs this program.
     *
     * @return the installer
     */
    public static KernelInstaller ofThisUser() {
        return new KernelInstaller(
                dataFolder(
                        System.getenv(),
                        System.getProperty("os.name"),
                        Path.of(System.getProperty("user.home"))));
    }

    /**
     * Finds the user's data folder as Jupyter itself does.
     *
     * @param environment environment variables
     * @param system name of the operating system, as {@code os.name} gives it
     * @param home the user's home folder
     * @return the folder
     * @see <a href="https://docs.jupyter.org/en/latest/use/jupyter-directories.html#data-files">Jupyter
     *     documentation, "Data files"</a>
     */
    static Path dataFolder(Map<String, String> environment, String system, Path home) {
        String named = environment.getOrDefault("JUPYTER_DATA_DIR", "");
        if (!named.isBlank()) {
            return Path.of(named);
        }
        String lower = system.toLowerCase(Locale.ROOT);
        if (lower.startsWith("mac")) {
            return home.resolve("Library").resolve("Jupyter");
        }
        if (lower.startsWith("windows")) {
            String roaming = environment.getOrDefault("APPDATA", "");
            return roaming.isBlank()
                    ? home.resolve(".jupyter").resolve("data")
                    : Path.of(roaming).resolve("jupyter");
        }
        String shared = environment.getOrDefault("XDG_DATA_HOME", "");
        return (shared.isBlank() ? home.resolve(".local").resolve("share") : Path.of(shared))
                .resolve("jupyter");
    }

    /**
     * Gives the folder the kernel is installed in.
     *
     * @return the folder, which need not exist
     */
    public Path folder() {
        return kernels.resolve(NAME);
    }

    /**
     * Installs the kernel, in place of the one that may be there. The new one is written beside and
     * moved when it is whole.
     *
     * @param jar jar with the kernel and all its libraries
     * @return the folder it was installed in
     * @throws IOException if the jar is missing or the folder cannot be written
     */
    public Path install(Path jar) throws IOException {
        if (!Files.isRegularFile(jar)) {
            throw new NoSuchFileException(jar.toString(), null, "the kernel's jar is not a file");
        }
        Files.createDirectories(kernels);
        Path beside = Files.createTempDirectory(kernels, "." + NAME + "-new-");
        try {
            Files.copy(jar, beside.resolve(JAR));
            Files.write(beside.resolve("kernel.json"), specification(folder().resolve(JAR)));
            readableByAll(beside);
            removeFolder();
            Files.move(beside, folder());
        } finally {
            delete(beside);
        }
        return folder();
    }

    /**
     * Removes the kernel.
     *
     * @return whether it was there
     * @throws IOException if it cannot be removed
     */
    public boolean remove() throws IOException {
        boolean there = Files.exists(folder());
        removeFolder();
        return there;
    }

    // Moved out of sight first, so that Jupyter never sees half a kernel.
    private void removeFolder() throws IOException {
        if (!Files.exists(folder())) {
            return;
        }
        Path beside = Files.createTempDirectory(kernels, "." + NAME + "-old-");
        Files.move(folder(), beside.resolve(NAME));
        delete(beside);
    }

    // A temporary folder is closed to others, which a kernel of a shared data folder must not be.
    private static void readableByAll(Path folder) throws IOException {
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> files = Files.walk(folder)) {
            all = files.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : all) {
            Files.delete(file);
        }
    }

    private static byte[] specification(Path jar) throws IOException {
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        Path java =
                Path.of(System.getProperty("java.home"), "bin", windows ? "java.exe" : "java")
                        .toAbsolutePath();
        ObjectMapper json = new ObjectMapper();
        ObjectNode specification = json.createObjectNode();
        ArrayNode command = specification.putArray("argv");
        // A quick compiler and a small collector suit a process that only talks; the worker, which
        // runs the solvers, keeps the full compiler.
        Stream.of(
                        java.toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-cp",
                        jar.toString(),
                        Kernel.class.getName(),
                        "{connection_file}")
                .forEach(command::add);
        specification.put("display_name", "Skewback (Java)");
        specification.put("language", "java");
        specification.put("interrupt_mode", "message");
        return json.writerWithDefaultPrettyPrinter().writeValueAsBytes(specification);
    }
}
