package org.skewback.desk.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.jspecify.annotations.Nullable;

/**
 * The text of a tagged PDF in its logical order (ISO 32000-1, 14.7 and 14.8): what is drawn, and of
 * figures their alternative text.
 */
final class PrintedText {

    private static final int DEEPEST = 200;
    private static final COSDictionary NOWHERE = new COSDictionary();
    private static final int MOST_ELEMENTS = 2_000_000;

    private final IdentityHashMap<COSDictionary, Map<Integer, String>> pages =
            new IdentityHashMap<>();
    private final List<String> runs = new ArrayList<>();

    /** The page of each run. */
    private final List<COSDictionary> drawnOn = new ArrayList<>();

    private final List<String> margins = new ArrayList<>();

    private int elements;

    private PrintedText() {}

    /**
     * Reads the text of a document.
     *
     * @return its text
     * @throws IOException when it cannot be read, or its structure is deeper than a document's
     */
    static PrintedText of(PDDocument document) throws IOException {
        PrintedText text = new PrintedText();
        MarkedText reader = new MarkedText();
        for (PDPage page : document.getPages()) {
            text.pages.put(page.getCOSObject(), reader.of(page));
            text.margins.add(reader.outside());
        }
        @Nullable PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
        if (root != null) {
            text.take(root, null, 0);
        }
        return text;
    }

    /** The pieces in order; empty where the document is not tagged. */
    List<String> pieces() {
        return runs;
    }

    /** What each page writes around its content, in order of the pages. */
    List<String> margins() {
        return margins;
    }

    /** The text of a page as it is drawn; empty where the document has no such page. */
    String page(COSDictionary page) {
        return String.join("", pages.getOrDefault(page, Map.of()).values());
    }

    private void take(PDStructureNode node, @Nullable COSDictionary above, int depth)
            throws IOException {
        if (depth > DEEPEST || ++elements > MOST_ELEMENTS) {
            throw new IOException("the structure of the PDF is deeper or larger than a document's");
        }
        @Nullable COSDictionary page = above;
        if (node instanceof PDStructureElement element) {
            @Nullable PDPage own = element.getPage();
            page = own == null ? above : own.getCOSObject();
            if ("Figure".equals(element.getStandardStructureType())) {
                tell(String.valueOf(element.getAlternateDescription()), page);
                return;
            }
        }
        boolean head =
                node instanceof PDStructureElement element
                        && "TH".equals(element.getStandardStructureType());
        int start = runs.size();
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureNode inner) {
                take(inner, page, depth + 1);
            } else if (kid instanceof Integer mcid) {
                add(page, mcid);
            } else if (kid instanceof PDMarkedContentReference reference) {
                @Nullable PDPage there = reference.getPage();
                add(there == null ? page : there.getCOSObject(), reference.getMCID());
            }
        }
        if (head && runs.size() > start) {
            once(start);
        }
    }

    /** A head of a table that goes on over pages is drawn on each of them, and told once if alike. */
    private void once(int start) {
        IdentityHashMap<COSDictionary, List<String>> drawn = new IdentityHashMap<>();
        List<String> first = new ArrayList<>();
        for (int i = start; i < runs.size(); i++) {
            List<String> here = drawn.computeIfAbsent(drawnOn.get(i), page -> new ArrayList<>());
            here.add(runs.get(i));
            if (i == start) {
                first = here;
            }
        }
        List<String> wanted = first;
        if (drawn.values().stream().allMatch(wanted::equals)) {
            runs.subList(start, runs.size()).clear();
            drawnOn.subList(start, drawnOn.size()).clear();
            COSDictionary page = drawn.keySet().iterator().next();
            wanted.forEach(run -> tell(run, page));
        }
    }

    private void tell(String run, @Nullable COSDictionary page) {
        runs.add(run);
        drawnOn.add(page == null ? NOWHERE : page);
    }

    private void add(@Nullable COSDictionary page, int mcid) {
        tell(pages.getOrDefault(page, Map.of()).getOrDefault(mcid, ""), page);
    }
}
