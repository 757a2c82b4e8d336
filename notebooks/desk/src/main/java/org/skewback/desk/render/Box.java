package org.skewback.desk.render;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/**
 * Something set in type: an outline with its extent.
 *
 * @param width how far the next thing stands to the right, in em
 * @param ascent how far it reaches above the base line, in em
 * @param descent how far it reaches below the base line, in em
 * @param outline filled outline in em; base line at y = 0, y up
 */
record Box(double width, double ascent, double descent, Outline outline) {

    static Box empty() {
        return space(0);
    }

    static Box space(double width) {
        return new Box(width, 0, 0, Outline.NONE);
    }

    /** A filled bar whose lower left corner stands at (0, y). */
    static Box bar(double width, double y, double thickness) {
        Path2D path = new Path2D.Double();
        path.moveTo(0, y);
        path.lineTo(width, y);
        path.lineTo(width, y + thickness);
        path.lineTo(0, y + thickness);
        path.closePath();
        return new Box(width, y + thickness, -y, Outline.of(path));
    }

    double height() {
        return ascent + descent;
    }

    /** The same, larger or smaller. */
    Box scaled(double factor) {
        return scaled(factor, factor);
    }

    Box scaled(double across, double up) {
        return new Box(
                width * across,
                ascent * up,
                descent * up,
                outline.moved(AffineTransform.getScaleInstance(across, up)));
    }

    /** The same, higher or (negative) lower. */
    Box raised(double by) {
        return new Box(
                width,
                ascent + by,
                descent - by,
                outline.moved(AffineTransform.getTranslateInstance(0, by)));
    }

    /** The same, moved to the right, its width grown by as much. */
    Box indented(double by) {
        return new Box(
                width + by,
                ascent,
                descent,
                outline.moved(AffineTransform.getTranslateInstance(by, 0)));
    }

    Box withWidth(double other) {
        return new Box(other, ascent, descent, outline);
    }

    /** This with the other to its right. */
    Box then(Box other) {
        Box right = other.indented(width);
        return over(right).withWidth(right.width);
    }

    /** Both in one place; as wide as the wider. */
    Box over(Box other) {
        return new Box(
                Math.max(width, other.width),
                Math.max(ascent, other.ascent),
                Math.max(descent, other.descent),
                outline.with(other.outline));
    }

    /** In the middle of a given width. */
    Box centred(double within) {
        return indented((within - width) / 2).withWidth(within);
    }
}
