package org.skewback.kernel.install;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.Kernel;
import org.skewback.kernel.evaluation.WorkerJar;

/**
 * Installs the kernel in a Jupyter data folder and removes it.
 *
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/kernels.html#kernel-specs">Jupyter
 *     client documentation, "Kernel specs"</a>
 */
public final class KernelInstaller {

    /** Name of the kernel's folder, by which notebooks know it. */
    public static final String NAME = "skewback";

    /**
     * A kernel that was installed.
     *
     * @param folder the folder it was installed in
     * @param slowStart why it will start more slowly than it could, or null
     */
    public record Installed(Path folder, @Nullable String slowStart) {}

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
     * Uses the data folder of an environment, such as one of Python.
     *
     * @param prefix the environment's folder
     * @return the installer
     */
    public static KernelInstaller ofEnvironment(Path prefix) {
        return new KernelInstaller(prefix.resolve("share").resolve("jupyter"));
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
     * moved when it is whole; then it is run once, to make the archives that let it start quickly.
     *
     * @param jar jar with the kernel and all its libraries
     * @param worker how the user wants the VM that runs the cells
     * @return what was installed
     * @throws IOException if the jar is missing, the folder cannot be written, or this Java refuses
     *     the options of the worker
     */
    public Installed install(Path jar, WorkerOptions worker) throws IOException {
        if (!Files.isRegularFile(jar)) {
            throw new NoSuchFileException(jar.toString(), null, "the kernel's jar is not a file");
        }
        Java java = Java.ofThisProgram();
        accepted(java, worker);
        String version = java.identity().version();
        Files.createDirectories(kernels);
        Path temporary = Files.createTempDirectory(kernels, "." + NAME + "-new-");
        KernelFolder installed = new KernelFolder(folder());
        try {
            KernelFolder beside = new KernelFolder(temporary);
            Files.copy(jar, beside.jar());
            WorkerJar.write(beside.workerJar());
            Files.write(beside.specification(), specification(java, installed, worker));
            Installation.of(beside, version).write(beside.installation());
            readableByAll(temporary);
            removeFolder();
            Files.move(temporary, folder());
        } finally {
            ClassDataArchives.deleteAll(temporary);
        }
        return new Installed(folder(), new ClassDataArchives(installed, java).make());
    }

    private static void accepted(Java java, WorkerOptions worker) throws IOException {
        List<String> words = new ArrayList<>(worker.words());
        words.add("-version");
        Java.Ran ran = java.run(words, Map.of(), 20);
        if (ran.status() != 0) {
            throw new IOException(
                    "Java refuses the options "
                            + String.join(" ", worker.words())
                            + ": "
                            + ran.firstLines(2));
        }
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
        ClassDataArchives.deleteAll(beside);
    }

    // A temporary folder is closed to others, which a kernel of a shared data folder must not be.
    private static void readableByAll(Path folder) throws IOException {
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }

    private static byte[] specification(Java java, KernelFolder folder, WorkerOptions worker)
            throws IOException {
        ObjectMapper json = new ObjectMapper();
        ObjectNode specification = json.createObjectNode();
        ArrayNode command = specification.putArray("argv");
        command.add(java.program().toString());
        new ClassDataArchives(folder, java).use(worker).forEach(command::add);
        command.add("-cp");
        command.add(folder.jar().toString());
        command.add(Kernel.class.getName());
        command.add("{connection_file}");
        specification.put("display_name", "Skewback (Java)");
        specification.put("language", "java");
        specification.put("interrupt_mode", "message");
        return json.writerWithDefaultPrettyPrinter().writeValueAsBytes(specification);
    }
}
