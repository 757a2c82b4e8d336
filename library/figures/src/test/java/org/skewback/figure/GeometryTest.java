package org.skewback.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Path2D;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hatching, boxes, numbers and font widths against independent measures. */
class GeometryTest {

    /** An L, so that hatch lines are cut more than once. */
    private static final double[] ANGLE = {0, 0, 60, 0, 60, 20, 20, 20, 20, 90, 0, 90};

    @Test
    void hatchLinesAreAtFortyFiveDegreesAndInside() {
        Path2D.Double shape = new Path2D.Double();
        shape.moveTo(ANGLE[0], ANGLE[1]);
        for (int i = 2; i < ANGLE.length; i += 2) {
            shape.lineTo(ANGLE[i], ANGLE[i + 1]);
        }
        shape.closePath();
        List<double[]> lines = Geometry.hatch(ANGLE, 3);
        for (double[] line : lines) {
            assertEquals(line[2] - line[0], line[1] - line[3], 1e-9);
            for (double share : new double[] {0.001, 0.3, 0.7, 0.999}) {
                assertTrue(
                        shape.contains(
                                line[0] + share * (line[2] - line[0]),
                                line[1] + share * (line[3] - line[1])));
            }
        }
    }

    /** Lines at distance d stand for strips of width d: length times d tends to the area. */
    @Test
    void hatchCoversTheArea() {
        double area = 60 * 20 + 20 * 70;
        double spacing = 0.05;
        double length = 0;
        for (double[] line : Geometry.hatch(ANGLE, spacing)) {
            length += StrictMath.hypot(line[2] - line[0], line[3] - line[1]);
        }
        assertEquals(area, length * spacing, 0.002 * area);
    }

    @Test
    void boxesOverlapOnlyWhenTheyShareArea() {
        double[] square = {0, 0, 2, 0, 2, 2, 0, 2};
        double[] beside = {2, 0, 4, 0, 4, 2, 2, 2};
        double[] diamond = {1.6, 3, 3, 1.6, 4.4, 3, 3, 4.4};
        double[] nearer = {1.4, 3, 2.8, 1.2, 4.2, 3, 2.8, 4.4};
        assertFalse(Geometry.overlap(square, beside));
        assertTrue(Geometry.overlap(square, new double[] {1, 1, 3, 1, 3, 3, 1, 3}));
        assertFalse(Geometry.overlap(square, diamond), "upright boxes would say yes");
        assertFalse(Geometry.overlap(square, nearer));
        assertTrue(Geometry.overlap(square, new double[] {-1, 1, 3, 1.2}), "a line across");
        assertFalse(Geometry.overlap(square, new double[] {3, 0, 3, 2}), "a line beside");
    }

    /** The platform's own reading of the same font file is the independent measure. */
    @Test
    void widthsAreThoseThePlatformReads() throws Exception {
        try (InputStream stream = TextFace.REGULAR.open()) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, stream).deriveFont(1000f);
            FontRenderContext context = new FontRenderContext(null, true, true);
            for (String text :
                    new String[] {"0123456789", "span 336 m", "\u2212\u00b1+.", "\u03b1"}) {
                assertEquals(
                        font.getStringBounds(text, context).getWidth(),
                        1000 * TextFace.REGULAR.width(text),
                        1,
                        text);
            }
        }
    }

    @Test
    void numbersReadTheSameEverywhere() {
        assertEquals("336", Numbers.shortest(336, 2));
        assertEquals("373.5", Numbers.shortest(373.4999, 2));
        assertEquals("\u221212\u2009345.7", Numbers.shortest(-12345.67, 1));
        assertEquals("1435", Numbers.shortest(1435, 0));
        assertEquals("0", Numbers.shortest(-0.001, 2));
        assertEquals(0.2, Numbers.niceBelow(0.3999), 1e-15);
        assertEquals(50, Numbers.niceBelow(99), 1e-12);
        assertEquals(1, Numbers.niceBelow(1), 1e-15);
    }
}
