package org.skewback.desk.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.BitSet;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The fonts that come with this program; their licences lie beside them. */
enum Fonts {
    /** Text. */
    TEXT("SourceSans3-Regular.ttf", "Source Sans 3", 400, false),
    /** Headings and labels. */
    HEAVY("SourceSans3-Semibold.ttf", "Source Sans 3", 600, false),
    /** Emphasis and symbols. */
    SLANTED("SourceSans3-It.ttf", "Source Sans 3", 400, true),
    /** Signs that the text fonts lack. */
    SPARE("DejaVuSans-subset.ttf", "DejaVu Sans", 400, false),
    /** Code. */
    CODE("DejaVuSansMono-subset.ttf", "DejaVu Sans Mono", 400, false),
    /** Mathematics. */
    MATHS("StixTwoMath-subset.ttf", "STIX Two Math", 400, false);

    /** The tables that the OpenType specification requires; the others speak of lost glyphs. */
    private static final List<String> KEPT =
            List.of("cmap", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "OS/2", "post");

    /** Last character of the plane beyond which the subsetting library does not go. */
    static final int LAST = 0xFFFF;

    private final String file;
    private final String family;
    private final int weight;
    private final boolean italic;

    Fonts(String file, String family, int weight, boolean italic) {
        this.file = file;
        this.family = family;
        this.weight = weight;
        this.italic = italic;
    }

    String file() {
        return file;
    }

    String family() {
        return family;
    }

    int weight() {
        return weight;
    }

    boolean isItalic() {
        return italic;
    }

    /** Gives the whole font. */
    byte[] bytes() {
        return bytes(file);
    }

    static byte[] bytes(String file) {
        try (InputStream in = Fonts.class.getResourceAsStream("fonts/" + file)) {
            if (in == null) {
                throw new IllegalStateException("the font " + file + " is missing");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + file + " cannot be read", e);
        }
    }

    /** Reads the font for its glyphs. */
    TrueTypeFont open() {
        try {
            return new TTFParser(true).parse(new RandomAccessReadBuffer(bytes()));
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + file + " cannot be read", e);
        }
    }

    /**
     * Gives the font with every character but without ligatures, whose glyphs a PDF could not name.
     */
    byte[] plain() {
        try (TrueTypeFont font = open()) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            BitSet all = new BitSet();
            for (int c = 0x20; c <= LAST; c++) {
                all.set(c, glyphs.getGlyphId(c) != 0);
            }
            return cut(font, all);
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + file + " cannot be cut down", e);
        }
    }

    /** Gives a font without what is not used. */
    static byte[] cut(TrueTypeFont font, BitSet used) throws IOException {
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        TTFSubsetter subset = new TTFSubsetter(font, KEPT);
        for (int c = used.nextSetBit(0); c >= 0 && c <= LAST; c = used.nextSetBit(c + 1)) {
            if (glyphs.getGlyphId(c) != 0) {
                subset.add(c);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        subset.writeToStream(out);
        return out.toByteArray();
    }
}
