package org.skewback.desk.audit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontFactory;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.jspecify.annotations.Nullable;

/**
 * Reads what the pages of a document write in each sequence of marked content (ISO 32000-1, 14.6), and
 * nothing of where on the page that is: to place each sign takes many times longer.
 */
final class MarkedText {

    /** In a sequence without an identifier. */
    private static final int NONE = -1;

    private static final int DEEPEST = 50;
    private static final int LONGEST = 256 << 20;

    private final IdentityHashMap<COSDictionary, PDFont> fonts = new IdentityHashMap<>();

    /** Texts of the page that is being read. */
    private Map<Integer, StringBuilder> texts = new TreeMap<>();

    /** What the page that is being read writes outside of all sequences with an identifier. */
    private StringBuilder outside = new StringBuilder();

    private final Deque<Sequence> open = new ArrayDeque<>();
    private final Deque<Font> saved = new ArrayDeque<>();
    private Font font = new Font(null);

    /** The font to write with; null before the first is chosen. */
    private record Font(@Nullable PDFont font) {}

    /**
     * A sequence that has begun.
     *
     * @param properties what says which it is; null where nothing does
     */
    private record Sequence(@Nullable COSDictionary properties) {
        int identifier() {
            return properties == null ? NONE : properties.getInt(COSName.MCID, NONE);
        }
    }

    /**
     * Reads a page.
     *
     * @return the text of each sequence by its identifier
     * @throws IOException when it cannot be read
     */
    Map<Integer, String> of(PDPage page) throws IOException {
        texts = new TreeMap<>();
        outside = new StringBuilder();
        open.clear();
        saved.clear();
        font = new Font(null);
        PDResources resources = page.getResources();
        try (InputStream in = page.getContents()) {
            read(whole(in), resources == null ? new COSDictionary() : resources.getCOSObject(), 0);
        }
        Map<Integer, String> read = new TreeMap<>();
        texts.forEach((identifier, text) -> read.put(identifier, text.toString()));
        return read;
    }

    /** What the page that was read last writes around its content, as heads and feet of pages. */
    String outside() {
        return outside.toString();
    }

    private static byte[] whole(InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(LONGEST);
        if (bytes.length == LONGEST) {
            throw new IOException("a page is longer than " + LONGEST + " bytes");
        }
        return bytes;
    }

    private void read(byte[] bytes, COSDictionary resources, int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new IOException("forms are nested too deep");
        }
        ContentTokens tokens = new ContentTokens(bytes);
        List<byte[]> strings = new ArrayList<>();
        String name = "";
        @Nullable COSDictionary inline = null;
        for (ContentTokens.Kind kind = tokens.next();
                kind != ContentTokens.Kind.END;
                kind = tokens.next()) {
            switch (kind) {
                case NAME -> name = tokens.text();
                case STRING -> strings.add(tokens.string());
                case NUMBER -> {
                    if (inline != null && name.equals("MCID")) {
                        inline.setInt(COSName.MCID, identifier(tokens.text()));
                    }
                }
                case BRACKET -> {
                    if (inline == null && tokens.text().equals("<<")) {
                        inline = new COSDictionary();
                    }
                }
                default -> {
                    String operator = tokens.text();
                    if (operator.equals("BDC")) {
                        open.push(
                                new Sequence(
                                        inline == null
                                                ? named(resources, COSName.PROPERTIES, name)
                                                : inline));
                    } else {
                        operate(operator, name, strings, resources, depth);
                    }
                    strings.clear();
                    name = "";
                    inline = null;
                }
            }
        }
    }

    private static int identifier(String number) {
        return number.matches("[0-9]{1,9}") ? Integer.parseInt(number) : NONE;
    }

    private void operate(
            String operator, String name, List<byte[]> strings, COSDictionary resources, int depth)
            throws IOException {
        switch (operator) {
            case "Tj", "TJ", "'", "\"" -> {
                for (byte[] string : strings) {
                    write(string);
                }
            }
            case "Tf" -> font = font(named(resources, COSName.FONT, name));
            case "gs" -> state(named(resources, COSName.EXT_G_STATE, name));
            case "q" -> saved.push(font);
            case "Q" -> font = saved.isEmpty() ? font : saved.pop();
            case "BMC" -> open.push(new Sequence(null));
            case "EMC" -> open.poll();
            case "Do" -> draw(resources, name, depth);
            case "BI" ->
                    // Where it ends can be told in more than one way, and no issue has one.
                    throw new IOException("a picture stands in the middle of a page's text");
            default -> {
                // Lines, colours and places.
            }
        }
    }

    private static @Nullable COSDictionary named(
            COSDictionary resources, COSName kind, String name) {
        COSDictionary all = resources.getCOSDictionary(kind);
        return all == null ? null : all.getCOSDictionary(COSName.getPDFName(name));
    }

    private Font font(@Nullable COSDictionary described) throws IOException {
        if (described == null) {
            return new Font(null);
        }
        PDFont known = fonts.get(described);
        if (known == null) {
            known = PDFontFactory.createFont(described);
            fonts.put(described, known);
        }
        return new Font(known);
    }

    private void state(@Nullable COSDictionary state) throws IOException {
        COSArray chosen = state == null ? null : state.getCOSArray(COSName.FONT);
        if (chosen != null && chosen.getObject(0) instanceof COSDictionary described) {
            font = font(described);
        }
    }

    private void draw(COSDictionary resources, String name, int depth) throws IOException {
        if (!(named(resources, COSName.XOBJECT, name) instanceof COSStream drawn)
                || !COSName.FORM.equals(drawn.getCOSName(COSName.SUBTYPE))) {
            return;
        }
        byte[] bytes;
        try (InputStream in = drawn.createInputStream()) {
            bytes = whole(in);
        }
        if (!mayWrite(bytes)) {
            return;
        }
        COSDictionary own = drawn.getCOSDictionary(COSName.RESOURCES);
        Font around = font;
        read(bytes, own == null ? resources : own, depth + 1);
        font = around;
    }

    /**
     * Tells whether a form may write: without Tj, TJ, ', " and Do, which the outlines of an equation
     * lack, it neither shows text nor draws a form that does.
     */
    private static boolean mayWrite(byte[] bytes) {
        for (int i = 0; i < bytes.length; i++) {
            switch (bytes[i]) {
                case 'T', '\'', '"' -> {
                    return true;
                }
                case 'o' -> {
                    if (i > 0 && bytes[i - 1] == 'D') {
                        return true;
                    }
                }
                default -> {
                    // Part of a number, or of a path.
                }
            }
        }
        return false;
    }

    private void write(byte[] string) throws IOException {
        // What is nested in a sequence is part of it.
        int identifier = open.isEmpty() ? NONE : open.getLast().identifier();
        PDFont with = font.font();
        if (with == null && identifier < 0) {
            return;
        }
        if (with == null) {
            throw new IOException("a page writes without a font");
        }
        StringBuilder text =
                identifier < 0
                        ? outside
                        : texts.computeIfAbsent(identifier, fresh -> new StringBuilder());
        ByteArrayInputStream in = new ByteArrayInputStream(string);
        while (in.available() > 0) {
            int code = with.readCode(in);
            String sign = with.toUnicode(code);
            if (sign != null) {
                text.append(sign);
            } else if (with instanceof PDSimpleFont) {
                text.append((char) code);
            }
        }
    }
}
