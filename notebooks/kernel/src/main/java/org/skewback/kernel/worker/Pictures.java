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
            ClassLoader loader = value.getClass().getClassLoader();
            Class<?> encoder = Class.forName(ENCODER, true, loader);
            Class<?> chart = Class.forName(CHART, true, loader);
            Method draw = encoder.getMethod("getBufferedImage", chart);
            Object image = draw.invoke(null, value);
            return image instanceof RenderedImage drawn ? encode(drawn) : null;
        }
        return null;
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
