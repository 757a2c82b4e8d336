package org.skewback.desk.issue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.checking.Checking;
import org.skewback.desk.checking.CheckingReader;
import org.skewback.desk.jupyter.KernelLauncher;
import org.skewback.desk.jupyter.LastingKernels;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.NotebookReader;
import org.skewback.desk.notebook.NotebookWriter;
import org.skewback.desk.render.PackageRenderer;

/**
 * Issues a package: runs every notebook from clean in its order, gathers the records, has the pages
 * made, writes the manifest, and moves the whole into place.
 *
 * <p>Whatever goes wrong before the last step, an earlier issue stays as it is.
 */
public final class PackageIssue {

    /** Environment variable that tells a kernel the local Maven repository. */
    public static final String LOCAL_REPOSITORY = "SKEWBACK_LOCAL_REPOSITORY";

    /** Environment variable that tells a kernel the folder with the records of earlier sheets. */
    public static final String RECORDS = "SKEWBACK_RECORDS";

    private final KernelLauncher kernels;
    private final List<PackageRenderer> renderers;
    private final Map<String, String> software;
    private final @Nullable Path localRepository;
    private final Progress progress;
    private final FileMoves moves;
    private final int atOnce;

    /**
     * Makes an issuer.
     *
     * @param kernels starts the kernels
     * @param renderers make the readable forms, none from what another has made
     * @param software versions to state, by name, in the order to print
     * @param localRepository local Maven repository for the kernels, or null for their own choice
     * @param progress hears how far it has come
     */
    public PackageIssue(
            KernelLauncher kernels,
            List<PackageRenderer> renderers,
            Map<String, String> software,
            @Nullable Path localRepository,
            Progress progress) {
        this(kernels, renderers, software, localRepository, progress, FileMoves.REAL, 1);
    }

    /**
     * Gives an issuer that runs notebooks side by side.
     *
     * @param number most notebooks at once, from 1
     * @return the issuer
     * @throws IllegalArgumentException when the number is below 1
     */
    public PackageIssue atOnce(int number) {
        if (number < 1) {
            throw new IllegalArgumentException(
                    "notebooks at once are " + number + "; allowed is 1 or more");
        }
        return new PackageIssue(
                kernels, renderers, software, localRepository, progress, moves, number);
    }

    /** Makes an issuer that moves folders in its own way. */
    PackageIssue(
            KernelLauncher kernels,
            List<PackageRenderer> renderers,
            Map<String, String> software,
            @Nullable Path localRepository,
            Progress progress,
            FileMoves moves) {
        this(kernels, renderers, software, localRepository, progress, moves, 1);
    }

    private PackageIssue(
            KernelLauncher kernels,
            List<PackageRenderer> renderers,
            Map<String, String> software,
            @Nullable Path localRepository,
            Progress progress,
            FileMoves moves,
            int atOnce) {
        this.atOnce = atOnce;
        this.kernels = kernels;
        this.renderers = List.copyOf(renderers);
        this.software = new LinkedHashMap<>(software);
        this.localRepository = localRepository;
        this.progress = progress;
        this.moves = moves;
    }

    /** A notebook that is about to run. */
    private record Sheet(String slug, String title, Path folder, Notebook notebook) {}

    /** What the run of all sheets gave. */
    private record Runs(
            List<RunDocument> documents,
            CheckCount checks,
            List<String> unpassed,
            Map<String, String> libraries) {}

    /**
     * Issues a package.
     *
     * @param folder the package folder, with {@value PackageReader#FILE}
     * @param to folder of issued packages; the issue goes to the folder in it that has the package's
     *     name
     * @return what was issued
     * @throws Problem when it was not issued
     */
    public Issued issue(Path folder, Path to) throws Problem {
        PackageInfo info = PackageReader.read(folder);
        Checking checking = CheckingReader.read(folder);
        // All notebooks are read before the first one runs, so that a slip shows at once.
        List<Sheet> sheets = new ArrayList<>();
        for (String entry : info.order()) {
            sheets.add(sheet(folder, entry));
        }
        Map<String, Sheet> numbered = new ConcurrentHashMap<>();
        for (Sheet sheet : sheets) {
            requireOwnNumber(SheetNeeds.number(sheet.notebook()), sheet, numbered);
        }
        try (IssuePlace place = IssuePlace.open(to.toAbsolutePath(), info.name(), moves)) {
            long start = System.nanoTime();
            Runs runs = run(sheets);
            Map<String, String> environment = new LinkedHashMap<>(software);
            environment.putAll(runs.libraries());
            RunPackage run = new RunPackage(info, runs.documents(), environment, checking);
            CheckedStatus.require(run);
            long made = System.nanoTime();
            progress.pagesStart(Duration.ofNanos(made - start));
            write(run, place.staging());
            progress.pagesEnd(Duration.ofNanos(System.nanoTime() - made));
            List<String> withoutSheet =
                    runs.documents().stream()
                            .filter(document -> document.record() == null)
                            .map(RunDocument::title)
                            .toList();
            return new Issued(
                    place.publish(),
                    sheets.size() - withoutSheet.size(),
                    runs.checks(),
                    withoutSheet,
                    runs.unpassed());
        }
    }

