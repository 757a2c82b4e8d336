package org.skewback.desk.audit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.notebook.NotebookReader;
import org.skewback.quantity.CallsAhead;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Reevaluation;
import org.skewback.quantity.Reevaluation.Outcome;
import org.skewback.quantity.Source;
import org.skewback.sheet.Block;
import org.skewback.sheet.Entry;
import org.skewback.sheet.RecordReevaluation;
import org.skewback.sheet.RecordReevaluation.Contradiction;
import org.skewback.sheet.SheetRecord;

/**
 * Works every number of every record out again; runs no code of a notebook.
 *
 * <p>Routines are those of the library that came with this program. A number whose routine is of
 * another edition cannot be told; what rests on it is worked out from the recorded value.
 */
final class NumberAudit {

    private static final int MOST_TOLD = 200;
    private static final int HEX_SHOWN = 12;

    private final Holding holding;
    private final Findings findings;
    private final Stopwatch watch;
    private final Map<String, Kept> byNumber = new HashMap<>();

    NumberAudit(Holding holding, Findings findings, Stopwatch watch) {
        this.watch = watch;
        this.holding = holding;
        this.findings = findings;
    }

    /** A record that has been worked out, and the digest of its text. */
    private record Kept(SheetRecord record, String digest) {}

    /** What came of a record: its findings, and the record where it can be read. */
    private record Worked(KeptFindings findings, @Nullable Kept kept) {}

    /** A record as text. */
    private record Text(String path, String json, String digest) {}

    /** A record that was read, or that could not be, which is then said. */
    private record Read(
            String path,
            String digest,
            RecordReevaluation.@Nullable Begun begun,
            @Nullable RecordIndex index,
            String fault) {

        List<CallsAhead.Call> calls() {
            return begun == null ? List.of() : begun.calls().calls();
        }
    }

    /**
     * Records do not hang on each other until each is worked out, nor do calls of routines on the
     * arithmetic before them, so all that is done side by side: first what takes long, lest one core
     * be at work at the end and the others idle.
     */
    void audit(IssuedManifest manifest) {
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Text> texts = watch.time(Stage.FILES, () -> texts(manifest));
            List<Callable<Read>> reading = new ArrayList<>();
            texts.forEach(text -> reading.add(() -> watch.time(Stage.RECORDS, () -> read(text))));
            List<Read> all = new ArrayList<>();
            for (Future<Read> read : threads.invokeAll(reading)) {
                all.add(read.get());
            }
            for (CompletableFuture<Worked> worked : workedOut(all, threads)) {
                take(worked.get());
            }
            if (texts.isEmpty()) {
                findings.cannotTell(
                        Subject.NUMBERS,
                        "records",
                        "none is there, so there is nothing to work out");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the audit was interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a record could not be audited", e.getCause());
        } finally {
            threads.shutdownNow();
        }
        byNumber.values().forEach(this::auditTaken);
    }

    /**
     * Makes all calls, those first that take most in, as by and large they take longest; and works a
     * record out as soon as its own are made.
     */
    private List<CompletableFuture<Worked>> workedOut(List<Read> all, Executor threads) {
        Map<CallsAhead.Call, CompletableFuture<Void>> made = new HashMap<>();
        all.stream()
                .flatMap(read -> read.calls().stream())
                .sorted(Comparator.comparingInt(CallsAhead.Call::inputs).reversed())
                .forEach(
                        call ->
                                made.put(
                                        call,
                                        CompletableFuture.runAsync(
                                                () -> watch.run(Stage.ROUTINES, call), threads)));
        List<CompletableFuture<Worked>> worked = new ArrayList<>();
        for (Read read : all) {
            CompletableFuture<?>[] own =
                    read.calls().stream().map(made::get).toArray(CompletableFuture<?>[]::new);
            worked.add(
                    CompletableFuture.allOf(own)
                            .thenApplyAsync(
                                    done -> watch.time(Stage.ARITHMETIC, () -> workOut(read)),
                                    threads));
        }
        return worked;
    }

    private void take(Worked worked) {
        worked.findings().tell(findings);
        @Nullable Kept kept = worked.kept();
        if (kept != null) {
            byNumber.putIfAbsent(kept.record().number(), kept);
        }
    }

