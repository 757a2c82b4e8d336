package org.skewback.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Runs the scripts beside the tests, which speak to the kernel with Jupyter's own clients. Which Python
 * runs them is said by the environment variable {@value #PYTHON}; where it or its packages are missing
 * the tests are left out, but never where {@code CI} is set.
 */
class JupyterTest {

    private static final String PYTHON = "SKEWBACK_PYTHON";
    private static final String PACKAGES =
            "import jupyter_client, jupyter_kernel_test, ipykernel, nbclient, nbconvert, psutil";
    private static final Path SCRIPTS = Path.of("src", "test", "python");
    private static final int MINUTES = 10;

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"conformance.py", "clients.py", "fuzz.py"})
    void worksWithJupyter(String script) throws Exception {
        String python = System.getenv().getOrDefault(PYTHON, "python3");
        if (run(python, "-c", PACKAGES) != 0) {
            String missing =
                    "Jupyter is not tested: "
                            + python
                            + " is no Python with jupyter_client, jupyter_kernel_test, ipykernel,"
                            + " nbclient, nbconvert and psutil; name one in "
                            + PYTHON;
            if (System.getenv("CI") != null) {
                fail(missing);
            }
            abort(missing);
        }
        install();
        int status = run(python, script);
        assertEquals(0, status, () -> script + " failed:\n" + lastWords());
    }

    /** A kernel specification as an installer writes it, for the classes under test. */
    private void install() throws IOException {
        ObjectMapper json = new ObjectMapper();
        ObjectNode specification = json.createObjectNode();
        ArrayNode command = specification.putArray("argv");
        Stream.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xmx160m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Kernel.class.getName(),
                        "{connection_file}")
                .forEach(command::add);
        specification.put("display_name", "under test");
        specification.put("language", "java");
        specification.put("interrupt_mode", "message");
        Path kernel = Files.createDirectories(folder.resolve("share/jupyter/kernels/under-test"));
        Files.write(kernel.resolve("kernel.json"), json.writeValueAsBytes(specification));
    }

    private int run(String... command) throws InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)));
        builder.directory(SCRIPTS.toFile());
        builder.environment().put("JUPYTER_PATH", folder.resolve("share/jupyter").toString());
        builder.environment().put("JUPYTER_RUNTIME_DIR", folder.resolve("runtime").toString());
        builder.environment().put("SKEWBACK_KERNEL", "under-test");
        builder.environment().put("SKEWBACK_HISTORY", "off");
        builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
        builder.redirectErrorStream(true);
        builder.redirectOutput(folder.resolve("log.txt").toFile());
        try {
            Process process = builder.start();
            if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                return -1;
            }
            return process.exitValue();
        } catch (IOException e) {
            return -1;
        }
    }

    private String lastWords() {
        try {
            List<String> lines =
                    new String(
                                    Files.readAllBytes(folder.resolve("log.txt")),
                                    StandardCharsets.UTF_8)
                            .lines()
                            .toList();
            return String.join("\n", lines.subList(Math.max(0, lines.size() - 60), lines.size()));
        } catch (IOException e) {
            return e.toString();
        }
    }
}
