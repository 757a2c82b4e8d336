package org.skewback.desk.jupyter;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The command line that starts a kernel.
 *
 * @param words program and arguments; the path of the connection file is added behind them
 */
public record KernelCommand(List<String> words) {

    /** Name of the class that the kernel starts with. */
    public static final String MAIN = "org.skewback.kernel.Kernel";

    /** Keeps a copy of the list. */
    public KernelCommand {
        words = List.copyOf(words);
    }

    /**
     * Gives the command that starts the kernel that came with this program, on the same Java.
     *
     * @return the command
     */
    public static KernelCommand ofThisProgram() {
        return of(classPath(), List.of());
    }

    /**
     * Gives the command that starts the kernel from a class path, on the Java that runs this
     * program.
     *
     * @param classPath class path, of absolute paths
     * @param options further options for Java
     * @return the command
     */
    public static KernelCommand of(String classPath, List<String> options) {
        List<String> words = new ArrayList<>();
        words.add(java().toString());
        // The front compiles and passes messages: a quick start and a small footprint count for
        // more than peak speed.
        words.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
        words.addAll(options);
        words.addAll(List.of("-cp", classPath, MAIN));
        return new KernelCommand(words);
    }

    /** Gives the launcher of the Java that runs this program, an absolute path. */
    private static Path java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toAbsolutePath();
    }

    /** Gives the class path of this program, absolute because a kernel works in another folder. */
    static String classPath() {
        @Nullable String given = System.getProperty("java.class.path");
        List<String> entries = new ArrayList<>();
        for (String entry : (given == null ? "" : given).split(File.pathSeparator, -1)) {
            entries.add(Path.of(entry).toAbsolutePath().toString());
        }
        return String.join(File.pathSeparator, entries);
    }
}
