package org.skewback.desk.jupyter;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;

/**
 * The folder in which a user's Jupyter finds the kernel.
 *
 * @see <a href="https://jupyter-client.readthedocs.io/en/stable/kernels.html#kernel-specs">Jupyter
 *     client documentation, "Kernel specs"</a>
 */
public final class KernelFolder {

    private static final String NAME = "skewback";
    private static final String SPEC = "kernel.json";
    private static final String JAR = "skewback.jar";

    private final Path kernels;
    private final Path folder;

    /**
     * Names the folder.
     *
     * @param kernels the folder that has one folder for each kernel
     */
    public KernelFolder(Path kernels) {
        this.kernels = kernels.toAbsolutePath();
        this.folder = this.kernels.resolve(NAME);
    }

    /**
     * Finds where Jupyter looks for kernels of one user.
     *
     * @param environment environment variables
     * @param system name of the operating system
     * @param home the user's home folder
     * @return the folder that has one folder for each kernel
     * @see <a href="https://docs.jupyter.org/en/latest/use/jupyter-directories.html">Jupyter
     *     documentation, "Common Directories and File Locations", data files</a>
     */
    public static Path ofUser(Map<String, String> environment, String system, Path home) {
        @Nullable String data = environment.get("JUPYTER_DATA_DIR");
        if (data != null && !data.isEmpty()) {
            return Path.of(data, "kernels");
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            @Nullable String roaming = environment.get("APPDATA");
            Path base = roaming == null ? home.resolve("AppData/Roaming") : Path.of(roaming);
            return base.resolve("jupyter").resolve("kernels");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library/Jupyter/kernels");
        }
        @Nullable String shared = environment.get("XDG_DATA_HOME");
        Path base =
                shared == null || shared.isEmpty() ? home.resolve(".local/share") : Path.of(shared);
        return base.resolve("jupyter").resolve("kernels");
    }

    /**
     * Installs the kernel, in place of an earlier one of ours.
     *
     * @param jar the packaged program; it is copied, so a later build does not disturb the kernel
     * @param options options for the kernel's Java, such as {@code -Xmx2g}
     * @return the kernel's folder
     * @throws Problem when the folder holds something else or cannot be written
     */
    public Path install(Path jar, List<String> options) throws Problem {
        requireOurs();
        Path staging = kernels.resolve("." + NAME + ".new");
        try {
            Files.createDirectories(kernels);
            discard(staging);
            Files.createDirectory(staging);
            Files.copy(jar, staging.resolve(JAR));
            Files.write(
                    staging.resolve(SPEC),
                    Json.page(spec(options)).getBytes(StandardCharsets.UTF_8));
            discard(folder);
            Files.move(staging, folder, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw Problem.of("cannot install the kernel in " + folder, e);
        }
        return folder;
    }

    /**
     * Removes the kernel.
     *
     * @return the folder that was removed
     * @throws Problem when there is none, when it is not ours, or when it cannot be removed
     */
    public Path remove() throws Problem {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw new Problem("no kernel is installed in " + folder);
        }
        requireOurs();
        try {
            discard(folder);
        } catch (IOException e) {
            throw Problem.of("cannot remove " + folder, e);
        }
        return folder;
    }

    private ObjectNode spec(List<String> options) {
        ObjectNode spec = JsonNodeFactory.instance.objectNode();
        ArrayNode words = spec.putArray("argv");
        KernelCommand.of(folder.resolve(JAR).toString(), options)
                .words("{connection_file}")
                .forEach(words::add);
        spec.put("display_name", "Java (Skewback)");
        spec.put("language", "java");
        spec.put("interrupt_mode", "message");
        return spec;
    }

    private void requireOurs() throws Problem {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try {
            JsonNode spec = Json.read(Files.readAllBytes(folder.resolve(SPEC)));
            for (JsonNode word : spec.path("argv")) {
                if (word.asText("").equals(KernelCommand.MAIN)) {
                    return;
                }
            }
        } catch (IOException e) {
            throw new Problem(folder + " is there and is not this kernel, so it is left alone", e);
        }
        throw new Problem(folder + " holds another kernel, so it is left alone");
    }

    private static void discard(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
