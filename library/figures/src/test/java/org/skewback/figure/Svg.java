package org.skewback.figure;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reads an SVG figure back with the platform's XML parser. */
final class Svg {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    private final Document document;

    Svg(String text) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setNamespaceAware(true);
        document =
                factory.newDocumentBuilder()
                        .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    Element root() {
        return document.getDocumentElement();
    }

    List<Element> all(String name) {
        NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** Texts in document order. */
    List<String> texts() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    Element text(String content) {
        return all("text").stream()
                .filter(element -> element.getTextContent().equals(content))
                .findFirst()
                .orElseThrow(() -> new AssertionError(content + " is not among " + texts()));
    }

    /** First path with this stroke width, as absolute points. */
    List<double[]> stroked(LineStyle style) {
        String width = Double.toString(style.pen().width());
        return all("path").stream()
                .filter(path -> path.getAttribute("stroke-width").equals(width))
                .map(path -> points(path.getAttribute("d")))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no path with stroke width " + width));
    }

    /** Points of a path of one M and many l. */
    static List<double[]> points(String d) {
        Matcher matcher = NUMBER.matcher(d);
        List<Double> numbers = new ArrayList<>();
        while (matcher.find()) {
            numbers.add(Double.valueOf(matcher.group()));
        }
        List<double[]> points = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            x += numbers.get(i);
            y += numbers.get(i + 1);
            points.add(new double[] {x, y});
        }
        return points;
    }
}
