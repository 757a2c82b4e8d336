package org.skewback.desk.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.holding.Holding;
import org.skewback.desk.issue.IssuedManifest;
import org.skewback.desk.issue.RunPackage;
import org.skewback.desk.render.HtmlPackage;
import org.skewback.desk.render.Markup;
import org.skewback.desk.render.ReadPackage;
import org.skewback.desk.render.Xml;
import org.skewback.sheet.Entry;
import org.skewback.sheet.SheetRecord;
import org.w3c.dom.Document;

/**
 * Holds what the pages show against what is recorded, by making the pages again.
 *
 * <p>A page that was made by this version of the program is the same to the last byte, its style and
 * its figures included. Another version may word and lay out otherwise; then numbers are compared,
 * block by block.
 */
final class PageAudit {

    private static final String DOCTYPE = "<!DOCTYPE html>\n";
    private static final int MOST_TOLD = 100;

    private final Holding holding;
    private final Findings findings;
    private final boolean redraw;
    private final Stopwatch watch;

    /** Whether the issue was made by this version of the program. */
    private boolean sameProgram;

    private final Map<String, Map<String, String>> names = new HashMap<>();
    private int told;

    PageAudit(Holding holding, Findings findings, boolean redraw, Stopwatch watch) {
        this.watch = watch;
        this.holding = holding;
        this.findings = findings;
        this.redraw = redraw;
    }

    void audit(IssuedManifest manifest, String program) {
        try {
            sameProgram = program.equals(manifest.software().get("Skewback"));
            PrintAudit print = new PrintAudit(holding, findings, sameProgram, watch);
            print.begin();
            Stopwatch.Share reading = watch.begin(Stage.RECORDS);
            RunPackage run = RecordedPackage.of(manifest, holding);
            ReadPackage whole = read(run);
            reading.end();
            if (!holding.isPrinted()) {
                Stopwatch.Share screen = watch.begin(Stage.SCREEN);
                auditScreen(whole);
                screen.end();
            }
            Stopwatch.Share printed = watch.begin(Stage.PRINT);
            print.audit(run, whole, names);
            if (redraw) {
                print.redraw(run);
            }
            printed.end();
        } catch (IOException | Problem | IllegalArgumentException e) {
            findings.cannotTell(
                    Subject.PAGES,
                    "pages",
                    "cannot be held against the records: " + e.getMessage());
        }
    }

    /** Holds the pages for the screen alone against the records. */
    void auditScreen(IssuedManifest manifest, String program) throws IOException, Problem {
        sameProgram = program.equals(manifest.software().get("Skewback"));
        auditScreen(read(RecordedPackage.of(manifest, holding)));
    }

    private ReadPackage read(RunPackage run) {
        ReadPackage whole = ReadPackage.of(run);
        whole.records().forEach((slug, record) -> names.put(slug, names(record)));
        return whole;
    }

    /** The names of a sheet's blocks by the identifiers of their elements. */
    private static Map<String, String> names(SheetRecord record) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Entry entry : record.entries()) {
            String name = record.numbering().name(entry);
            names.put(
                    Markup.identifier(entry.id()),
                    name.isEmpty() ? RecordNames.kind(entry.block()) : name);
        }
        return names;
    }

    private void auditScreen(ReadPackage whole) throws IOException, Problem {
        Map<String, String> pages = new HtmlPackage().pages(whole);
        for (Map.Entry<String, String> page : pages.entrySet()) {
            String path = page.getKey();
            if (!holding.paths().contains(path)) {
                // The audit of the files says so.
                continue;
            }
            String found = new String(holding.read(path, Holding.LONGEST), StandardCharsets.UTF_8);
            if (found.equals(page.getValue())) {
                findings.count(Tally.SHOWN, 1);
            } else {
                compare(path, page.getValue(), found);
            }
        }
        Set<String> unknown = new HashSet<>(holding.paths());
        unknown.removeIf(path -> !path.endsWith(".html") || pages.containsKey(path));
        unknown.stream()
                .sorted()
                .forEach(
                        path ->
                                findings.differs(
                                        Subject.PAGES, path, "is a page that no record gives"));
    }

    private void compare(String path, String expected, String found) {
        @Nullable Document first = parsed(expected);
        @Nullable Document second = parsed(found);
        if (first == null || second == null) {
            findings.differs(Subject.PAGES, path, "is no page that this program reads");
            return;
        }
        String slug = path.replaceFirst("^sheets/", "").replaceFirst("\\.html$", "");
        Map<String, String> named = names.getOrDefault(slug, Map.of());
        Map<String, String> wanted = ShownText.of(first, named.keySet());
        Map<String, String> shown = ShownText.of(second, named.keySet());
        int before = told;
        for (Map.Entry<String, String> part : wanted.entrySet()) {
            String there = shown.getOrDefault(part.getKey(), "");
            if (!there.equals(part.getValue())) {
                String name =
                        part.getKey().equals(ShownText.AROUND)
                                ? "around the blocks"
                                : named.getOrDefault(part.getKey(), part.getKey());
                tell(path, name, part.getValue(), there);
            }
        }
        if (told > before) {
            return;
        }
        if (sameProgram) {
            findings.differs(
                    Subject.PAGES,
                    path,
                    "shows the recorded text, but its markup is not what this program makes of it");
        } else {
            findings.cannotTell(
                    Subject.PAGES,
                    path,
                    "shows the recorded numbers; its markup is of another version of the program,"
                            + " so what style and figures do cannot be told");
        }
    }

    private void tell(String path, String name, String expected, String found) {
        if (told++ >= MOST_TOLD) {
            return;
        }
        String words = name + " " + TextDifference.of(expected, found).inWords();
        boolean wording = !sameProgram && TextDifference.isOfWordsOnly(expected, found);
        if (wording) {
            findings.cannotTell(
                    Subject.PAGES, path, words + "; it was made by another version of the program");
        } else {
            findings.differs(Subject.PAGES, path, words);
        }
    }

    private static @Nullable Document parsed(String page) {
        return page.startsWith(DOCTYPE) ? Xml.parse(page.substring(DOCTYPE.length())) : null;
    }
}
