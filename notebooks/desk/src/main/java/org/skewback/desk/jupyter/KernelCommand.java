package org.skewback.desk.jupyter;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.Kernel;
import org.skewback.kernel.evaluation.InstalledWorker;

/**
 * How a kernel is started.
 *
 * @param java launcher of the Java it runs on
 * @param options options for Java
 * @param classPath class path, of absolute paths, because a kernel works in another folder
 * @param arguments name of the class to start and its arguments; the connection file is added
 */
public record KernelCommand(
        Path java, List<String> options, String classPath, List<String> arguments) {

    /**
     * Options for a Java that runs for a minute or less: it makes the better code ten times later
     * than by default, or that would take most of the time of what is soon worked out.
     */
    public static final List<String> LATE_BEST_CODE =
            List.of(
                    "-XX:Tier4InvocationThreshold=50000",
                    "-XX:Tier4MinInvocationThreshold=6000",
                    "-XX:Tier4CompileThreshold=150000",
                    "-XX:Tier4BackEdgeThreshold=400000");

    /**
     * Options the kernel's front runs best with: it compiles and passes messages, so a quick start
     * counts for more than peak speed. It lives for one notebook and has no time in which nobody
     * waits for it, so it does without the collections by which one in daily use stays small.
     */
    private static final List<String> FRONT =
            List.of(
                    "-XX:+UseSerialGC",
                    "-XX:TieredStopAtLevel=1",
                    "-XX:-UsePerfData",
                    "-Xms192m",
                    "-Xmx512m",
                    "-XX:MetaspaceSize=128m",
                    "-XX:+DisableExplicitGC");

    /** Keeps copies of the lists. */
    public KernelCommand {
        options = List.copyOf(options);
        arguments = List.copyOf(arguments);
    }

    /**
     * Gives the command that starts the kernel that came with this program, on the same Java.
     *
     * @return the command
     */
    public static KernelCommand ofThisProgram() {
        return new KernelCommand(
                        javaOfThisProgram(),
                        FRONT,
                        classPathOfThisProgram(),
                        List.of(Kernel.class.getName()))
                .with(InstalledWorker.options(LATE_BEST_CODE));
    }

    /**
     * Gives the same command with further options.
     *
     * @param further options for Java
     * @return the command
     */
    public KernelCommand with(List<String> further) {
        List<String> all = new ArrayList<>(options);
        all.addAll(further);
        return new KernelCommand(java, all, classPath, arguments);
    }

    /**
     * Gives the words of the command line.
     *
     * @param connectionFile the connection file
     * @param further options that only this start needs
     * @return program and arguments
     */
    public List<String> words(Path connectionFile, String... further) {
        List<String> words = new ArrayList<>();
        words.add(java.toString());
        words.addAll(options);
        words.addAll(List.of(further));
        words.addAll(List.of("-cp", classPath));
        words.addAll(arguments);
        words.add(connectionFile.toString());
        return words;
    }

    /** Gives the launcher of the Java that runs this program. */
    static Path javaOfThisProgram() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toAbsolutePath();
    }

    /** Gives the class path of this program with absolute paths. */
    static String classPathOfThisProgram() {
        @Nullable String given = System.getProperty("java.class.path");
        List<String> entries = new ArrayList<>();
        for (String entry : (given == null ? "" : given).split(File.pathSeparator, -1)) {
            entries.add(Path.of(entry).toAbsolutePath().toString());
        }
        return String.join(File.pathSeparator, entries);
    }
}
