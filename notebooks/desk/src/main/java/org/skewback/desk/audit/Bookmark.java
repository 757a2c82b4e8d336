package org.skewback.desk.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * A bookmark of a PDF (ISO 32000-1, 12.3.3).
 *
 * @param name what it says
 * @param page text of the page to which it leads, without white space; empty where it leads nowhere
 */
record Bookmark(String name, String page) {

    private static final int MOST = 100_000;

    /**
     * Reads the bookmarks of a document.
     *
     * @throws IOException when they cannot be read, or are more than a document would have
     */
    static List<Bookmark> of(PDDocument document, PrintedText text) throws IOException {
        List<Bookmark> bookmarks = new ArrayList<>();
        @Nullable PDDocumentOutline outline = document.getDocumentCatalog().getDocumentOutline();
        @Nullable PDOutlineItem item = outline == null ? null : outline.getFirstChild();
        // A chain that bites its tail has no end.
        for (; item != null; item = item.getNextSibling()) {
            if (bookmarks.size() == MOST) {
                throw new IOException("it has more bookmarks than a document would");
            }
            @Nullable PDPage page = item.findDestinationPage(document);
            bookmarks.add(
                    new Bookmark(
                            String.valueOf(item.getTitle()),
                            page == null ? "" : ExpectedText.bare(text.page(page.getCOSObject()))));
        }
        return bookmarks;
    }

    /** The names that the bookmarks of a page to be printed have. */
    static List<String> wanted(Document page) {
        List<String> names = new ArrayList<>();
        NodeList elements = page.getElementsByTagName("bookmark");
        for (int i = 0; i < elements.getLength(); i++) {
            names.add(((Element) elements.item(i)).getAttribute("name"));
        }
        return names;
    }

    /** Tells whether it leads to a page on which its name stands. */
    boolean leadsToItsName() {
        return page.contains(ExpectedText.bare(name));
    }
}
