package org.skewback.figure;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.jspecify.annotations.Nullable;

/**
 * A bundled font's widths and outlines.
 *
 * <p>They are read from the font file itself, not through AWT: they are the same on every machine,
 * and a machine without any font can draw.
 */
final class TextFace {

    /** Ranges a technical figure uses: Latin, Greek, punctuation, scripts, arrows, mathematics. */
    private static final int[][] RANGES = {
        {0x20, 0x7E},
        {0xA0, 0x17F},
        {0x2B0, 0x2FF},
        {0x370, 0x3FF},
        {0x1E00, 0x1EFF},
        {0x2000, 0x209F},
        {0x20A0, 0x22FF},
        {0x25A0, 0x25FF}
    };

    /** Spaces some fonts leave out; each stands for a share of an em. */
    private static final Map<Integer, Double> SPACES = Map.of(0x2009, 0.16, 0x202F, 0.16);

    // After the constants it is read with.
    static final TextFace REGULAR = new TextFace("SourceSans3-Regular.ttf");

    private final String resource;
    private final Map<Integer, Glyph> glyphs;

    /**
     * One character's shape.
     *
     * @param advance width in ems
     * @param outline shape in ems, y downwards; never changed once read
     */
    private record Glyph(double advance, Path2D outline) {}

    private TextFace(String resource) {
        this.resource = resource;
        this.glyphs = read(resource);
    }

    private static Map<Integer, Glyph> read(String resource) {
        try (InputStream stream = open(resource);
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream))) {
            double em = font.getUnitsPerEm();
            AffineTransform toEms = AffineTransform.getScaleInstance(1 / em, -1 / em);
            CmapLookup characters = font.getUnicodeCmapLookup();
            Map<Integer, Glyph> glyphs = new HashMap<>();
            for (int[] range : RANGES) {
                for (int c = range[0]; c <= range[1]; c++) {
                    int id = characters.getGlyphId(c);
                    if (id > 0) {
                        GlyphData data = font.getGlyph().getGlyph(id);
                        Path2D path = data == null ? new Path2D.Double() : data.getPath();
                        glyphs.put(
                                c,
                                new Glyph(
                                        font.getAdvanceWidth(id) / em,
                                        new Path2D.Double(path, toEms)));
                    }
                }
            }
            SPACES.forEach(
                    (c, width) -> glyphs.putIfAbsent(c, new Glyph(width, new Path2D.Double())));
            return Map.copyOf(glyphs);
        } catch (IOException e) {
            throw new UncheckedIOException("The figure font " + resource + " can't be read", e);
        }
    }

    /** Opens the font file. */
    InputStream open() {
        return open(resource);
    }

    private static InputStream open(String resource) {
        @Nullable InputStream stream = TextFace.class.getResourceAsStream(resource);
        if (stream == null) {
            throw new IllegalStateException("The figure font " + resource + " is not bundled");
        }
        return stream;
    }

    /** Width of a line of text in ems, without kerning, its subscripts as they are set. */
    double width(String line) {
        return Run.of(line).stream().mapToDouble(run -> run.size() * plainWidth(run.text())).sum();
    }

    private double plainWidth(String text) {
        return text.codePoints().mapToObj(this::glyph).mapToDouble(Glyph::advance).sum();
    }

    /** Outline of a line of text in ems, from the origin to the right, y downwards. */
    Path2D outline(String line) {
        Path2D.Double outline = new Path2D.Double();
        double x = 0;
        for (Run run : Run.of(line)) {
            for (int c : run.text().codePoints().toArray()) {
                Glyph glyph = glyph(c);
                AffineTransform place = AffineTransform.getTranslateInstance(x, run.drop());
                place.scale(run.size(), run.size());
                outline.append(glyph.outline().getPathIterator(place), false);
                x += run.size() * glyph.advance();
            }
        }
        return outline;
    }

    /** Characters of a text that the font lacks. */
    int[] missing(String text) {
        return text.codePoints().filter(c -> !glyphs.containsKey(c)).distinct().toArray();
    }

    private Glyph glyph(int c) {
        Glyph glyph = glyphs.get(c);
        if (glyph == null) {
            throw new IllegalArgumentException(
                    String.format("character U+%04X is not in the figure font %s", c, resource));
        }
        return glyph;
    }
}
