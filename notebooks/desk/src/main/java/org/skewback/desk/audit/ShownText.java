package org.skewback.desk.audit;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** What a page shows, part by part: the text in each block of a record, and all that is around. */
final class ShownText {

    /** The part of a page that is in no block. */
    static final String AROUND = "";

    private final Set<String> blocks;
    private final Map<String, StringBuilder> parts = new LinkedHashMap<>();

    private ShownText(Set<String> blocks) {
        this.blocks = blocks;
        parts.put(AROUND, new StringBuilder());
    }

    /**
     * Takes the text of a page apart.
     *
     * @param page a page
     * @param blocks identifiers of the elements that are blocks
     * @return the text of each block, white space as a browser shows it
     */
    static Map<String, String> of(Document page, Set<String> blocks) {
        ShownText shown = new ShownText(blocks);
        shown.take(page.getDocumentElement(), AROUND);
        Map<String, String> texts = new LinkedHashMap<>();
        shown.parts.forEach(
                (id, text) -> texts.put(id, text.toString().replaceAll("\\s+", " ").strip()));
        return texts;
    }

    private void take(Node node, String owner) {
        if (node.getNodeType() == Node.TEXT_NODE || node.getNodeType() == Node.CDATA_SECTION_NODE) {
            text(owner).append(node.getNodeValue());
            return;
        }
        String inside = owner;
        if (node instanceof Element element) {
            String id = element.getAttribute("id");
            inside = blocks.contains(id) ? id : owner;
            text(inside).append(' ');
            if (element.getTagName().equals("img")) {
                text(inside)
                        .append(element.getAttribute("alt"))
                        .append(" [picture ")
                        .append(sum(element.getAttribute("src")))
                        .append("] ");
            }
        }
        for (@Nullable Node child = node.getFirstChild();
                child != null;
                child = child.getNextSibling()) {
            take(child, inside);
        }
    }

    private StringBuilder text(String owner) {
        return parts.computeIfAbsent(owner, fresh -> new StringBuilder());
    }

    private static String sum(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }
}
