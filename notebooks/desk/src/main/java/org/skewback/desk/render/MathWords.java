package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Says a formula in one line of text, for whoever cannot see it. */
final class MathWords {

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private MathWords() {}

    /** Writes the formula with slashes, circumflexes and underscores. */
    static String of(String mathml) {
        Document document = Xml.parse(mathml);
        return document == null
                ? "formula"
                : said(document.getDocumentElement()).replaceAll(" {2,}", " ").strip();
    }

    private static String said(Element element) {
        List<Element> inner = new ArrayList<>();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                inner.add(child);
            }
        }
        return switch (element.getTagName()) {
            case "mo" -> operator(element.getTextContent());
            case "mi", "mn", "mtext" -> element.getTextContent();
            case "mspace" -> " ";
            case "mfrac" -> grouped(inner.get(0)) + " / " + grouped(inner.get(1));
            case "msup", "mover" -> said(inner.get(0)) + raised(inner.get(1));
            case "msub", "munder" -> said(inner.get(0)) + "_" + grouped(inner.get(1));
            case "msubsup", "munderover" ->
                    said(inner.get(0)) + "_" + grouped(inner.get(1)) + raised(inner.get(2));
            case "msqrt" -> "√(" + all(inner) + ")";
            case "mroot" -> "root " + said(inner.get(1)) + " of (" + said(inner.get(0)) + ")";
            case "mtr" -> all(inner) + " ";
            default -> all(inner);
        };
    }

    private static String all(List<Element> elements) {
        StringBuilder text = new StringBuilder();
        elements.forEach(element -> text.append(said(element)));
        return text.toString();
    }

    private static String operator(String sign) {
        if (sign.equals("\u2061")) {
            return " ";
        }
        return "()[]{}|,′".contains(sign) ? sign : " " + sign + " ";
    }

    private static String raised(Element exponent) {
        String text = said(exponent).strip();
        boolean digit = text.length() == 1 && Character.isDigit(text.charAt(0));
        return digit ? "" + RAISED.charAt(text.charAt(0) - '0') : "^" + grouped(exponent);
    }

    private static String grouped(Element element) {
        String text = said(element).strip();
        boolean single = text.chars().noneMatch(c -> c == ' ' || c == '·' || c == '+');
        return single ? text : "(" + text + ")";
    }
}
