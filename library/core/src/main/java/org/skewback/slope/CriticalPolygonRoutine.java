package org.skewback.slope;

import java.util.Arrays;
import java.util.List;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Routine;
import org.skewback.quantity.Stop;

/**
 * A surface of any shape of low factor of safety, begun at the critical circle of the same section,
 * window and method, as a routine; see {@link CriticalPolygon}. It has twelve corners at first; they
 * are doubled three times, so that what more corners would still find is less than a thousandth.
 */
public final class CriticalPolygonRoutine
        implements Routine<SectionInput, CriticalPolygonRoutine.Output> {

    private static final int CORNERS = 12;
    private static final int DOUBLINGS = 3;

    /** Makes the routine. */
    public CriticalPolygonRoutine() {}

    /**
     * The surface.
     *
     * @param factor its factor of safety
     * @param circleFactor factor of safety of the circle that it was begun at
     * @param x positions of its corners from the left, ends included
     * @param y heights of its corners
     */
    public record Output(
            Quantity factor, Quantity circleFactor, List<Quantity> x, List<Quantity> y) {}

    @Override
    public String name() {
        return "slope.criticalPolygon";
    }

    @Override
    public int edition() {
        return 2;
    }

    @Override
    public Output run(SectionInput input, Stop stop) {
        SlopeSection section = input.section();
        CriticalCircle circle = CriticalCircle.search(section, input.window(), input.by(), 1, stop);
        CriticalPolygon found =
                CriticalPolygon.search(section, circle, input.by(), CORNERS, input.slices());
        for (int i = 0; i < DOUBLINGS; i++) {
            stop.check();
            int corners = 2 * found.surface().line().size() - 1;
            found = found.refined(section, Math.max(input.slices(), corners));
        }
        ProfileLine line = found.surface().line();
        Quantity[] x = new Quantity[line.size()];
        Quantity[] y = new Quantity[line.size()];
        for (int i = 0; i < line.size(); i++) {
            x[i] = Quantity.of(line.pointX(i), "m");
            y[i] = Quantity.of(line.pointY(i), "m");
        }
        return new Output(
                Quantity.of(found.factor()),
                Quantity.of(circle.factor()),
                Arrays.asList(x),
                Arrays.asList(y));
    }
}
