package org.skewback.quantity;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/**
 * Turns printed MathML into plain text by the meaning of its elements alone, so that {@link
 * PrintedText} can evaluate it.
 */
final class PrintedMathml {

    private PrintedMathml() {}

    static String asText(String markup) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        Element root =
                factory.newDocumentBuilder()
                        .parse(new InputSource(new StringReader("<math>" + markup + "</math>")))
                        .getDocumentElement();
        return children(root).stream().map(PrintedMathml::text).reduce("", String::concat);
    }

    private static String text(Element element) {
        List<Element> inner = children(element);
        return switch (element.getTagName()) {
            case "mrow", "mtable", "mtr", "mtd" ->
                    inner.stream().map(PrintedMathml::text).reduce("", String::concat);
            case "mfrac" -> "((" + text(inner.get(0)) + ") / (" + text(inner.get(1)) + "))";
            case "msup" -> base(inner.get(0)) + raised(inner.get(1).getTextContent());
            case "msub" -> text(inner.get(0)) + "_" + text(inner.get(1));
            case "msqrt" -> "√(" + text(inner.get(0)) + ")";
            case "mo" -> operator(element);
            default -> element.getTextContent();
        };
    }

    /** What is raised is the nearest element, or the bracket that closes there. */
    private static String base(Element element) {
        String text = text(element);
        boolean bracketed = text.equals(")") || element.getTextContent().startsWith("(");
        return bracketed ? text : "(" + text + ")";
    }

    private static String operator(Element element) {
        String sign = element.getTextContent();
        boolean prefix = element.getPreviousSibling() == null;
        return switch (sign) {
            case "·", "+" -> " " + sign + " ";
            case "−" -> prefix ? sign : " − ";
            case "," -> ", ";
            case "\u2061" -> "";
            default -> sign;
        };
    }

    private static String raised(String exponent) {
        String digits = "⁰¹²³⁴⁵⁶⁷⁸⁹";
        if (exponent.contains("/")) {
            return "^(" + exponent.replace('−', '-') + ")";
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < exponent.length(); i++) {
            char c = exponent.charAt(i);
            text.append(c == '−' ? '⁻' : digits.charAt(c - '0'));
        }
        return text.toString();
    }

    private static List<Element> children(Element element) {
        List<Element> children = new ArrayList<>();
        for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element child) {
                children.add(child);
            }
        }
        return children;
    }
}
