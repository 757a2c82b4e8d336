package org.skewback.desk.render;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Makes sure that the PDF engine, which leaves out what it cannot read, can read a picture. */
final class PrintedPicture {

    /** Pixels of the largest picture that is printed: a page of A3 at 600 dots an inch. */
    private static final long MOST_PIXELS = 70_000_000;

    private PrintedPicture() {}

    /**
     * Checks a picture, and cleans it where it is a drawing.
     *
     * @param mediaType {@code image/svg+xml}, {@code image/png} or {@code image/jpeg}
     * @param base64 its bytes
     * @return what can be printed; empty where nothing can
     */
    static byte[] of(String mediaType, String base64) {
        byte[] bytes;
        try {
            bytes = Base64.getDecoder().decode(base64);
        } catch (IllegalArgumentException e) {
            return new byte[0];
        }
        if (mediaType.equals("image/svg+xml")) {
            String svg = PrintedSvg.of(new String(bytes, StandardCharsets.UTF_8));
            return svg == null ? new byte[0] : svg.getBytes(StandardCharsets.UTF_8);
        }
        return isReadable(bytes) ? bytes : new byte[0];
    }

    private static boolean isReadable(byte[] bytes) {
        try (ImageInputStream in =
                ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return false;
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in);
                long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
                return pixels <= MOST_PIXELS && reader.read(0) != null;
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }
}
