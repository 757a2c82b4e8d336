package org.skewback.desk.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The text that a page leaves on paper, in order, without white space. */
final class ExpectedText {

    /** Stands where the PDF shows the number of a page. */
    static final char PAGE_NUMBER = '\uE000';

    /**
     * A piece of the text.
     *
     * @param owner identifier of the block that it belongs to; empty where it is in none
     * @param text its characters without white space
     */
    record Piece(String owner, String text) {}

    private final Set<String> blocks;
    private final List<Piece> pieces = new ArrayList<>();

    private static final int MICRO = 0xB5;
    private static final int MU = 0x3BC;

    private ExpectedText(Set<String> blocks) {
        this.blocks = blocks;
    }

    /** Takes the body of a page apart. */
    static List<Piece> of(Document page, Set<String> blocks) {
        ExpectedText text = new ExpectedText(blocks);
        NodeList bodies = page.getElementsByTagName("body");
        for (int i = 0; i < bodies.getLength(); i++) {
            text.take(bodies.item(i), "");
        }
        return text.pieces;
    }

    /**
     * Leaves out white space of every kind, and marks that no font shows. A font has one sign for the micro
     * sign and the Greek letter, and a PDF tells only one of them.
     */
    static String bare(String text) {
        StringBuilder bare = new StringBuilder(text.length());
        text.codePoints()
                .filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c))
                .map(c -> c == MICRO ? MU : c)
                .forEach(bare::appendCodePoint);
        return bare.toString();
    }

    private void take(Node node, String owner) {
        if (node.getNodeType() == Node.TEXT_NODE || node.getNodeType() == Node.CDATA_SECTION_NODE) {
            add(owner, node.getNodeValue());
            return;
        }
        String inside = owner;
        if (node instanceof Element element) {
            String id = element.getAttribute("id");
            inside = blocks.contains(id) ? id : owner;
            if (isNumbered(element)) {
                add(inside, ordinal(element) + ".");
            }
            if (element.getTagName().equals("img")) {
                add(inside, element.getAttribute("alt"));
            } else if (element.getAttribute("class").equals("page")
                    && element.getTagName().equals("a")) {
                pieces.add(new Piece(inside, String.valueOf(PAGE_NUMBER)));
            }
        }
        // The engine tags the caption of a table behind its rows.
        for (boolean captions : new boolean[] {false, true}) {
            for (@Nullable Node child = node.getFirstChild();
                    child != null;
                    child = child.getNextSibling()) {
                if (child.getNodeName().equals("caption") == captions) {
                    take(child, inside);
                }
            }
        }
    }

    private void add(String owner, String text) {
        String bare = bare(text);
        if (!bare.isEmpty()) {
            pieces.add(new Piece(owner, bare));
        }
    }

    private static boolean isNumbered(Element element) {
        return element.getTagName().equals("li")
                && element.getParentNode().getNodeName().equals("ol");
    }

    /** The number that the engine sets before an item of a list. */
    private static int ordinal(Element item) {
        String start = ((Element) item.getParentNode()).getAttribute("start");
        int ordinal = start.matches("[0-9]{1,9}") ? Integer.parseInt(start) : 1;
        for (@Nullable Node before = item.getPreviousSibling();
                before != null;
                before = before.getPreviousSibling()) {
            ordinal += before.getNodeName().equals("li") ? 1 : 0;
        }
        return ordinal;
    }
}
