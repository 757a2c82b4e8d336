package org.skewback.kernel.install;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A Java on this machine.
 *
 * @param program its launcher
 */
record Java(Path program) {

    /** The oldest Java that the kernel runs on. */
    static final int OLDEST = 17;

    /** The modules that a runtime without a compiler lacks. */
    private static final List<String> MODULES =
            List.of("jdk.jshell", "jdk.compiler", "java.instrument");

    private static final Pattern PROPERTY = Pattern.compile("(?m)^\\s+([a-z.]+) = (.*?)\\s*$");

    /**
     * What a program printed.
     *
     * @param status its exit status, or -1 if it was ended because it took too long
     * @param text all that it printed
     */
    record Ran(int status, String text) {

        /** The first lines, for a message. */
        String firstLines(int count) {
            return text.lines()
                    .limit(count)
                    .map(String::strip)
                    .reduce((a, b) -> a + "; " + b)
                    .orElse("");
        }
    }

    /**
     * Which Java it is.
     *
     * @param feature its feature number, such as 17
     * @param version its full version with the vendor's addition
     */
    record Identity(int feature, String version) {}

    /** The one that runs this program. */
    static Java ofThisProgram() {
        boolean windows =
                System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        return new Java(
                Path.of(System.getProperty("java.home"), "bin", windows ? "java.exe" : "java")
                        .toAbsolutePath());
    }

    /**
     * Asks it which one it is.
     *
     * @throws IOException if it cannot be run or gives no answer
     */
    Identity identity() throws IOException {
        Ran ran = run(List.of("-XshowSettings:properties", "-version"), Map.of(), 20);
        String version = "";
        String specification = "";
        Matcher matcher = PROPERTY.matcher(ran.text());
        while (matcher.find()) {
            if (matcher.group(1).equals("java.vm.version")) {
                version = matcher.group(2);
            } else if (matcher.group(1).equals("java.specification.version")) {
                specification = matcher.group(2).replaceFirst("^1\\.", "");
            }
        }
        if (ran.status() != 0 || !specification.matches("[0-9]+")) {
            throw new IOException(
                    program
                            + " -version ended with status "
                            + ran.status()
                            + ": "
                            + ran.firstLines(3));
        }
        return new Identity(Integer.parseInt(specification), version);
    }

    /**
     * Names the modules that the kernel needs and this Java lacks.
     *
     * @throws IOException if it cannot be run
     */
    List<String> missingModules() throws IOException {
        String all = run(List.of("--list-modules"), Map.of(), 20).text();
        List<String> names = all.lines().map(line -> line.replaceFirst("@.*", "").strip()).toList();
        return MODULES.stream().filter(module -> !names.contains(module)).toList();
    }

    /**
     * Gives options back if this Java knows them all, else none; some came in the course of a release.
     *
     * @param options options of the VM that belong together
     * @throws IOException if it cannot be run
     */
    List<String> known(String... options) throws IOException {
        List<String> words = new ArrayList<>(List.of(options));
        words.add("-version");
        return run(words, Map.of(), 20).status() == 0 ? List.of(options) : List.of();
    }

    /**
     * Runs it to its end, or ends it.
     *
     * @param arguments what follows the launcher on the command line
     * @param environment additions to the environment
     * @param seconds how long it may take
     * @throws IOException if it cannot be run
     */
    Ran run(List<String> arguments, Map<String, String> environment, int seconds)
            throws IOException {
        List<String> words = new ArrayList<>();
        words.add(program.toString());
        words.addAll(arguments);
        return runProgram(words, environment, seconds);
    }

    /** Runs any program to its end, or ends it. */
    static Ran runProgram(List<String> words, Map<String, String> environment, int seconds)
            throws IOException {
        // A file, because a pipe is open as long as any descendant lives.
        Path printed = Files.createTempFile("skewback-", ".log");
        try {
            ProcessBuilder builder = new ProcessBuilder(words);
            builder.environment().putAll(environment);
            builder.redirectErrorStream(true).redirectOutput(printed.toFile());
            Process process = builder.start();
            process.getOutputStream().close();
            int status = -1;
            try {
                if (process.waitFor(seconds, TimeUnit.SECONDS)) {
                    status = process.exitValue();
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IOException("interrupted while " + words.get(0) + " ran", e);
            } finally {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly();
            }
            return new Ran(
                    status, new String(Files.readAllBytes(printed), Charset.defaultCharset()));
        } finally {
            Files.deleteIfExists(printed);
        }
    }
}
