package org.skewback.kernel.worker;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.reflect.Method;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** Shows images, and charts of a chart library, as PNG. */
final class Pictures {

    static final int MOST_SIDE = 2400;
    private static final String CHART = "org.knowm.xchart.internal.chartpart.Chart";
    private static final String ENCODER = "org.knowm.xchart.BitmapEncoder";

    private Pictures() {}

    /**
     * Gives the PNG of a value.
     *
     * @return base64 without line breaks, or null for a value that is no picture
     * @throws ReflectiveOperationException if a chart cannot be drawn
     * @throws IOException if an image cannot be written
     */
    static @Nullable String of(Object value) throws ReflectiveOperationException, IOException {
        if (value instanceof RenderedImage image) {
            return encode(image);
        }
        if (Renderer.is(value.getClass(), CHART)) {
            Class<?> encoder = Class.forName(ENCODER, true, value.getClass().getClassLoader());
            Object image = drawing(encoder, value).invoke(null, value);
            return image instanceof RenderedImage drawn ? encode(drawn) : null;
        }
        return null;
    }

    // Its parameter is a class in some versions of the library and an interface in others.
    private static Method drawing(Class<?> encoder, Object chart) throws NoSuchMethodException {
        for (Method method : encoder.getMethods()) {
            if (method.getName().equals("getBufferedImage")
                    && method.getParameterCount() == 1
                    && method.getParameterTypes()[0].isInstance(chart)) {
                return method;
            }
        }
        throw new NoSuchMethodException(ENCODER + ".getBufferedImage");
    }

    /** Words that stand for a picture; it has no text of its own that would be the same again. */
    static String words(Object picture) {
        if (picture instanceof RenderedImage image) {
            return "image, " + image.getWidth() + " × " + image.getHeight() + " pixels";
        }
        try {
            Object title = picture.getClass().getMethod("getTitle").invoke(picture);
            return "chart: " + title;
        } catch (ReflectiveOperationException e) {
            return "chart";
        }
    }

    private static String encode(RenderedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        if (!ImageIO.write(bounded(image), "png", bytes)) {
            throw new IOException("no PNG can be made of this kind of image");
        }
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    private static RenderedImage bounded(RenderedImage image) {
        int side = Math.max(image.getWidth(), image.getHeight());
        if (side <= MOST_SIDE || !(image instanceof BufferedImage whole)) {
            return image;
        }
        int width = Math.max(1, (int) ((long) image.getWidth() * MOST_SIDE / side));
        int height = Math.max(1, (int) ((long) image.getHeight() * MOST_SIDE / side));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = small.createGraphics();
        graphics.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(whole, 0, 0, width, height, null);
        graphics.dispose();
        return small;
    }
}
