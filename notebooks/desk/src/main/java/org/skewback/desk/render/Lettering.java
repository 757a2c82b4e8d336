package org.skewback.desk.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** How wide letters of the pages' text are, read from its font once; never changed after. */
final class Lettering {

    /** Width of what the font lacks and another lends, in em; few letters are wider. */
    private static final float LENT = 0.7f;

    private final float[] widths = new float[Fonts.LAST + 1];

    private Lettering() {}

    /** Gives the widths of the upright text. */
    static Lettering text() {
        return Once.TEXT;
    }

    /**
     * Measures text set in one line.
     *
     * @param text any text
     * @return its width in em
     */
    double width(CharSequence text) {
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            width += widths[text.charAt(i)];
        }
        return width;
    }

    /** Most tables need no measuring, so the font is read when one does. */
    private static final class Once {
        static final Lettering TEXT = read(Fonts.TEXT);

        private static Lettering read(Fonts font) {
            Lettering read = new Lettering();
            try (TrueTypeFont face = font.open()) {
                CmapLookup glyphs = face.getUnicodeCmapLookup();
                float perEm = face.getUnitsPerEm();
                for (int c = 0; c < read.widths.length; c++) {
                    int glyph = glyphs.getGlyphId(c);
                    read.widths[c] = glyph == 0 ? LENT : face.getAdvanceWidth(glyph) / perEm;
                }
            } catch (IOException e) {
                throw new UncheckedIOException("the text font cannot be read", e);
            }
            return read;
        }
    }
}
