package org.skewback.desk.render;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * The outline of something set in type, put together only when it is drawn: a long formula is made
 * of boxes in boxes, and to copy its path at each of them would cost the square of its length.
 */
final class Outline {

    /** Nothing to draw. */
    static final Outline NONE = new Outline(new Path2D.Double(), new AffineTransform(), List.of());

    private final Path2D shape;
    private final AffineTransform place;
    private final List<Outline> parts;

    private Outline(Path2D shape, AffineTransform place, List<Outline> parts) {
        this.shape = shape;
        this.place = place;
        this.parts = parts;
    }

    /** An outline of a shape, which nobody changes any more. */
    static Outline of(Path2D shape) {
        return new Outline(shape, new AffineTransform(), List.of());
    }

    /** This outline elsewhere or in another size. */
    Outline moved(AffineTransform by) {
        return this == NONE ? NONE : new Outline(NONE.shape, by, List.of(this));
    }

    /** This outline and another behind it. */
    Outline with(Outline other) {
        if (this == NONE) {
            return other;
        }
        return other == NONE ? this : new Outline(NONE.shape, NONE.place, List.of(this, other));
    }

    private record Placed(Outline outline, AffineTransform place) {}

    /** The whole as one path. Goes no deeper into the stack however deep the formula is. */
    Path2D path() {
        Path2D path = new Path2D.Double();
        Deque<Placed> waiting = new ArrayDeque<>(List.of(new Placed(this, new AffineTransform())));
        while (!waiting.isEmpty()) {
            Placed next = waiting.pop();
            AffineTransform there = new AffineTransform(next.place);
            there.concatenate(next.outline.place);
            path.append(next.outline.shape.getPathIterator(there), false);
            List<Outline> parts = next.outline.parts;
            for (int i = parts.size() - 1; i >= 0; i--) {
                waiting.push(new Placed(parts.get(i), there));
            }
        }
        return path;
    }
}
