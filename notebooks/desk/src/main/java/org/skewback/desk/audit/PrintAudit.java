package org.skewback.desk.audit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.holding.PdfHolding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.issue.RunPackage;
import org.skewback.desk.render.PdfPackage;
import org.skewback.desk.render.ReadPackage;
import org.w3c.dom.Document;

/** Holds the text of the PDF against what is recorded. */
final class PrintAudit {

    private static final String PLACE = "package.pdf";
    private static final int MOST_TOLD = 100;

    private final Holding holding;
    private final Findings findings;
    private final boolean sameProgram;
    private final Stopwatch watch;
    private final FutureTask<Read> reading = new FutureTask<>(this::read);

    PrintAudit(Holding holding, Findings findings, boolean sameProgram, Stopwatch watch) {
        this.watch = watch;
        this.holding = holding;
        this.findings = findings;
        this.sameProgram = sameProgram;
    }

    /**
     * What a PDF holds.
     *
     * @param files what is embedded in it, by path; none where the PDF itself is audited
     * @param text its text in logical order, in pieces
     * @param bookmarks its bookmarks, in order
     * @param margins what each page writes around its content
     */
    private record Read(
            Map<String, byte[]> files,
            List<String> text,
            List<Bookmark> bookmarks,
            List<String> margins) {}

    /** Begins to read the PDF beside whatever else is done: that takes as long as all the rest. */
    void begin() {
        new Thread(reading, "audit-pdf").start();
    }

