package org.skewback.desk.apart;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A class-data archive beside the program: classes as the VM holds them, mapped instead of read and
 * checked at each start, which is half of what a short audit takes. It is made when the program is
 * built and is as trustworthy as the program beside which it lies. It holds for one Java and one
 * program; a VM that meets another starts without it, and so does one where there is none.
 *
 * @see <a href="https://openjdk.org/jeps/350">JEP 350, Dynamic CDS Archives</a>
 */
public enum ClassArchive {

    /** Classes that an audit needs. */
    AUDIT(".jsa"),
    /** Classes that the front of a kernel needs. */
    FRONT("-front.jsa");

    private static final String PROGRAM = ".jar";

    private final String ending;

    ClassArchive(String ending) {
        this.ending = ending;
    }

    /**
     * Gives the options by which a process uses the archive.
     *
     * @param classPath class path of the process
     * @return none where no archive lies beside its only entry
     */
    public List<String> options(String classPath) {
        if (classPath.contains(File.pathSeparator) || !classPath.endsWith(PROGRAM)) {
            return List.of();
        }
        Path archive =
                Path.of(classPath.substring(0, classPath.length() - PROGRAM.length()) + ending);
        return Files.isRegularFile(archive)
                ? List.of(
                        "-Xshare:auto",
                        "-XX:SharedArchiveFile=" + archive,
                        // That an archive does not fit is no news, and lines of output are
                        // findings.
                        "-Xlog:disable",
                        "-Xlog:all=error:stderr")
                : List.of();
    }
}
