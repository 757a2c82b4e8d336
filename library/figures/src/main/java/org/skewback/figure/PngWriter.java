package org.skewback.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Paints a picture at 200 dots an inch. */
final class PngWriter {

    static final double DOTS_PER_INCH = 200;

    private static final String METADATA_FORMAT = "javax_imageio_png_1.0";

    private static final double SCALE = DOTS_PER_INCH / 72;

    private PngWriter() {}

    static byte[] write(Picture picture) {
        int width = (int) Math.round(picture.width() * SCALE);
        int height = (int) Math.round(picture.height() * SCALE);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, width, height);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.scale(SCALE, SCALE);
            picture.marks().forEach(mark -> paint(g, mark));
        } finally {
            g.dispose();
        }
        return encode(image);
    }

    private static void paint(Graphics2D g, Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            g.setColor(new Color(stroke.pen().ink().rgb()));
            g.setStroke(stroke(stroke.pen()));
            stroke.lines().forEach(line -> g.draw(path(line, stroke.closed())));
        } else if (mark instanceof Mark.Fill fill) {
            g.setColor(new Color(fill.ink().rgb()));
            fill.polygons().forEach(polygon -> g.fill(path(polygon, true)));
        } else if (mark instanceof Mark.Words words) {
            AffineTransform place = AffineTransform.getTranslateInstance(words.x(), words.y());
            place.rotate(StrictMath.toRadians(words.turn()));
            place.scale(words.size(), words.size());
            place.translate(-words.anchor().share() * TextFace.REGULAR.width(words.text()), 0);
            g.setColor(new Color(words.ink().rgb()));
            g.fill(new Path2D.Double(TextFace.REGULAR.outline(words.text()), place));
        }
    }

    private static BasicStroke stroke(Pen pen) {
        float width = (float) pen.width();
        if (pen.dash().isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] dash = new float[pen.dash().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = pen.dash().get(i).floatValue();
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    private static Path2D path(double[] xy, boolean closed) {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    /** Encodes the image together with its resolution, so that it prints at its true size. */
    private static byte[] encode(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(png)) {
            IIOMetadata metadata =
                    writer.getDefaultImageMetadata(
                            ImageTypeSpecifier.createFromRenderedImage(image), null);
            IIOMetadataNode root = new IIOMetadataNode(METADATA_FORMAT);
            IIOMetadataNode physical = new IIOMetadataNode("pHYs");
            String dotsPerMetre = Long.toString(Math.round(DOTS_PER_INCH / 0.0254));
            physical.setAttribute("pixelsPerUnitXAxis", dotsPerMetre);
            physical.setAttribute("pixelsPerUnitYAxis", dotsPerMetre);
            physical.setAttribute("unitSpecifier", "meter");
            root.appendChild(physical);
            metadata.mergeTree(METADATA_FORMAT, root);
            writer.setOutput(out);
            writer.write(new IIOImage(image, null, metadata));
        } catch (IOException e) {
            throw new UncheckedIOException("A picture in memory can't be encoded", e);
        } finally {
            writer.dispose();
        }
        return png.toByteArray();
    }
}