    private Read read() throws IOException, Problem {
        @Nullable Path file = holding.pdf();
        Map<String, byte[]> files = new TreeMap<>();
        if (file == null) {
            return new Read(files, List.of(), List.of(), List.of());
        }
        Stopwatch.Share share = watch.begin(Stage.PDF);
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            if (!holding.isPrinted()) {
                try (PdfHolding embedded = new PdfHolding(file, pdf)) {
                    for (String path : embedded.paths()) {
                        files.put(path, embedded.read(path, Holding.LONGEST));
                    }
                }
            }
            PrintedText text = PrintedText.of(pdf);
            Read read = new Read(files, text.pieces(), Bookmark.of(pdf, text), text.margins());
            share.end();
            return read;
        }
    }

    private Read whatWasRead() throws IOException, Problem {
        try {
            return reading.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Problem problem) {
                throw problem;
            }
            throw new IOException(PLACE + " cannot be read: " + e.getCause(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("the reading of " + PLACE + " was interrupted", e);
        }
    }

    void audit(RunPackage run, ReadPackage whole, Map<String, Map<String, String>> names)
            throws IOException, Problem {
        if (holding.pdf() == null) {
            return;
        }
        Map<String, String> titles = new HashMap<>();
        for (RunDocument document : run.documents()) {
            names.getOrDefault(document.slug(), Map.of())
                    .forEach(
                            (id, name) ->
                                    titles.put(
                                            PdfPackage.identifier(document.slug(), id),
                                            document.title() + ", " + name));
        }
        Document page = PdfPackage.words(whole, false);
        List<ExpectedText.Piece> expected = ExpectedText.of(page, titles.keySet());
        Read read = whatWasRead();
        if (!holding.isPrinted()) {
            auditEmbedded(run, read.files());
        }
        List<String> shown = read.text();
        if (shown.isEmpty()) {
            findings.differs(Subject.PAGES, PLACE, "is not tagged, as every issue is");
            return;
        }
        boolean marked = auditBookmarks(Bookmark.wanted(page), read.bookmarks());
        boolean headed = auditMargins(run.info(), read.margins());
        String text = String.join("", shown);
        List<TextMatch.Mismatch> mismatches = TextMatch.of(expected, text);
        if (!mismatches.isEmpty()) {
            // Only now does it matter whether a picture could not be printed, which takes long to
            // try.
            Document tried = PdfPackage.words(whole, true);
            mismatches = TextMatch.of(ExpectedText.of(tried, titles.keySet()), text);
        }
        for (TextMatch.Mismatch mismatch :
                mismatches.subList(0, Math.min(MOST_TOLD, mismatches.size()))) {
            String name = titles.getOrDefault(mismatch.owner(), "around the blocks");
            String words =
                    name + " " + TextDifference.of(mismatch.expected(), mismatch.found()).inWords();
            if (TextDifference.isOfWordsOnly(mismatch.expected(), mismatch.found())) {
                tellOfWords(words);
            } else {
                findings.differs(Subject.PAGES, PLACE, words);
            }
        }
        if (mismatches.isEmpty() && marked && headed) {
            findings.count(Tally.SHOWN, 1);
        }
    }

    /** Tells whether each page says at its head and foot of which issue it is, and which page. */
    private boolean auditMargins(PackageInfo info, List<String> margins) {
        String issue = PdfPackage.identity(info) + info.title() + info.date();
        int told = 0;
        for (int i = 0; i < margins.size() && told < MOST_TOLD; i++) {
            String wanted = issue + "page " + (i + 1) + " of " + margins.size();
            if (unspaced(wanted).equals(unspaced(margins.get(i)))) {
                continue;
            }
            told++;
            String words =
                    "page "
                            + (i + 1)
                            + " has the head and foot \""
                            + margins.get(i)
                            + "\", the manifest gives \""
                            + wanted
                            + "\"";
            tellOfWords(words);
        }
        return told == 0;
    }

    /** Tells of words that are others than this version would write, which another may have written. */
    private void tellOfWords(String words) {
        if (sameProgram) {
            findings.differs(Subject.PAGES, PLACE, words);
        } else {
            findings.cannotTell(
                    Subject.PAGES,
                    PLACE,
                    words + "; it was made by another version of the program");
        }
    }

    /** Lines break anywhere in a margin, and fonts have letters joined that are two in the text. */
    private static String unspaced(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).replaceAll("\\s", "");
    }

    /** Tells whether the bookmarks name the parts, in order, and lead to them. */
    private boolean auditBookmarks(List<String> wanted, List<Bookmark> bookmarks) {
        List<String> names = bookmarks.stream().map(Bookmark::name).toList();
        if (!names.equals(wanted)) {
            tellOfWords("has the bookmarks " + names + ", the records give " + wanted);
            return false;
        }
        boolean lead = true;
        for (Bookmark bookmark : bookmarks) {
            if (!bookmark.leadsToItsName()) {
                lead = false;
                findings.differs(
                        Subject.PAGES,
                        PLACE,
                        "has a bookmark \""
                                + bookmark.name()
                                + "\" that leads to a page on which this does not stand");
            }
        }
        return lead;
    }

    /** The PDF holds the same records and notebooks as the folder, and no others. */
    private void auditEmbedded(RunPackage run, Map<String, byte[]> embedded)
            throws IOException, Problem {
        Map<String, byte[]> wanted = content(run);
        embedded.forEach(
                (path, bytes) -> {
                    if (!Arrays.equals(wanted.remove(path), bytes)) {
                        findings.differs(
                                Subject.PAGES, PLACE, "holds another " + path + " than the folder");
                    }
                });
        wanted.keySet()
                .forEach(path -> findings.differs(Subject.PAGES, PLACE, "does not hold " + path));
    }

    /** Makes the PDF again and compares it to the last byte, figures and equations included. */
    void redraw(RunPackage run) throws IOException, Problem {
        @Nullable Path file = holding.pdf();
        if (file == null) {
            return;
        }
        if (!sameProgram) {
            findings.cannotTell(
                    Subject.PAGES,
                    PLACE,
                    "was made by another version of the program, so it cannot be made again here");
            return;
        }
        byte[] again = new PdfPackage().bytes(run, content(run));
        if (Arrays.equals(again, Files.readAllBytes(file))) {
            findings.count(Tally.SHOWN, 1);
            return;
        }
        String here = Runtime.version().toString();
        if (String.valueOf(run.environment().get("Java")).startsWith(here + " ")) {
            findings.differs(Subject.PAGES, PLACE, "is not what this program makes of the records");
        } else {
            findings.cannotTell(
                    Subject.PAGES,
                    PLACE,
                    "is not to the last byte what comes out here; it was made on Java "
                            + run.environment().get("Java")
                            + ", and here is "
                            + here);
        }
    }

    private Map<String, byte[]> content(RunPackage run) throws IOException, Problem {
        Map<String, byte[]> content = new TreeMap<>();
        List<IssuedManifest.File> files = new ArrayList<>();
        for (String path : holding.paths()) {
            if (Manifest.isContent(path)) {
                byte[] bytes = holding.read(path, Holding.LONGEST);
                content.put(path, bytes);
                files.add(
                        new IssuedManifest.File(
                                path,
                                bytes.length,
                                Manifest.sha256(new ByteArrayInputStream(bytes))));
            }
        }
        content.put(
                Manifest.FILE,
                Manifest.text(files, run.info(), new LinkedHashMap<>(run.environment()))
                        .getBytes(StandardCharsets.UTF_8));
        return content;
    }
}
