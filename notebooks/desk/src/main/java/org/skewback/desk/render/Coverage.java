package org.skewback.desk.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** Which characters can be printed: the PDF engine prints a wrong sign for any other. */
final class Coverage {

    private static final int UNKNOWN = 0xFFFD;

    /** Every font has the characters from the space to before this, which most of a page are. */
    private static final int SIMPLE = 0x7F;

    private final List<CmapLookup> text = new ArrayList<>();
    private final CmapLookup spare;
    private final Map<Integer, Boolean> known = new HashMap<>();

    Coverage() {
        for (Fonts font : List.of(Fonts.TEXT, Fonts.HEAVY, Fonts.SLANTED, Fonts.CODE)) {
            text.add(characters(font));
        }
        this.spare = characters(Fonts.SPARE);
    }

    private static CmapLookup characters(Fonts font) {
        try (TrueTypeFont read = font.open()) {
            return read.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + font.file() + " cannot be read", e);
        }
    }

    /** Tells whether every style can print a character, by itself or by the spare font. */
    boolean has(int c) {
        return spare.getGlyphId(c) != 0 || text.stream().allMatch(font -> font.getGlyphId(c) != 0);
    }

    /** Puts U+FFFD, which can be seen, in place of what no font has. */
    String printable(String page) {
        StringBuilder printable = new StringBuilder(page.length());
        int from = 0;
        int c;
        for (int i = 0; i < page.length(); i += Character.charCount(c)) {
            c = page.codePointAt(i);
            boolean plain = (c >= ' ' && c < SIMPLE) || c == '\n' || c == '\t';
            if (!plain && !known.computeIfAbsent(c, this::has)) {
                printable.append(page, from, i).appendCodePoint(UNKNOWN);
                from = i + Character.charCount(c);
            }
        }
        return printable.append(page, from, page.length()).toString();
    }
}
