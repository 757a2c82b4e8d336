package org.skewback.desk.render;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;

/** The glyphs of the mathematics font as outlines; one a thread. */
final class MathGlyphs {

    private final TrueTypeFont font;
    private final CmapLookup characters;
    private final double unitsPerEm;
    private final Map<Integer, Box> known = new HashMap<>();

    MathGlyphs() {
        this.font = Fonts.MATHS.open();
        try {
            this.characters = font.getUnicodeCmapLookup();
            this.unitsPerEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("the mathematics font cannot be read", e);
        }
    }

    /** Tells whether the font has a character. */
    boolean has(int character) {
        return characters.getGlyphId(character) != 0;
    }

    /**
     * Sets one character.
     *
     * @throws MissingGlyph where the font lacks it
     */
    Box glyph(int character) {
        Box box = known.get(character);
        if (box == null) {
            box = read(character);
            known.put(character, box);
        }
        return box;
    }

    Box text(String text) {
        Box box = Box.empty();
        for (int c : text.codePoints().toArray()) {
            box = box.then(glyph(c));
        }
        return box;
    }

    private Box read(int character) {
        int id = characters.getGlyphId(character);
        if (id == 0) {
            throw new MissingGlyph(character);
        }
        try {
            double width = font.getAdvanceWidth(id) / unitsPerEm;
            GlyphData glyph = font.getGlyph().getGlyph(id);
            Path2D outline = new Path2D.Double();
            if (glyph != null) {
                AffineTransform toEm =
                        AffineTransform.getScaleInstance(1 / unitsPerEm, 1 / unitsPerEm);
                outline.append(glyph.getPath().getPathIterator(toEm), false);
            }
            Rectangle2D extent = outline.getBounds2D();
            return extent.isEmpty()
                    ? Box.space(width)
                    : new Box(width, extent.getMaxY(), -extent.getMinY(), Outline.of(outline));
        } catch (IOException e) {
            throw new UncheckedIOException("the mathematics font cannot be read", e);
        }
    }

    /** The mathematics font lacks a character. */
    static final class MissingGlyph extends RuntimeException {
        private static final long serialVersionUID = 1L;

        MissingGlyph(int character) {
            super(String.format("no glyph for U+%04X", character), null, false, false);
        }
    }
}
