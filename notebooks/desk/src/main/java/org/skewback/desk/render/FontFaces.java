package org.skewback.desk.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TrueTypeFont;

/** Gives pages the fonts that they need, cut down to the characters that each has. */
final class FontFaces {

    private static final List<Fonts> ON_EVERY_PAGE =
            List.of(Fonts.TEXT, Fonts.HEAVY, Fonts.SLANTED);

    /** Read once, since that takes longer than to cut one down; none holds more than memory. */
    private final Map<Fonts, TrueTypeFont> read = new EnumMap<>(Fonts.class);

    /**
     * Writes the font faces of a page.
     *
     * @param page what the page shows
     * @return rules of a style sheet that hold the fonts
     */
    synchronized String of(String page) {
        BitSet used = used(page);
        StringBuilder faces = new StringBuilder();
        for (Fonts font : ON_EVERY_PAGE) {
            try {
                faces.append(
                        face(
                                font,
                                "font/ttf",
                                Fonts.cut(read.computeIfAbsent(font, Fonts::open), used)));
            } catch (IOException e) {
                throw new UncheckedIOException(
                        "the font " + font.file() + " cannot be cut down", e);
            }
        }
        if (page.contains("<math")) {
            faces.append(face(Fonts.MATHS, "font/woff2", Fonts.bytes("StixTwoMath-subset.woff2")));
        }
        return faces.toString();
    }

    /** The characters up to the last that a font is cut by; a page is long, so each counts once. */
    private static BitSet used(String page) {
        boolean[] seen = new boolean[Fonts.LAST + 1];
        for (int i = 0; i < page.length(); i++) {
            seen[page.charAt(i)] = true;
        }
        BitSet used = new BitSet(seen.length);
        for (int c = 0; c < seen.length; c++) {
            if (seen[c] && !Character.isSurrogate((char) c)) {
                used.set(c);
            }
        }
        return used;
    }

    private static String face(Fonts font, String type, byte[] bytes) {
        return "@font-face{font-family:\""
                + font.family()
                + "\";font-weight:"
                + font.weight()
                + ";font-style:"
                + (font.isItalic() ? "italic" : "normal")
                + ";src:url(data:"
                + type
                + ";base64,"
                + Base64.getEncoder().encodeToString(bytes)
                + ")}\n";
    }
}
