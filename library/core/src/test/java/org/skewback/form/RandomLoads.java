package org.skewback.form;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random downward loads, as shares of a span. */
final class RandomLoads {

    private RandomLoads() {}

    /** Point loads, and loads per plan length over part of the span, at least one. */
    static Arbitrary<VerticalLoad> onPlan(double span) {
        return Arbitraries.oneOf(point(span), line(span))
                .list()
                .ofMinSize(1)
                .ofMaxSize(5)
                .map(VerticalLoad::together);
    }

    /** As on plan, and a weight all along the axis. */
    static Arbitrary<VerticalLoad> withWeight(double span) {
        return Combinators.combine(onPlan(span), Arbitraries.doubles().between(1e3, 1e5))
                .as((load, weight) -> load.and(VerticalLoad.onAxis(weight, 0, span)));
    }

    private static Arbitrary<VerticalLoad> point(double span) {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.02, 0.98),
                        Arbitraries.doubles().between(1e3, 1e6))
                .as((at, force) -> VerticalLoad.point(force, at * span));
    }

    private static Arbitrary<VerticalLoad> line(double span) {
        return Combinators.combine(
                        Arbitraries.doubles().between(0, 0.6),
                        Arbitraries.doubles().between(0.1, 0.4),
                        Arbitraries.doubles().between(1e3, 1e5),
                        Arbitraries.doubles().between(1e3, 1e5))
                .as(
                        (from, length, left, right) ->
                                VerticalLoad.linear(
                                        from * span, (from + length) * span, left, right));
    }

    /** The same load seen from the other side. */
    static VerticalLoad mirrored(VerticalLoad load, double span) {
        List<VerticalLoad> parts =
                load.parts().stream().map(part -> mirroredPart(part, span)).toList();
        return VerticalLoad.together(parts);
    }

    private static VerticalLoad mirroredPart(VerticalLoad part, double span) {
        if (part instanceof PointLoad point) {
            return new PointLoad(span - point.position(), point.force());
        }
        if (part instanceof LineLoad line) {
            double left = line.atTo();
            double right = line.atFrom();
            return new LineLoad(span - line.to(), span - line.from(), left, right);
        }
        if (part instanceof AxisLoad along) {
            return new AxisLoad(span - along.to(), span - along.from(), along.intensity());
        }
        throw new IllegalArgumentException("A group within the single loads.");
    }
}
