package org.skewback.desk.audit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.holding.PdfHolding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.Manifest;
import org.skewback.desk.issue.RunDocument;
import org.skewback.desk.issue.RunPackage;
import org.skewback.desk.render.PdfPackage;

/** Holds the text of the PDF against what is recorded. */
final class PrintAudit {

    private static final String PLACE = "package.pdf";
    private static final int MOST_TOLD = 100;

    private final Holding holding;
    private final Findings findings;
    private final boolean sameProgram;

    PrintAudit(Holding holding, Findings findings, boolean sameProgram) {
        this.holding = holding;
        this.findings = findings;
        this.sameProgram = sameProgram;
    }

    void audit(RunPackage run, Map<String, Map<String, String>> names) throws IOException, Problem {
        @Nullable Path file = holding.pdf();
        if (file == null) {
            return;
        }
        if (!holding.isPrinted()) {
            auditEmbedded(run, file);
        }
        List<String> shown;
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            shown = PrintedText.of(pdf);
        }
        if (shown.isEmpty()) {
            findings.differs(Subject.PAGES, PLACE, "is not tagged, as every issue is");
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
        List<ExpectedText.Piece> expected = ExpectedText.of(PdfPackage.page(run), titles.keySet());
        List<TextMatch.Mismatch> mismatches = TextMatch.of(expected, String.join("", shown));
        for (TextMatch.Mismatch mismatch :
                mismatches.subList(0, Math.min(MOST_TOLD, mismatches.size()))) {
            String name = titles.getOrDefault(mismatch.owner(), "around the blocks");
            String words =
                    name + " " + TextDifference.of(mismatch.expected(), mismatch.found()).inWords();
            if (!sameProgram
                    && TextDifference.isOfWordsOnly(mismatch.expected(), mismatch.found())) {
                findings.cannotTell(
                        Subject.PAGES,
                        PLACE,
                        words + "; it was made by another version of the program");
            } else {
                findings.differs(Subject.PAGES, PLACE, words);
            }
        }
        if (mismatches.isEmpty()) {
            findings.count(Tally.SHOWN, 1);
        }
    }

    /** The PDF holds the same records and notebooks as the folder, and no others. */
    private void auditEmbedded(RunPackage run, Path file) throws IOException, Problem {
        Map<String, byte[]> wanted = content(run);
        try (PdfHolding embedded = new PdfHolding(file)) {
            for (String path : embedded.paths()) {
                byte @Nullable [] here = wanted.remove(path);
                if (here == null || !Arrays.equals(here, embedded.read(path, Holding.LONGEST))) {
                    findings.differs(
                            Subject.PAGES, PLACE, "holds another " + path + " than the folder");
                }
            }
            wanted.keySet()
                    .forEach(
                            path ->
                                    findings.differs(
                                            Subject.PAGES, PLACE, "does not hold " + path));
        }
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
