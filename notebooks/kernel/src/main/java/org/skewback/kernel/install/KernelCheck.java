package org.skewback.kernel.install;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.wire.ConnectionFile;

/** Looks whether an installed kernel runs, and what is wrong with it. */
public final class KernelCheck {

    private static final String AGAIN = "install it again: skewback kernel install";
    private static final int JUPYTER_SECONDS = 60;

    private final KernelFolder folder;
    private final @Nullable Path program;
    private final List<String> jupyter;
    private final List<Finding> findings = new ArrayList<>();

    /**
     * Looks at a kernel.
     *
     * @param installer where it is installed
     * @param program jar of the running program, or null if it is not packaged
     * @param jupyter words that run Jupyter, such as {@code jupyter} alone
     */
    public KernelCheck(KernelInstaller installer, @Nullable Path program, List<String> jupyter) {
        this.folder = new KernelFolder(installer.folder());
        this.program = program;
        this.jupyter = List.copyOf(jupyter);
    }

    /**
     * Looks at everything and starts the kernel once.
     *
     * @return what was found, in the order of looking; it ends with what keeps the kernel from running
     */
    public List<Finding> run() {
        findings.clear();
        List<String> command = command();
        if (command != null && java(command) && jar(command)) {
            changes();
            archives(command);
            start(command);
        }
        jupyter();
        return List.copyOf(findings);
    }

    private void add(Finding finding) {
        findings.add(finding);
    }

    private @Nullable List<String> command() {
        if (!Files.isDirectory(folder.path())) {
            add(
                    Finding.broken(
                            "no kernel is installed in " + folder.path(),
                            "skewback kernel install"));
            return null;
        }
        try {
            JsonNode json = new ObjectMapper().readTree(Files.readAllBytes(folder.specification()));
            List<String> command = new ArrayList<>();
            json.path("argv").forEach(word -> command.add(word.asText()));
            if (command.size() < 2 || !command.contains("{connection_file}")) {
                add(
                        Finding.broken(
                                folder.specification() + " has no command that starts a kernel",
                                AGAIN));
                return null;
            }
            return command;
        } catch (JsonProcessingException e) {
            add(
                    Finding.broken(
                            folder.specification() + " is not JSON: " + e.getOriginalMessage(),
                            AGAIN));
        } catch (IOException e) {
            add(Finding.broken(folder.specification() + " cannot be read: " + e, AGAIN));
        }
        return null;
    }

    private boolean java(List<String> command) {
        Java java = new Java(Path.of(command.get(0)));
        if (!Files.isExecutable(java.program())) {
            add(
                    Finding.broken(
                            "the Java that the kernel was installed for is gone: " + java.program(),
                            AGAIN + ", with a Java that is there"));
            return false;
        }
        try {
            Java.Identity identity = java.identity();
            if (identity.feature() < Java.OLDEST) {
                add(
                        Finding.broken(
                                "Java is too old: "
                                        + java.program()
                                        + " is Java "
                                        + identity.feature()
                                        + ", and the kernel needs "
                                        + Java.OLDEST
                                        + " or newer",
                                "install a newer Java, then run kernel install with it"));
                return false;
            }
            List<String> missing = java.missingModules();
            if (!missing.isEmpty()) {
                add(
                        Finding.broken(
                                java.program()
                                        + " lacks "
                                        + String.join(", ", missing)
                                        + ": it can run programs but not compile cells",
                                "install a JDK instead of a JRE, then run kernel install with it"));
                return false;
            }
            add(Finding.good("Java " + identity.version() + ", " + java.program()));
            return true;
        } catch (IOException e) {
            add(Finding.broken("Java does not run: " + e.getMessage(), AGAIN));
            return false;
        }
    }

    private boolean jar(List<String> command) {
        int at = command.indexOf("-cp");
        Path jar = at < 0 || at + 1 >= command.size() ? folder.jar() : Path.of(command.get(at + 1));
        if (!Files.isRegularFile(jar)) {
            add(
                    Finding.broken(
                            "the kernel's jar is not where kernel.json says: " + jar,
                            AGAIN + "; a kernel's folder cannot be moved"));
            return false;
        }
        return true;
    }

    private void changes() {
        try {
            Installation then = Installation.read(folder);
            Installation now = Installation.of(folder, then.javaVersion());
            if (!then.specification().equals(now.specification())) {
                add(
                        Finding.toMend(
                                folder.specification() + " was changed by hand",
                                "if that was not you, "
                                        + AGAIN
                                        + "; options of the VM can be given"
                                        + " there"));
            }
            if (!then.jar().equals(now.jar())) {
                add(Finding.toMend(folder.jar() + " is not the one that was installed", AGAIN));
            } else if (program != null && !Installation.digest(program).equals(now.jar())) {
                add(
                        Finding.toMend(
                                "the installed kernel is of another build than this program",
                                AGAIN));
            }
        } catch (IOException e) {
            add(Finding.toMend("what was installed is not known: " + e.getMessage(), AGAIN));
        }
    }

