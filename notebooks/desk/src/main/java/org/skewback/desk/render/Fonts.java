package org.skewback.desk.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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

    private static byte[] bytes(String file) {
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

    /** The font faces of a page, cut down to the characters that the page has. */
    static String faces(String page) {
        Set<Integer> used = new TreeSet<>();
        page.codePoints().forEach(used::add);
        StringBuilder faces = new StringBuilder();
        for (Fonts font : List.of(TEXT, HEAVY, SLANTED)) {
            faces.append(face(font, "font/ttf", font.cut(used)));
        }
        if (page.contains("<math")) {
            faces.append(face(MATHS, "font/woff2", bytes("StixTwoMath-subset.woff2")));
        }
        return faces.toString();
    }

    private static String face(Fonts font, String type, byte[] bytes) {
        return "@font-face{font-family:\""
                + font.family
                + "\";font-weight:"
                + font.weight
                + ";font-style:"
                + (font.italic ? "italic" : "normal")
                + ";src:url(data:"
                + type
                + ";base64,"
                + Base64.getEncoder().encodeToString(bytes)
                + ")}\n";
    }

    /**
     * Gives the font with every character but without ligatures, whose glyphs a PDF could not name.
     */
    byte[] plain() {
        Set<Integer> all = new TreeSet<>();
        try (TrueTypeFont font = open()) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            for (int c = 0x20; c <= LAST; c++) {
                if (glyphs.getGlyphId(c) != 0) {
                    all.add(c);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + file + " cannot be read", e);
        }
        return cut(all);
    }

    private byte[] cut(Set<Integer> used) {
        try (TrueTypeFont font = open()) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            TTFSubsetter subset = new TTFSubsetter(font, KEPT);
            for (int c : used) {
                if (c <= LAST && glyphs.getGlyphId(c) != 0) {
                    subset.add(c);
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subset.writeToStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + file + " cannot be cut down", e);
        }
    }
}