    private List<Text> texts(IssuedManifest manifest) {
        List<Text> texts = new ArrayList<>();
        for (String slug : manifest.slugs()) {
            @Nullable Text text = text(slug);
            if (text != null) {
                texts.add(text);
            }
        }
        return texts;
    }

    /** The text of a record that is the one with which its notebook closes; says where it is not. */
    private @Nullable Text text(String slug) {
        String path = "records/" + slug + ".json";
        try {
            @Nullable String closing = closing(slug);
            if (!holding.paths().contains(path)) {
                if (closing != null) {
                    findings.differs(
                            Subject.NUMBERS, path, "is missing, and its notebook kept a sheet");
                }
                return null;
            }
            byte[] bytes = holding.read(path, Holding.LONGEST);
            String json = new String(bytes, StandardCharsets.UTF_8);
            if (closing == null) {
                findings.differs(
                        Subject.NUMBERS, path, "is a record of which its notebook knows nothing");
            } else if (!closing.equals(json) && !Json.read(closing).equals(Json.read(json))) {
                findings.differs(
                        Subject.NUMBERS,
                        path,
                        "is not the record with which its notebook, as run, closes");
            }
            return new Text(path, json, Manifest.sha256(new ByteArrayInputStream(bytes)));
        } catch (IOException | Problem e) {
            findings.differs(Subject.NUMBERS, path, String.valueOf(e.getMessage()));
            return null;
        }
    }

    /** The record with which a notebook as run closes, or null where it keeps no sheet. */
    private @Nullable String closing(String slug) throws IOException, Problem {
        String path = "notebooks/" + slug + ".ipynb";
        if (!holding.paths().contains(path)) {
            return null;
        }
        org.skewback.desk.issue.SheetRecord record =
                org.skewback.desk.issue.SheetRecord.of(
                        NotebookReader.parse(path, holding.read(path, Holding.LONGEST)), List.of());
        return record == null ? null : record.text();
    }

    private static Read read(Text text) {
        try {
            RecordReevaluation.Begun begun = RecordReevaluation.begin(text.json());
            RecordIndex index = RecordIndex.of(begun.record(), text.json());
            return new Read(text.path(), text.digest(), begun, index, "");
        } catch (IllegalArgumentException e) {
            return new Read(text.path(), text.digest(), null, null, String.valueOf(e.getMessage()));
        }
    }

    private static Worked workOut(Read read) {
        KeptFindings findings = new KeptFindings();
        RecordReevaluation.@Nullable Begun begun = read.begun();
        @Nullable RecordIndex index = read.index();
        if (begun == null || index == null) {
            findings.differs(
                    Subject.NUMBERS, read.path(), "is no record that can be read: " + read.fault());
            return new Worked(findings, null);
        }
        RecordReevaluation again = begun.finish();
        Reevaluation nodes = again.nodes();
        findings.count(Tally.TAKEN, nodes.count(Outcome.TAKEN));
        findings.count(Tally.WORKED_OUT, nodes.count(Outcome.REPRODUCED));
        int told = 0;
        int untold = 0;
        for (Reevaluation.Finding finding : nodes.findings()) {
            boolean sound =
                    finding.outcome() == Outcome.TAKEN || finding.outcome() == Outcome.REPRODUCED;
            boolean isTold =
                    index.isNamed(finding.node())
                            || (isFirst(finding, nodes, index)
                                    && !isToldByName(finding, nodes, index));
            if (sound || !isTold) {
                continue;
            }
            if (told == MOST_TOLD) {
                untold++;
                continue;
            }
            told++;
            findings.add(told(finding, nodes, index));
        }
        for (Contradiction contradiction : again.contradictions()) {
            if (told == MOST_TOLD) {
                untold++;
                continue;
            }
            told++;
            findings.differs(
                    Subject.NUMBERS,
                    index.sheet(),
                    index.place(contradiction.place())
                            + ": recorded "
                            + quoted(contradiction.recorded())
                            + ", follows "
                            + quoted(contradiction.follows()));
        }
        if (untold > 0) {
            findings.differs(Subject.NUMBERS, index.sheet(), untold + " more places differ");
        }
        return new Worked(findings, new Kept(index.record(), read.digest()));
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "nothing" : "\"" + text + "\"";
    }