    private void archives(List<String> command) {
        Java java = new Java(Path.of(command.get(0)));
        try {
            String fault = new ClassDataArchives(folder, java).fault();
            if (fault == null) {
                add(Finding.good("the class-data archives fit"));
                return;
            }
            String version = java.identity().version();
            String then = Installation.read(folder).javaVersion();
            add(
                    Finding.toMend(
                            "a class-data archive is stale, so the kernel starts more slowly: "
                                    + fault
                                    + (then.equals(version)
                                            ? ""
                                            : "; it was made for Java " + then),
                            AGAIN));
        } catch (IOException e) {
            add(
                    Finding.toMend(
                            "the class-data archives cannot be tried: " + e.getMessage(), AGAIN));
        }
    }

    private void start(List<String> command) {
        try {
            Path temporary = Files.createTempDirectory("skewback-check-");
            try {
                start(command, temporary);
            } finally {
                ClassDataArchives.deleteAll(temporary);
            }
        } catch (IOException e) {
            add(Finding.broken("the kernel cannot be started: " + e.getMessage(), AGAIN));
        }
    }

    private void start(List<String> command, Path temporary) throws IOException {
        ConnectionFile connection = ConnectionFile.onLoopback();
        Path file = temporary.resolve("connection.json");
        Path log = temporary.resolve("kernel.log");
        connection.write(file);
        ProcessBuilder builder =
                new ProcessBuilder(
                        command.stream()
                                .map(w -> w.replace("{connection_file}", file.toString()))
                                .toList());
        builder.environment().put(ClassDataArchives.HISTORY, "off");
        Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
        long begun = System.nanoTime();
        try (KernelTalk talk = new KernelTalk(connection, process::isAlive)) {
            JsonNode reply = talk.execute("1 + 1");
            double seconds = (System.nanoTime() - begun) / 1e9;
            if (!reply.path("status").asText().equals("ok")) {
                add(
                        Finding.broken(
                                "the kernel starts but cannot run a cell: "
                                        + reply.path("evalue").asText(),
                                AGAIN));
                return;
            }
            add(
                    Finding.good(
                            String.format(
                                    Locale.ROOT,
                                    "the kernel starts and has its first result after %.1f s",
                                    seconds)));
            talk.ask("shutdown_request", KernelTalk.object().put("restart", false));
        } catch (IOException e) {
            String printed = Files.readString(log).strip();
            add(
                    Finding.broken(
                            "the kernel does not run: "
                                    + (printed.isEmpty()
                                            ? e.getMessage()
                                            : printed.lines()
                                                    .limit(4)
                                                    .reduce((a, b) -> a + "; " + b)
                                                    .orElse("")),
                            AGAIN));
        } finally {
            end(process);
        }
    }

    private static void end(Process process) {
        try {
            if (!process.waitFor(5, TimeUnit.SECONDS)) {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            process.destroyForcibly();
        }
    }

    private void jupyter() {
        List<String> words = new ArrayList<>(jupyter);
        words.addAll(List.of("kernelspec", "list", "--json"));
        Java.Ran ran;
        try {
            ran = Java.runProgram(words, Map.of(), JUPYTER_SECONDS);
        } catch (IOException e) {
            add(
                    Finding.toMend(
                            "Jupyter is not found: the command " + jupyter.get(0) + " does not run",
                            "pip install jupyterlab; it is needed to write notebooks, not to issue"
                                    + " them"));
            return;
        }
        // Jupyter may print warnings before the JSON.
        String text = ran.text().substring(Math.max(0, ran.text().indexOf('{')));
        try {
            JsonNode specs = new ObjectMapper().readTree(text).path("kernelspecs");
            String seen = specs.path(KernelInstaller.NAME).path("resource_dir").asText("");
            if (ran.status() != 0 || specs.isMissingNode()) {
                add(
                        Finding.toMend(
                                "Jupyter does not list its kernels: " + ran.firstLines(3),
                                "pip install --upgrade jupyterlab"));
            } else if (seen.isEmpty()) {
                add(
                        Finding.toMend(
                                "Jupyter does not see the kernel in " + folder.path(),
                                "install it where Jupyter looks (jupyter --paths lists the data"
                                        + " folders): skewback kernel install --data or --prefix"));
            } else if (!same(Path.of(seen))) {
                add(
                        Finding.toMend(
                                "Jupyter takes another kernel of this name: " + seen,
                                "remove one of the two: skewback kernel remove with --data or"
                                        + " --prefix"));
            } else {
                add(Finding.good("Jupyter sees it"));
            }
        } catch (JsonProcessingException e) {
            add(
                    Finding.toMend(
                            "Jupyter does not list its kernels: " + ran.firstLines(3),
                            "pip install --upgrade jupyterlab"));
        }
    }

    private boolean same(Path seen) {
        try {
            return Files.exists(folder.path()) && Files.isSameFile(seen, folder.path());
        } catch (IOException e) {
            return false;
        }
    }
}
