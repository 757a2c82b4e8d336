package org.skewback.desk.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.compare.ShownQuantities;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.desk.issue.PackageIssue;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;
import org.skewback.desk.notebook.NotebookReader;
import org.skewback.quantity.Graph;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.sheet.Entry;
import org.skewback.sheet.RecordReader;
import org.skewback.sheet.SheetRecord;

/**
 * Runs the notebooks of an issue again in fresh kernels and compares quantity by quantity.
 *
 * <p>This runs somebody's program, so it is done only when asked for.
 */
public final class RerunAudit {

    private static final int MOST_TOLD = 200;
    private static final int DIGITS = 6;
    private static final int ALL_DIGITS = 17;
    private static final int MOST_GIVENS = 40;

    private final PackageIssue issuer;
    private final double tolerance;

    /**
     * Makes one.
     *
     * @param issuer runs notebooks; makes no pages
     * @param tolerance largest relative change that counts as the same
     */
    public RerunAudit(PackageIssue issuer, double tolerance) {
        this.issuer = issuer;
        this.tolerance = tolerance;
    }

    /**
     * Runs an issue's notebooks again.
     *
     * @param issue an issued folder, or the PDF of one
     * @param source the package folder, where the notebooks find their data; null where they need
     *     none
     * @param report what the audit has found so far; where it did not come to its end, nothing runs
     * @return the report with what the rerun found
     * @throws Problem when the issue cannot be read
     */
    public AuditReport audit(Path issue, @Nullable Path source, AuditReport report) throws Problem {
        AuditReport.Gathering gathering = new AuditReport.Gathering(report);
        if (!report.isWhole()) {
            // What did not fit into the bounds of the audit would be read without any here.
            gathering.cannotTell(
                    Subject.RERUN,
                    "notebooks",
                    "were not run again, since the audit did not come to its end");
            return gathering.report(report.what(), report.program());
        }
        try (Holding holding = Holding.of(issue)) {
            @Nullable IssuedManifest manifest =
                    FileAudit.manifest(holding, new AuditReport.Gathering());
            if (manifest != null) {
                Path work = Files.createTempDirectory("skewback-rerun-");
                try {
                    rerun(holding, manifest, source, work, gathering);
                } finally {
                    discard(work);
                }
            }
        } catch (IOException e) {
            throw Problem.of("cannot run the notebooks of " + issue + " again", e);
        }
        return gathering.report(report.what(), report.program());
    }

    private void rerun(
            Holding holding,
            IssuedManifest manifest,
            @Nullable Path source,
            Path work,
            Findings findings)
            throws IOException, Problem {
        Path folder = source;
        if (folder == null) {
            folder = Files.createDirectory(work.resolve("package"));
            unpack(holding, manifest, folder);
        } else if (!sameSources(holding, manifest, folder, findings)) {
            return;
        }
        Path again;
        try {
            again = issuer.issue(folder, work.resolve("issued")).folder();
        } catch (Problem e) {
            findings.cannotTell(
                    Subject.RERUN,
                    "notebooks",
                    "do not run here to their end: "
                            + e.getMessage()
                            + (source == null
                                    ? "; where they need data, name the package folder with"
                                            + " --package"
                                    : ""));
            return;
        }
        Told told = new Told(findings);
        for (String slug : manifest.slugs()) {
            String path = "records/" + slug + ".json";
            if (holding.paths().contains(path)) {
                SheetRecord recorded = record(holding.read(path, Holding.LONGEST));
                Path there = again.resolve(path);
                if (Files.exists(there)) {
                    compare(recorded, record(Files.readAllBytes(there)), told);
                } else {
                    findings.differs(Subject.RERUN, path, "does not come out again");
                }
            }
        }
        findings.count(Tally.RERUN, told.same);
    }

