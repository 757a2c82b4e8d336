package org.skewback.quantity;

import java.util.ArrayList;
import java.util.List;

/** Says what a unit that cannot be read may have been meant for; it never guesses in silence. */
final class UnitHint {

    private static final int MOST = 3;

    private UnitHint() {}

    /**
     * Looks for two known symbols that only miss their dot and make something the trade has a word
     * for, then for symbols that differ by capitals alone, then for any two.
     *
     * @return such as {@code ; did you mean kN?}, or empty where nothing is near
     */
    static String near(String symbol) {
        List<String> usual = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (int i = 1; i < symbol.length(); i++) {
            Unit left = UnitTable.find(symbol.substring(0, i));
            Unit right = UnitTable.find(symbol.substring(i));
            if (left != null && right != null) {
                boolean named = left.dimension().times(right.dimension()).isNamed();
                (named ? usual : others).add(left.symbol() + "·" + right.symbol());
            }
        }
        List<String> alike =
                UnitTable.symbols().stream().filter(symbol::equalsIgnoreCase).limit(MOST).toList();
        if (usual.isEmpty() && !alike.isEmpty()) {
            return "; did you mean " + String.join(" or ", alike) + "?";
        }
        List<String> products = usual.isEmpty() ? others : usual;
        return products.isEmpty()
                ? ""
                : "; write a product with a dot: " + String.join(" or ", products);
    }

    /** Says how to write what stands where a symbol should: a digit or a hyphen after a symbol. */
    static String afterSymbol(String text, int at) {
        if (at == 0 || at >= text.length() || !Character.isLetter(text.charAt(at - 1))) {
            return "";
        }
        char c = text.charAt(at);
        if (Character.isDigit(c)) {
            return "; write exponents as ² or ^2";
        }
        return c == '-' || c == '.' ? "; write a product with a dot: ·" : "";
    }
}
