package org.skewback.desk.render;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.BridgeException;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.bridge.UserAgentAdapter;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Makes a figure fit for print: well-formed, without scripts, and asking for nothing outside. */
final class PrintedSvg {

    private static final int LARGEST = 8_000_000;

    /** A document type without declarations of its own says nothing that a drawing needs. */
    private static final Pattern DOCTYPE = Pattern.compile("<!DOCTYPE[^\\[>]*>");

    private static final Set<String> REFUSED =
            Set.of("script", "foreignobject", "image", "handler", "listener", "feimage");

    private PrintedSvg() {}

    /**
     * Reads a drawing and writes it without what a page must not hold.
     *
     * @param svg the drawing
     * @return the drawing, or null where it is not well-formed or too large
     */
    static @Nullable String of(String svg) {
        if (svg.length() > LARGEST) {
            return null;
        }
        Document document = Xml.parse(DOCTYPE.matcher(svg).replaceFirst(""));
        if (document == null) {
            return null;
        }
        Element root = document.getDocumentElement();
        if (!"svg".equals(root.getLocalName())) {
            return null;
        }
        clean(root);
        String written = written(document);
        return canBeDrawn(written) ? written : null;
    }

    /** The engine leaves out a drawing that it cannot draw, so each is tried beforehand. */
    private static boolean canBeDrawn(String svg) {
        BridgeContext context = new BridgeContext(new UserAgentAdapter());
        try {
            Document drawing =
                    new SAXSVGDocumentFactory(null)
                            .createDocument("about:blank", new StringReader(svg));
            context.setDynamicState(BridgeContext.STATIC);
            return new GVTBuilder().build(context, drawing) != null;
        } catch (BridgeException | IOException e) {
            return false;
        } finally {
            context.dispose();
        }
    }

    private static void clean(Element element) {
        List<Attr> refused = new ArrayList<>();
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            if (isRefused(attribute)) {
                refused.add(attribute);
            }
        }
        refused.forEach(element::removeAttributeNode);
        List<Element> outlaws = new ArrayList<>();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                if (REFUSED.contains(
                        String.valueOf(child.getLocalName()).toLowerCase(Locale.ROOT))) {
                    outlaws.add(child);
                } else {
                    clean(child);
                }
            }
        }
        outlaws.forEach(element::removeChild);
    }

    private static boolean isRefused(Attr attribute) {
        String name = String.valueOf(attribute.getLocalName()).toLowerCase(Locale.ROOT);
        boolean outside = name.equals("href") && !attribute.getValue().startsWith("#");
        return name.startsWith("on") || outside;
    }

    private static String written(Document document) {
        try {
            Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter text = new StringWriter();
            writer.transform(new DOMSource(document), new StreamResult(text));
            return text.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException("the XML writer of this Java does not work", e);
        }
    }
}
