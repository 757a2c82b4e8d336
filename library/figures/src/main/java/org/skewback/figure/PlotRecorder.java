package org.skewback.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Takes down what a chart paints as strokes and fills of our own.
 *
 * <p>The chart library draws text as outlines and a curve as single segments, each of which would
 * start its dash anew; here segments that meet become one line, text is left to the caller, and
 * what is painted fully transparent is left out. What the house's charts never paint (images, text
 * by glyphs) is refused, so that nothing is lost unseen.
 */
final class PlotRecorder extends Graphics2D {

    private static final double FLATNESS = 0.2;

    /** The chart places its lines to within half a unit; one along the clip's edge must be seen. */
    private static final double EDGE = 0.6;

    private final double pointsPerUnit;
    private final List<Mark> marks = new ArrayList<>();
    private AffineTransform transform = new AffineTransform();
    private RenderingHints hints = new RenderingHints(Map.of());
    private Color color = Color.BLACK;
    private BasicStroke stroke = new BasicStroke();
    private Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    private @Nullable Rectangle2D clip;

    /** The line being drawn, in points, and its pen; ended by anything that does not continue it. */
    private final List<Double> line = new ArrayList<>();

    private @Nullable Pen pen;

    PlotRecorder(double pointsPerUnit) {
        this.pointsPerUnit = pointsPerUnit;
    }

    List<Mark> marks() {
        endLine();
        return List.copyOf(marks);
    }