    private static SheetRecord record(byte[] json) throws Problem {
        try {
            return RecordReader.read(new String(json, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException e) {
            throw new Problem("a record cannot be read: " + e.getMessage(), e);
        }
    }

    /** Writes the issued notebooks as a package of their own. */
    private static void unpack(Holding holding, IssuedManifest manifest, Path folder)
            throws IOException, Problem {
        PackageInfo info = manifest.info();
        List<String> order = new ArrayList<>();
        for (String slug : manifest.slugs()) {
            String name = slug + ".ipynb";
            order.add("\"" + name + "\"");
            Files.write(folder.resolve(name), holding.read("notebooks/" + name, Holding.LONGEST));
        }
        Files.writeString(
                folder.resolve("package.toml"),
                "name = \"rerun\"\ntitle = \"rerun\"\nnumber = \"rerun\"\nrevision = \"rerun\"\n"
                        + "status = \"preliminary\"\ndate = "
                        + info.date()
                        + "\nprepared-by = \"rerun\"\nchecked-by = \"\"\nsummary = \"rerun\"\n"
                        + "cautions = [\"rerun\"]\norder = ["
                        + String.join(", ", order)
                        + "]\n");
    }

    /** Tells whether a package folder holds the notebooks that were issued. */
    private static boolean sameSources(
            Holding holding, IssuedManifest manifest, Path folder, Findings findings)
            throws IOException, Problem {
        boolean same = true;
        for (String entry : manifest.info().order()) {
            String slug = entry.substring(entry.lastIndexOf('/') + 1);
            String path = "notebooks/" + slug;
            Notebook issued = NotebookReader.parse(path, holding.read(path, Holding.LONGEST));
            Path file = folder.resolve(entry);
            boolean here = IssuedManifest.isInside(entry) && Files.isRegularFile(file);
            if (!here || !sources(NotebookReader.read(file)).equals(sources(issued))) {
                findings.cannotTell(
                        Subject.RERUN,
                        entry,
                        "in " + folder + " is not the notebook that was issued");
                same = false;
            }
        }
        return same;
    }

    private static List<String> sources(Notebook notebook) {
        return notebook.cells().stream().map(Cell::source).toList();
    }

    /** Counts what came out the same, and says no more than can be read of what did not. */
    private static final class Told {
        private final Findings findings;
        private long same;
        private int told;

        Told(Findings findings) {
            this.findings = findings;
        }

        void differs(Finding finding) {
            if (told++ < MOST_TOLD) {
                findings.add(finding);
            }
        }
    }

    private void compare(SheetRecord recorded, SheetRecord again, Told told) {
        String sheet = (recorded.number() + " " + recorded.title()).strip();
        compare(sheet, quantities(recorded), quantities(again), told);
        Map<String, Entry> first = ShownQuantities.checks(recorded);
        Map<String, Entry> second = ShownQuantities.checks(again);
        for (Map.Entry<String, Entry> check : first.entrySet()) {
            @Nullable Entry now = second.get(check.getKey());
            if (now == null || now.verdict() != check.getValue().verdict()) {
                told.differs(
                        Finding.of(
                                Verdict.DIFFERS,
                                Subject.RERUN,
                                sheet,
                                recorded.numbering().name(check.getValue())
                                        + ", "
                                        + check.getKey()
                                        + ": was "
                                        + check.getValue().verdict().inWords()
                                        + ", is "
                                        + (now == null ? "not there" : now.verdict().inWords())));
            }
        }
    }

    private static Map<String, Quantity> quantities(SheetRecord record) {
        Map<String, Quantity> all = new LinkedHashMap<>(ShownQuantities.givens(record));
        all.putAll(ShownQuantities.results(record));
        return all;
    }

    private void compare(
            String sheet, Map<String, Quantity> first, Map<String, Quantity> second, Told told) {
        Set<String> names = new LinkedHashSet<>(first.keySet());
        names.addAll(second.keySet());
        for (String name : names) {
            @Nullable Quantity a = first.get(name);
            @Nullable Quantity b = second.get(name);
            if (a != null && b != null && isSame(a, b)) {
                told.same++;
                continue;
            }
            String before = a == null ? "nothing" : Numerals.withUnit(a, DIGITS);
            String now = b == null ? "nothing" : Numerals.withUnit(b, DIGITS);
            if (a != null && b != null && before.equals(now)) {
                before = Numerals.withUnit(a, ALL_DIGITS);
                now = Numerals.withUnit(b, ALL_DIGITS);
            }
            double relative =
                    a == null || b == null ? Double.NaN : (b.si() - a.si()) / Math.abs(a.si());
            told.differs(
                    new Finding(
                            Verdict.DIFFERS,
                            Subject.RERUN,
                            sheet,
                            "comes out otherwise when the notebook runs again",
                            new Change(
                                    sheet,
                                    name,
                                    before,
                                    now,
                                    relative,
                                    givens(a == null ? b : a))));
        }
    }

    private boolean isSame(Quantity a, Quantity b) {
        return a.dimension().equals(b.dimension())
                && Math.abs(b.si() - a.si())
                        <= tolerance * Math.max(Math.abs(a.si()), Math.abs(b.si()));
    }

    private static List<String> givens(@Nullable Quantity quantity) {
        if (quantity == null) {
            return List.of();
        }
        return Graph.ordered(List.of(quantity)).stream()
                .filter(node -> node.isLeaf() && node.symbol() != null)
                .limit(MOST_GIVENS)
                .map(
                        node ->
                                node.symbol()
                                        + " = "
                                        + Numerals.withUnit(node)
                                        + " ("
                                        + (node.source() == null ? "no source" : node.source())
                                        + ")")
                .toList();
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