    private static Sheet sheet(Path folder, String entry) throws Problem {
        Path file = folder.resolve(entry);
        if (!Files.isRegularFile(file)) {
            throw new Problem(
                    "the notebook "
                            + entry
                            + ", which "
                            + PackageReader.FILE
                            + " names in its order, is missing in "
                            + folder);
        }
        Notebook notebook = NotebookReader.read(file);
        String slug = PackageReader.slug(entry);
        @Nullable Path parent = file.toAbsolutePath().getParent();
        return new Sheet(
                slug, Titles.of(notebook, slug), parent == null ? folder : parent, notebook);
    }

    private Runs run(List<Sheet> sheets) throws Problem {
        Path records;
        try {
            records = Files.createTempDirectory("skewback-records-");
        } catch (IOException e) {
            throw Problem.of("cannot make a folder for records", e);
        }
        try {
            return run(sheets, records);
        } finally {
            discard(records);
        }
    }

    private Runs run(List<Sheet> sheets, Path records) throws Problem {
        Map<String, String> environment = new LinkedHashMap<>();
        if (localRepository != null) {
            environment.put(LOCAL_REPOSITORY, localRepository.toAbsolutePath().toString());
        }
        SheetRunner.Ran[] runs = runAll(sheets, records, environment);
        List<RunDocument> documents = new ArrayList<>();
        CheckCount checks = CheckCount.NONE;
        List<String> unpassed = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            SheetRunner.Ran ran = runs[i];
            @Nullable SheetRecord record = record(sheet, ran);
            @Nullable String text = record == null ? null : record.text();
            if (record != null) {
                checks = checks.plus(record.checks());
                record.unpassed().forEach(line -> unpassed.add(sheet.title() + "  " + line));
            }
            documents.add(new RunDocument(sheet.slug(), sheet.title(), ran.notebook(), text));
        }
        return new Runs(documents, checks, unpassed, libraries(runs));
    }

    /** Versions by name, sorted; several where notebooks differ. */
    private static Map<String, String> libraries(SheetRunner.Ran[] runs) {
        Map<String, Set<String>> found = new TreeMap<>();
        for (SheetRunner.Ran run : runs) {
            run.libraries()
                    .forEach(
                            (name, version) ->
                                    found.computeIfAbsent(name, any -> new TreeSet<>())
                                            .add(version));
        }
        Map<String, String> versions = new TreeMap<>();
        found.forEach((name, several) -> versions.put(name, String.join(", ", several)));
        return versions;
    }

    /** A sheet is spoken of, and taken from, by its number. */
    private static void requireOwnNumber(String number, Sheet sheet, Map<String, Sheet> numbered)
            throws Problem {
        if (number.isEmpty()) {
            return;
        }
        @Nullable Sheet earlier = numbered.putIfAbsent(number, sheet);
        if (earlier != null && !earlier.equals(sheet)) {
            throw new Problem(
                    "the notebooks "
                            + earlier.slug()
                            + " and "
                            + sheet.slug()
                            + " both keep a sheet of number "
                            + number
                            + "; give each sheet of a package its own");
        }
    }

    /** Runs the notebooks, side by side where none needs another, and saves each one's record. */
    private SheetRunner.Ran[] runAll(
            List<Sheet> sheets, Path records, Map<String, String> environment) throws Problem {
        try (LastingKernels lasting = new LastingKernels(kernels, Set.of(RECORDS))) {
            return runAll(sheets, records, environment, new EndableKernels(lasting));
        }
    }

    private SheetRunner.Ran[] runAll(
            List<Sheet> sheets,
            Path records,
            Map<String, String> environment,
            EndableKernels endable)
            throws Problem {
        SheetRunner runner = new SheetRunner(endable, progress);
        SheetRunner.Ran[] ran = new SheetRunner.Ran[sheets.size()];
        List<ParallelRun.Work> work = new ArrayList<>();
        Map<String, Sheet> numbered = new ConcurrentHashMap<>();
        List<Set<Integer>> needs = SheetNeeds.of(sheets.stream().map(Sheet::notebook).toList());
        for (int i = 0; i < sheets.size(); i++) {
            int position = i;
            work.add(
                    () -> {
                        Sheet sheet = sheets.get(position);
                        Map<String, String> own = new LinkedHashMap<>(environment);
                        own.put(RECORDS, shelf(sheets, needs.get(position), position, records));
                        ran[position] =
                                runner.run(sheet.title(), sheet.notebook(), sheet.folder(), own);
                        @Nullable SheetRecord record = record(sheet, ran[position]);
                        if (record != null) {
                            requireOwnNumber(record.number(), sheet, numbered);
                            save(records.resolve(sheet.slug() + ".json"), record.text());
                        }
                    });
        }
        List<Integer> sizes =
                sheets.stream().map(sheet -> sheet.notebook().cells().size()).toList();
        new ParallelRun(atOnce).run(work, needs, sizes, endable::end);
        return ran;
    }

    /**
     * Makes the folder in which a notebook finds the records that it needs, and no others: what it
     * finds must not hang on which of two notebooks side by side was first.
     */
    private static String shelf(List<Sheet> sheets, Set<Integer> needs, int position, Path records)
            throws Problem {
        Path shelf = records.resolve(String.valueOf(position));
        try {
            Files.createDirectory(shelf);
            for (int need : needs) {
                String name = sheets.get(need).slug() + ".json";
                if (Files.exists(records.resolve(name))) {
                    Files.copy(records.resolve(name), shelf.resolve(name));
                }
            }
        } catch (IOException e) {
            throw Problem.of("cannot make a folder for records", e);
        }
        return shelf.toString();
    }

    private static @Nullable SheetRecord record(Sheet sheet, SheetRunner.Ran ran) throws Problem {
        try {
            return SheetRecord.of(ran.notebook(), ran.living());
        } catch (Problem e) {
            throw new Problem(sheet.title() + ": " + e.getMessage(), e);
        }
    }

    private void write(RunPackage run, Path staging) throws Problem {
        Path records = staging.resolve("records");
        Path notebooks = staging.resolve("notebooks");
        try {
            Files.createDirectory(records);
            Files.createDirectory(notebooks);
        } catch (IOException e) {
            throw Problem.of("cannot write the issue", e);
        }
        for (RunDocument document : run.documents()) {
            @Nullable String record = document.record();
            if (record != null) {
                save(records.resolve(document.slug() + ".json"), record);
            }
            save(
                    notebooks.resolve(document.slug() + ".ipynb"),
                    NotebookWriter.text(document.notebook()));
        }
        for (Map.Entry<String, byte[]> file : run.checking().files().entrySet()) {
            Path to = staging.resolve(file.getKey());
            try {
                Files.createDirectories(Objects.requireNonNull(to.getParent()));
                Files.write(to, file.getValue());
            } catch (IOException e) {
                throw Problem.of("cannot write " + to, e);
            }
        }
        List<ParallelRun.Work> forms = new ArrayList<>();
        for (PackageRenderer renderer : renderers) {
            forms.add(() -> render(renderer, run, staging));
        }
        new ParallelRun(atOnce).run(forms);
        try {
            save(
                    staging.resolve(Manifest.FILE),
                    Manifest.of(staging, run.info(), run.environment()));
        } catch (IOException e) {
            throw Problem.of("cannot write the manifest", e);
        }
    }

    private static void render(PackageRenderer renderer, RunPackage run, Path staging)
            throws Problem {
        try {
            renderer.render(run, staging);
        } catch (IOException e) {
            throw Problem.of("the pages could not be made", e);
        } catch (UncheckedIOException | IllegalArgumentException e) {
            throw new Problem("the pages could not be made: " + e.getMessage(), e);
        }
    }

    private static void save(Path file, String text) throws Problem {
        try {
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw Problem.of("cannot write " + file, e);
        }
    }

    private static void discard(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // A leftover in the system's folder for temporary files harms nobody.
        }
    }
}
