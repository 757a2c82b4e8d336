package org.skewback.kernel.install;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.kernel.Kernel;
import org.skewback.kernel.evaluation.InstalledWorker;
import org.skewback.kernel.repository.MavenLibraries;

/**
 * The class-data archives of front and worker: classes as the VM holds them, mapped instead of read,
 * checked and laid out at each start. An archive holds for one Java, one jar and one place; a VM that
 * meets another starts without it.
 *
 * @see <a href="https://openjdk.org/jeps/350">JEP 350, Dynamic CDS Archives</a>
 */
final class ClassDataArchives {

    /** Environment variable that keeps a kernel from remembering what it ran. */
    static final String HISTORY = "SKEWBACK_HISTORY";

    private static final String USE = "-XX:SharedArchiveFile=";
    private static final String MAKE = "-XX:ArchiveClassesAtExit=";
    private static final String FROM_ARCHIVE = "source: shared objects file (top)";

    private final KernelFolder folder;
    private final Java java;

    /**
     * Uses the archives of an installed kernel.
     *
     * @param folder the kernel's folder
     * @param java the Java it runs on
     */
    ClassDataArchives(KernelFolder folder, Java java) {
        this.folder = folder;
        this.java = java;
    }

    /**
     * Options of the front that use both archives.
     *
     * @throws IOException if Java cannot be run
     */
    List<String> use(WorkerOptions worker) throws IOException {
        // What compilers have needed for a moment goes back to the system.
        List<String> both = new ArrayList<>(java.known("-XX:TrimNativeHeapInterval=2000"));
        // All pages of an archive that is moved are written to, needed or not.
        both.addAll(java.known("-XX:+UnlockDiagnosticVMOptions", "-XX:ArchiveRelocationMode=0"));
        List<String> back = new ArrayList<>(both);
        back.addAll(worker.words());
        return options(both, back, USE, folder.frontArchive(), folder.workerArchive());
    }

    private List<String> options(
            List<String> own, List<String> worker, String verb, Path front, Path back) {
        List<String> options = new ArrayList<>(FRONT);
        options.addAll(own);
        options.add(verb + front);
        options.addAll(
                new InstalledWorker(folder.workerJar(), verb + back, String.join(" ", worker))
                        .properties());
        return options;
    }

    // A quick compiler and a small collector suit a process that only talks; the worker, which runs
    // the solvers, keeps the full compiler. An archive that does not fit is no news for the log of
    // Jupyter: kernel check tells it. The heap starts with what the compiler needs at least, as
    // growing to that would cost the start its full collections, and then stays close to what is
    // in use: a compiler leaves much behind, and the rest of the machine belongs to the worker.
    private static final List<String> FRONT =
            List.of(
                    "-XX:+UseSerialGC",
                    "-XX:TieredStopAtLevel=1",
                    "-XX:-UsePerfData",
                    "-Xms56m",
                    "-Xmx512m",
                    "-XX:NewSize=8m",
                    "-XX:MaxNewSize=10m",
                    "-XX:MinHeapFreeRatio=10",
                    "-XX:MaxHeapFreeRatio=20",
                    "-XX:-ShrinkHeapInSteps",
                    "-Xshare:auto",
                    "-Xlog:disable",
                    "-Xlog:all=error:stderr");

    /**
     * Makes both archives, in place of those that may be there.
     *
     * @return null if they are made, else why not
     * @throws IOException if the disk does not let them be written
     */
    @Nullable String make() throws IOException {
        Path temporary = Files.createTempDirectory("skewback-rehearsal-");
        try {
            Path repository = temporary.resolve(Rehearsal.REPOSITORY);
            Path front = temporary.resolve("front.jsa");
            Path back = temporary.resolve("worker.jsa");
            List<String> words = new ArrayList<>(options(List.of(), List.of(), MAKE, front, back));
            words.addAll(
                    List.of(
                            "-Djava.io.tmpdir=" + temporary,
                            "-cp",
                            folder.jar().toString(),
                            Rehearsal.class.getName(),
                            temporary.toString()));
            Java.Ran ran =
                    java.run(
                            words,
                            Map.of(MavenLibraries.FOLDER, repository.toString(), HISTORY, "off"),
                            Rehearsal.MOST_SECONDS);
            if (ran.status() != 0) {
                return "the rehearsal ended with status " + ran.status() + ": " + ran.firstLines(4);
            }
            if (!Files.isRegularFile(front) || !Files.isRegularFile(back)) {
                return java.program() + " wrote no archive: " + ran.firstLines(4);
            }
            Files.move(front, folder.frontArchive(), StandardCopyOption.REPLACE_EXISTING);
            Files.move(back, folder.workerArchive(), StandardCopyOption.REPLACE_EXISTING);
            return fault();
        } finally {
            deleteAll(temporary);
        }
    }

    /**
     * Says why an archive is not used.
     *
     * @return null if both are used
     * @throws IOException if Java cannot be run
     */
    @Nullable String fault() throws IOException {
        String front = fault(folder.frontArchive(), folder.jar(), Kernel.class.getName());
        return front != null
                ? front
                : fault(
                        folder.workerArchive(),
                        folder.workerJar(),
                        "org.skewback.kernel.worker.WorkerMain");
    }

    // Both programs end at once when they are given nothing to do, and the log says where their
    // first class came from.
    private @Nullable String fault(Path archive, Path jar, String main) throws IOException {
        if (!Files.isRegularFile(archive)) {
            return "there is no " + archive;
        }
        Java.Ran ran =
                java.run(
                        List.of(
                                "-XX:+UseSerialGC",
                                "-Xshare:auto",
                                USE + archive,
                                "-Xlog:class+load=info:stdout",
                                "-cp",
                                jar.toString(),
                                main),
                        Map.of(),
                        20);
        boolean used =
                ran.text()
                        .lines()
                        .anyMatch(line -> line.contains(main + " ") && line.contains(FROM_ARCHIVE));
        return used ? null : archive + " does not fit this Java and " + jar.getFileName();
    }

    /** Deletes a folder with all that is in it, if it is there. */
    static void deleteAll(Path folder) throws IOException {
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
}
