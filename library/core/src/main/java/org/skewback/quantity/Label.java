package org.skewback.quantity;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a quantity is called, what it means and where it came from.
 *
 * @param symbol such as {@code N_Ed}: a name, perhaps an underscore and a subscript
 * @param note what it is, in words; may be empty
 * @param source where it came from, or null where it was calculated
 * @param owner the sheet that named it, or null; compared by identity only
 */
record Label(String symbol, String note, @Nullable Source source, @Nullable Object owner) {

    private static final int LONGEST_SYMBOL = 40;

    private static final Pattern SYMBOL =
            Pattern.compile("\\p{L}[\\p{L}\\p{N}′″*]*(_[\\p{L}\\p{N},′+−-]+)?");

    /** Scripts that stand beside each other in a symbol without being mistaken for each other. */
    private static final Set<UnicodeScript> SIDE_BY_SIDE =
            Set.of(
                    UnicodeScript.LATIN,
                    UnicodeScript.GREEK,
                    UnicodeScript.HAN,
                    UnicodeScript.HIRAGANA,
                    UnicodeScript.KATAKANA,
                    UnicodeScript.HANGUL,
                    UnicodeScript.BOPOMOFO);

    Label {
        if (symbol.length() > LONGEST_SYMBOL || !SYMBOL.matcher(symbol).matches()) {
            throw new IllegalArgumentException(
                    "symbol \""
                            + (symbol.length() > 80 ? symbol.substring(0, 80) + "…" : symbol)
                            + "\": allowed are a letter, more letters and digits, then at most one"
                            + " underscore with a subscript, such as N_Ed, and "
                            + LONGEST_SYMBOL
                            + " characters");
        }
        refuseLookalikes(symbol);
    }

    /**
     * Refuses letters of a script that looks like another beside it: a Cyrillic о in a Latin symbol
     * would be a second symbol that no reader can tell from the first (Unicode Technical Standard
     * 39, section 5.2, "moderately restrictive", but with Greek beside Latin as the trade writes).
     */
    private static void refuseLookalikes(String symbol) {
        Set<UnicodeScript> scripts = EnumSet.noneOf(UnicodeScript.class);
        symbol.codePoints()
                .filter(Character::isLetter)
                .mapToObj(UnicodeScript::of)
                .forEach(scripts::add);
        scripts.remove(UnicodeScript.COMMON);
        scripts.remove(UnicodeScript.INHERITED);
        if (scripts.size() > 1 && !SIDE_BY_SIDE.containsAll(scripts)) {
            throw new IllegalArgumentException(
                    "symbol \""
                            + symbol
                            + "\" mixes letters that look alike: "
                            + symbol.codePoints()
                                    .filter(
                                            letter ->
                                                    !SIDE_BY_SIDE.contains(
                                                            UnicodeScript.of(letter)))
                                    .filter(Character::isLetter)
                                    .mapToObj(Label::inWords)
                                    .collect(Collectors.joining(", "))
                            + "; allowed are Latin and Greek letters together, or one other script"
                            + " alone");
        }
    }

    private static String inWords(int letter) {
        return String.format(Locale.ROOT, "U+%04X %s", letter, Character.getName(letter));
    }
}
