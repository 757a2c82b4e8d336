package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.skewback.quantity.Graph;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;

/**
 * Where a number comes from: the named numbers of its formula, those behind them, back to what was
 * given and its source.
 */
final class Origin {

    private static final int DEEPEST = 8;
    private static final int MOST = 60;

    private final Set<Quantity> listed = Collections.newSetFromMap(new IdentityHashMap<>());
    private int count;

    private Origin() {}

    /**
     * Lists the chain as nested lists.
     *
     * @param quantity whose origin
     * @return markup, or empty where the quantity was given and has none
     */
    static String of(Quantity quantity) {
        return new Origin().list(quantity, 0);
    }

    private String list(Quantity quantity, int depth) {
        List<Quantity> behind = behind(quantity);
        if (behind.isEmpty()) {
            return "";
        }
        StringBuilder markup = new StringBuilder("<ul>");
        for (Quantity one : behind) {
            if (count++ >= MOST) {
                markup.append("<li>… and more; the record holds the whole chain</li>");
                break;
            }
            markup.append("<li>").append(said(one));
            if (!one.isLeaf()) {
                if (!listed.add(one)) {
                    markup.append(" <span class=\"from\">(see above)</span>");
                } else if (depth + 1 >= DEEPEST) {
                    markup.append(" <span class=\"from\">(and so on; see its step)</span>");
                } else {
                    markup.append(list(one, depth + 1));
                }
            }
            markup.append("</li>");
        }
        return markup.append("</ul>").toString();
    }

    /** The nearest numbers that have a name, a source or a unit; plain factors such as 8 are not. */
    private static List<Quantity> behind(Quantity quantity) {
        List<Quantity> found = new ArrayList<>();
        for (Quantity node :
                Graph.ordered(
                        List.of(quantity), n -> n.isSameNode(quantity) || n.symbol() == null)) {
            boolean told = node.symbol() != null || node.source() != null;
            boolean bare = node.isLeaf() && !node.unit().symbol().isEmpty();
            if (!node.isSameNode(quantity) && (told || bare)) {
                found.add(node);
            }
        }
        return found;
    }

    private static String said(Quantity quantity) {
        String symbol = quantity.symbol();
        StringBuilder markup = new StringBuilder();
        if (symbol != null) {
            markup.append(Markup.symbol(symbol)).append("\u00A0= ");
        }
        markup.append(Markup.text(Numerals.withUnit(quantity)));
        if (!quantity.note().isBlank()) {
            markup.append(", ").append(Markup.text(quantity.note()));
        }
        Source source = quantity.source();
        if (source != null) {
            markup.append(" <span class=\"from\">")
                    .append(Markup.text(source.toString()))
                    .append("</span>");
        } else if (quantity.isLeaf()) {
            markup.append(" <span class=\"from\">number without a source</span>");
        }
        return markup.toString();
    }
}
