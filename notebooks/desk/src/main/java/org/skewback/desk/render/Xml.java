package org.skewback.desk.render;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Parses XML that may be hostile: no document type, no entity, nothing from outside. */
public final class Xml {

    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

    private Xml() {}

    /**
     * Parses a document.
     *
     * @param text the document
     * @return its tree, or null where it is not well-formed
     */
    public static @Nullable Document parse(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(NO_DOCTYPE, true);
            factory.setNamespaceAware(true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Refusing());
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (SAXException e) {
            return null;
        } catch (ParserConfigurationException | IOException e) {
            throw new IllegalStateException("the XML parser of this Java does not work", e);
        }
    }

    private static final class Refusing implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) {
            // A warning leaves the tree whole.
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
