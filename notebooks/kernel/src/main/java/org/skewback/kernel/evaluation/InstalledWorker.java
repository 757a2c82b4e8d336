package org.skewback.kernel.evaluation;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the installation of a kernel says about its worker, passed in system properties of the front.
 *
 * @param jar jar of the worker's classes, or null where the kernel must write one
 * @param archive option that names the worker's class-data archive, or null
 * @param options further options of the worker's VM, parted by spaces, or null
 */
public record InstalledWorker(
        @Nullable Path jar, @Nullable String archive, @Nullable String options) {

    private static final String JAR = "skewback.worker.jar";
    private static final String ARCHIVE = "skewback.worker.archive";
    private static final String OPTIONS = "skewback.worker.options";

    /** Reads the system properties of this VM; a jar that is gone counts as none. */
    static InstalledWorker ofThisKernel() {
        String named = System.getProperty(JAR);
        Path jar = named == null ? null : Path.of(named);
        // The archive holds for this very jar only.
        return jar != null && Files.isRegularFile(jar)
                ? new InstalledWorker(jar, System.getProperty(ARCHIVE), System.getProperty(OPTIONS))
                : new InstalledWorker(null, null, System.getProperty(OPTIONS));
    }

    /**
     * Gives the options that pass to a front how its worker's VM is to run, and no more.
     *
     * @param options further options of the worker's VM, each without a space
     * @return options of the front's VM
     */
    public static List<String> options(List<String> options) {
        return new InstalledWorker(null, null, String.join(" ", options)).properties();
    }

    /**
     * Gives the options that pass this to a front.
     *
     * @return options of the front's VM
     */
    public List<String> properties() {
        List<String> properties = new ArrayList<>();
        if (jar != null) {
            properties.add("-D" + JAR + "=" + jar);
        }
        if (archive != null) {
            properties.add("-D" + ARCHIVE + "=" + archive);
        }
        if (options != null && !options.isBlank()) {
            properties.add("-D" + OPTIONS + "=" + options.strip());
        }
        return properties;
    }

    /**
     * Parts options at spaces.
     *
     * @param options options, or null
     * @return each option
     */
    static List<String> words(@Nullable String options) {
        return options == null || options.isBlank()
                ? List.of()
                : List.of(options.strip().split("\\s+"));
    }
}
