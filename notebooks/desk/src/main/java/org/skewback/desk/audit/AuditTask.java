package org.skewback.desk.audit;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Json;
import org.skewback.desk.Problem;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;

/**
 * The part of an audit that touches what a stranger wrote: runs in a Java of its own with little
 * memory, and tells what it finds line by line, so that what it found before it was ended is kept.
 */
final class AuditTask {

    /** A part of the work. */
    enum Kind {
        /** Files and numbers. */
        NUMBERS,
        /** Pages, and all of the PDF but its figures and equations. */
        PAGES,
        /** The same, with the PDF made again. */
        REDRAW,
        /** Numbers and pages one after the other, to see which classes an audit needs. */
        REHEARSAL
    }

    /** What the last line says, by which its reader knows that nothing is missing. */
    static final String END = "end";

    private AuditTask() {}

    /**
     * Does a part of an audit.
     *
     * @param words the part, the issue, the version of the program, and keys such as {@code
     *     checked=MCow…}
     */
    public static void main(String[] words) {
        PrintStream out =
                new PrintStream(
                        new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        Lines lines = new Lines(out);
        Map<String, String> keys = new TreeMap<>();
        for (String word : List.of(words).subList(3, words.length)) {
            int equals = word.indexOf('=');
            keys.put(word.substring(0, equals), word.substring(equals + 1));
        }
        Kind kind = Kind.valueOf(words[0].toUpperCase(Locale.ROOT));
        List<Kind> parts =
                kind == Kind.REHEARSAL ? List.of(Kind.NUMBERS, Kind.PAGES) : List.of(kind);
        Stopwatch watch = new Stopwatch();
        parts.forEach(part -> run(part, Path.of(words[1]), words[2], keys, lines, watch));
        watch.tell(kind == Kind.NUMBERS ? Stage.NUMBERS_PROCESS : Stage.PAGES_PROCESS, lines);
        lines.put(JsonNodeFactory.instance.objectNode().put(END, true));
        out.flush();
        System.exit(0);
    }

    static void run(
            Kind kind,
            Path issue,
            String program,
            Map<String, String> keys,
            Findings findings,
            Stopwatch watch) {
        try (Holding holding = Holding.of(issue)) {
            boolean first = kind == Kind.NUMBERS;
            // Both parts read the manifest; one of them says what is wrong with it.
            @Nullable IssuedManifest manifest =
                    FileAudit.manifest(holding, first ? findings : new AuditReport.Gathering());
            if (manifest == null) {
                return;
            }
            if (first) {
                findings.identify(identity(manifest));
                Stopwatch.Share files = watch.begin(Stage.FILES);
                new FileAudit(holding, findings).audit(manifest);
                signatures(holding, manifest, keys, findings);
                files.end();
                new NumberAudit(holding, findings, watch).audit(manifest);
            } else {
                new PageAudit(holding, findings, kind == Kind.REDRAW, watch)
                        .audit(manifest, program);
            }
        } catch (IOException | Problem e) {
            if (kind == Kind.NUMBERS) {
                findings.cannotTell(
                        Subject.FILES, issue.toString(), "cannot be read: " + e.getMessage());
            }
        }
    }

    private static void signatures(
            Holding holding, IssuedManifest manifest, Map<String, String> keys, Findings findings)
            throws IOException {
        try {
            new SignatureAudit(holding, findings, keys).audit(manifest);
        } catch (Problem e) {
            findings.cannotTell(Subject.SIGNATURES, "checking", String.valueOf(e.getMessage()));
        }
    }

    private static Identity identity(IssuedManifest manifest) {
        return new Identity(
                manifest.info().title(),
                manifest.info().number(),
                manifest.info().revision(),
                manifest.info().status(),
                manifest.info().date().toString(),
                manifest.software().getOrDefault("Skewback", "not stated"));
    }

    /** Writes findings as lines of JSON. */
    private record Lines(PrintStream out) implements Findings {

        void put(ObjectNode node) {
            out.println(Json.line(node));
        }

        @Override
        public void add(Finding finding) {
            put(FindingJson.of(finding));
            out.flush();
        }

        @Override
        public void count(Tally tally, long number) {
            put(JsonNodeFactory.instance.objectNode().put(FindingJson.key(tally), number));
        }

        @Override
        public void spend(Effort effort) {
            put(EffortJson.of(effort));
        }

        @Override
        public void identify(Identity identity) {
            ObjectNode node = JsonNodeFactory.instance.objectNode();
            node.put("title", identity.title());
            node.put("number", identity.number());
            node.put("revision", identity.revision());
            node.put("status", identity.status());
            node.put("date", identity.date());
            node.put("program", identity.program());
            put(node);
        }
    }
}