    /** Tells whether a number is the first of its line, so that it explains those after it. */
    private static boolean isFirst(
            Reevaluation.Finding finding, Reevaluation nodes, RecordIndex index) {
        return index.operands(finding.node()).stream()
                .map(operand -> nodes.findings().get(operand))
                .allMatch(
                        before ->
                                before.outcome() == Outcome.TAKEN
                                        || before.outcome() == Outcome.REPRODUCED
                                        || (isToldByName(before, nodes, index)
                                                && isFirst(before, nodes, index)));
    }

    /** Tells whether the number on the sheet that names this one differs too, and says it all. */
    private static boolean isToldByName(
            Reevaluation.Finding finding, Reevaluation nodes, RecordIndex index) {
        int by = index.namedBy(finding.node());
        if (by < 0) {
            return false;
        }
        Outcome outcome = nodes.findings().get(by).outcome();
        return outcome != Outcome.TAKEN && outcome != Outcome.REPRODUCED;
    }

    private static Finding told(
            Reevaluation.Finding finding, Reevaluation nodes, RecordIndex index) {
        boolean differs = finding.outcome() == Outcome.DIFFERS;
        List<String> shown = index.shown(finding.node(), finding.recorded(), finding.recomputed());
        String why =
                finding.reason().equals("another value")
                        ? isFirst(finding, nodes, index)
                                ? "does not follow from what it was worked out from"
                                : "rests on a number that comes out otherwise"
                        : finding.reason();
        return new Finding(
                differs ? Verdict.DIFFERS : Verdict.CANNOT_TELL,
                Subject.NUMBERS,
                index.sheet(),
                why,
                new Change(
                        index.sheet(),
                        index.name(finding.node()),
                        shown.get(0),
                        differs ? shown.get(1) : "",
                        differs ? finding.relativeChange() : Double.NaN,
                        index.givens(finding.node())));
    }

    /** Holds what a sheet took from another against the other's record. */
    private void auditTaken(Kept kept) {
        String sheet = (kept.record().number() + " " + kept.record().title()).strip();
        for (Entry entry : kept.record().entries()) {
            if (entry.block() instanceof Block.Given given) {
                Source source = given.quantity().source();
                if (source != null && source.kind() == Source.Kind.SHEET) {
                    auditTaken(sheet, given.quantity(), source);
                }
            }
        }
    }

    private void auditTaken(String sheet, Quantity taken, Source source) {
        String symbol = String.valueOf(taken.symbol());
        @Nullable Kept there = byNumber.get(source.reference());
        if (there == null) {
            findings.cannotTell(
                    Subject.NUMBERS,
                    sheet,
                    symbol
                            + " was taken from sheet "
                            + source.reference()
                            + ", which is not in this issue");
            return;
        }
        @Nullable Quantity original = quantity(there.record(), symbol);
        if (original == null || !original.dimension().equals(taken.dimension())) {
            findings.differs(
                    Subject.NUMBERS,
                    sheet,
                    symbol + " was taken from sheet " + source.reference() + ", which has none");
            return;
        }
        String unit = original.unit().symbol();
        double si = Quantity.of(original.in(unit), unit).si();
        if (si != taken.si()) {
            findings.add(
                    new Finding(
                            Verdict.DIFFERS,
                            Subject.NUMBERS,
                            sheet,
                            "was taken from sheet " + source.reference() + ", which has another",
                            new Change(
                                    sheet,
                                    "given, " + symbol,
                                    taken.toString(),
                                    original.toString(),
                                    (si - taken.si()) / Math.abs(taken.si()),
                                    List.of())));
        }
        String cited = source.place().replaceFirst("^.*, record ", "");
        if (!cited.equals(there.digest().substring(0, HEX_SHOWN))) {
            findings.differs(
                    Subject.NUMBERS,
                    sheet,
                    symbol
                            + " was taken from record "
                            + cited
                            + " of sheet "
                            + source.reference()
                            + "; here is record "
                            + there.digest().substring(0, HEX_SHOWN));
        }
    }

    private static @Nullable Quantity quantity(SheetRecord record, String symbol) {
        for (Entry entry : record.entries()) {
            @Nullable Quantity quantity =
                    entry.block() instanceof Block.Given given
                            ? given.quantity()
                            : entry.block() instanceof Block.Step step ? step.quantity() : null;
            if (quantity != null && symbol.equals(quantity.symbol())) {
                return quantity;
            }
        }
        return null;
    }
}