    @Override
    public void draw(Shape shape) {
        if (color.getAlpha() == 0) {
            return;
        }
        PathIterator path = shape.getPathIterator(transform, FLATNESS);
        double[] at = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> {
                    startX = at[0];
                    startY = at[1];
                    x = startX;
                    y = startY;
                }
                case PathIterator.SEG_LINETO -> {
                    segment(x, y, at[0], at[1]);
                    x = at[0];
                    y = at[1];
                }
                default -> {
                    segment(x, y, startX, startY);
                    x = startX;
                    y = startY;
                }
            }
        }
    }

    private void segment(double x0, double y0, double x1, double y1) {
        double[] seen = clipped(x0, y0, x1, y1);
        if (seen.length == 0) {
            return;
        }
        Pen now = pen();
        for (int i = 0; i < 4; i++) {
            seen[i] *= pointsPerUnit;
        }
        int n = line.size();
        boolean goesOn =
                n > 0
                        && now.equals(pen)
                        && line.get(n - 2) == seen[0]
                        && line.get(n - 1) == seen[1];
        if (!goesOn) {
            endLine();
            pen = now;
            line.add(seen[0]);
            line.add(seen[1]);
        }
        line.add(seen[2]);
        line.add(seen[3]);
    }

    private void endLine() {
        if (pen != null && !line.isEmpty()) {
            double[] xy = line.stream().mapToDouble(Double::doubleValue).toArray();
            marks.add(new Mark.Stroke(List.of(xy), false, pen));
        }
        line.clear();
    }

    /** The part of a segment inside the clip (Liang and Barsky); empty if there is none. */
    private double[] clipped(double x0, double y0, double x1, double y1) {
        if (clip == null) {
            return new double[] {x0, y0, x1, y1};
        }
        double from = 0;
        double to = 1;
        double[] p = {x0 - x1, x1 - x0, y0 - y1, y1 - y0};
        double[] q = {
            x0 - clip.getMinX() + EDGE,
            clip.getMaxX() - x0 + EDGE,
            y0 - clip.getMinY() + EDGE,
            clip.getMaxY() - y0 + EDGE
        };
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] < 0) {
                    return new double[0];
                }
            } else if (p[i] < 0) {
                from = Math.max(from, q[i] / p[i]);
            } else {
                to = Math.min(to, q[i] / p[i]);
            }
        }
        if (from > to) {
            return new double[0];
        }
        // Ends inside are kept to the bit, so that the next segment is seen to go on.
        double dx = x1 - x0;
        double dy = y1 - y0;
        return new double[] {
            from == 0 ? x0 : x0 + from * dx,
            from == 0 ? y0 : y0 + from * dy,
            to == 1 ? x1 : x0 + to * dx,
            to == 1 ? y1 : y0 + to * dy
        };
    }

    private Pen pen() {
        List<Double> dash = new ArrayList<>();
        if (stroke.getDashArray() != null) {
            for (float length : stroke.getDashArray()) {
                dash.add(Math.round(length * pointsPerUnit * 100) / 100.0);
            }
        }
        return new Pen(
                Math.round(stroke.getLineWidth() * pointsPerUnit * 100) / 100.0,
                Ink.nearest(color.getRGB()),
                dash);
    }

    @Override
    public void fill(Shape shape) {
        if (color.getAlpha() == 0) {
            return;
        }
        endLine();
        List<double[]> polygons = new ArrayList<>();
        List<Double> polygon = new ArrayList<>();
        PathIterator path = shape.getPathIterator(transform, FLATNESS);
        double[] at = new double[6];
        for (; !path.isDone(); path.next()) {
            int kind = path.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO && !polygon.isEmpty()) {
                polygons.add(polygon.stream().mapToDouble(Double::doubleValue).toArray());
                polygon.clear();
            }
            if (kind != PathIterator.SEG_CLOSE) {
                polygon.add(at[0] * pointsPerUnit);
                polygon.add(at[1] * pointsPerUnit);
            }
        }
        if (!polygon.isEmpty()) {
            polygons.add(polygon.stream().mapToDouble(Double::doubleValue).toArray());
        }
        if (!polygons.isEmpty()) {
            marks.add(new Mark.Fill(polygons, Ink.nearest(color.getRGB())));
        }
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    @Override
    public void setStroke(Stroke stroke) {
        if (!(stroke instanceof BasicStroke basic)) {
            throw refused("a stroke of its own kind");
        }
        this.stroke = basic;
    }

    @Override
    public Stroke getStroke() {
        return stroke;
    }

    @Override
    public void setColor(Color color) {
        this.color = color;
    }

    @Override
    public Color getColor() {
        return color;
    }

    @Override
    public void setPaint(Paint paint) {
        if (!(paint instanceof Color plain)) {
            throw refused("a paint that is not one colour");
        }
        color = plain;
    }

    @Override
    public Paint getPaint() {
        return color;
    }

    @Override
    public void setFont(Font font) {
        this.font = font;
    }

    @Override
    public Font getFont() {
        return font;
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return new FontRenderContext(null, true, true);
    }

    @Override
    public void setClip(@Nullable Shape shape) {
        clip = shape == null ? null : transform.createTransformedShape(shape).getBounds2D();
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        setClip(new Rectangle(x, y, width, height));
    }

    @Override
    public void clip(Shape shape) {
        Rectangle2D more = transform.createTransformedShape(shape).getBounds2D();
        clip = clip == null ? more : clip.createIntersection(more);
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        clip(new Rectangle(x, y, width, height));
    }

    @Override
    @SuppressWarnings("NullAway") // The platform's contract: no clip is null.
    public Shape getClip() {
        return clip;
    }

    @Override
    @SuppressWarnings("NullAway") // The platform's contract: no clip is null.
    public Rectangle getClipBounds() {
        return clip == null ? null : clip.getBounds();
    }

    @Override
    public void setTransform(AffineTransform transform) {
        this.transform = new AffineTransform(transform);
    }

    @Override
    public AffineTransform getTransform() {
        return new AffineTransform(transform);
    }

    @Override
    public void transform(AffineTransform more) {
        transform.concatenate(more);
    }

    @Override
    public void translate(int x, int y) {
        transform.translate(x, y);
    }

    @Override
    public void translate(double x, double y) {
        transform.translate(x, y);
    }

    @Override
    public void rotate(double angle) {
        transform.rotate(angle);
    }

    @Override
    public void rotate(double angle, double x, double y) {
        transform.rotate(angle, x, y);
    }

    @Override
    public void scale(double x, double y) {
        transform.scale(x, y);
    }

    @Override
    public void shear(double x, double y) {
        transform.shear(x, y);
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, @Nullable Object value) {
        hints.put(key, value);
    }

    @Override
    public @Nullable Object getRenderingHint(RenderingHints.Key key) {
        return hints.get(key);
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {
        this.hints = new RenderingHints(Map.of());
        addRenderingHints(hints);
    }

    @Override
    public void addRenderingHints(Map<?, ?> hints) {
        this.hints.putAll(hints);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return hints;
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        fill(new Rectangle(x, y, width, height));
    }

    @Override
    public void dispose() {
        // Holds nothing but memory.
    }

    private static UnsupportedOperationException refused(String what) {
        return new UnsupportedOperationException(
                "A chart in the house style does not paint " + what);
    }

    @Override
    public Graphics create() {
        throw refused("on a copy of its page");
    }

    @Override
    public void setPaintMode() {
        throw refused("in another mode");
    }

    @Override
    public void setXORMode(Color other) {
        throw refused("in another mode");
    }

    @Override
    public void setComposite(Composite composite) {
        throw refused("composites");
    }

    @Override
    public Composite getComposite() {
        throw refused("composites");
    }

    @Override
    public void setBackground(Color background) {
        throw refused("a background");
    }

    @Override
    public Color getBackground() {
        throw refused("a background");
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        throw refused("on a device");
    }

    @Override
    public boolean hit(Rectangle rectangle, Shape shape, boolean onStroke) {
        throw refused("on a device");
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        throw refused("text");
    }

    @Override
    public void drawString(String text, int x, int y) {
        throw refused("text");
    }

    @Override
    public void drawString(String text, float x, float y) {
        throw refused("text");
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        throw refused("text");
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw refused("text");
    }

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        throw refused("text");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw refused("copies of an area");
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        throw refused("a background");
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        throw refused("round corners");
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        throw refused("round corners");
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        throw refused("ovals");
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        throw refused("ovals");
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int angle) {
        throw refused("arcs");
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int angle) {
        throw refused("arcs");
    }

    @Override
    public void drawPolyline(int[] x, int[] y, int count) {
        throw refused("polygons of whole numbers");
    }

    @Override
    public void drawPolygon(int[] x, int[] y, int count) {
        throw refused("polygons of whole numbers");
    }

    @Override
    public void fillPolygon(int[] x, int[] y, int count) {
        throw refused("polygons of whole numbers");
    }

    @Override
    public boolean drawImage(Image image, AffineTransform place, ImageObserver observer) {
        throw refused("images");
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp operation, int x, int y) {
        throw refused("images");
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform place) {
        throw refused("images");
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform place) {
        throw refused("images");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw refused("images");
    }

    @Override
    public boolean drawImage(
            Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw refused("images");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color background, ImageObserver observer) {
        throw refused("images");
    }

    @Override
    public boolean drawImage(
            Image image,
            int x,
            int y,
            int width,
            int height,
            Color background,
            ImageObserver observer) {
        throw refused("images");
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            ImageObserver observer) {
        throw refused("images");
    }

    @Override
    public boolean drawImage(
            Image image,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            Color background,
            ImageObserver observer) {
        throw refused("images");
    }
}
