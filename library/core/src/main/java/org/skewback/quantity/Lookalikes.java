package org.skewback.quantity;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Symbols that no reader can tell apart: a Cyrillic or Greek А beside a Latin A.
 *
 * <p>Within one symbol, mixed scripts are refused where it is made; this looks from one symbol to the
 * others of a sheet. Only letters that the usual fonts draw alike count (Unicode Technical Standard
 * 39, section 4, confusable detection, for the letters that symbols are made of): Greek ν beside
 * Latin v is told apart, and the trade writes both.
 */
public final class Lookalikes {

    private static final String LOOKS =
            "ΑАԱ ΒВ ЕΕ ΖZ НΗ ІΙӀ ЈJ КΚK\u212A МΜ ΝN ОΟՕ РΡ ТΤ УΥ ХΧ СC ЅS ԌG ԚQ ԜW аa еe оοօo рp сc"
                    + " уy хx іi јj ѕs һհh ԁd ԛq ԝw µμ \u03A9\u2126 \u00C5\u212B";

    private static final String LATIN = "ABEZHIJKMNOPTYXCSGQWaeopcyxijshdqwµΩÅ";

    private static final Map<Integer, Integer> SAME = same();

    private Lookalikes() {}

    private static Map<Integer, Integer> same() {
        Map<Integer, Integer> same = new HashMap<>();
        int[] latin = LATIN.codePoints().toArray();
        int group = 0;
        for (int letter : LOOKS.codePoints().toArray()) {
            if (letter == ' ') {
                group++;
            } else {
                same.put(letter, latin[group]);
            }
        }
        return Map.copyOf(same);
    }

    /** The symbol with every letter replaced by the one that stands for all that look like it. */
    private static String shape(String symbol) {
        StringBuilder shape = new StringBuilder();
        symbol.codePoints().forEach(c -> shape.appendCodePoint(SAME.getOrDefault(c, c)));
        return shape.toString();
    }

    /**
     * Refuses a symbol that looks like another one.
     *
     * @param symbol the symbol to be used
     * @param others symbols in use beside it; the symbol itself may be among them
     * @throws IllegalArgumentException when another one looks the same; names the letters that differ
     */
    public static void refuse(String symbol, Collection<String> others) {
        String shape = shape(symbol);
        for (String other : others) {
            if (!other.equals(symbol) && shape(other).equals(shape)) {
                throw new IllegalArgumentException(
                        "symbol \""
                                + symbol
                                + "\" ("
                                + letters(symbol, other)
                                + ") looks like the symbol \""
                                + other
                                + "\" ("
                                + letters(other, symbol)
                                + ") of the same sheet; allowed are symbols that a reader can tell"
                                + " apart");
            }
        }
    }

    private static String letters(String of, String not) {
        return of.codePoints()
                .filter(c -> not.indexOf(c) < 0)
                .distinct()
                .mapToObj(c -> String.format(Locale.ROOT, "U+%04X %s", c, Character.getName(c)))
                .collect(Collectors.joining(", "));
    }
}
